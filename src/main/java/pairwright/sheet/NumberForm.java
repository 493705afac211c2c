package pairwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;
import pairwright.model.Fault;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Given;
import pairwright.numbers.Input;
import pairwright.numbers.InputKind;

/** The form of a calculation: what somebody typed, read as far as it can be, and otherwise what is wrong with it. */
final class NumberForm {
    /** A pattern may be given by its omni part, in a field beside its word. */
    static final String OMNI_PART = "omniPart";
    /** In which measures the bare numbers of an address were typed. */
    static final String MEASURES = "measures";

    private static final double INCH_M = 0.0254;
    private static final double FOOT_M = 0.3048;
    private static final double POUND_KG = 0.45359237;
    private static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
    private static final double IN_INCHES_M = 0.6;
    private static final int DIGITS = 4;
    private static final int MOST_ENTRIES = 64;

    private final CalculationInfo info;
    private final Visit visit;
    private final Reader reader;
    private final Map<String, NumberField> fields = new LinkedHashMap<>();
    private final Map<String, Given> given = new LinkedHashMap<>();
    private final boolean fresh;
    private final boolean typedImperial;

    private NumberForm(CalculationInfo info, Visit visit) {
        this.info = info;
        this.visit = visit;
        this.reader = visit.reader();
        this.fresh = info.inputs().stream().noneMatch(input -> visit.query().containsKey(input.name())) && !visit.query().containsKey(OMNI_PART);
        String measures = visit.first(MEASURES);
        this.typedImperial = measures == null ? reader.imperial() : measures.equals("imperial");
        info.inputs().forEach(this::take);
    }

    /** Reads a query; without any input in it the form holds the example. */
    static NumberForm read(CalculationInfo info, Visit visit) {
        return new NumberForm(info, visit);
    }

    List<NumberField> fields() {
        return List.copyOf(fields.values());
    }

    /** What can be worked with; all of it only where nothing is {@link #wrong()}. */
    Map<String, Given> given() {
        return given;
    }

    /** The fields with something wrong, in their order. */
    List<NumberField> wrong() {
        return fields.values().stream().filter(field -> field.fault() != null).toList();
    }

    /** Puts what a calculation refuses at the field it belongs to. */
    void refuse(List<Fault> faults) {
        for (Fault fault : faults) {
            String name = fault.at().substring(1).split("/")[0];
            fields.computeIfPresent(name, (key, field) -> field.fault() != null ? field : field.wrong(NumberWords.told(fault.says(), info, reader)));
        }
    }

    private void take(Input input) {
        if (input.kind() == InputKind.PATTERN) {
            pattern(input);
        } else if (input.kind() == InputKind.WORD) {
            word(input);
        } else {
            typed(input);
        }
    }

    private void word(Input input) {
        String text = fresh || visit.first(input.name()) == null ? filled(input, "") : visit.first(input.name());
        boolean known = input.choices().contains(text);
        fields.put(input.name(), new NumberField(input.name(), NumberWords.called(input.name()), "", hint(input), text, input.choices(), input.required(),
                known ? null : "There is no \"" + Shown.of(text) + "\" here. Choose one of " + String.join(", ", input.choices())));
        given.put(input.name(), new Given.Text(text));
    }

    /** A word, or a number in its place or in the field beside it, which then counts. */
    private void pattern(Input input) {
        String text = fresh || visit.first(input.name()) == null ? filled(input, "") : visit.first(input.name());
        boolean isWord = input.choices().contains(text);
        Typed asNumber = isWord || text.isEmpty() ? null : Typed.parse(text, "1", reader);
        String part = visit.first(OMNI_PART) != null ? visit.first(OMNI_PART) : asNumber != null && asNumber.fault() == null ? text : "";
        String word = isWord ? text : filled(input, input.choices().get(0));
        String fault = text.isEmpty() && part.isEmpty() ? NumberWords.called(input.name()) + " is missing. Choose one"
                : isWord || asNumber == null || asNumber.fault() == null ? null
                : "There is no pattern \"" + Shown.of(text) + "\". Choose one of " + String.join(", ", input.choices()) + ", or give its omni part";
        fields.put(input.name(), new NumberField(input.name(), "Pattern", "", input.says().replaceFirst(" Or the omni part .*", ""), word, input.choices(),
                input.required(), fault));
        NumberField omni = new NumberField(OMNI_PART, "Or its omni part", "", "A in A + (1 - A) cos(angle), " + reader.figures("0 to 1, such as 0.37; it counts before the pattern."),
                part, List.of(), false, null);
        if (part.isEmpty()) {
            given.put(input.name(), new Given.Text(word));
        } else {
            Typed typed = Typed.parse(part, "1", reader);
            omni = typed.fault() != null ? omni.wrong("The omni part " + typed.fault())
                    : !within(input, typed.number().getAsDouble()) ? omni.wrong("The omni part must be 0 to 1, but was " + Shown.of(part)) : omni;
            typed.number().ifPresent(value -> given.put(input.name(), new Given.Number(value)));
        }
        fields.put(OMNI_PART, omni);
    }

    private void typed(Input input) {
        String shownUnit = shownUnit(input, reader.imperial());
        String typedUnit = shownUnit(input, typedImperial);
        String text = fresh ? filled(input, "") : visit.first(input.name()) == null ? "" : visit.first(input.name());
        String unit = fresh ? shownUnit : typedUnit;
        List<Double> values = new ArrayList<>();
        String fault = text.isEmpty() ? input.required() ? NumberWords.called(input.name()) + " is missing. Give " + range(input) : null : entries(input, text, unit, values);
        String kept = fault == null && !unit.equals(shownUnit) && isBare(text)
                ? values.stream().map(value -> inUnit(value, shownUnit)).collect(Collectors.joining("; ")) : text;
        fields.put(input.name(), new NumberField(input.name(), NumberWords.called(input.name()), shownUnit.equals("1") ? "" : shownUnit, hint(input), kept, List.of(),
                input.required(), fault));
        if (!values.isEmpty()) {
            List<Given> numbers = values.stream().<Given>map(Given.Number::new).toList();
            given.put(input.name(), input.kind() == InputKind.NUMBERS ? new Given.Many(numbers) : numbers.get(0));
        }
    }

    /** Reads one number or several; says what is wrong with the first that is not right. */
    private String entries(Input input, String text, String unit, List<Double> into) {
        boolean many = input.kind() == InputKind.NUMBERS;
        List<String> parts = many ? parts(text) : List.of(text);
        String called = NumberWords.called(input.name());
        if (parts.isEmpty() || parts.size() > MOST_ENTRIES) {
            return called + ": give 1 to " + MOST_ENTRIES + " numbers with semicolons between them, but there were " + parts.size();
        }
        for (String part : parts) {
            Typed typed = Typed.parse(part, unit, reader);
            if (typed.fault() != null) {
                return called + ": " + typed.fault();
            }
            double value = typed.number().getAsDouble();
            if (!within(input, value) || input.kind() == InputKind.WHOLE_NUMBER && value != Math.rint(value)) {
                return called + " must be " + (input.kind() == InputKind.WHOLE_NUMBER ? "a whole number, " : "") + range(input) + ", but was " + Shown.of(part)
                        + (isBare(part) && !unit.equals("1") ? " " + unit : "");
            }
            into.add(value);
        }
        return null;
    }

    /** Semicolons part numbers; so do commas, unless they are the reader's decimal sign and nothing stands behind them. */
    private List<String> parts(String text) {
        String by = text.indexOf(';') >= 0 ? ";" : text.contains(", ") ? ", " : reader.decimalSign() == ',' && text.indexOf(',') == text.lastIndexOf(',') ? ";" : ",";
        List<String> parts = new ArrayList<>();
        for (int at = 0, next; at <= text.length() && parts.size() <= MOST_ENTRIES; at = next + by.length()) {
            next = text.indexOf(by, at);
            next = next < 0 ? text.length() : next;
            if (!text.substring(at, next).isBlank()) {
                parts.add(text.substring(at, next).strip());
            }
        }
        return parts;
    }

    private static boolean within(Input input, double value) {
        return value >= input.least() && value <= input.most();
    }

    private static boolean isBare(String text) {
        return text.chars().allMatch(one -> one >= '0' && one <= '9' || " .,;+-/\u2212".indexOf(one) >= 0);
    }

    private String filled(Input input, String otherwise) {
        Object value = info.example().getOrDefault(input.name(), input.usual());
        String unit = shownUnit(input, reader.imperial());
        return value == null ? otherwise : value instanceof List<?> list ? list.stream().map(one -> inUnit((Double) one, unit)).collect(Collectors.joining("; "))
                : value instanceof Double number ? inUnit(number, unit) : value.toString();
    }

    private String inUnit(double value, String unit) {
        double factor = factor(unit);
        return factor == 1 ? reader.number(value, 6) : reader.figure(value / factor, DIGITS);
    }

    private String hint(Input input) {
        String says = NumberWords.told(input.says(), info, reader);
        if (input.least() == null) {
            return says;
        }
        String usual = input.usual() instanceof Double number ? ", usually " + inUnit(number, shownUnit(input, reader.imperial())) : input.required() ? "" : ", or nothing";
        return says + " " + range(input) + usual + ".";
    }

    private String range(Input input) {
        double least = input.least();
        double most = input.most();
        return switch (input.unit()) {
            case "1" -> reader.number(least, 3) + " to " + reader.number(most, 3);
            case "m", "kg", "Hz", "ohm" -> reader.value(least, input.unit()) + " to " + reader.value(most, input.unit());
            case "m3" -> reader.sentence(Reader.METRIC.number(least, 3) + " to " + Reader.METRIC.number(most, 3) + " m3");
            default -> reader.number(least, 3) + " to " + reader.number(most, 3) + " " + input.unit();
        };
    }

    /** What a bare number is in: inches for what is short by nature, otherwise feet, or the unit itself. */
    private String shownUnit(Input input, boolean imperial) {
        if (!imperial || input.unit() == null) {
            return input.unit() == null ? "1" : input.unit();
        }
        Object typical = info.example().getOrDefault(input.name(), input.usual());
        return switch (input.unit()) {
            case "m" -> typical instanceof Double metres && metres < IN_INCHES_M ? "in" : "ft";
            case "m3" -> "cu ft";
            case "kg" -> "lb";
            default -> input.unit();
        };
    }

    private static double factor(String unit) {
        return switch (unit) {
            case "in" -> INCH_M;
            case "ft" -> FOOT_M;
            case "cu ft" -> CUBIC_FOOT_M3;
            case "lb" -> POUND_KG;
            default -> 1;
        };
    }
}
