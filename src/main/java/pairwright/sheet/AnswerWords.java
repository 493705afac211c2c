package pairwright.sheet;

import java.util.List;
import java.util.stream.Collectors;
import pairwright.lab.Answer;
import pairwright.lab.Item;

/** What somebody answered, in words. */
final class AnswerWords {
    private AnswerWords() {
    }

    static String said(Item item, Answer answer) {
        List<String> given = answer.all(item.id());
        if (given.isEmpty()) {
            return "nothing";
        }
        if (item instanceof Item.OneOf one) {
            return options(one.options(), given, "; ");
        }
        if (item instanceof Item.SomeOf some) {
            return options(some.options(), given, "; ");
        }
        if (item instanceof Item.InOrder order) {
            return options(order.options(), given, ", then ");
        }
        if (item instanceof Item.Amount amount) {
            String written = String.join(" ", given);
            return amount.unit().equals("1") || !answer.unit(item.id()).isEmpty() ? written : written + " " + amount.unit();
        }
        return given.size() < 3 ? String.join(", ", given) : "x " + given.get(0) + ", y " + given.get(1) + ", looks to " + given.get(2) + "\u00b0";
    }

    private static String options(List<Item.Opt> options, List<String> given, String between) {
        return given.stream().map(id -> options.stream().filter(option -> option.id().equals(id)).map(Item.Opt::says).findFirst().orElse(id)).collect(Collectors.joining(between));
    }
}
