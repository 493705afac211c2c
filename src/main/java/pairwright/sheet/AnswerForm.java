package pairwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;
import pairwright.lab.Answer;
import pairwright.lab.Item;
import pairwright.lab.Reckoned;

/**
 * What was filled in on the page of an exercise: an answer, and what cannot be one.
 *
 * @param typed by the names of the fields, as it was sent
 * @param answer what can be marked of it
 * @param faults by item, what is wrong with what was sent, in sentences
 */
record AnswerForm(Map<String, List<String>> typed, Answer answer, Map<String, String> faults) {
    static final String X = "x";
    static final String Y = "y";
    static final String AIM = "aim";
    private static final List<String> SPOT = List.of(X, Y, AIM);
    private static final double TURN_DEGREES = 360;

    /** A form in which nothing is filled in yet. */
    static AnswerForm blank() {
        return new AnswerForm(Map.of(), Answer.NOTHING, Map.of());
    }

    /** The name of the field of an item. */
    static String field(Item item) {
        return "a." + item.id();
    }

    /** The name of one of several fields of an item. */
    static String field(Item item, String part) {
        return field(item) + "." + part;
    }

    /**
     * Reads what was sent.
     *
     * @param sent every value of a field that is not blank
     */
    static AnswerForm read(List<Item> items, Function<String, List<String>> sent, Reader reader) {
        Reading reading = new Reading(sent, reader);
        items.forEach(reading::item);
        return new AnswerForm(reading.typed, reading.answer, reading.faults);
    }

    /** Where a place is given and only its direction is asked: that place, in metres; null for what is asked. */
    static Double fixedM(Item.Spot spot, String part) {
        return part.equals(X) && spot.leftM() == spot.rightM() ? Double.valueOf(spot.leftM()) : part.equals(Y) && spot.lowM() == spot.highM() ? Double.valueOf(spot.lowM()) : null;
    }

    /** A form filled in with an answer. */
    static AnswerForm of(List<Item> items, Answer answer) {
        Map<String, List<String>> typed = new HashMap<>();
        for (Item item : items) {
            List<String> given = answer.all(item.id());
            for (int i = 0; i < given.size(); i++) {
                if (item instanceof Item.InOrder) {
                    typed.put(field(item, given.get(i)), List.of(Integer.toString(i + 1)));
                } else if (item instanceof Item.Spot && i < SPOT.size()) {
                    typed.put(field(item, SPOT.get(i)), List.of(given.get(i)));
                } else {
                    typed.put(field(item), given);
                }
            }
        }
        return new AnswerForm(typed, answer, Map.of());
    }

    /** The same with what else is wrong, by item; what was found first stays. */
    AnswerForm wrong(Map<String, String> more) {
        Map<String, String> all = new LinkedHashMap<>(more);
        all.putAll(faults);
        return new AnswerForm(typed, answer, all);
    }

    /** What was typed into a field; empty for nothing. */
    String text(String field) {
        List<String> all = typed.getOrDefault(field, List.of());
        return all.isEmpty() ? "" : all.get(0);
    }

    boolean chosen(String field, String value) {
        return typed.getOrDefault(field, List.of()).contains(value);
    }

    /** Whether nothing was filled in at all. */
    boolean isBlank() {
        return typed.isEmpty();
    }

    /** While it is read. */
    private static final class Reading {
        private final Function<String, List<String>> sent;
        private final Reader reader;
        private final Map<String, List<String>> typed = new HashMap<>();
        private final Map<String, String> faults = new LinkedHashMap<>();
        private Answer answer = Answer.NOTHING;

        Reading(Function<String, List<String>> sent, Reader reader) {
            this.sent = sent;
            this.reader = reader;
        }

        private List<String> take(String field) {
            List<String> values = sent.apply(field);
            if (!values.isEmpty()) {
                typed.put(field, values);
            }
            return values;
        }

        void item(Item item) {
            if (item instanceof Item.OneOf one) {
                chosen(item, one.options(), 1);
            } else if (item instanceof Item.SomeOf some) {
                chosen(item, some.options(), some.pick() == null ? some.options().size() : some.pick());
            } else if (item instanceof Item.InOrder order) {
                ordered(order);
            } else if (item instanceof Item.Amount amount) {
                amount(amount);
            } else {
                spot((Item.Spot) item);
            }
        }

        private void chosen(Item item, List<Item.Opt> options, int most) {
            List<String> given = take(field(item)).stream().distinct().toList();
            List<String> known = options.stream().map(Item.Opt::id).toList();
            List<String> strange = given.stream().filter(id -> !known.contains(id)).toList();
            if (!strange.isEmpty()) {
                faults.put(item.id(), "\"" + Shown.of(strange.get(0)) + "\" is none of what can be chosen. Choose from the list");
            } else if (given.size() > most) {
                faults.put(item.id(), given.size() + " are chosen, and " + most + (most == 1 ? " is" : " are") + " asked for. Take out " + (given.size() - most));
            } else if (!given.isEmpty()) {
                answer = answer.with(item.id(), given);
            }
        }

        private void ordered(Item.InOrder order) {
            Map<Integer, List<Item.Opt>> places = new TreeMap<>();
            List<Item.Opt> without = new ArrayList<>();
            List<String> wrong = new ArrayList<>();
            int many = order.options().size();
            for (Item.Opt option : order.options()) {
                List<String> given = take(field(order, option.id()));
                if (given.isEmpty()) {
                    without.add(option);
                } else if (given.get(0).matches("[1-9]\\d?") && Integer.parseInt(given.get(0)) <= many) {
                    places.computeIfAbsent(Integer.parseInt(given.get(0)), any -> new ArrayList<>()).add(option);
                } else {
                    wrong.add("\"" + Shown.of(given.get(0)) + "\" is no place. Give 1 to " + many);
                }
            }
            if (without.size() == many) {
                return;
            }
            if (!without.isEmpty()) {
                wrong.add(without.size() + " of " + many + " have no place yet. Give each a place from 1 to " + many);
            }
            places.forEach((place, options) -> {
                if (options.size() > 1) {
                    wrong.add("Place " + place + " is given " + options.size() + " times. Give it once");
                }
            });
            if (wrong.isEmpty()) {
                answer = answer.with(order.id(), places.values().stream().map(options -> options.get(0).id()).toList());
            } else {
                faults.put(order.id(), sentences(wrong));
            }
        }

        private void amount(Item.Amount amount) {
            List<String> given = take(field(amount));
            if (given.isEmpty()) {
                return;
            }
            Answer with = answer.with(amount.id(), given.get(0));
            if (Reckoned.in(amount.unit(), with, amount.id()).isPresent()) {
                answer = with;
            } else {
                faults.put(amount.id(), "\"" + Shown.of(given.get(0)) + "\" is no number" + (amount.unit().equals("1") ? "" : " in " + amount.unit())
                        + ". Write a number such as 12.5" + (amount.unit().equals("1") ? ", without a unit" : ", alone or with " + amount.unit() + " behind it"));
            }
        }

        private void spot(Item.Spot spot) {
            List<String> wrong = new ArrayList<>();
            List<String> numbers = new ArrayList<>();
            numbers.add(number(spot, X, "m", spot.leftM(), spot.rightM(), wrong));
            numbers.add(number(spot, Y, "m", spot.lowM(), spot.highM(), wrong));
            numbers.add(number(spot, AIM, "degrees", -TURN_DEGREES, TURN_DEGREES, wrong));
            if (wrong.isEmpty() && SPOT.stream().noneMatch(part -> typed.containsKey(field(spot, part)))) {
                return;
            }
            if (wrong.isEmpty() && numbers.contains("")) {
                wrong.add("A place needs all three: x, y, and where it looks");
            }
            if (wrong.isEmpty()) {
                answer = answer.with(spot.id(), numbers);
            } else {
                faults.put(spot.id(), sentences(wrong));
            }
        }

        /** As an answer writes it, in metres or degrees; empty for nothing, and for what is wrong. */
        private String number(Item.Spot spot, String part, String unit, double least, double most, List<String> wrong) {
            Double fixedM = fixedM(spot, part);
            if (fixedM != null) {
                return java.math.BigDecimal.valueOf(fixedM).toPlainString();
            }
            List<String> given = take(field(spot, part));
            if (given.isEmpty()) {
                return "";
            }
            Typed number = Typed.parse(given.get(0), unit, reader);
            if (number.fault() != null) {
                wrong.add(number.fault());
                return "";
            }
            double value = number.number().getAsDouble();
            if (value < least || value > most) {
                wrong.add("\"" + Shown.of(given.get(0)) + "\" is not from " + Measures.plain(least, 2) + " to " + Measures.plain(most, 2) + " " + unit + ". Keep within that");
                return "";
            }
            return java.math.BigDecimal.valueOf(value).toPlainString();
        }

        private static String sentences(List<String> wrong) {
            return wrong.stream().map(SendForm::sentence).distinct().collect(Collectors.joining(" "));
        }
    }
}
