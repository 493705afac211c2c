package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pairwright.acoustics.Printed.thenPrints;

import java.io.IOException;
import java.lang.reflect.Array;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The worked numbers of docs/acoustics.md are computed again, and no public function is without one. */
class AcousticsPageTest {
    private static final Path PAGE = Path.of("docs/acoustics.md");
    /** Type, function, arguments, perhaps what to ask of the answer, and the number. */
    private static final Pattern CHECK = Pattern.compile(
            "`([A-Z]\\w+)\\.(\\w+)\\(([^`]*?)\\)(?:\\.(\\w+)\\((\\d*)\\))?` = (-?[\\d.]*\\d)");

    @TestFactory
    Stream<DynamicTest> workedNumbersAreRight() throws IOException {
        return checks().stream().map(check -> DynamicTest.dynamicTest(check.group(), () -> {
            Object answer = call(type(check.group(1)), check.group(2), arguments(check.group(3)));
            if (check.group(4) != null) {
                answer = call(answer, check.group(4), arguments(check.group(5)));
            }
            if (answer instanceof OptionalDouble optional) {
                answer = optional.orElseThrow();
            }
            thenPrints(check.group(6), (double) answer);
        }));
    }

    @Test
    void everyFunctionHasAWorkedNumber() throws IOException {
        Set<String> worked = new TreeSet<>();
        checks().forEach(check -> worked.add(check.group(1) + "." + check.group(2)));
        Set<String> missing = new TreeSet<>();
        for (Class<?> type : RefusalTest.types()) {
            boolean topLevelFunctions = Modifier.isPublic(type.getModifiers())
                    && type.getEnclosingClass() == null
                    && type != OctaveCurve.class;
            for (Method method : topLevelFunctions ? type.getDeclaredMethods() : new Method[0]) {
                String name = type.getSimpleName() + "." + method.getName();
                if (Modifier.isPublic(method.getModifiers()) && !worked.contains(name)) {
                    missing.add(name);
                }
            }
        }
        assertEquals(Set.of(), missing, PAGE + " lacks a check");
    }

    private static List<MatchResult> checks() throws IOException {
        return CHECK.matcher(Files.readString(PAGE)).results().toList();
    }

    private static Class<?> type(String name) {
        return RefusalTest.types().stream()
                .filter(type -> type.getSimpleName().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    /** Splits at the commas that are in no inner bracket. */
    private static List<String> arguments(String text) {
        List<String> arguments = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            depth += letter == '(' || letter == '{' ? 1 : letter == ')' || letter == '}' ? -1 : 0;
            if (letter == ',' && depth == 0) {
                arguments.add(text.substring(start, at).strip());
                start = at + 1;
            }
        }
        if (!text.isBlank()) {
            arguments.add(text.substring(start).strip());
        }
        return arguments;
    }

    private static Object call(Object receiver, String name, List<String> arguments) throws ReflectiveOperationException {
        Class<?> type = receiver instanceof Class<?> given ? given : receiver.getClass();
        for (Method method : type.getMethods()) {
            if (method.getName().equals(name) && fits(method, arguments)) {
                return method.invoke(receiver == type ? null : receiver, values(method, arguments));
            }
        }
        throw new AssertionError("no " + type.getSimpleName() + "." + name + " takes " + arguments);
    }

    private static boolean fits(Executable function, List<String> arguments) {
        return function.isVarArgs()
                ? arguments.size() >= function.getParameterCount() - 1
                : arguments.size() == function.getParameterCount();
    }

    private static Object[] values(Executable function, List<String> arguments) throws ReflectiveOperationException {
        Class<?>[] types = function.getParameterTypes();
        Object[] values = new Object[types.length];
        int single = function.isVarArgs() ? types.length - 1 : types.length;
        for (int index = 0; index < single; index++) {
            values[index] = value(types[index], arguments.get(index));
        }
        if (function.isVarArgs()) {
            Class<?> each = types[single].getComponentType();
            values[single] = Array.newInstance(each, arguments.size() - single);
            for (int index = single; index < arguments.size(); index++) {
                Array.set(values[single], index - single, value(each, arguments.get(index)));
            }
        }
        return values;
    }

    private static Object value(Class<?> type, String text) throws ReflectiveOperationException {
        if (type == double.class) {
            return Double.parseDouble(text);
        }
        if (type == int.class) {
            return Integer.parseInt(text);
        }
        if (type == double[].class) {
            return arguments(text.substring(1, text.length() - 1)).stream().mapToDouble(Double::parseDouble).toArray();
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(constant -> constant.toString().equals(text))
                    .findFirst()
                    .orElseThrow();
        }
        List<String> inner = arguments(text.substring(text.indexOf('(') + 1, text.length() - 1));
        if (type == OctaveCurve.class) {
            return call(type, text.substring(text.indexOf('.') + 1, text.indexOf('(')), inner);
        }
        var constructor = type.getConstructors()[0];
        return constructor.newInstance(values(constructor, inner));
    }
}
