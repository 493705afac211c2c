package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DatabasesTest {
    @Test
    void whereNoServerCanBeHadIsSaidWithWhatToDo() {
        assertNull(Databases.unfit("Linux", "amd64"));
        String says = Databases.unfit("Mac OS X", "aarch64");
        assertTrue(says.contains("Mac OS X on aarch64") && says.contains("Run them on Linux"), says);
    }
}
