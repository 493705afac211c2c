package pairwright.locker;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import pairwright.model.Catalogue;
import pairwright.model.Fault;

/**
 * The locker of an invented studio in a barn, with what a folk-jazz sextet, a class and two borrowers have booked around a day: something to look at and
 * to ask. Nobody and nothing in it exists.
 */
public final class DemoLocker {
    private static final String FOLDER = "/pairwright/locker/demo/";
    /** It is filled as if the people of the barn had done so three days ago, so that something can be out and overdue. */
    private static final int DAYS_AGO = 3;
    private static final LocalTime OPENS = LocalTime.of(9, 0);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);
    private static final String WHO = "the demo";

    private DemoLocker() {
    }

    /**
     * Fills an empty locker, all of it or nothing.
     *
     * @param today the day everything is around
     * @param zone in which its times are meant
     * @return a sentence about what is in it
     * @throws LockerFault.Unusable where the locker holds a unit already
     */
    public static String fill(Locker locker, Catalogue catalogue, LocalDate today, ZoneId zone) {
        String units = resource("units.csv");
        String bookings = resource("bookings.csv");
        Instant then = today.minusDays(DAYS_AGO).atTime(OPENS).atZone(zone).toInstant();
        return locker.at(Clock.fixed(then, zone)).change(Act.by(WHO), changes -> {
            int present = changes.units().size();
            if (present > 0) {
                throw new LockerFault.Unusable(List.of(new Fault("", "The locker holds " + (present == 1 ? "a unit" : present + " units")
                        + " already, and the demo fills only an empty one. Give it another data folder")));
            }
            long added = UnitTable.importInto(changes, units, catalogue).count(TablePreview.Effect.NEW);
            int booked = 0;
            for (CSVRecord row : rows(bookings)) {
                book(changes, row, today, zone);
                booked++;
            }
            return "The demo locker of an invented barn: " + added + " units and " + booked + " bookings around " + today + ".";
        }).text();
    }

    private static void book(Changes changes, CSVRecord row, LocalDate today, ZoneId zone) {
        BookingKind kind = Arrays.stream(BookingKind.values()).filter(known -> known.id().equals(row.get("kind"))).findFirst().orElseThrow();
        Booking booking = changes.book(new BookingDraft(List.of(row.get("units").split(" ")), moment(row, "fromDay", "from", today, zone),
                moment(row, "untilDay", "until", today, zone), kind, row.get("for"), row.get("by"), row.get("note")));
        if (row.get("taken").equals("yes")) {
            booking.units().forEach(unit -> changes.takeOut(unit, null, null));
        }
    }

    private static Instant moment(CSVRecord row, String day, String time, LocalDate today, ZoneId zone) {
        return today.plusDays(Long.parseLong(row.get(day))).atTime(LocalTime.parse(row.get(time), TIME)).atZone(zone).toInstant();
    }

    private static List<CSVRecord> rows(String text) {
        try (CSVParser parser = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get().parse(new StringReader(text))) {
            return parser.getRecords();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static String resource(String name) {
        try (InputStream in = DemoLocker.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException(FOLDER + name + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
