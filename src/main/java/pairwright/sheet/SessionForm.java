package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pairwright.drawing.Drawing;
import pairwright.drawing.FloorDrawing;
import pairwright.drawing.FloorPlan;
import pairwright.drawing.FloorWords;
import pairwright.drawing.Reader;
import pairwright.locker.Span;
import pairwright.model.Catalogue;
import pairwright.model.Limits;
import pairwright.session.LineUp;
import pairwright.session.Seat;

/** The form of a line-up with the floor beside it. */
public final class SessionForm {
    static final String FORM = "session";
    static final String FLOOR = "floor";

    private final AtLocker at;
    private final Reader reader;
    private final Sent sent;
    private final SessionReading reading;

    /**
     * What a page of a line-up shows.
     *
     * @param menu the pages of the session; empty for one that is not kept yet
     * @param form null for whoever may not change anything
     * @param wrong everything that is wrong, each with a link to its field
     * @param seats row by row
     * @param gobos likewise
     * @param contrasts likewise; the last one is empty
     * @param floor the floor from above
     * @param table who is where
     * @param focus id of the control that a button of the form leads to; empty for none
     * @param when the time of it; empty for none
     * @param remove where it is taken out; null for nowhere
     * @param asReader why there is nothing to change; empty for whoever may
     * @param characters to be offered while one is typed
     */
    public record Content(List<Menu> menu, SendForm form, List<Wrong> wrong, List<SeatPart> seats, List<GoboPart> gobos, List<ContrastPart> contrasts, Floor floor,
            List<TableRow> table, String focus, String when, ReadingParts.Link remove, String asReader, List<Choice> characters) {
        /** Whether anything is wrong. */
        public boolean faulty() {
            return !wrong.isEmpty();
        }
    }

    /** A page of the session. */
    public record Menu(String href, String name, boolean current) {
    }

    /** A fault, and the field it belongs to; href and field are empty for none. */
    public record Wrong(String href, String field, String says) {
    }

    /**
     * A seat of the form.
     *
     * @param row its number in the names of fields
     * @param id as it is kept
     * @param name what it is called
     * @param place where it is, in words
     * @param open whether what is seldom needed is shown at once
     * @param note what is kept and not shown; empty for nothing
     */
    public record SeatPart(int row, String id, String name, String place, boolean open, String note) {
    }

    /** A gobo of the form. */
    public record GoboPart(int row, String id, String name) {
    }

    /** Two seats that shall not sound alike. */
    public record ContrastPart(int row) {
    }

    /**
     * The floor.
     *
     * @param key what its marks mean
     * @param unit of the number fields: m or ft
     * @param perM how many of that unit are a metre
     * @param sign between the whole number and the rest
     */
    public record Floor(Drawing drawing, String key, String unit, double perM, String sign) {
    }

    /** Who is where, on paper. */
    public record TableRow(String name, String source, String place, String needed) {
    }

    SessionForm(AtLocker at, Sent sent, SessionReading reading) {
        this.at = at;
        this.reader = at.visit().reader();
        this.sent = sent;
        this.reading = reading;
    }

    /** The fields, filled with what was sent, under the key it came with where it came. */
    SendForm fields(String address) {
        Catalogue catalogue = at.known().catalogue();
        SessionFields fields = new SessionFields(sent, reader, catalogue);
        List<FormField> all = new ArrayList<>(fields.general());
        SessionNames.rows(sent, SessionNames.SEAT).forEach(row -> all.addAll(fields.seat(row)));
        SessionNames.rows(sent, SessionNames.GOBO).forEach(row -> all.addAll(fields.gobo(row)));
        List<Choice> seats = SessionNames.rows(sent, SessionNames.SEAT).stream().map(row -> new Choice(id(SessionNames.SEAT, row), seatName(row), false)).toList();
        contrasts().forEach(part -> all.addAll(fields.contrast(part.row(), seats)));
        return SendForm.to(at.visit(), address, FORM, all);
    }

    private String id(String kind, int row) {
        String id = sent.first(SessionNames.of(kind, row, "id"));
        return id == null ? SessionNames.NEW + row : id;
    }

    /** What a seat is called as far as it is said. */
    private String seatName(int row) {
        int i = reading.rows().indexOf(row);
        Seat seat = i < 0 || i >= reading.lineUp().seats().size() ? null : reading.lineUp().seats().get(i);
        String typed = sent.first(SessionNames.of(SessionNames.SEAT, row, "player"));
        return seat != null && seat.source() != null ? FloorOf.name(seat, at.known().catalogue()) : typed != null ? typed : "Seat " + (SessionNames.rows(sent, SessionNames.SEAT).indexOf(row) + 1);
    }

    private List<ContrastPart> contrasts() {
        List<Integer> rows = SessionNames.rows(sent, SessionNames.CONTRAST);
        List<ContrastPart> parts = new ArrayList<>(rows.stream().filter(row -> sent.first(SessionNames.of(SessionNames.CONTRAST, row, "a")) != null
                || sent.first(SessionNames.of(SessionNames.CONTRAST, row, "b")) != null).map(ContrastPart::new).toList());
        parts.add(new ContrastPart(rows.stream().mapToInt(row -> row + 1).max().orElse(0)));
        return parts;
    }

    /**
     * All that the page shows.
     *
     * @param form with all that is wrong at its fields
     */
    Content content(SendForm form, List<Menu> menu, String focus, ReadingParts.Link remove, String asReader) {
        List<SeatPart> seats = SessionNames.rows(sent, SessionNames.SEAT).stream().map(row -> seat(form, row)).toList();
        List<GoboPart> gobos = SessionNames.rows(sent, SessionNames.GOBO).stream().map(row -> new GoboPart(row, id(SessionNames.GOBO, row), goboName(row))).toList();
        List<Choice> characters = at.known().catalogue().characters().values().stream().map(one -> new Choice(one.name(), one.name(), false)).toList();
        return new Content(menu, form, wrong(form), seats, gobos, contrasts(), floor(), table(at, reading.lineUp()), focus, when(at, reading.lineUp()), remove, asReader, characters);
    }

    private String goboName(int row) {
        int i = reading.goboRows().indexOf(row);
        return i < 0 ? "Gobo" : FloorOf.goboName(reading.lineUp().gobos().get(i));
    }

    private SeatPart seat(SendForm form, int row) {
        int i = reading.rows().indexOf(row);
        Seat seat = i < 0 || i >= reading.lineUp().seats().size() ? null : reading.lineUp().seats().get(i);
        boolean more = SessionFields.MORE.stream().map(field -> SessionNames.of(SessionNames.SEAT, row, field)).anyMatch(name -> form.field(name).fault() != null);
        return new SeatPart(row, id(SessionNames.SEAT, row), seatName(row), seat == null || seat.source() == null ? "" : FloorWords.place(seat.xM(), seat.yM(), seat.facingDegrees(), reader), more, seat == null ? "" : note(seat));
    }

    /** What is kept of a seat and has no field. */
    private String note(Seat seat) {
        List<String> limits = new ArrayList<>();
        Limits all = seat.limits();
        QuestionWords.limits(at.known().catalogue(), new Limits(null, all.phantom(), all.preampGainDb(), all.preampNoiseDbu(), all.onlyFamilies(), all.withoutFamilies(),
                all.onlyMicTypes(), all.withoutMicTypes()), reader, limits);
        return (limits.isEmpty() ? "" : "Also kept: " + String.join(", ", limits) + ". To be rid of that, take the seat out and add it anew. ")
                + (seat.heard() != null && seat.heard().toneDb() != null ? "A tone curve that came with a file is kept." : "");
    }

    private List<Wrong> wrong(SendForm form) {
        List<Wrong> all = new ArrayList<>(form.faults().stream().map(says -> new Wrong("", "", says)).toList());
        form.wrongFields().forEach(field -> all.add(new Wrong("#" + field.id(), owner(field.name()) + field.label(), field.fault())));
        return all;
    }

    /** Whose field it is, as there are many of one label. */
    private String owner(String name) {
        String[] parts = name.split("\\.");
        return parts.length < 3 ? "" : parts[0].equals(SessionNames.SEAT) ? seatName(Integer.parseInt(parts[1])) + ": "
                : parts[0].equals(SessionNames.GOBO) ? goboName(Integer.parseInt(parts[1])) + ": " : "";
    }

    private Floor floor() {
        LineUp lineUp = reading.lineUp();
        List<Seat> seats = lineUp.seats();
        FloorPlan plan = FloorOf.plan(lineUp, at.known().catalogue(), List.of(), Set.of(), seat -> Integer.toString(reading.rows().get(seats.indexOf(seat))),
                gobo -> Integer.toString(reading.goboRows().get(lineUp.gobos().indexOf(gobo))));
        return new Floor(FloorDrawing.of(plan, FLOOR, reader), FloorWords.key(plan), SessionFields.unit(reader), reader.imperial() ? 1 / 0.3048 : 1, String.valueOf(reader.decimalSign()));
    }

    static List<TableRow> table(AtLocker at, LineUp lineUp) {
        Catalogue catalogue = at.known().catalogue();
        return lineUp.seats().stream().filter(seat -> seat.source() != null).map(seat -> new TableRow(FloorOf.label(seat, catalogue), new SeatWords(at.known()).whatOf(seat),
                FloorWords.place(seat.xM(), seat.yM(), seat.facingDegrees(), at.visit().reader()), seat.must() ? "must" : "nice to have")).toList();
    }

    static String when(AtLocker at, LineUp lineUp) {
        return lineUp.from() == null ? "" : lineUp.until() == null ? at.moments().moment(lineUp.from().toInstant())
                : !lineUp.from().isBefore(lineUp.until()) ? "" : at.moments().span(new Span(lineUp.from().toInstant(), lineUp.until().toInstant()));
    }
}
