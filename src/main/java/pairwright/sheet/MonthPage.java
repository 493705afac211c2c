package pairwright.sheet;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairwright.catalogue.Shown;
import pairwright.drawing.Drawing;
import pairwright.drawing.UseDrawing;
import pairwright.locker.Use;
import pairwright.model.MicType;
import pairwright.sheet.ReadingParts.Link;

/** How much of each type is taken on the days of a month. */
public final class MonthPage {
    private static final int UNUSABLE = 400;
    private static final int OK = 200;
    private static final int FIRST_YEAR = 1971;
    private static final int LAST_YEAR = 9998;
    /** Steps of the heat between nothing and all. */
    private static final int STEPS = 3;

    private MonthPage() {
    }

    /**
     * What it shows.
     *
     * @param name of the month
     * @param fault what is wrong with the month that was asked for; empty for nothing
     * @param before the month before it
     * @param after the month after it
     * @param days its days
     * @param rows a type each
     * @param picture the same drawn; null where there is no type
     */
    public record Month(String name, String fault, Link before, Link after, List<Day> days, List<Row> rows, Drawing picture) {
    }

    /**
     * A day.
     *
     * @param to its bookings, named by its number
     * @param weekday its day of the week
     * @param brief the same in two letters
     * @param look weekend, where it is a Saturday or a Sunday; else empty
     * @param today whether it is today
     */
    public record Day(Link to, String weekday, String brief, String look, boolean today) {
    }

    /** A type; no link for one the catalogue has lost. */
    public record Row(String name, String href, String units, List<Cell> cells) {
    }

    /** How many are taken, and how it is shaded: none, some-1 to some-3, or all. */
    public record Cell(String taken, String shade) {
        /** Whether nothing is taken, which is told to the ear and kept faint to the eye. */
        public boolean none() {
            return shade.equals("none");
        }
    }

    /** The month that the query names, or this one. */
    public static Page of(AtLocker at) {
        YearMonth now = YearMonth.from(at.now().atZone(at.clock().getZone()));
        String asked = at.visit().first("month");
        Optional<YearMonth> read = read(asked);
        YearMonth month = read.orElse(now);
        String fault = asked == null || read.isPresent() ? ""
                : "\"" + Shown.of(asked) + "\" is no month. Write one like " + now + "; this is the present one.";
        Use use = at.locker().use(month, at.clock().getZone());
        List<UseDrawing.Row> drawn = use.types().stream().map(type -> new UseDrawing.Row(name(at, type.micType()), type.units(), type.taken())).toList();
        Month shown = new Month(UseDrawing.name(month), fault, link(at, month.minusMonths(1)), link(at, month.plusMonths(1)), days(at, month),
                use.types().stream().map(type -> row(at, type)).toList(), drawn.isEmpty() ? null : UseDrawing.of(month, drawn, "use", at.visit().reader()));
        return at.page(fault.isEmpty() ? OK : UNUSABLE, "month", at.frame("Taken in " + UseDrawing.name(month), "month"), "month", shown);
    }

    private static Optional<YearMonth> read(String text) {
        try {
            return Optional.ofNullable(text).map(YearMonth::parse).filter(month -> month.getYear() >= FIRST_YEAR && month.getYear() <= LAST_YEAR);
        } catch (DateTimeException noMonth) {
            return Optional.empty();
        }
    }

    private static Link link(AtLocker at, YearMonth month) {
        return at.at().link("/locker/month?month=" + month, UseDrawing.name(month));
    }

    private static List<Day> days(AtLocker at, YearMonth month) {
        List<Day> days = new ArrayList<>();
        LocalDate today = at.now().atZone(at.clock().getZone()).toLocalDate();
        for (int number = 1; number <= month.lengthOfMonth(); number++) {
            LocalDate day = month.atDay(number);
            String weekday = day.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.UK);
            days.add(new Day(at.at().link("/locker/bookings?from=" + day + "&until=" + day, Integer.toString(number)), weekday, weekday.substring(0, 2),
                    day.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) >= 0 ? "weekend" : "", day.equals(today)));
        }
        return days;
    }

    private static Row row(AtLocker at, Use.OfType type) {
        String href = at.known().catalogue().mics().containsKey(type.micType()) ? at.visit().to("/mics/" + type.micType()) : null;
        return new Row(name(at, type.micType()), href, at.measures().number(type.units(), 0),
                type.taken().stream().map(taken -> new Cell(at.measures().number(taken, 0), shade(taken, type.units()))).toList());
    }

    static String shade(int taken, int units) {
        if (taken == 0 || units == 0) {
            return "none";
        }
        return taken >= units ? "all" : "some-" + (taken * STEPS + units - 1) / units;
    }

    private static String name(AtLocker at, String micType) {
        MicType mic = at.known().catalogue().mics().get(micType);
        return mic == null ? micType : mic.name();
    }
}
