package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every public function and record of the package, found by reflection, so that a new one is held to the same rules without
 * anyone remembering to: it refuses NaN, infinities and, where a quantity cannot be negative, negatives, and says which argument.
 */
class RefusalTest {
    /** A possible value for each unit, by the end of the parameter's name; a new unit needs one here. */
    private static final Map<String, Double> POSSIBLE = Map.ofEntries(
            Map.entry("Db", -6.0), Map.entry("DbSpl", 90.0), Map.entry("Dba", 90.0), Map.entry("Dbu", -120.0),
            Map.entry("Dbfs", -18.0), Map.entry("Dbv", -40.0), Map.entry("Degrees", 30.0), Map.entry("M", 0.5),
            Map.entry("M2", 20.0), Map.entry("M3", 60.0), Map.entry("PerM", 0.003), Map.entry("S", 0.4),
            Map.entry("Ms", 1.0), Map.entry("V", 48.0), Map.entry("Hours", 2.0), Map.entry("Hz", 1000.0), Map.entry("MvPerPa", 2.0),
            Map.entry("Ohm", 200.0), Map.entry("F", 1e-9), Map.entry("Kg", 2.0), Map.entry("C", 20.0),
            Map.entry("Ma", 3.0), Map.entry("Percent", 50.0), Map.entry("Ratio", 1.5), Map.entry("Factor", 2.0),
            Map.entry("Coefficient", 0.3), Map.entry("Multiplier", 2.0), Map.entry("Band", 1.0),
            Map.entry("Inclusive", 3.0), Map.entry("Nine", 1.0), Map.entry("Order", 1.0),
            Map.entry("Microphones", 4.0), Map.entry("Legs", 3.0), Map.entry("Weights", 1.0));

    /** Some names of a unit that have a narrower range. */
    private static final Map<String, Double> POSSIBLE_HERE =
            Map.of("dropDb", 3.0, "padDb", 10.0, "directivityIndexDb", 5.0, "lossDb", 1.0);

    /** What may be below zero: levels, angles, an early arrival, what lies behind the column, a way that passes clear, a value of any kind. */
    private static final Set<String> SIGNED_UNITS =
            Set.of("Db", "DbSpl", "Dba", "Dbu", "Dbfs", "Dbv", "Degrees", "C", "Multiplier", "Nine");
    private static final Set<String> SIGNED_NAMES = Set.of("delayMs", "reachM", "everyBand", "detourM", "detoursM");
    private static final Set<String> UNSIGNED_NAMES = Set.of("dropDb", "padDb", "includedDegrees", "lossDb");

    @TestFactory
    Stream<DynamicTest> everyFunctionTakesPossibleNumbers() {
        return functions().map(function -> DynamicTest.dynamicTest(function.toString(), () ->
                assertNotNull(call(function, possibleArguments(function)))));
    }

    @TestFactory
    Stream<DynamicTest> everyFunctionRefusesWhatCannotBeAndSaysWhich() {
        return functions().flatMap(function -> Arrays.stream(function.getParameters())
                .filter(RefusalTest::isNumeric)
                .map(parameter -> DynamicTest.dynamicTest(parameter.getName() + " of " + function, () -> {
                    for (double impossible : impossibleFor(parameter)) {
                        thenRefuses(function, parameter, impossible);
                    }
                })));
    }

    /** Infinity is documented at nulls; NaN never is an answer. */
    @Property(tries = 300)
    void noFunctionEverAnswersNotANumber(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        functions().forEach(function -> {
            Object[] arguments = possibleArguments(function);
            Parameter[] parameters = function.getParameters();
            for (int index = 0; index < arguments.length; index++) {
                if (parameters[index].getType() == double.class) {
                    arguments[index] = roughly(random);
                }
            }
            try {
                thenIsANumber(function, arguments, call(function, arguments));
            } catch (InvocationTargetException refused) {
                assertInstanceOf(IllegalArgumentException.class, refused.getCause(), function.toString());
            }
        });
    }

    @Test
    void thePackageIsFunctionsOnlyAndKeepsNoState() {
        for (Class<?> type : types()) {
            for (var field : type.getDeclaredFields()) {
                assertTrue(Modifier.isFinal(field.getModifiers()) || field.isSynthetic(), field.toString());
                assertFalse(Modifier.isPublic(field.getModifiers()) && field.getType().isArray(), field.toString());
            }
            assertTrue(Modifier.isFinal(type.getModifiers()), type.toString());
        }
    }

    private static void thenRefuses(Executable function, Parameter parameter, double impossible) {
        Object[] arguments = possibleArguments(function);
        int index = List.of(function.getParameters()).indexOf(parameter);
        try {
            // a curve cannot be made of such a number at all, and that is a refusal too
            arguments[index] = value(parameter, impossible);
            Object answer = call(function, arguments);
            fail(function + " took " + parameter.getName() + " = " + impossible + " and answered " + answer);
        } catch (InvocationTargetException refused) {
            thenSaysWhich(refused.getCause(), parameter, impossible);
        } catch (IllegalArgumentException refused) {
            thenSaysWhich(refused, null, impossible);
        }
    }

    private static void thenSaysWhich(Throwable refusal, Parameter parameter, double impossible) {
        assertInstanceOf(IllegalArgumentException.class, refusal);
        String message = refusal.getMessage();
        String shown = message.contains("but was " + impossible) ? "" + impossible : "" + (int) impossible;
        assertTrue(message.contains(" must ") && message.endsWith("but was " + shown), message);
        if (parameter != null) {
            assertTrue(message.startsWith(parameter.getName()), message);
        }
    }

    private static void thenIsANumber(Executable function, Object[] arguments, Object answer) {
        double number = answer instanceof Double plain ? plain
                : answer instanceof OptionalDouble optional ? optional.orElse(0)
                : 0;
        assertFalse(Double.isNaN(number), () -> function + " of " + Arrays.deepToString(arguments));
    }

    private static double roughly(Random random) {
        double[] landmarks = {0, 1, 0.5, 90, 180, -90, 360, 1e-6, 1000};
        return random.nextInt(3) == 0
                ? landmarks[random.nextInt(landmarks.length)]
                : Math.pow(10, random.nextDouble() * 7 - 4) * (random.nextInt(4) == 0 ? -1 : 1);
    }

    private static double[] impossibleFor(Parameter parameter) {
        if (parameter.getType() == int.class) {
            return new double[] {-1, Integer.MAX_VALUE};
        }
        return mayBeNegative(parameter)
                ? new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}
                : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1};
    }

    private static boolean mayBeNegative(Parameter parameter) {
        String name = parameter.getName();
        boolean plainCurve = parameter.getType() == OctaveCurve.class && !name.equals("weights");
        return plainCurve
                || SIGNED_NAMES.contains(name)
                || SIGNED_UNITS.contains(unit(name)) && !UNSIGNED_NAMES.contains(name);
    }

    private static Object[] possibleArguments(Executable function) {
        return Arrays.stream(function.getParameters())
                .map(parameter -> isNumeric(parameter) ? value(parameter, possible(parameter)) : other(parameter))
                .toArray();
    }

    private static boolean isNumeric(Parameter parameter) {
        Class<?> type = parameter.getType();
        return type == double.class || type == int.class || type == double[].class || type == OctaveCurve.class;
    }

    private static Object value(Parameter parameter, double number) {
        Class<?> type = parameter.getType();
        if (type == double.class) {
            return number;
        }
        if (type == int.class) {
            return (int) number;
        }
        double[] nine = new double[Octaves.COUNT];
        Arrays.fill(nine, number);
        if (type == double[].class && unit(parameter.getName()).equals("Hz")) {
            Arrays.setAll(nine, i -> number * (i + 1)); // frequencies rise
        }
        return type == double[].class ? nine : OctaveCurve.of(nine);
    }

    private static Object other(Parameter parameter) {
        Class<?> type = parameter.getType();
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        if (type == DoubleUnaryOperator.class) {
            return DoubleUnaryOperator.identity();
        }
        try {
            if (type.isArray()) {
                Object array = Array.newInstance(type.getComponentType(), 1);
                Array.set(array, 0, record(type.getComponentType()));
                return array;
            }
            return record(type);
        } catch (ReflectiveOperationException impossible) {
            throw new AssertionError("No possible value for " + parameter, impossible);
        }
    }

    private static Object record(Class<?> type) throws ReflectiveOperationException {
        Constructor<?> constructor = type.getConstructors()[0];
        return constructor.newInstance(possibleArguments(constructor));
    }

    private static double possible(Parameter parameter) {
        String name = parameter.getName();
        if (POSSIBLE_HERE.containsKey(name)) {
            return POSSIBLE_HERE.get(name);
        }
        return parameter.getType() == OctaveCurve.class ? 1 : POSSIBLE.get(unit(name));
    }

    /** The longest known unit a name ends in. */
    private static String unit(String name) {
        String capitalised = Character.toUpperCase(name.charAt(0)) + name.substring(1);
        return POSSIBLE.keySet().stream()
                .filter(unit -> capitalised.endsWith(unit) || capitalised.endsWith(unit + "s"))
                .reduce((one, two) -> one.length() > two.length() ? one : two)
                .orElseGet(() -> noUnit(name));
    }

    private static String noUnit(String name) {
        throw new AssertionError(name + " ends in no unit this test knows. Maybe add it to POSSIBLE.");
    }

    private static Object call(Executable function, Object[] arguments) throws InvocationTargetException {
        try {
            if (function instanceof Constructor<?> constructor) {
                return constructor.newInstance(arguments);
            }
            Object receiver = Modifier.isStatic(function.getModifiers()) ? null : OctaveCurve.flat(2);
            return ((Method) function).invoke(receiver, arguments);
        } catch (IllegalAccessException | InstantiationException impossible) {
            throw new AssertionError(impossible);
        }
    }

    /** Public functions with parameters, and the constructors of public records. */
    private static Stream<Executable> functions() {
        List<Executable> functions = new ArrayList<>();
        for (Class<?> type : types()) {
            if (!Modifier.isPublic(type.getModifiers()) || type.isEnum()) {
                continue;
            }
            functions.addAll(List.of(type.getConstructors()));
            for (Method method : type.getDeclaredMethods()) {
                if (Modifier.isPublic(method.getModifiers())
                        && method.getParameterCount() > 0
                        && !method.getName().equals("equals")) {
                    functions.add(method);
                }
            }
        }
        assertTrue(functions.size() > 60, "the functions were not found");
        return functions.stream();
    }

    static List<Class<?>> types() {
        try {
            Path classes = Path.of(Level.class.getProtectionDomain().getCodeSource().getLocation().toURI())
                    .resolve("pairwright/acoustics");
            List<Class<?>> types = new ArrayList<>();
            try (Stream<Path> files = Files.list(classes)) {
                for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                    String name = file.getFileName().toString();
                    if (name.endsWith(".class") && !name.startsWith("package-info")) {
                        types.add(Class.forName("pairwright.acoustics." + name.substring(0, name.length() - 6)));
                    }
                }
            }
            return types;
        } catch (IOException | URISyntaxException | ClassNotFoundException unreadable) {
            throw new AssertionError(unreadable);
        }
    }
}
