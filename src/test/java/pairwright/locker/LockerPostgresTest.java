package pairwright.locker;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;

@Tag("postgresql")
class LockerPostgresTest extends LockerTests {
    @Override
    Place fresh(Path folder) throws Exception {
        return Databases.emptied();
    }

    @Override
    public Place another() throws Exception {
        return Databases.freshServer();
    }
}
