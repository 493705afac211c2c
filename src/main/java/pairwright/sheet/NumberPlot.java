package pairwright.sheet;

import java.util.List;
import pairwright.drawing.Drawing;
import pairwright.drawing.FunctionDrawing;
import pairwright.drawing.FunctionDrawing.Axis;
import pairwright.drawing.FunctionDrawing.Here;
import pairwright.drawing.FunctionDrawing.Mark;
import pairwright.drawing.FunctionDrawing.Series;
import pairwright.drawing.Reader;

/**
 * One picture of a calculation, before it is drawn.
 *
 * @param title what is shown
 * @param across what is varied
 * @param up what comes out
 * @param series the curves
 * @param here where the inputs are; null for nowhere
 * @param marks places across that matter
 */
record NumberPlot(String title, Axis across, Axis up, List<Series> series, Here here, List<Mark> marks) {
    Drawing drawn(String key, Reader reader) {
        return FunctionDrawing.of(title, across, up, series, here, marks, key, reader);
    }
}
