package pairwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import pairwright.drawing.FunctionDrawing.Series;
import pairwright.model.Value;
import pairwright.numbers.Given;
import pairwright.numbers.Numbers;
import pairwright.numbers.UnusableInputs;
import pairwright.numbers.Worked;

/** A calculation asked again and again with one input moved, so that a curve is what the calculation says at each of its points. */
final class Sweep {
    private static final int POINTS = 48;

    private final Numbers numbers;
    private final String id;
    private final Map<String, Given> inputs;

    Sweep(Numbers numbers, String id, Map<String, Object> inputs) {
        this.numbers = numbers;
        this.id = id;
        this.inputs = given(inputs);
    }

    /** Inputs as an answer has them. */
    static Map<String, Given> given(Map<String, Object> inputs) {
        Map<String, Given> given = new LinkedHashMap<>();
        inputs.forEach((name, value) -> given.put(name, given(value)));
        return given;
    }

    private static Given given(Object value) {
        return value instanceof List<?> list ? new Given.Many(list.stream().map(Sweep::given).toList())
                : value instanceof Double number ? new Given.Number(number) : new Given.Text(value.toString());
    }

    /** The same with another input held at a value. */
    Sweep with(String name, double value) {
        Sweep other = new Sweep(numbers, id, Map.of());
        other.inputs.putAll(inputs);
        other.inputs.put(name, new Given.Number(value));
        return other;
    }

    /** Values across, even steps or each as many times the one before; those that are asked for are among them. */
    static double[] across(double from, double to, boolean logarithmic, double... among) {
        DoubleStream steps = IntStream.rangeClosed(0, POINTS).mapToDouble(i -> i == POINTS ? to
                : logarithmic ? from * Math.pow(to / from, (double) i / POINTS) : from + (to - from) * i / POINTS);
        return DoubleStream.concat(steps, Arrays.stream(among).filter(one -> one >= from && one <= to)).sorted().distinct().toArray();
    }

    /**
     * What comes out while one input moves; a point where a calculation refuses or gives no number is left open.
     *
     * @param varied the input
     * @param xs its values
     * @param results names of results, one curve each
     * @param called what the curves are called, as many
     */
    List<Series> curves(String varied, double[] xs, List<String> results, List<String> called) {
        double[][] ys = new double[results.size()][xs.length];
        Map<String, Given> asked = new LinkedHashMap<>(inputs);
        for (int i = 0; i < xs.length; i++) {
            asked.put(varied, new Given.Number(xs[i]));
            Worked worked = worked(asked);
            for (int curve = 0; curve < ys.length; curve++) {
                ys[curve][i] = worked == null ? Double.NaN : result(worked, results.get(curve));
            }
        }
        List<Series> series = new ArrayList<>();
        for (int curve = 0; curve < ys.length; curve++) {
            series.add(new Series(called.get(curve), xs, ys[curve]));
        }
        return series;
    }

    /** A result by name; NaN where there is none. */
    static double result(Worked worked, String name) {
        return worked.result().stream().filter(value -> value.name().equals(name)).mapToDouble(Value::value).findFirst().orElse(Double.NaN);
    }

    private Worked worked(Map<String, Given> asked) {
        try {
            return numbers.work(id, asked);
        } catch (UnusableInputs refused) {
            return null;
        }
    }
}
