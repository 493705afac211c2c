package pairwright.locker;

import java.nio.file.Path;

class LockerSqliteTest extends LockerTests {
    @Override
    Place fresh(Path folder) {
        return Place.in(folder);
    }
}
