package pairwright.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.session.LineUp;
import pairwright.session.SmallSession;

/** A small line-up and a small locker: who gets what, and where it goes. */
final class SessionKind implements Kind {
    private static final KindInfo INFO = new KindInfo("session", "Plan the session",
            "Share out what there is among all who play, so that the session as a whole gains and nothing comes to harm.",
            "Setting up in time, running the session, and what the players say of their places.",
            List.of("Three players, channels enough", "Three players, few channels with phantom power", "Four players, and one has a wish", "Four players, two of whom are one section or shall not sound alike",
                    "Five players close together, a wish, and two who are one section or shall not sound alike"),
            List.of(12, 15, 20, 25, 30), false);
    private static final int[] SEATS = {3, 3, 4, 4, 5};
    private static final int SPARE_UNITS = 2;
    private static final int SPARE_TYPES = 4;
    private static final int SOCKETS_FROM = 2;
    private static final int WISH_FROM = 3;
    private static final int APART_FROM = 4;
    private static final int CLOSE_FROM = 5;
    private static final double WIDE_M = 2.4;
    private static final double CLOSE_M = 1.6;
    private static final int ATTEMPTS = 30;
    private static final Limits ONE = new Limits(1, null, null, null, null, null, null, null);
    /** Whoever gives each in turn what is best for it must fall so short of the best plan, or there is nothing to plan. */
    private static final long LEAST_MISSED_CENTIPOINTS = 50;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        int seats = SEATS[level - 1];
        Room room = draw.one(RoundFloor.rooms(lab));
        List<Source> sources = draw.some(seats, RoundFloor.sources(lab, room));
        int wishing = level < WISH_FROM || level == APART_FROM ? seats : draw.below(seats);
        String wish = draw.one(List.copyOf(lab.catalogue().characters().keySet()));
        Case drawn = Case.empty().with("room", room.id()).with("sources", sources.stream().map(Source::id).toList())
                .with("places", RoundFloor.places(draw, room, seats, level >= CLOSE_FROM ? CLOSE_M : WIDE_M))
                .with("characters", IntStream.range(0, seats).mapToObj(seat -> seat == wishing ? wish : RoundFloor.AS_IT_IS).toList())
                .with("apart", List.of());
        drawn = level < APART_FROM ? drawn : beside(draw, drawn, sources);
        int switched = draw.between(1, seats - 1);
        drawn = level < SOCKETS_FROM ? drawn : drawn.with("switched", switched).with("without", seats - switched);
        List<String> types = types(draw, sources, seats + SPARE_TYPES, lab);
        SmallSession session = session(drawn, types, lab);
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Map<String, Integer> units = units(draw.some(seats + SPARE_UNITS, twice(types)));
            Optional<SmallSession.Seated> best = session.best(units);
            if (best.isPresent() && best.get().centipoints() - inTurn(session, units) >= LEAST_MISSED_CENTIPOINTS) {
                Case found = drawn.with("units", units.entrySet().stream().flatMap(of -> IntStream.range(0, of.getValue()).mapToObj(unit -> of.getKey())).toList());
                lab.worked(found, session);
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** Two of one family as a section, where there are two; as often two of any that shall not sound alike. */
    private static Case beside(Draw draw, Case drawn, List<Source> sources) {
        List<List<String>> sections = new ArrayList<>();
        for (int one = 0; one < sources.size(); one++) {
            for (int other = one + 1; other < sources.size(); other++) {
                if (sources.get(one).family() == sources.get(other).family()) {
                    sections.add(List.of("seat-" + (one + 1), "seat-" + (other + 1)));
                }
            }
        }
        return sections.isEmpty() || draw.share() < 0.5 ? drawn.with("apart", draw.some(2, IntStream.rangeClosed(1, sources.size()).mapToObj(seat -> "seat-" + seat).toList()))
                : drawn.with("section", draw.one(sections));
    }

    /** The seats under a name, as a line-up has them; null for none. */
    static List<List<String>> group(Case drawn, String name) {
        return drawn.all(name).isEmpty() ? null : List.of(drawn.all(name));
    }

    /** Half of them such as the trade reaches for at one of the sources. */
    private static List<String> types(Draw draw, List<Source> sources, int many, Lab lab) {
        List<String> all = RoundFloor.types(lab).stream().map(MicType::id).toList();
        List<String> usual = sources.stream().flatMap(source -> source.habits().stream()).filter(habit -> habit.rank() == HabitRank.FIRST).map(Habit::micType).distinct().filter(all::contains).toList();
        return Stream.concat(draw.some(many / 2, usual).stream(), draw.shuffled(all).stream()).distinct().limit(many).toList();
    }

    /** There may be two of a few. */
    private static List<String> twice(List<String> types) {
        return Stream.concat(types.stream(), types.stream().limit(2)).toList();
    }

    static Map<String, Integer> units(List<String> types) {
        Map<String, Integer> units = new TreeMap<>();
        types.forEach(type -> units.merge(type, 1, Integer::sum));
        return units;
    }

    /** What a plan is worth in which each in turn gets the best for it that is left, however it is plugged in; as nothing where somebody is left with nothing. */
    private static long inTurn(SmallSession session, Map<String, Integer> units) {
        Map<String, Integer> left = new TreeMap<>(units);
        List<Offer> offers = new ArrayList<>();
        for (int seat = 0; seat < session.lineUp().seats().size(); seat++) {
            int of = seat;
            Optional<Offer> best = left.entrySet().stream().filter(type -> type.getValue() > 0).flatMap(type -> session.best(of, type.getKey(), null).stream())
                    .max(java.util.Comparator.comparingLong(Offer::centipoints));
            if (best.isEmpty()) {
                return Long.MIN_VALUE / 2;
            }
            left.merge(best.get().mics().get(0).micType().id(), -1, Integer::sum);
            offers.add(best.get());
        }
        boolean plugged = session.sockets() == null || session.sockets().take(offers.stream().map(offer -> offer.mics().get(0)).toList());
        return plugged ? session.centipoints(offers) : Long.MIN_VALUE / 2;
    }

    private static SmallSession session(Case drawn, List<String> types, Lab lab) {
        LineUp lineUp = RoundFloor.lineUp(drawn.one("room"), drawn.all("sources"), drawn.all("places"), drawn.all("characters"), seat -> ONE,
                group(drawn, "apart"), group(drawn, "section"), lab);
        SmallSession.Sockets sockets = drawn.all("switched").isEmpty() ? null : new SmallSession.Sockets((int) drawn.number("switched"), (int) drawn.number("without"));
        return new SmallSession(lineUp, java.util.Set.copyOf(types), sockets, lab.knowledge());
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new SessionExercise(drawn, lab.worked(drawn, SmallSession.class,
                () -> session(drawn, drawn.all("units").stream().map(type -> lab.type(type).id()).distinct().toList(), lab)), lab);
    }
}
