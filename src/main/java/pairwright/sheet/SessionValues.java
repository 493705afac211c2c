package pairwright.sheet;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.drawing.Reader;
import pairwright.model.HeardBefore;
import pairwright.session.Gobo;
import pairwright.session.LineUp;
import pairwright.session.Seat;

/** A line-up as the fields of its form hold it, for one reader. */
final class SessionValues {
    private static final double FOOT_M = 0.3048;

    private final AtLocker at;
    private final Reader reader;
    private final SeatWords words;
    private final Map<String, List<String>> values = new LinkedHashMap<>();

    private SessionValues(AtLocker at) {
        this.at = at;
        this.reader = at.visit().reader();
        this.words = new SeatWords(at.known());
    }

    /** All of a line-up. */
    static Sent of(AtLocker at, LineUp lineUp) {
        SessionValues made = new SessionValues(at);
        made.put("name", lineUp.name());
        made.put("from", made.moment(lineUp.from()));
        made.put("until", made.moment(lineUp.until()));
        made.put("room", lineUp.floor().room());
        made.put("widthM", made.length(lineUp.floor().widthM()));
        made.put("depthM", made.length(lineUp.floor().depthM()));
        made.put("heightM", made.length(lineUp.floor().heightM()));
        made.put("reverbTimeS", made.number(lineUp.floor().reverbTimeS()));
        if (lineUp.floor().patch() != null) {
            made.put(SessionNames.PATCH_X, made.length(lineUp.floor().patch().xM()));
            made.put(SessionNames.PATCH_Y, made.length(lineUp.floor().patch().yM()));
        }
        made.put("plans", Integer.toString(lineUp.plans()));
        made.put("setUpMinutes", lineUp.setUp() == null ? "" : Integer.toString(lineUp.setUp().minutes()));
        made.put("setUpHands", lineUp.setUp() == null ? "" : Integer.toString(lineUp.setUp().hands()));
        for (int i = 0; i < lineUp.seats().size(); i++) {
            made.seat(i, lineUp.seats().get(i), section(lineUp, lineUp.seats().get(i).id()));
        }
        for (int i = 0; i < lineUp.gobos().size(); i++) {
            made.gobo(i, lineUp.gobos().get(i));
        }
        for (int i = 0; i < lineUp.contrast().size(); i++) {
            made.put(SessionNames.of(SessionNames.CONTRAST, i, "a"), lineUp.contrast().get(i).get(0));
            made.put(SessionNames.of(SessionNames.CONTRAST, i, "b"), lineUp.contrast().get(i).get(1));
        }
        return new Sent(made.values);
    }

    private void put(String name, String value) {
        values.put(name, new ArrayList<>(List.of(value == null ? "" : value)));
    }

    private void seat(int row, Seat seat, String section) {
        seat(row, "id", seat.id());
        seat(row, "what", words.whatOf(seat));
        seat(row, "player", seat.player());
        if (seat.must()) {
            seat(row, "must", "yes");
        }
        seat(row, "maxMics", seat.limits().mics() == null ? "" : seat.limits().mics().toString());
        seat(row, "how", words.howOf(seat));
        seat(row, "character", words.characterOf(seat));
        seat(row, "section", section);
        seat(row, "xM", length(seat.xM()));
        seat(row, "yM", length(seat.yM()));
        seat(row, "facingDegrees", number(seat.facingDegrees()));
        if (seat.fixed()) {
            seat(row, "fixed", "yes");
        }
        HeardBefore heard = seat.heard() == null ? HeardBefore.NOTHING : seat.heard();
        seat(row, "typicalDbSpl", number(heard.typicalDbSpl()));
        seat(row, "peakDbSpl", number(heard.peakDbSpl()));
        seat(row, "lowestHz", number(heard.lowestHz()));
        seat(row, "highestHz", number(heard.highestHz()));
        seat(row, "habits", String.join("\n", heard.habits()));
    }

    private void seat(int row, String field, String value) {
        put(SessionNames.of(SessionNames.SEAT, row, field), value);
    }

    private void gobo(int row, Gobo gobo) {
        put(SessionNames.of(SessionNames.GOBO, row, "id"), gobo.id());
        put(SessionNames.of(SessionNames.GOBO, row, "x1M"), length(gobo.x1M()));
        put(SessionNames.of(SessionNames.GOBO, row, "y1M"), length(gobo.y1M()));
        put(SessionNames.of(SessionNames.GOBO, row, "x2M"), length(gobo.x2M()));
        put(SessionNames.of(SessionNames.GOBO, row, "y2M"), length(gobo.y2M()));
        put(SessionNames.of(SessionNames.GOBO, row, "heightM"), length(gobo.heightM()));
    }

    /** A letter for the section a seat belongs to; empty for none. */
    private static String section(LineUp lineUp, String seat) {
        for (int i = 0; i < lineUp.keep().size(); i++) {
            if (lineUp.keep().get(i).contains(seat)) {
                return i < 26 ? Character.toString((char) ('A' + i)) : "section " + (i + 1);
            }
        }
        return "";
    }

    private String moment(OffsetDateTime moment) {
        return moment == null ? "" : BookingTimes.field(at.clock().getZone(), moment.toInstant());
    }

    private String length(double metres) {
        return length(metres, reader);
    }

    /** A length as a field holds it: in metres or feet, to a centimetre or a hundredth of a foot. */
    static String length(double metres, Reader reader) {
        return reader.number(reader.imperial() ? metres / FOOT_M : metres, 2);
    }

    private String number(Double value) {
        return value == null ? "" : number(value, reader);
    }

    static String number(double value, Reader reader) {
        return reader.number(value, 2);
    }
}
