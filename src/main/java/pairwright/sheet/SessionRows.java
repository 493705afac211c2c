package pairwright.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.drawing.Reader;
import pairwright.session.Floor;
import pairwright.session.Seat;

/** The form of a line-up with rows added, doubled or taken out, as its buttons ask for it. Nothing else that was typed is touched. */
final class SessionRows {
    private static final double USUAL_GOBO_M = 1.2;
    private static final double USUAL_HEIGHT_M = 1.4;
    private static final List<String> OWN = List.of("id", "player", "xM", "yM");

    private final Map<String, List<String>> values;

    SessionRows(Sent sent) {
        this.values = new LinkedHashMap<>(sent.values());
    }

    Sent sent() {
        return new Sent(new LinkedHashMap<>(values));
    }

    private void put(String name, String value) {
        values.put(name, List.of(value));
    }

    private int next(String kind) {
        return SessionNames.rows(sent(), kind).stream().mapToInt(row -> row + 1).max().orElse(0);
    }

    /** A seat of which nothing is said yet; its row. */
    int addSeat() {
        int row = next(SessionNames.SEAT);
        put(SessionNames.of(SessionNames.SEAT, row, "id"), SessionNames.NEW + row);
        put(SessionNames.of(SessionNames.SEAT, row, "must"), "yes");
        return row;
    }

    /** Another of the same, somebody else at a place of their own; its row. */
    int doubleSeat(int row) {
        int other = next(SessionNames.SEAT);
        String begin = SessionNames.of(SessionNames.SEAT, row, "");
        Map<String, List<String>> copied = new LinkedHashMap<>();
        values.forEach((name, value) -> {
            if (name.startsWith(begin) && !OWN.contains(name.substring(begin.length()))) {
                copied.put(SessionNames.of(SessionNames.SEAT, other, name.substring(begin.length())), value);
            }
        });
        values.putAll(copied);
        put(SessionNames.of(SessionNames.SEAT, other, "id"), SessionNames.NEW + other);
        return other;
    }

    /** Takes a seat out, and what it shall not sound like with it. */
    void removeSeat(int row) {
        String id = sent().first(SessionNames.of(SessionNames.SEAT, row, "id"));
        remove(SessionNames.SEAT, row);
        for (int contrast : SessionNames.rows(sent(), SessionNames.CONTRAST)) {
            if (id != null && List.of("a", "b").stream().anyMatch(side -> id.equals(sent().first(SessionNames.of(SessionNames.CONTRAST, contrast, side))))) {
                remove(SessionNames.CONTRAST, contrast);
            }
        }
    }

    void remove(String kind, int row) {
        values.keySet().removeIf(name -> name.startsWith(SessionNames.of(kind, row, "")));
    }

    /** A gobo in the middle of the floor; its row. */
    int addGobo(Floor floor, Reader reader) {
        int row = next(SessionNames.GOBO);
        double half = Math.min(USUAL_GOBO_M, floor.widthM()) / 2;
        double asideM = 0.3 * (row % 5);
        put(SessionNames.of(SessionNames.GOBO, row, "id"), SessionNames.NEW + row);
        put(SessionNames.of(SessionNames.GOBO, row, "x1M"), SessionValues.length(floor.widthM() / 2 - half, reader));
        put(SessionNames.of(SessionNames.GOBO, row, "x2M"), SessionValues.length(floor.widthM() / 2 + half, reader));
        String middle = SessionValues.length(Math.min(floor.depthM(), floor.depthM() / 2 + asideM), reader);
        put(SessionNames.of(SessionNames.GOBO, row, "y1M"), middle);
        put(SessionNames.of(SessionNames.GOBO, row, "y2M"), middle);
        put(SessionNames.of(SessionNames.GOBO, row, "heightM"), SessionValues.length(Math.min(floor.heightM(), USUAL_HEIGHT_M), reader));
        return row;
    }

    /** Writes down where those were put of whom nobody said it. */
    void place(SessionReading reading, Reader reader) {
        for (int i = 0; i < reading.rows().size() && i < reading.lineUp().seats().size(); i++) {
            Seat seat = reading.lineUp().seats().get(i);
            int row = reading.rows().get(i);
            if (sent().first(SessionNames.of(SessionNames.SEAT, row, "xM")) == null && sent().first(SessionNames.of(SessionNames.SEAT, row, "yM")) == null && seat.source() != null) {
                put(SessionNames.of(SessionNames.SEAT, row, "xM"), SessionValues.length(seat.xM(), reader));
                put(SessionNames.of(SessionNames.SEAT, row, "yM"), SessionValues.length(seat.yM(), reader));
                if (sent().first(SessionNames.of(SessionNames.SEAT, row, "facingDegrees")) == null) {
                    put(SessionNames.of(SessionNames.SEAT, row, "facingDegrees"), SessionValues.number(seat.facingDegrees(), reader));
                }
            }
        }
    }
}
