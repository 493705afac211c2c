package pairwright.numbers;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Inputs in short: {@code pattern=cardioid currentsMa=3,4.5}. */
final class Asking {
    static final Numbers NUMBERS = new Numbers();

    private Asking() {
    }

    static Worked work(String id, String inputs) {
        return NUMBERS.work(id, given(inputs));
    }

    static Map<String, Given> given(String inputs) {
        Map<String, Given> given = new LinkedHashMap<>();
        for (String input : inputs.isBlank() ? new String[0] : inputs.split(" ")) {
            String[] sides = input.split("=", 2);
            given.put(sides[0], sides[1].contains(",") ? new Given.Many(Arrays.stream(sides[1].split(",")).map(Asking::one).toList()) : one(sides[1]));
        }
        return given;
    }

    /** Inputs as an example or an answer has them. */
    static Map<String, Given> given(Map<String, Object> inputs) {
        Map<String, Given> given = new LinkedHashMap<>();
        inputs.forEach((name, value) -> given.put(name, of(value)));
        return given;
    }

    static Given of(Object value) {
        return value instanceof List<?> list ? new Given.Many(list.stream().map(Asking::of).toList())
                : value instanceof Double number ? new Given.Number(number)
                : new Given.Text((String) value);
    }

    private static Given one(String text) {
        return text.matches("-?\\d.*") ? new Given.Number(Double.parseDouble(text)) : new Given.Text(text);
    }
}
