package pairwright.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import pairwright.advice.HouseMemory;
import pairwright.advice.Kept;
import pairwright.advice.Knowledge;
import pairwright.advice.Offers;
import pairwright.model.Catalogue;
import pairwright.model.Limits;
import pairwright.model.Question;
import pairwright.model.Stock;

/**
 * What can be put in front of each seat, judged where it sits. Judged once: it does not depend on what is free, so a plan for another day or after a
 * loss finds it again. Safe to share between threads.
 */
final class Judging {
    /** A few line-ups of usual size; the offers of a seat take up to a megabyte. */
    private static final int MOST_KEPT = 150;

    private final HouseMemory memory;
    private final WaysKept ways = new WaysKept();
    /** Of what was known last; they remember what they were asked. */
    private volatile Ruled ruled;

    private record Ruled(Knowledge now, PlanRules rules) {
    }

    private final Map<Key, AtSeat> kept = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, AtSeat> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** All that the offers of a seat follow from. The knowledge is meant by identity: what is swapped in later is another. */
    private record Key(Knowledge now, Seat seat, Question question, Floor floor, List<Seat> seats, List<Gobo> gobos, Stock stock, List<Kept> memory) {
        /** Of what tells the seats of a line-up apart: to go through the whole catalogue each time would take longer than to find one of a few that are alike. */
        @Override
        public int hashCode() {
            return Objects.hash(System.identityHashCode(now), seat, floor);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && now == key.now && seat.equals(key.seat) && question.equals(key.question) && floor.equals(key.floor) && seats.equals(key.seats)
                    && gobos.equals(key.gobos) && Objects.equals(stock, key.stock) && memory.equals(key.memory);
        }
    }

    Judging(HouseMemory memory) {
        this.memory = memory;
    }

    /** What seats could get in plans before. */
    WaysKept ways() {
        return ways;
    }

    PlanRules rules(Knowledge now) {
        Ruled last = ruled;
        if (last == null || last.now() != now) {
            last = new Ruled(now, new PlanRules(now.rules(), now.catalogue()));
            ruled = last;
        }
        return last.rules();
    }

    /**
     * For each seat in order.
     *
     * @param stock the units there are, out or not; null for any type of the catalogue
     * @param channels what the preamplifiers can do
     */
    List<AtSeat> of(LineUp lineUp, Knowledge now, Stock stock, ChannelPool channels, Consumer<Progress> progress) {
        Stock whole = whole(stock);
        AtomicInteger done = new AtomicInteger();
        AtSeat[] all = new AtSeat[lineUp.seats().size()];
        progress.accept(new Progress("Judging what can stand where", 0, all.length));
        IntStream.range(0, all.length).parallel().forEach(i -> {
            all[i] = at(lineUp, lineUp.seats().get(i), now, whole, channels);
            progress.accept(new Progress("Judging what can stand where", done.incrementAndGet(), all.length));
        });
        return List.of(all);
    }

    private AtSeat at(LineUp lineUp, Seat seat, Knowledge now, Stock stock, ChannelPool channels) {
        Catalogue catalogue = Altered.of(now.catalogue(), lineUp, seat);
        Question question = within(SeatQuestion.of(seat, catalogue), channels);
        List<Kept> remembered = memory.of(seat.source(), lineUp.floor().room(), seat.player());
        Key key = new Key(now, seat, question, lineUp.floor(), lineUp.seats(), lineUp.gobos(), stock, remembered);
        synchronized (kept) {
            AtSeat before = kept.get(key);
            if (before != null) {
                return before;
            }
        }
        FloorSurroundings surroundings = FloorSurroundings.of(lineUp, seat, now.catalogue());
        AtSeat judged = new AtSeat(seat, catalogue, surroundings, Offers.of(question, catalogue, now.rules(), stock, surroundings,
                (source, room, player) -> remembered));
        synchronized (kept) {
            kept.put(key, judged);
        }
        return judged;
    }

    /** What a seat does not limit itself the preamplifiers limit. */
    private static Question within(Question question, ChannelPool channels) {
        Limits own = question.limits();
        return question.altered(question.ways(), question.room(), question.character(), new Limits(own.mics(),
                own.phantom() == null && !channels.hasPhantom() ? Boolean.FALSE : own.phantom(),
                own.preampGainDb() == null ? channels.mostGainDb() : own.preampGainDb(),
                own.preampNoiseDbu() == null ? channels.worstNoiseDbu() : own.preampNoiseDbu(),
                own.onlyFamilies(), own.withoutFamilies(), own.onlyMicTypes(), own.withoutMicTypes()), question.neighbours(), question.circumstances());
    }

    /** All units as if none were out, so that what is judged does not depend on it. */
    private static Stock whole(Stock stock) {
        if (stock == null || !stock.reachable() || stock.units().isEmpty()) {
            return null;
        }
        List<Stock.Held> units = new ArrayList<>();
        stock.units().forEach(unit -> units.add(new Stock.Held(unit.id(), unit.micType(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), unit.pairMate(),
                unit.ownResponseDb(), null)));
        return new Stock(true, units);
    }
}
