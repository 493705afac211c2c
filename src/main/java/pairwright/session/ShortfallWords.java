package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.model.MicType;
import pairwright.session.allocation.Bank;
import pairwright.session.allocation.Shortage;

/** What is short, and the ways out, in the words people have for gear. */
final class ShortfallWords {
    private static final double TENTHS_PER_MA = 10;

    private final LineUp lineUp;
    private final Layout layout;
    private final Knowledge now;
    private final SeatNames names;

    /** @param layout that was searched */
    ShortfallWords(LineUp lineUp, Layout layout, Knowledge now) {
        this.lineUp = lineUp;
        this.layout = layout;
        this.now = now;
        this.names = SeatNames.of(lineUp);
    }

    /**
     * Of current what is needed is counted up and what there is down, in whole mA.
     *
     * @param seats ids of who waits for it
     */
    Planned.Short shortOf(Shortage.Lack lack, List<String> seats) {
        double counted = lack.kind() == Shortage.Kind.CURRENT ? TENTHS_PER_MA : 1;
        return new Planned.Short(resource(lack.kind(), lack.name()), (int) Math.ceil(lack.needed() / counted), (int) Math.floor(lack.there() / counted), seats);
    }

    /** All that a way out borrows. */
    List<Planned.Short> shortOf(Shortage.WayOut way, List<String> seats) {
        Map<String, Integer> there = new TreeMap<>();
        way.problem().caps().forEach(cap -> there.put(resource(Shortage.Kind.CAP, cap.name()), cap.there()));
        way.channels().keySet().forEach(group -> there.put(resource(Shortage.Kind.CHANNELS, group),
                (int) way.problem().banks().stream().map(Bank::channels).flatMap(List::stream).filter(group::equals).count()));
        return borrowed(way).entrySet().stream().map(one -> new Planned.Short(one.getKey(), there.get(one.getKey()), there.get(one.getKey()) - one.getValue(), seats)).toList();
    }

    Planned.WayOut wayOut(Shortage.WayOut way) {
        String seats = way.seats().stream().sorted().map(seat -> names.of(lineUp.seats().get(seat).id())).collect(Collectors.joining(", "));
        double score = way.plan().centipoints() / 100.0;
        return switch (way.means()) {
            case BORROW -> new Planned.WayOut("borrow", "Borrow " + borrowed(way).entrySet().stream().map(one -> one.getValue() + " × " + one.getKey()).collect(Collectors.joining("; ")) + ".",
                    way.price(), score);
            case DROP -> new Planned.WayOut("drop", "Leave out " + seats + ".", way.seats().size() * dropPrice(), score);
            case SHARE -> new Planned.WayOut("share", "Take fewer microphones for " + seats + ".", way.seats().size(), score);
        };
    }

    /** To leave out one who must be there costs more than to borrow anything. */
    private double dropPrice() {
        return now.catalogue().mics().values().stream().mapToInt(MicType::tier).max().orElse(1) * 2.0;
    }

    /** How many of each thing; units of a type that are counted twice are one. */
    private Map<String, Integer> borrowed(Shortage.WayOut way) {
        Map<String, Integer> things = new TreeMap<>();
        way.caps().forEach((cap, count) -> things.merge(resource(Shortage.Kind.CAP, cap), count, UnitPool.micType(cap) == null ? Integer::sum : Math::max));
        way.channels().forEach((group, count) -> things.merge(resource(Shortage.Kind.CHANNELS, group), count, Integer::sum));
        return things;
    }

    private String resource(Shortage.Kind kind, String name) {
        ChannelPool channels = layout.resources().channels();
        if (kind == Shortage.Kind.CURRENT) {
            return "mA of phantom current from " + channels.bankName(name);
        }
        if (kind == Shortage.Kind.CHANNELS) {
            return "preamplifier channel" + channels.likeness(name);
        }
        String micType = UnitPool.micType(name);
        if (micType != null) {
            return now.catalogue().mics().get(micType).name();
        }
        Stands.Class stand = layout.resources().stand(name);
        return stand != null ? stand(stand) : name.equals(Resources.BOOSTERS) ? "inline booster" : Resources.isPad(name) ? "pad for a line" : name;
    }

    /** Where several differ, which of them. */
    private String stand(Stands.Class stand) {
        List<Stands.Class> same = new ArrayList<>(layout.resources().stands().classes());
        same.removeIf(other -> other.like().kind() != stand.like().kind());
        Gear.Stand first = stand.stands().get(0);
        return stand.like().kind().id() + " stand" + (same.size() == 1 ? "" : Borrowable.has(first) ? ", large enough" : " like " + first.label());
    }
}
