package pairwright.lab;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pairwright.model.Complaint;
import pairwright.model.MoveKind;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;
import pairwright.model.Pattern;
import pairwright.model.Setup;

/** The moves of one set-up, against whatever is heard; each has a name by which it is found again. Not safe to share. */
final class StoodMoves {
    private static final double MORE_THAN_NOTHING_DB = 0.3;

    private final OneMic one;
    private final Lab lab;
    private final Setup setup;
    private final Map<String, Moves> found = new HashMap<>();

    /** As a case has it: one of types, place, distanceM, pattern and aimDegrees. */
    StoodMoves(Case drawn, OneMic one, Lab lab) {
        this.one = one;
        this.lab = lab;
        Pattern pattern = java.util.Arrays.stream(Pattern.values()).filter(any -> any.id().equals(drawn.one("pattern"))).findFirst().orElseThrow();
        this.setup = new Setup(null, List.of(new Setup.Put(drawn.one("types"), pattern, drawn.one("place"), drawn.number("distanceM"), drawn.number("aimDegrees"))));
    }

    /**
     * A move.
     *
     * @param name the complaint it is for, and its number among the moves against that
     */
    record Named(String name, Moves.Move move) {
        MoveKind by() {
            return move.by();
        }

        String says() {
            return move.change().isEmpty() ? move.says() : move.says() + " (" + move.change() + ")";
        }

        /** Whether numbers show what it does. */
        boolean measured() {
            return move.changed() != null && move.option() != null;
        }

        /** Whether it brings the microphone nearer. */
        boolean nearer() {
            return move.by() == MoveKind.DISTANCE && move.changed() != null && move.changed().typicalDbSpl() != null && move.changed().typicalDbSpl() > 0;
        }

        /** Whether what the complaint is about is proven to get no better by it. */
        boolean doesNotHelp(Complaint heard) {
            Moves.Changed changed = move.changed();
            if (changed == null) {
                return false;
            }
            Double better = switch (heard.gauge()) {
                case TONE -> tone(heard, changed);
                case ROOM -> changed.directToReverbDb() == null ? null : Double.valueOf(heard.more() ? changed.directToReverbDb() : -changed.directToReverbDb());
                case NEIGHBOURS -> changed.separationDb();
                case NOISE -> changed.signalToNoiseDb();
                case HEADROOM -> changed.headroomDb();
                case COMB, NONE -> null;
            };
            return better != null && better < -MORE_THAN_NOTHING_DB;
        }

        private static double tone(Complaint heard, Moves.Changed changed) {
            double sumDb = 0;
            int bands = 0;
            for (int band = 0; band < 9; band++) {
                double hz = 62.5 * Math.pow(2, band);
                if (hz > heard.fromHz() / 1.2 && hz < heard.toHz() * 1.2) {
                    sumDb += changed.colourDb().at(band);
                    bands++;
                }
            }
            return (heard.more() ? 1 : -1) * sumDb / bands;
        }
    }

    Moves found(String complaint) {
        return found.computeIfAbsent(complaint, heard -> lab.moves().find(new MovesRequest(one.request(), setup, heard)));
    }

    List<Named> of(String complaint) {
        List<Moves.Move> moves = found(complaint).moves();
        return IntStream.range(0, moves.size()).mapToObj(i -> new Named(complaint + "/" + i, moves.get(i))).toList();
    }

    /** @throws IllegalArgumentException where there is no such move any more */
    Named named(String name) {
        String[] parts = name.split("/");
        return of(parts[0]).stream().filter(move -> move.name().equals(name)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The move " + name + " of the exercise is not found any more"));
    }
}
