package pairwright.locker;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What a locker does, wherever it is kept. */
abstract class LockerTests implements UnitCases, BookingCases, AlteredCases, FreeCases, OutCases, ActCases, DocumentCases, MarkCases,
        ExerciseCases, BackupCases {
    private final TurnedClock clock = new TurnedClock(LockerCase.NOON);

    @TempDir
    Path folder;
    private Place place;
    private Locker locker;
    private Locker other;

    /** A new and empty one. */
    abstract Place fresh(Path folder) throws Exception;

    @BeforeEach
    void open() throws Exception {
        place = fresh(folder);
        locker = Locker.open(place, Load.CATALOGUE, clock);
        does(changes -> {
            LockerCase.fill(changes);
            return "filled";
        });
    }

    @AfterEach
    void close() {
        if (other != null) {
            other.close();
        }
        if (locker != null) {
            locker.close();
        }
    }

    @Override
    public Locker locker() {
        return locker;
    }

    @Override
    public Locker other() {
        other = other == null ? Locker.open(place, Load.CATALOGUE, clock) : other;
        return other;
    }

    @Override
    public Place place() {
        return place;
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public Place another() throws Exception {
        return fresh(Files.createTempDirectory(folder, "another"));
    }

    @Override
    public TurnedClock clock() {
        return clock;
    }
}
