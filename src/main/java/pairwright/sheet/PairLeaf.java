package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import pairwright.acoustics.Octaves;
import pairwright.drawing.Drawing;
import pairwright.drawing.FunctionDrawing;
import pairwright.drawing.Reader;
import pairwright.listen.PairHeard;

/** Two tracks on a page: what to do, the picture of their sum, and both in figures. */
final class PairLeaf {
    private static final double LEAST_DB = -54;
    private static final double MOST_DB = 6;

    private final Reader reader;

    PairLeaf(Reader reader) {
        this.reader = reader;
    }

    /**
     * @param says what is said of them
     * @param key unlike that of any other picture of the page
     */
    HeardView.Leaf of(PairHeard pair, List<String> says, String key) {
        double[] hertz = values(pair, PairHeard.Point::frequencyHz);
        Drawing drawing = FunctionDrawing.of("Their sum, and their sum with one flipped, over each alone", FunctionDrawing.Axis.logarithmic("Frequency", "Hz"),
                FunctionDrawing.Axis.linear("Level", "dB").within(LEAST_DB, MOST_DB),
                List.of(new FunctionDrawing.Series("the first", hertz, values(pair, PairHeard.Point::firstDb)),
                        new FunctionDrawing.Series("the second", hertz, values(pair, PairHeard.Point::secondDb)),
                        new FunctionDrawing.Series("their sum", hertz, values(pair, PairHeard.Point::sumDb)),
                        new FunctionDrawing.Series("one flipped", hertz, values(pair, PairHeard.Point::flippedDb))), null, List.of(), key, reader);
        HeardView.Table octaves = HeardFigures.bands(reader, "Octaves. Sums in dB over what two strangers of these levels would give: 3 dB is full addition",
                List.of("Octave", "Second over first", "In common", "Sum", "One inverted", "Aligned", "Correlation"),
                List.of(pair.differenceOctavesDb(), pair.coherence(), pair.sumDb(), pair.flippedDb(), pair.alignedDb(), pair.correlationOctavesShare()), pair::heard);
        return new HeardView.Leaf(pair.first() + " and " + pair.second(), List.of(), List.of(), says.stream().map(reader::figures).toList(), List.of(drawing),
                List.of(octaves, picture(pair)), "");
    }

    /** For whoever cannot see the picture: read off in the middle of each octave that it shows. */
    private HeardView.Table picture(PairHeard pair) {
        List<List<String>> rows = new ArrayList<>();
        for (int band = 0; band < Octaves.COUNT; band++) {
            PairHeard.Point point = nearest(pair, Octaves.centreHz(band));
            rows.add(List.of(HeardFigures.octave(reader, band), HeardFigures.db(reader, point.firstDb()), HeardFigures.db(reader, point.secondDb()), HeardFigures.db(reader, point.sumDb()),
                    HeardFigures.db(reader, point.flippedDb())));
        }
        return new HeardView.Table("The picture in figures, at the middle of each octave, against the loudest of both", List.of("Octave", "The first", "The second", "Their sum", "One flipped"), rows);
    }

    private static PairHeard.Point nearest(PairHeard pair, double hz) {
        PairHeard.Point nearest = pair.curve().get(0);
        for (PairHeard.Point point : pair.curve()) {
            nearest = Math.abs(Math.log(point.frequencyHz() / hz)) < Math.abs(Math.log(nearest.frequencyHz() / hz)) ? point : nearest;
        }
        return nearest;
    }

    private static double[] values(PairHeard pair, ToDoubleFunction<PairHeard.Point> of) {
        return pair.curve().stream().mapToDouble(of).toArray();
    }
}
