package pairwright.sheet;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import pairwright.advice.Usual;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;
import pairwright.locker.Span;
import pairwright.model.Fault;
import pairwright.model.Room;
import pairwright.session.Floor;
import pairwright.session.Gobo;
import pairwright.session.LineUp;
import pairwright.session.LineUpCheck;
import pairwright.session.Seat;
import pairwright.session.Seating;
import pairwright.session.SetUpTime;

/** What was typed into the form of a line-up, read with every fault at its field. What cannot be read is left as it was, so that the rest can be looked at. */
final class SessionReading {
    private static final double USUAL_GOBO_M = 1.4;

    private final AtLocker at;
    private final Sent sent;
    private final LineUp before;
    private final Numbers numbers;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Integer> rows = new ArrayList<>();
    private final List<Integer> goboRows = new ArrayList<>();
    private final Map<String, String> ids = new HashMap<>();
    private final List<Seating.Told> told = new ArrayList<>();
    private LineUp lineUp;

    /** Numbers as this reader types them; a field that still holds what was kept means exactly that. */
    record Numbers(Sent sent, Reader reader, List<Fault> faults) {
        Double length(String name, Double was) {
            String text = sent.first(name);
            return text != null && was != null && text.equals(SessionValues.length(was, reader)) ? was : read(name, reader.imperial() ? "ft" : "m");
        }

        Double number(String name, String unit, Double was) {
            String text = sent.first(name);
            return text != null && was != null && text.equals(SessionValues.number(was, reader)) ? was : read(name, unit);
        }

        private Double read(String name, String unit) {
            String text = sent.first(name);
            if (text == null) {
                return null;
            }
            Typed typed = Typed.parse(text, unit, reader);
            if (typed.fault() != null) {
                faults.add(new Fault("/" + name.replace('.', '/'), typed.fault()));
            }
            return typed.number().isPresent() ? typed.number().getAsDouble() : null;
        }
    }

    private SessionReading(AtLocker at, Sent sent, LineUp before) {
        this.at = at;
        this.sent = sent;
        this.before = before;
        this.numbers = new Numbers(sent, at.visit().reader(), faults);
    }

    /**
     * What a form says.
     *
     * @param before what is kept of it, so that what the form does not show stays; null for nothing
     */
    static SessionReading of(AtLocker at, Sent sent, LineUp before) {
        SessionReading reading = new SessionReading(at, sent, before);
        reading.read();
        return reading;
    }

    /** As far as it could be read; everybody has a place. */
    LineUp lineUp() {
        return lineUp;
    }

    /** Everything that is wrong, at the names of fields. */
    List<Fault> faults() {
        return List.copyOf(faults);
    }

    /** The row of the form each seat stands in. */
    List<Integer> rows() {
        return rows;
    }

    List<Integer> goboRows() {
        return goboRows;
    }

    private void read() {
        Floor floor = floor();
        SessionNames.rows(sent, SessionNames.SEAT).forEach(this::seat);
        BookingTimes times = BookingTimes.read(at, sent.first("from"), sent.first("until"), kept());
        // a session may be planned before anybody knows the day
        times.faults().stream().filter(fault -> sent.first(fault.at().substring(1)) != null).forEach(faults::add);
        faults.addAll(times.turned(at.moments()));
        List<Gobo> gobos = gobos();
        LineUp unseated = new LineUp(sent.first("name"), floor, told.stream().map(Seating.Told::seat).toList(), gobos, contrast(), sections(),
                moment(times.from()), moment(times.until()), plans(), setUp());
        lineUp = seated(unseated);
        if (lineUp.name() == null) {
            faults.add(new Fault("/name", "The session has no name. Name it, such as Barn, first day"));
        }
        LineUpCheck.faults(lineUp, at.known()).stream().map(this::told).filter(fault -> faults.stream().noneMatch(one -> one.at().equals(fault.at()))).toList().forEach(faults::add);
    }

    private Floor floor() {
        String id = sent.first("room");
        Room usual = at.known().catalogue().rooms().get(Usual.ROOM);
        Room like = id == null ? usual : at.known().catalogue().rooms().getOrDefault(id, usual);
        Floor was = before == null ? new Floor(null, like.widthM(), like.depthM(), like.heightM(), like.reverbTimeS()) : before.floor();
        return new Floor(id, Objects.requireNonNullElse(numbers.length("widthM", was.widthM()), like.widthM()), Objects.requireNonNullElse(numbers.length("depthM", was.depthM()), like.depthM()),
                Objects.requireNonNullElse(numbers.length("heightM", was.heightM()), like.heightM()),
                Objects.requireNonNullElse(numbers.number("reverbTimeS", "s", was.reverbTimeS()), like.reverbTimeS()), patch(was.patch()));
    }

    /** Where the leads end; null for not said. */
    private Floor.Patch patch(Floor.Patch was) {
        Double xM = numbers.length(SessionNames.PATCH_X, was == null ? null : was.xM());
        Double yM = numbers.length(SessionNames.PATCH_Y, was == null ? null : was.yM());
        if ((sent.first(SessionNames.PATCH_X) == null) != (sent.first(SessionNames.PATCH_Y) == null)) {
            String missing = sent.first(SessionNames.PATCH_X) == null ? SessionNames.PATCH_X : SessionNames.PATCH_Y;
            faults.add(new Fault("/" + missing, "Where the leads end takes both, from the left wall and from the front. Give both, or leave both empty"));
        }
        return xM == null || yM == null ? null : new Floor.Patch(xM, yM);
    }

    private void seat(int row) {
        SeatReading read = SeatReading.of(at, sent, row, before, numbers);
        if (read == null) {
            return;
        }
        faults.addAll(read.faults());
        String sentId = Objects.requireNonNullElse(sent.first(SessionNames.of(SessionNames.SEAT, row, "id")), SessionNames.NEW + row);
        Seat seat = read.seat();
        String id = sentId;
        if (sentId.startsWith(SessionNames.NEW)) {
            Set<String> taken = new LinkedHashSet<>(ids.values());
            SessionNames.rows(sent, SessionNames.SEAT).forEach(one -> taken.add(sent.first(SessionNames.of(SessionNames.SEAT, one, "id"))));
            id = SessionNames.id(seat.player() != null ? seat.player() : seat.source(), SessionNames.SEAT, taken);
        }
        ids.put(sentId, id);
        rows.add(row);
        told.add(new Seating.Told(seat.called(id), read.placed(), read.faced()));
    }

    private LineUp seated(LineUp unseated) {
        Floor floor = unseated.floor();
        boolean sound = Stream.of(floor.widthM(), floor.depthM()).allMatch(size -> size >= Floor.LEAST_M && size <= Floor.MOST_M);
        if (!sound || told.isEmpty() || told.size() > LineUp.MOST_SEATS || told.stream().allMatch(one -> one.placed() && one.faced())) {
            return unseated;
        }
        Seating seating = Seating.of(floor, told, at.known().catalogue());
        if (!seating.fits()) {
            faults.add(new Fault("/widthM", "This room has no place for everybody who has none yet. Say where they are, or give a larger room"));
        }
        return unseated.seated(seating.seats());
    }

    private List<Gobo> gobos() {
        List<Gobo> gobos = new ArrayList<>();
        Set<String> taken = new LinkedHashSet<>();
        SessionNames.rows(sent, SessionNames.GOBO).forEach(row -> taken.add(sent.first(SessionNames.of(SessionNames.GOBO, row, "id"))));
        for (int row : SessionNames.rows(sent, SessionNames.GOBO)) {
            String id = Objects.requireNonNullElse(sent.first(SessionNames.of(SessionNames.GOBO, row, "id")), SessionNames.NEW);
            Gobo was = before == null ? null : before.gobos().stream().filter(one -> one.id().equals(id)).findFirst().orElse(null);
            Double heightM = numbers.length(SessionNames.of(SessionNames.GOBO, row, "heightM"), was == null ? null : was.heightM());
            goboRows.add(row);
            gobos.add(new Gobo(id.startsWith(SessionNames.NEW) ? SessionNames.id("gobo-" + (gobos.size() + 1), SessionNames.GOBO, taken) : id, end(row, "x1M", was == null ? null : was.x1M()),
                    end(row, "y1M", was == null ? null : was.y1M()), end(row, "x2M", was == null ? null : was.x2M()), end(row, "y2M", was == null ? null : was.y2M()),
                    heightM == null ? USUAL_GOBO_M : heightM));
        }
        return gobos;
    }

    private double end(int row, String field, Double was) {
        String name = SessionNames.of(SessionNames.GOBO, row, field);
        Double given = numbers.length(name, was);
        if (sent.first(name) == null) {
            faults.add(new Fault("/" + name.replace('.', '/'), "It is not said where this end is. Give both ends from the left wall and from the front"));
        }
        return given == null ? Double.NaN : given;
    }

    private List<List<String>> contrast() {
        List<List<String>> pairs = new ArrayList<>();
        for (int row : SessionNames.rows(sent, SessionNames.CONTRAST)) {
            String one = sent.first(SessionNames.of(SessionNames.CONTRAST, row, "a"));
            String other = sent.first(SessionNames.of(SessionNames.CONTRAST, row, "b"));
            if (one == null && other == null) {
                continue;
            }
            if (one == null || other == null || one.equals(other)) {
                faults.add(new Fault("/contrast/" + row + (one == null ? "/a" : "/b"), "Two seats are needed that shall not sound alike. Choose another, or nobody in both"));
                continue;
            }
            pairs.add(List.of(ids.getOrDefault(one, one), ids.getOrDefault(other, other)));
        }
        return pairs;
    }

    /** Seats with the same word are one section. */
    private List<List<String>> sections() {
        Map<String, List<Integer>> byWord = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            String word = sent.first(SessionNames.of(SessionNames.SEAT, rows.get(i), "section"));
            if (word != null) {
                byWord.computeIfAbsent(word.toLowerCase(Locale.ROOT), any -> new ArrayList<>()).add(i);
            }
        }
        List<List<String>> sections = new ArrayList<>();
        byWord.forEach((word, seats) -> {
            if (seats.size() < 2) {
                faults.add(new Fault("/seat/" + rows.get(seats.get(0)) + "/section", "Only this seat is in section \u201c" + Shown.of(word)
                        + "\u201d. Write the same word at another seat, or leave it empty"));
            } else {
                sections.add(seats.stream().map(i -> told.get(i).seat().id()).toList());
            }
        });
        return sections;
    }

    /** The time that is kept; null for none. */
    private Span kept() {
        return before == null || before.from() == null || before.until() == null ? null : new Span(before.from().toInstant(), before.until().toInstant());
    }

    private OffsetDateTime moment(Instant moment) {
        return moment == null ? null : moment.atZone(at.clock().getZone()).toOffsetDateTime();
    }

    /** Hands alone say nothing. */
    private SetUpTime setUp() {
        Integer minutes = whole("setUpMinutes", "a number of minutes. Give 1 to " + SetUpTime.MOST_MINUTES);
        Integer hands = whole("setUpHands", "a number of hands. Give 1 to " + SetUpTime.MOST_HANDS);
        if (sent.first("setUpMinutes") == null && hands != null && hands != 1) {
            faults.add(new Fault("/setUpMinutes", "It is not said how many minutes these hands have. Give them, or take the hands out"));
        }
        return minutes == null ? null : new SetUpTime(minutes, hands == null ? 1 : hands);
    }

    private Integer whole(String name, String what) {
        String text = sent.first(name);
        if (text == null || text.matches("-?\\d{1,9}")) {
            return text == null ? null : Integer.valueOf(text);
        }
        faults.add(new Fault("/" + name, "\u201c" + Shown.of(text) + "\u201d is not " + what));
        return null;
    }

    private int plans() {
        String text = sent.first("plans");
        if (text != null && !text.matches("\\d{1,4}")) {
            faults.add(new Fault("/plans", "\u201c" + Shown.of(text) + "\u201d is no number of plans. Give 1 to " + LineUp.MOST_PLANS));
            return LineUp.USUAL_PLANS;
        }
        return text == null ? LineUp.USUAL_PLANS : Integer.parseInt(text);
    }

    /** A fault of the check, at the field it belongs to and in the words of this form. */
    private Fault told(Fault fault) {
        return new SessionFault(rows, goboRows, at.visit().reader()).told(fault);
    }
}
