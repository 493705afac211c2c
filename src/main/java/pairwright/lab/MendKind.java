package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pairwright.advice.ComplaintGauge;
import pairwright.advice.Offer;
import pairwright.model.Complaint;
import pairwright.model.Gauge;
import pairwright.model.Severity;
import pairwright.model.SourceFamily;

/** Something sounds wrong: what is tried first, and what helps at all. */
final class MendKind implements Kind {
    private static final KindInfo INFO = new KindInfo("mend", "Put it right",
            "Hear what is wrong, and reach for the move that costs least and helps.",
            "To hear it: the sheet says what is heard. Play an example where there is one.",
            List.of("Two of five help", "Two of six help", "Two of six help, in a room", "Two of six help, with a neighbour", "Two of seven help, in a room with a neighbour"),
            List.of(10, 10, 15, 15, 20), false);
    private static final int RIGHT = 2;
    private static final int[] WRONG = {3, 4, 4, 4, 5};
    /** The one that stands and some to be exchanged for it. */
    private static final int TYPES = 4;
    /** As many of those that stand are tried before another row is drawn. */
    private static final int TRIES = 12;
    /** No more moves of one kind among the wrong ones, which would stand out. */
    private static final int OF_A_KIND = 2;
    /** A gain that is smaller than what is worth a move and larger than that is neither help nor none. */
    private static final double NO_GAIN_DB = 0.05;

    /** With more in hand nothing breaks up, with more over the noise nobody hears it, and with more between them the neighbour is no trouble. */
    private static final double MOST_HEADROOM_DB = 6;
    private static final double MOST_OVER_NOISE_DB = 55;
    private static final double MOST_SEPARATION_DB = 15;
    /** With as much over the room some call it dry and others not; a place has as much too much or too little at the least. */
    private static final double EVEN_WITH_ROOM_DB = 6;
    private static final double LEAST_COLOUR_DB = 1;
    /** Only who sings or speaks has an S, and nobody who does has a key or a pick. */
    private static final String OF_VOICES = "sibilant";
    private static final String OF_NO_VOICE = "clicky";

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        boolean neighbour = level >= 4;
        List<Complaint> complaints = lab.catalogue().complaints().values().stream().filter(complaint -> measured(complaint, neighbour)).toList();
        Complaint heard = draw.one(complaints);
        Case drawn = OneMic.surroundings(Case.empty().with("heard", heard.id()).with("source", draw.one(OneMic.sources(lab, 2)).id())
                .with("types", draw.some(TYPES, OneMic.types(lab)).stream().map(type -> type.id()).sorted().toList()), draw, level == 3 || level == 5, false, neighbour, lab);
        if (heard.id().equals(lab.source(drawn.one("source")).family() == SourceFamily.VOICES ? OF_NO_VOICE : OF_VOICES)) {
            return Optional.empty();
        }
        OneMic one = OneMic.of(drawn, lab);
        ComplaintGauge gauge = new ComplaintGauge(heard, one.weights());
        for (Offer stands : draw.some(TRIES, one.all().stream().filter(offer -> believable(heard, gauge.of(OneMic.mic(offer).placed()))).toList())) {
            Optional<Case> found = moves(draw, drawn.with("stands", OneMic.name(stands)), WRONG[level - 1], stands, heard, gauge, one);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Whether a number shows it here, for one microphone alone. */
    private static boolean measured(Complaint complaint, boolean neighbour) {
        Gauge gauge = complaint.gauge();
        return gauge != Gauge.NONE && gauge != Gauge.COMB && (neighbour || gauge != Gauge.NEIGHBOURS);
    }

    /** Whether somebody could hear it there: whoever knows the trade laughs at hiss on a banjo and at a moving coil that a piano overloads. */
    private static boolean believable(Complaint heard, Double db) {
        return switch (heard.gauge()) {
            case HEADROOM -> db != null && db <= MOST_HEADROOM_DB;
            case NOISE -> db != null && db <= MOST_OVER_NOISE_DB;
            case NEIGHBOURS -> db != null && db <= MOST_SEPARATION_DB;
            case ROOM -> db != null && (heard.more() ? db <= EVEN_WITH_ROOM_DB : db >= EVEN_WITH_ROOM_DB);
            case TONE -> db != null && (heard.more() ? db <= -LEAST_COLOUR_DB : db >= LEAST_COLOUR_DB);
            default -> true;
        };
    }

    private static Optional<Case> moves(Draw draw, Case drawn, int wrongWanted, Offer stands, Complaint heard, ComplaintGauge gauge, OneMic one) {
        List<Moved> help = new ArrayList<>();
        List<Moved> not = new ArrayList<>();
        for (Moved move : draw.shuffled(Moved.from(stands, one.all()))) {
            double gainDb = move.gainDb(stands, heard, gauge);
            if (gainDb >= heard.leastDb() && move.rank(heard) >= 0 && help.stream().noneMatch(other -> other.by() == move.by())) {
                help.add(move);
            } else if (gainDb <= NO_GAIN_DB && not.stream().filter(other -> other.by() == move.by()).count() < OF_A_KIND
                    && not.stream().noneMatch(other -> other.says(stands, true).equals(move.says(stands, true)))) {
                not.add(move);
            }
        }
        if (help.size() < RIGHT || not.size() < wrongWanted) {
            return Optional.empty();
        }
        List<Moved> right = draw.some(RIGHT, help).stream().sorted(Comparator.comparingInt(move -> move.rank(heard))).toList();
        List<Moved> all = draw.shuffled(Stream.concat(right.stream(), draw.some(wrongWanted, not).stream()).toList());
        return endangers(stands, right, one) ? Optional.empty()
                : Optional.of(drawn.with("right", right.stream().map(move -> OneMic.name(move.to())).toList()).with("options", all.stream().map(move -> OneMic.name(move.to())).toList()));
    }

    /** Whether a move brings a danger that was not there: that helps nobody. */
    private static boolean endangers(Offer stands, List<Moved> moves, OneMic one) {
        one.explain(Stream.concat(Stream.of(stands), moves.stream().map(Moved::to)).toList());
        List<String> before = one.mind(stands);
        return moves.stream().flatMap(move -> one.option(move.to()).cautions().stream()).anyMatch(caution -> caution.severity() == Severity.DANGER && !before.contains(caution.rule()));
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new MendExercise(drawn, OneMic.of(drawn, lab), lab);
    }
}
