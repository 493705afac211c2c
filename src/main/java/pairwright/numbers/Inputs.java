package pairwright.numbers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairwright.model.Fault;
import pairwright.model.Nearest;

/** What was given, held against what a calculation asks for. */
final class Inputs {
    /** Entries of a list. */
    static final int MOST_ENTRIES = 64;

    private final Map<String, Object> values = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private Inputs() {
    }

    /**
     * Checks everything and fills in what is usual.
     *
     * @throws UnusableInputs with every fault
     */
    static Inputs read(CalculationInfo asked, Map<String, Given> given) {
        Inputs inputs = new Inputs();
        List<String> known = asked.inputs().stream().map(Input::name).toList();
        given.keySet().stream().filter(name -> !known.contains(name)).sorted().forEach(name -> inputs.refuse(name,
                "there is no input \"" + name + "\" here. " + Nearest.remedy(name, known)));
        asked.inputs().forEach(input -> inputs.take(input, given.get(input.name())));
        inputs.orThrow();
        return inputs;
    }

    /** Everything that is used, by name, in the order asked for. */
    Map<String, Object> all() {
        return new LinkedHashMap<>(values);
    }

    boolean has(Input input) {
        return values.containsKey(input.name());
    }

    double number(Input input) {
        return (Double) values.get(input.name());
    }

    double[] numbers(Input input) {
        return ((List<?>) values.get(input.name())).stream().mapToDouble(entry -> (Double) entry).toArray();
    }

    String word(Input input) {
        return (String) values.get(input.name());
    }

    Pickup pattern(Input input) {
        return values.get(input.name()) instanceof String word ? Pickup.of(word) : Pickup.of(number(input));
    }

    /** Notes a fault that only shows when inputs are seen together. */
    void refuse(Input input, String says) {
        refuse(input.name(), says);
    }

    void refuse(String name, String says) {
        faults.add(new Fault("/" + name.replace("~", "~0").replace("/", "~1"), says));
    }

    /** Notes a fault of one entry of a list, counted from 0. */
    void refuseEntry(Input input, int entry, String says) {
        faults.add(new Fault("/" + input.name() + "/" + entry, says));
    }

    void orThrow() {
        if (!faults.isEmpty()) {
            throw new UnusableInputs(faults);
        }
    }

    private void take(Input input, Given given) {
        if (given == null) {
            if (input.required()) {
                refuse(input, input.name() + " is missing. Give " + input.allowed());
            } else if (input.usual() != null) {
                values.put(input.name(), input.usual());
            }
            return;
        }
        switch (input.kind()) {
            case NUMBER, WHOLE_NUMBER -> number(input, given).ifPresent(value -> values.put(input.name(), value));
            case NUMBERS -> list(input, given);
            case WORD -> word(input, given);
            case PATTERN -> {
                if (given instanceof Given.Text) {
                    word(input, given);
                } else {
                    number(input, given).ifPresent(value -> values.put(input.name(), value));
                }
            }
        }
    }

    private Optional<Double> number(Input input, Given given) {
        Optional<Double> value = possible(input, given);
        if (value.isEmpty()) {
            refuse(input, input.name() + " must be " + input.allowed() + ", but was " + given.shown());
        }
        return value;
    }

    private static Optional<Double> possible(Input input, Given given) {
        boolean fits = given instanceof Given.Number number && number.value() >= input.least() && number.value() <= input.most()
                && (input.kind() != InputKind.WHOLE_NUMBER || number.value() == Math.rint(number.value()));
        return fits ? Optional.of(((Given.Number) given).value() + 0.0) : Optional.empty();
    }

    private void list(Input input, Given given) {
        List<Given> entries = given instanceof Given.Many many ? many.entries() : List.of(given);
        if (entries.isEmpty() || entries.size() > MOST_ENTRIES || !(given instanceof Given.Many || given instanceof Given.Number)) {
            refuse(input, input.name() + " must be " + input.allowed() + ", but was "
                    + (given instanceof Given.Many ? "a list of " + entries.size() : given.shown()));
            return;
        }
        List<Double> taken = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Optional<Double> value = possible(input, entries.get(i));
            if (value.isPresent()) {
                taken.add(value.get());
            } else if (given instanceof Given.Many) {
                refuseEntry(input, i, "entry " + (i + 1) + " of " + input.name() + " must be a number from " + Figures.of(input.least())
                        + " to " + Figures.of(input.most()) + " " + input.unit() + ", but was " + entries.get(i).shown());
            } else {
                refuse(input, input.name() + " must be " + input.allowed() + ", but was " + given.shown());
            }
        }
        values.put(input.name(), List.copyOf(taken));
    }

    private void word(Input input, Given given) {
        if (given instanceof Given.Text written && input.choices().contains(written.text())) {
            values.put(input.name(), written.text());
            return;
        }
        refuse(input, input.name() + " must be " + input.allowed() + ", but was " + given.shown()
                + (given instanceof Given.Text written
                        ? Nearest.to(written.text(), input.choices()).map(word -> ". Did you mean " + word + "?").orElse("") : ""));
    }
}
