package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.session.LineUp;
import pairwright.session.Seat;

/**
 * One row of the form of a line-up.
 *
 * @param seat with the id that was sent
 * @param placed whether it was said where
 * @param faced whether it was said looking where
 * @param faults what is wrong, at the names of fields
 */
record SeatReading(Seat seat, boolean placed, boolean faced, List<Fault> faults) {
    private static final List<String> SAYING = List.of("what", "player", "how", "character", "xM", "yM", "facingDegrees", "maxMics", "section", "typicalDbSpl", "peakDbSpl", "lowestHz",
            "highestHz", "habits");

    /** A row of which nothing is filled in is nobody: null. */
    static SeatReading of(AtLocker at, Sent sent, int row, LineUp before, SessionReading.Numbers typed) {
        if (SAYING.stream().allMatch(field -> sent.first(SessionNames.of(SessionNames.SEAT, row, field)) == null)) {
            return null;
        }
        return new Row(at, sent, row, before, typed).read();
    }

    private static final class Row {
        private final Sent sent;
        private final int row;
        private final SeatWords words;
        private final Seat was;
        private final List<Fault> faults = new ArrayList<>();
        private final SessionReading.Numbers numbers;

        Row(AtLocker at, Sent sent, int row, LineUp before, SessionReading.Numbers typed) {
            this.sent = sent;
            this.row = row;
            this.words = new SeatWords(at.known());
            this.numbers = new SessionReading.Numbers(sent, typed.reader(), faults);
            String id = text("id");
            this.was = before == null || id == null ? null : before.seat(id).orElse(null);
        }

        private String name(String field) {
            return SessionNames.of(SessionNames.SEAT, row, field);
        }

        private String text(String field) {
            return sent.first(name(field));
        }

        private void wrong(String field, String says) {
            faults.add(new Fault("/" + name(field).replace('.', '/'), says));
        }

        SeatReading read() {
            SeatWords.Meant meant = meant();
            Double xM = numbers.length(name("xM"), was == null ? null : was.xM());
            Double yM = numbers.length(name("yM"), was == null ? null : was.yM());
            if ((text("xM") == null) != (text("yM") == null)) {
                wrong(text("xM") == null ? "xM" : "yM", "Only half of the place is said. Give both, or neither to be put where there is room");
            }
            Double facing = numbers.number(name("facingDegrees"), "degrees", was == null ? null : was.facingDegrees());
            Seat seat = new Seat(text("id"), text("player"), meant.source(), Objects.requireNonNullElse(xM, 0.0), Objects.requireNonNullElse(yM, 0.0),
                    Objects.requireNonNullElse(facing, 0.0), meant.ways(), meant.dynamics(), meant.character(), meant.circumstances(), limits(meant.limits()),
                    text("must") != null, heard(), text("fixed") != null);
            return new SeatReading(seat, text("xM") != null || text("yM") != null, text("facingDegrees") != null, List.copyOf(faults));
        }

        private SeatWords.Meant meant() {
            String what = text("what");
            SeatWords.Meant all = SeatWords.Meant.NOTHING;
            if (what == null) {
                wrong("what", "It is not said what is played here. Write it, or take the seat out");
            } else {
                all = words.what(what);
                if (all.fault() != null) {
                    wrong("what", all.fault());
                }
            }
            if (text("how") != null) {
                all = with(all, "how", words.how(all.source(), text("how")));
            }
            return text("character") == null ? all : with(all, "character", words.character(all.source(), text("character")));
        }

        private SeatWords.Meant with(SeatWords.Meant all, String field, SeatWords.Meant more) {
            if (more.fault() != null) {
                wrong(field, more.fault());
            }
            return all.and(more);
        }

        /** The form shows how many microphones there may be; every other limit stays as it was. */
        private Limits limits(Limits said) {
            Limits base = said.equals(Limits.NONE) && was != null ? was.limits() : said;
            Integer most = said.mics();
            String text = text("maxMics");
            if (text != null && !text.matches("\\d{1,4}")) {
                wrong("maxMics", "\u201c" + Shown.of(text) + "\u201d is no number of microphones. Give a whole one such as 2, or leave it empty");
            } else if (text != null) {
                most = Integer.valueOf(text);
            }
            return new Limits(most, base.phantom(), base.preampGainDb(), base.preampNoiseDbu(), base.onlyFamilies(), base.withoutFamilies(), base.onlyMicTypes(), base.withoutMicTypes());
        }

        /** Tone, crest and attack came with a file or from a recording; the form has no field for them, and leaves them. */
        private HeardBefore heard() {
            HeardBefore old = was == null || was.heard() == null ? HeardBefore.NOTHING : was.heard();
            HeardBefore heard = new HeardBefore(numbers.number(name("typicalDbSpl"), "dB SPL", old.typicalDbSpl()), numbers.number(name("peakDbSpl"), "dB SPL", old.peakDbSpl()), old.toneDb(),
                    numbers.number(name("lowestHz"), "Hz", old.lowestHz()), numbers.number(name("highestHz"), "Hz", old.highestHz()), old.crestDb(), old.attack(),
                    sent.lines(name("habits")).lines().map(String::strip).filter(line -> !line.isEmpty()).toList());
            return heard.equals(HeardBefore.NOTHING) ? null : heard;
        }
    }
}
