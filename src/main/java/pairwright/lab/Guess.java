package pairwright.lab;

import java.util.List;
import java.util.Locale;

/** What somebody answers who knows nothing: the floor under which no mark means anything. */
public final class Guess {
    private Guess() {
    }

    /** Every option as likely; every number as likely within its span, on a logarithmic scale where that does not reach zero. */
    public static Answer of(Handout handout, Draw draw) {
        Answer answer = Answer.NOTHING;
        for (Item item : handout.items()) {
            answer = answer.with(item.id(), of(item, draw));
        }
        return answer;
    }

    private static List<String> of(Item item, Draw draw) {
        if (item instanceof Item.OneOf one) {
            return List.of(draw.one(one.options()).id());
        }
        if (item instanceof Item.SomeOf some) {
            return some.pick() == null ? some.options().stream().filter(option -> draw.share() < 0.5).map(Item.Opt::id).toList() : ids(draw.some(some.pick(), some.options()));
        }
        if (item instanceof Item.InOrder order) {
            return ids(draw.shuffled(order.options()));
        }
        if (item instanceof Item.Amount amount) {
            return List.of(written(amount.least() > 0 ? amount.least() * Math.pow(amount.most() / amount.least(), draw.share())
                    : amount.least() + draw.share() * (amount.most() - amount.least())));
        }
        Item.Spot spot = (Item.Spot) item;
        return List.of(written(spot.leftM() + draw.share() * (spot.rightM() - spot.leftM())), written(spot.lowM() + draw.share() * (spot.highM() - spot.lowM())),
                written(draw.share() * 360 - 180));
    }

    private static List<String> ids(List<Item.Opt> options) {
        return options.stream().map(Item.Opt::id).toList();
    }

    private static String written(double number) {
        return String.format(Locale.ROOT, "%.4f", number);
    }
}
