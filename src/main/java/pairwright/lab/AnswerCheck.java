package pairwright.lab;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import pairwright.model.Fault;
import pairwright.model.Nearest;

/** Whether an answer is one to what was asked: a slip of the pen is told, and not marked as a mistake. */
final class AnswerCheck {
    private static final int SPOT = 3;

    private final Handout handout;

    AnswerCheck(Handout handout) {
        this.handout = handout;
    }

    boolean knows(String item) {
        return handout.items().stream().anyMatch(one -> one.id().equals(item));
    }

    /** Every fault, each at the item it is of; what is right or wrong is not told. */
    List<Fault> faults(Answer answer) {
        List<Fault> faults = new ArrayList<>();
        List<String> ids = handout.items().stream().map(Item::id).toList();
        answer.given().forEach((item, values) -> {
            if (!knows(item)) {
                faults.add(new Fault(item, "there is no item \"" + shown(item) + "\". " + Nearest.remedy(shown(item), ids)));
            } else if (!values.isEmpty()) {
                check(handout.items().get(ids.indexOf(item)), answer, faults);
            }
        });
        return faults;
    }

    private static void check(Item item, Answer answer, List<Fault> faults) {
        List<String> values = answer.all(item.id());
        if (item instanceof Item.OneOf one) {
            options(item, one.options(), values, faults);
            many(item, values.size(), 1, faults);
        } else if (item instanceof Item.SomeOf some) {
            options(item, some.options(), values, faults);
            if (some.pick() != null && values.size() > some.pick()) {
                faults.add(new Fault(item.id(), values.size() + " options are named for " + item.id() + ", where " + some.pick() + " are asked for. Leave " + (values.size() - some.pick()) + " out"));
            }
        } else if (item instanceof Item.InOrder order) {
            options(item, order.options(), values, faults);
        } else if (item instanceof Item.Amount amount) {
            many(item, values.size(), 1, faults);
            if (values.size() == 1 && Reckoned.in(amount.unit(), answer, item.id()).isEmpty()) {
                String unit = amount.unit().equals("1") ? "" : " in " + amount.unit();
                faults.add(new Fault(item.id(), "\"" + shown(values.get(0)) + "\" is no number" + unit + ". Write one such as 12.5"
                        + (unit.isEmpty() ? ", without a unit" : ", alone or with " + amount.unit() + " behind it")));
            }
        } else {
            many(item, values.size(), SPOT, faults);
            numbers(item, answer, Math.min(SPOT, values.size()), faults);
        }
    }

    private static void many(Item item, int there, int wanted, List<Fault> faults) {
        if (there != wanted) {
            faults.add(new Fault(item.id(), there + " answers are given to " + item.id() + ". Give " + (wanted == 1 ? "one" : "the place in metres, x and y, and where it aims in degrees")));
        }
    }

    private static void options(Item item, List<Item.Opt> options, List<String> values, List<Fault> faults) {
        List<String> ids = options.stream().map(Item.Opt::id).toList();
        values.stream().filter(value -> !ids.contains(value)).forEach(value ->
                faults.add(new Fault(item.id(), "\"" + shown(value) + "\" is no option of " + item.id() + ". Use " + (values.size() == 1 ? "one of " : "") + String.join(", ", ids))));
        if (values.size() != new HashSet<>(values).size()) {
            faults.add(new Fault(item.id(), "an option of " + item.id() + " is there twice: " + shown(String.join(", ", values)) + ". Name each once"));
        }
    }

    private static void numbers(Item item, Answer answer, int many, List<Fault> faults) {
        IntStream.range(0, many).filter(which -> answer.number(item.id(), which).isEmpty()).forEach(which -> faults.add(new Fault(item.id(),
                "\"" + shown(answer.all(item.id()).get(which)) + "\" is no number. Write one such as 12.5")));
    }

    private static String shown(String text) {
        return pairwright.catalogue.Shown.of(text);
    }

    /** The values of one item that stand in one text, as in a cell of a table: blanks, commas or semicolons between options and coordinates. */
    List<String> values(String item, String text) {
        Item asked = handout.items().stream().filter(one -> one.id().equals(item)).findFirst().orElse(null);
        if (asked instanceof Item.OneOf || asked instanceof Item.Amount || asked == null) {
            return text.isBlank() ? List.of() : List.of(text.strip());
        }
        String between = asked instanceof Item.Spot ? "[\\s;]+" : "[\\s,;]+";
        return List.of(text.strip().split(between)).stream().filter(value -> !value.isEmpty()).toList();
    }
}
