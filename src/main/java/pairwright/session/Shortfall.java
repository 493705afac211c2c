package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.advice.Offer;
import pairwright.model.MicType;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Shortage;

/** Why a line-up cannot be served, and what would help, in words. */
final class Shortfall {
    private static final double TENTHS_PER_MA = 10;

    private final LineUp lineUp;
    private final Layout layout;
    private final Knowledge now;
    private final Allocator allocator;
    private final SeatNames names;

    Shortfall(LineUp lineUp, Layout layout, Knowledge now, Allocator allocator) {
        this.lineUp = lineUp;
        this.layout = layout;
        this.now = now;
        this.allocator = allocator;
        this.names = SeatNames.of(lineUp);
    }

    /** @param judging to look for what would serve a seat that nothing here serves */
    Planned planned(Judging judging) {
        List<Planned.Short> shortOf = new ArrayList<>();
        List<Planned.WayOut> waysOut = new ArrayList<>();
        if (layout.unserved().isEmpty()) {
            Shortage shortage = allocator.shortage(layout.problem(layout.withLeavingOut()));
            shortage.lacks().stream().filter(lack -> !SetUpWork.isCap(lack.name())).forEach(lack -> shortOf.add(shortOf(lack)));
            TimeOut time = new TimeOut(layout, allocator);
            time.neededS(shortage).ifPresent(neededS -> {
                shortOf.add(time.shortOf(neededS));
                waysOut.addAll(time.waysOut(neededS));
            });
            if (shortOf.isEmpty()) {
                List<String> must = lineUp.seats().stream().filter(Seat::must).map(Seat::id).toList();
                shortOf.add(new Planned.Short("several things at once: sources that must be served", shortage.must(), shortage.canServe(), must));
            }
            shortage.waysOut().forEach(way -> waysOut.add(wayOut(way)));
        } else {
            unserved(judging, shortOf, waysOut);
        }
        waysOut.addAll(InstrumentInputs.waysOut(lineUp, layout, allocator));
        waysOut.sort(Comparator.comparingDouble(Planned.WayOut::pricePoints).thenComparing(Planned.WayOut::says));
        return new Planned(List.of(), shortOf, waysOut, List.of(), List.of(), now.rules().version(), now.catalogue().version());
    }

    private void unserved(Judging judging, List<Planned.Short> shortOf, List<Planned.WayOut> waysOut) {
        List<AtSeat> anything = judging.of(lineUp, now, null, layout.resources().channels(), step -> { });
        for (AtSeat at : layout.unserved()) {
            String name = names.of(at.seat().id());
            shortOf.add(new Planned.Short((InstrumentInputs.byLead(at) ? "line boxes that suit " : "microphones, and what holds them, that suit ") + name, 1, 0, List.of(at.seat().id())));
            anything.stream().filter(other -> other.seat().equals(at.seat())).findFirst().flatMap(other -> other.offers().all().stream().findFirst()).ifPresentOrElse(
                    offer -> waysOut.add(new Planned.WayOut("borrow", "Borrow for " + name + ": " + types(offer) + ".", price(offer), offer.centipoints() / 100.0)),
                    () -> waysOut.add(new Planned.WayOut("drop", "Nothing in the catalogue stands for " + name + " under its limits: loosen them, or leave it out.", 1, 0)));
        }
    }

    /** Of current what is needed is counted up and what there is down, in whole mA. */
    private Planned.Short shortOf(Shortage.Lack lack) {
        double counted = lack.kind() == Shortage.Kind.CURRENT ? TENTHS_PER_MA : 1;
        return new Planned.Short(resource(lack.kind(), lack.name()), (int) Math.ceil(lack.needed() / counted), (int) Math.floor(lack.there() / counted), List.of());
    }

    private String types(Offer offer) {
        return offer.mics().stream().map(mic -> mic.micType().name()).collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()))
                .entrySet().stream().map(entry -> entry.getValue() + " × " + entry.getKey()).collect(Collectors.joining(" and "));
    }

    private static double price(Offer offer) {
        return offer.mics().stream().mapToInt(mic -> mic.micType().tier()).sum();
    }

    private Planned.WayOut wayOut(Shortage.WayOut way) {
        String seats = way.seats().stream().sorted().map(seat -> names.of(lineUp.seats().get(seat).id())).collect(Collectors.joining(", "));
        double score = way.plan().centipoints() / 100.0;
        return switch (way.means()) {
            case BORROW -> new Planned.WayOut("borrow", "Borrow " + borrowed(way.caps(), way.channels()) + ".", way.price(), score);
            case DROP -> new Planned.WayOut("drop", "Leave out " + seats + ".", way.seats().size() * dropPrice(), score);
            case SHARE -> new Planned.WayOut("share", "Take fewer microphones for " + seats + ".", way.seats().size(), score);
        };
    }

    /** To leave out one who must be there costs more than to borrow anything. */
    private double dropPrice() {
        return now.catalogue().mics().values().stream().mapToInt(MicType::tier).max().orElse(1) * 2.0;
    }

    private String borrowed(Map<String, Integer> caps, Map<String, Integer> channels) {
        List<String> things = new ArrayList<>();
        caps.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(cap -> things.add(cap.getValue() + " × " + resource(Shortage.Kind.CAP, cap.getKey())));
        channels.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(group -> things.add(group.getValue() + " × " + resource(Shortage.Kind.CHANNELS, group.getKey())));
        return things.stream().distinct().collect(Collectors.joining(", "));
    }

    private String resource(Shortage.Kind kind, String name) {
        if (kind == Shortage.Kind.CURRENT) {
            return "mA of phantom current from " + layout.resources().channels().bankName(name);
        }
        if (kind == Shortage.Kind.CHANNELS) {
            return "preamplifier channel";
        }
        String micType = UnitPool.micType(name);
        if (micType != null) {
            return now.catalogue().mics().get(micType).name();
        }
        Stands.Class stand = layout.resources().stand(name);
        return stand != null ? stand.like().kind().id() + " stand" : name.equals(Resources.BOOSTERS) ? "inline booster" : Resources.isPad(name) ? "pad for a line" : name;
    }
}
