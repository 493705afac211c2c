package pairwright.lab;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.session.LineUp;
import pairwright.session.SmallSession;

/** A locker, sessions at different times, and what could be bought: what each purchase is worth to the best plans. Not safe to share. */
final class BuyProblem {
    private static final Limits ONE = new Limits(1, null, null, null, null, null, null, null);

    private final Lab lab;
    private final List<SmallSession> sessions;
    private List<String> owned = List.of();
    private List<String> goods = List.of();
    private final Map<Integer, Long> gains = new HashMap<>();

    /**
     * As a case has it: room, and by session, from 1, sources and places.
     *
     * @param types that are owned or could be bought
     */
    BuyProblem(Case drawn, List<String> types, Lab lab) {
        this.lab = lab;
        this.sessions = new ArrayList<>();
        for (int i = 1; !drawn.all("sources-" + i).isEmpty(); i++) {
            List<String> sources = drawn.all("sources-" + i);
            LineUp lineUp = RoundFloor.lineUp(drawn.one("room"), sources, drawn.all("places-" + i), sources.stream().map(any -> RoundFloor.AS_IT_IS).toList(), seat -> ONE, null, null, lab);
            sessions.add(new SmallSession(lineUp, java.util.Set.copyOf(types), null, lab.knowledge()));
        }
    }

    /** The same sessions with other units and other goods. */
    void offer(List<String> newOwned, List<String> newGoods) {
        owned = List.copyOf(newOwned);
        goods = List.copyOf(newGoods);
        gains.clear();
    }

    List<SmallSession> sessions() {
        return sessions;
    }

    /** Types there are in the locker, as often as there are units. */
    List<String> owned() {
        return owned;
    }

    /** Types that could be bought, one unit each. */
    List<String> goods() {
        return goods;
    }

    /** In prices of the cheapest class, as whoever asks what to buy reckons. */
    int price(int of) {
        return lab.type(goods.get(of)).tier();
    }

    int price(List<Integer> some) {
        return some.stream().mapToInt(this::price).sum();
    }

    private Map<String, Integer> units(List<Integer> bought) {
        Map<String, Integer> units = new TreeMap<>();
        Stream.concat(owned.stream(), bought.stream().map(goods::get)).forEach(type -> units.merge(type, 1, Integer::sum));
        return units;
    }

    /** Whether every session has a plan with what there is. */
    boolean served() {
        return sessions.stream().allMatch(session -> session.best(units(List.of())).isPresent());
    }

    /** The best plan of a session with some of the goods. */
    SmallSession.Seated best(int session, List<Integer> bought) {
        return sessions.get(session).best(units(bought)).orElseThrow(() -> new IllegalArgumentException("A session of the exercise cannot be served any more with what there is"));
    }

    /** By how much the best plans of all sessions rise together, in hundredths of a point. */
    long gain(List<Integer> bought) {
        int key = bought.stream().mapToInt(of -> 1 << of).sum();
        Long known = gains.get(key);
        if (known == null) {
            known = IntStream.range(0, sessions.size()).mapToLong(session -> best(session, bought).centipoints() - best(session, List.of()).centipoints()).sum();
            gains.put(key, known);
        }
        return known;
    }

    long gain(int one) {
        return gain(List.of(one));
    }

    double gainForPrice(int one) {
        return (double) gain(one) / price(one);
    }

    /** Of all that the budget allows what gains most; of equal ones the cheapest. */
    List<Integer> bestBasket(int budget) {
        List<Integer> best = List.of();
        for (int some = 1; some < 1 << goods.size(); some++) {
            int mask = some;
            List<Integer> basket = IntStream.range(0, goods.size()).filter(of -> (mask >> of & 1) == 1).boxed().toList();
            if (price(basket) <= budget && (gain(basket) > gain(best) || gain(basket) == gain(best) && price(basket) < price(best))) {
                best = basket;
            }
        }
        return best;
    }

    MicType type(int of) {
        return lab.type(goods.get(of));
    }
}
