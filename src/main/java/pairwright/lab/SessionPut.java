package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Severity;
import pairwright.session.Said;
import pairwright.session.SmallSession;

/** A plan as somebody answered it: who gets what of it, and what is wrong with the rest. */
final class SessionPut {
    /** A seat that gets nothing is so far behind. */
    private static final long NOTHING_CENTIPOINTS = 400;

    private final List<Optional<Offer>> served = new ArrayList<>();
    private final Set<Integer> twice = new HashSet<>();
    private final Set<Integer> unpowered = new HashSet<>();
    private final Map<Integer, Offer> ruined = new TreeMap<>();
    private final SmallSession session;

    /**
     * @param types by seat; null for none
     * @param units there are
     */
    SessionPut(SmallSession session, List<String> types, Map<String, Integer> units) {
        this.session = session;
        Map<String, Integer> left = new TreeMap<>(units);
        for (int seat = 0; seat < types.size(); seat++) {
            String type = types.get(seat);
            if (type != null && left.merge(type, -1, Integer::sum) < 0) {
                twice.add(seat);
            }
            served.add(type == null || twice.contains(seat) ? Optional.empty() : session.best(seat, type, null));
        }
        if (session.sockets() != null) {
            plugged(session.sockets());
        }
    }

    /** Whoever comes last finds no channel with power left, and a ribbon none without. */
    private void plugged(SmallSession.Sockets sockets) {
        int powered = 0;
        int suffering = 0;
        boolean on = served.stream().flatMap(Optional::stream).anyMatch(offer -> SmallSession.Sockets.wantsPower(mic(offer)));
        for (int seat = 0; seat < served.size(); seat++) {
            OfferedMic mic = served.get(seat).map(SessionPut::mic).orElse(null);
            if (mic != null && SmallSession.Sockets.wantsPower(mic) && ++powered > sockets.switched()) {
                unpowered.add(seat);
            } else if (mic != null && on && SmallSession.Sockets.suffersPower(mic) && ++suffering > sockets.without()) {
                ruined.put(seat, served.get(seat).get());
            }
        }
        unpowered.forEach(seat -> served.set(seat, Optional.empty()));
        ruined.keySet().forEach(seat -> served.set(seat, Optional.empty()));
    }

    static OfferedMic mic(Offer offer) {
        return offer.mics().get(0);
    }

    /** What a seat gets, at the best place for it. */
    Optional<Offer> at(int seat) {
        return served.get(seat);
    }

    /** Seats whose unit somebody before them has already. */
    Set<Integer> twice() {
        return twice;
    }

    /** Seats whose microphone finds no phantom power. */
    Set<Integer> unpowered() {
        return unpowered;
    }

    /** Seats whose ribbon finds no channel without phantom power. */
    Set<Integer> ruined() {
        return ruined.keySet();
    }

    /** What the rules say of those ribbons where they are plugged, gravest first. */
    List<Said> warned() {
        return ruined.entrySet().stream().flatMap(of -> session.saidUnderPower(of.getKey(), of.getValue()).stream()).filter(said -> said.severity() != Severity.NOTE)
                .sorted(Comparator.comparing(Said::severity).reversed()).toList();
    }

    private boolean whole() {
        return served.stream().allMatch(Optional::isPresent);
    }

    private List<String> types() {
        return served.stream().map(offer -> mic(offer.orElseThrow()).micType().id()).toList();
    }

    /** How far it falls short of the best plan, in hundredths of a point: by what could be made of what each has, and by a good deal for each that has nothing. */
    long shortCentipoints(SmallSession.Seated best) {
        if (whole()) {
            return Math.max(0, best.centipoints() - session.most(types(), -1, null).orElseThrow());
        }
        long missed = 0;
        for (int seat = 0; seat < served.size(); seat++) {
            long could = best.offers().get(seat).centipoints();
            missed += served.get(seat).map(offer -> could - offer.centipoints()).orElse(NOTHING_CENTIPOINTS);
        }
        return Math.max(NOTHING_CENTIPOINTS, missed);
    }

    /** How much is lost with a seat's microphone at a place; empty where it cannot stand there, or nothing is there that could. */
    OptionalLong lostCentipoints(int seat, String position) {
        Optional<Offer> there = served.get(seat).flatMap(offer -> session.best(seat, mic(offer).micType().id(), position));
        if (there.isEmpty()) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(Math.max(0, whole() ? session.most(types(), -1, null).orElseThrow() - session.most(types(), seat, position).orElseThrow()
                : served.get(seat).orElseThrow().centipoints() - there.get().centipoints()));
    }
}
