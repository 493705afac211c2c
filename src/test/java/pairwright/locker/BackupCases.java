package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** A backup is one moment, whoever writes meanwhile, and comes back as it was or not at all. */
interface BackupCases extends LockerCase {
    int WRITERS = 4;

    Place place();

    Path folder();

    /** A new and empty one, kept as this one is. */
    Place another() throws Exception;

    @Test
    default void aBackupWhileFourWriteHoldsWholeBookingsAndComesBackExactly() throws Exception {
        List<Path> backups = new ArrayList<>();
        whileFourWrite(() -> {
            for (int number = 0; number < 3; number++) {
                Path backup = folder().resolve("barn-" + number + ".backup");
                locker().backUp(backup);
                backups.add(backup);
            }
        });
        int most = -1;
        for (Path backup : backups) {
            Place restored = another();
            try (Locker locker = Locker.open(restored, Load.CATALOGUE, clock())) {
                locker.restore(backup, "Wren");
                List<Booking> bookings = Load.all(locker);
                assertWhole(locker, bookings);
                assertTrue(bookings.size() > most, "nothing was written between two backups");
                most = bookings.size();
            }
            try (Database there = Database.open(restored); Database backedUp = Database.open(new Place(backup, null))) {
                assertEquals(Contents.restored(backedUp), Contents.restored(there));
            }
        }
        assertWhole(locker(), Load.all(locker()));
    }

    @Test
    default void aBackupComesBackWhileFourWrite() throws Exception {
        books(-3, -2, "low-1", "pencil-1");
        Path backup = folder().resolve("barn.backup");
        locker().backUp(backup);
        books(-2, -1, "low-1", "pencil-1");
        whileFourWrite(() -> {
            for (int number = 0; number < 3; number++) {
                locker().restore(backup, "Wren");
            }
        });
        List<Booking> bookings = Load.all(locker());
        assertWhole(locker(), bookings);
        assertEquals("1", bookings.get(0).id());
        assertTrue(bookings.stream().noneMatch(booking -> booking.id().equals("2")), "what was booked after the backup");
        assertEquals(bookings, Load.all(other()));
        assertEquals(bookings.stream().map(Booking::id).distinct().count(), bookings.size());
    }

    @Test
    default void aBackupThatWasCutOffOrAlteredIsRefusedAndNothingChanges() throws Exception {
        books(0, 1, "low-1", "pencil-1");
        Path backup = folder().resolve("barn.backup");
        locker().backUp(backup);
        byte[] whole = Files.readAllBytes(backup);
        books(2, 3, "low-1");
        List<byte[]> wrong = new ArrayList<>();
        for (int length : new int[] {0, 10, 61, 100, 4096, whole.length / 2, whole.length - 4096, whole.length - 1}) {
            wrong.add(Arrays.copyOf(whole, length));
        }
        wrong.add(Arrays.copyOf(whole, whole.length + 1));
        Random random = new Random(17);
        for (int number = 0; number < 25; number++) {
            byte[] altered = whole.clone();
            altered[random.nextInt(whole.length)] ^= (byte) (1 << random.nextInt(8));
            wrong.add(altered);
        }
        try (Database behind = Database.open(place())) {
            Map<String, List<String>> before = Contents.of(behind);
            Path file = folder().resolve("wrong.backup");
            for (byte[] one : wrong) {
                Files.write(file, one);
                LockerFault.Unusable fault = assertThrows(LockerFault.Unusable.class, () -> locker().restore(file, "Wren"), one.length + " of " + whole.length + " bytes");
                assertTrue(fault.getMessage().contains(file.toString()), fault.getMessage());
            }
            assertEquals(before, Contents.of(behind));
        }
        locker().restore(backup, "Wren");
        assertEquals(1, Load.all(locker()).size());
    }

    /** What is done meanwhile. */
    interface Meanwhile {
        void run() throws Exception;
    }

    private void whileFourWrite(Meanwhile meanwhile) throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        ExecutorService pool = Executors.newFixedThreadPool(WRITERS);
        try {
            List<Future<Integer>> writers = new ArrayList<>();
            for (int number = 0; number < WRITERS; number++) {
                int writer = number;
                writers.add(pool.submit(() -> writes(writer, stop)));
            }
            meanwhile.run();
            stop.set(true);
            for (Future<Integer> writer : writers) {
                assertTrue(writer.get() > 0, "one of them never came to write");
            }
        } finally {
            stop.set(true);
            pool.shutdownNow();
        }
    }

    /** Two units at a time, each writer in hours of its own; says how often. */
    private int writes(int writer, AtomicBoolean stop) {
        int written = 0;
        while (!stop.get()) {
            Instant from = LockerCase.hour(4 * written + writer);
            BookingDraft draft = new BookingDraft(List.of("low-1", "pencil-1"), from, from.plusSeconds(3600), null, "x", "Wren", null);
            locker().change(new Act("Wren", "w-" + writer + "-" + written, "x"), changes -> changes.book(draft).id());
            written++;
        }
        return written;
    }

    private static void assertWhole(Locker locker, List<Booking> bookings) {
        assertEquals(List.of(), Overlaps.of(bookings));
        for (Booking booking : bookings) {
            assertEquals(List.of("low-1", "pencil-1"), booking.units());
            assertEquals("booked", locker.history(booking.id(), null, 1).get(0).what());
        }
    }
}
