package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.advice.Offer;
import pairwright.model.HabitRank;
import pairwright.model.Naming;
import pairwright.model.Position;
import pairwright.model.Severity;
import pairwright.model.Source;
import pairwright.session.Plan;
import pairwright.session.Said;
import pairwright.session.SmallSession;
import pairwright.session.allocation.NoSolver;

/** A session to be planned. What a plan earns is how near it comes to the best one that these units allow, and that nothing of it cannot be done. */
final class SessionExercise implements Exercise {
    private static final double TYPE_POINTS = 2;
    private static final double PLACE_POINTS = 1;
    private static final double PLUGGED_POINTS = 2;
    /** So far behind the best plan, in points a seat, what was shared out is no answer. */
    private static final double MOST_SHORT_A_SEAT_POINTS = 2;
    private static final double MOST_SHORT_OF_PLACE_POINTS = 4;
    /** Whoever plugs what the rules warn of does not pass well, and not at all where somebody could be hurt. */
    private static final double DANGER_SHARE = 0.4;
    private static final double CARE_SHARE = 0.6;

    private final Case drawn;
    private final SmallSession session;
    private final Lab lab;
    private final Map<String, Integer> units;
    private final List<Source> sources;
    private final SmallSession.Seated best;
    private Plan planned;

    /** @throws IllegalArgumentException where the session of the case cannot be planned any more */
    SessionExercise(Case drawn, SmallSession session, Lab lab) {
        this.drawn = drawn;
        this.session = session;
        this.lab = lab;
        this.units = SessionKind.units(drawn.all("units"));
        this.sources = session.lineUp().seats().stream().map(seat -> lab.source(seat.source())).toList();
        this.best = session.best(units).orElseThrow(() -> new IllegalArgumentException("The session of the exercise cannot be planned any more with what there is"));
    }

    private int seats() {
        return sources.size();
    }

    private static String mic(int seat) {
        return "mic-" + (seat + 1);
    }

    private static String place(int seat) {
        return "place-" + (seat + 1);
    }

    private String called(int seat) {
        return Naming.the(sources.get(seat).name());
    }

    @Override
    public Handout handout() {
        List<String> situation = new ArrayList<>(List.of(RoundFloor.says(lab.room(drawn.one("room"))), "Everybody gets one microphone, and each unit can be at one place only."));
        if (session.sockets() != null) {
            situation.add("The stage box has " + channels(session.sockets().switched()) + " whose phantom power is on or off for all of them at once, and " + channels(session.sockets().without())
                    + " without any.");
        }
        for (int seat = 0; seat < seats(); seat++) {
            String character = drawn.all("characters").get(seat);
            if (!character.equals(RoundFloor.AS_IT_IS)) {
                situation.add("Wanted of " + called(seat) + ": " + lab.catalogue().characters().get(character).name() + ".");
            }
        }
        beside("apart", "These shall not sound alike: ", situation);
        beside("section", "These are one section and shall sound alike: ", situation);
        List<Item> items = new ArrayList<>();
        for (int seat = 0; seat < seats(); seat++) {
            items.add(new Item.OneOf(mic(seat), "Which microphone goes to " + called(seat) + "?", units.keySet().stream().map(type -> new Item.Opt(type, lab.type(type).name())).toList()));
            items.add(new Item.OneOf(place(seat), "Where does it go at " + called(seat) + "?",
                    OneMic.standing(sources.get(seat)).stream().map(position -> new Item.Opt(position.id(), position.name())).toList()));
        }
        return new Handout("Plan the session", List.of(), situation, List.of(new Shown.FromAbove("Who plays where", session.lineUp()),
                new Shown.Table("What the locker has", List.of("Microphone", "Units"), units.entrySet().stream().map(of -> List.of(lab.type(of.getKey()).name(), String.valueOf(of.getValue()))).toList())),
                items);
    }

    private void beside(String name, String says, List<String> situation) {
        if (!drawn.all(name).isEmpty()) {
            situation.add(says + drawn.all(name).stream().map(id -> called(Integer.parseInt(id.substring("seat-".length())) - 1)).collect(Collectors.joining(" and ")) + ".");
        }
    }

    private static String channels(int count) {
        return count == 1 ? "1 channel" : count + " channels";
    }

    /** The plan of the planner, where it can be asked on this machine; else null. */
    private Plan planned() {
        if (planned == null) {
            try {
                planned = session.planned(units).orElseThrow();
            } catch (NoSolver none) {
                return null; // it is counted through all the same
            }
        }
        return planned;
    }

    /** Of plans that are worth the same that of the planner. */
    private List<Offer> right() {
        Plan plan = planned();
        return plan == null ? best.offers() : IntStream.range(0, seats()).mapToObj(seat -> {
            var placed = plan.served().get(seat).option().mics().get(0);
            return session.best(seat, placed.micType(), placed.position()).orElseThrow();
        }).toList();
    }

    @Override
    public Key key() {
        List<Offer> right = right();
        Answer answer = Answer.NOTHING;
        for (int seat = 0; seat < seats(); seat++) {
            answer = answer.with(mic(seat), SessionPut.mic(right.get(seat)).micType().id()).with(place(seat), SessionPut.mic(right.get(seat)).position().id());
        }
        List<Key.Entry> entries = new ArrayList<>();
        for (int seat = 0; seat < seats(); seat++) {
            Offer offer = right.get(seat);
            List<String> why = OneMic.why(offer.option());
            entries.add(new Key.Entry(mic(seat), SessionPut.mic(offer).micType().name(), accepted(answer, mic(seat), List.copyOf(units.keySet())), why,
                    offer.option().reasons().stream().map(reason -> reason.rule()).distinct().toList()));
            entries.add(new Key.Entry(place(seat), SessionPut.mic(offer).position().name(), accepted(answer, place(seat), OneMic.standing(sources.get(seat)).stream().map(Position::id).toList()),
                    List.of("What it brings: " + SessionPut.mic(offer).position().brings() + "."), List.of()));
        }
        Plan plan = planned();
        return new Key(answer, entries, plan == null ? List.of() : session.telling(plan).grave().stream().map(told -> told.says()).toList());
    }

    private List<String> accepted(Answer answer, String item, List<String> options) {
        return options.stream().filter(option -> {
            Mark mark = mark(answer.with(item, option));
            return mark.mark() == mark.of();
        }).toList();
    }

    @Override
    public Mark mark(Answer answer) {
        List<String> types = new ArrayList<>();
        IntStream.range(0, seats()).forEach(seat -> types.add(answer.one(mic(seat)) == null || !units.containsKey(answer.one(mic(seat))) ? null : answer.one(mic(seat))));
        SessionPut put = new SessionPut(session, types, units);
        double missed = put.shortCentipoints(best) / 100.0;
        double share = Math.max(0, 1 - missed / (MOST_SHORT_A_SEAT_POINTS * seats()));
        Mark.Sum sum = new Mark.Sum();
        int seat = weakest(put);
        Offer better = best.offers().get(seat);
        Optional<StrongestReason> reason = put.at(seat).flatMap(offer -> StrongestReason.over(better, offer)).or(() -> StrongestReason.of(better));
        sum.add("Who gets what", share, TYPE_POINTS * seats(), missed < 0.05 ? "No other sharing out does more." : String.format(Locale.ROOT, "%.1f points short of the best plan. There, for ", missed)
                + called(seat) + ": " + Naming.small(SessionPut.mic(better).micType().name()) + ". " + reason.map(StrongestReason::says).orElse(""),
                reason.map(StrongestReason::rule).orElse(null));
        for (int of = 0; of < seats(); of++) {
            place(of, put, share, answer.one(place(of)), sum);
        }
        plugged(types, put, sum);
        return sum.mark();
    }

    /** Where the best plan gains most over what was answered. */
    private int weakest(SessionPut put) {
        return IntStream.range(0, seats()).boxed().max(Comparator.comparingLong((Integer of) -> put.at(of).map(offer -> best.offers().get(of).centipoints() - offer.centipoints()).orElse(Long.MAX_VALUE)))
                .orElseThrow();
    }

    private void place(int seat, SessionPut put, double typesShare, String given, Mark.Sum sum) {
        OptionalLong lost = given == null ? OptionalLong.empty() : put.lostCentipoints(seat, given);
        double missed = lost.isEmpty() ? MOST_SHORT_OF_PLACE_POINTS : lost.getAsLong() / 100.0;
        Optional<StrongestReason> reason = lost.isEmpty() ? Optional.empty() : reason(put.at(seat).orElseThrow(), seat, given, missed);
        String says = put.at(seat).isEmpty() ? "Nothing can stand there." : given == null ? "No place was named." : lost.isEmpty() ? "It cannot stand there."
                : missed < 0.05 ? "Nowhere else does it do more." : String.format(Locale.ROOT, "It would do %.1f points more elsewhere, such as here: ", missed)
                        + SessionPut.mic(put.at(seat).get()).position().name() + ".";
        // the best place for what should not be there is worth as little as that
        sum.add("The place at " + called(seat), typesShare * (1 - missed / MOST_SHORT_OF_PLACE_POINTS), PLACE_POINTS, (says + " " + reason.map(StrongestReason::says).orElse("")).strip(),
                reason.map(StrongestReason::rule).orElse(null));
    }

    /** Why a place is as good as any, or another better. */
    private Optional<StrongestReason> reason(Offer could, int seat, String place, double missed) {
        Offer stands = session.best(seat, SessionPut.mic(could).micType().id(), place).orElseThrow();
        return missed < 0.05 ? StrongestReason.of(stands) : StrongestReason.over(could, stands);
    }

    private void plugged(List<String> types, SessionPut put, Mark.Sum sum) {
        List<String> wrong = new ArrayList<>();
        List<Said> warned = put.warned();
        IntStream.range(0, seats()).filter(seat -> types.get(seat) == null).forEach(seat -> wrong.add(called(seat) + " gets nothing"));
        put.twice().stream().sorted().forEach(seat -> wrong.add(Naming.the(Naming.type(lab.type(types.get(seat)).name())) + " of " + called(seat) + " is elsewhere already"));
        put.unpowered().stream().sorted().forEach(seat -> wrong.add("no channel with phantom power is left for " + called(seat)));
        put.ruined().stream().sorted().forEach(seat -> wrong.add("the ribbon of " + called(seat) + " finds only channels whose phantom power is on for others"));
        sum.add("It can be set up", wrong.isEmpty() ? 1 : 0, PLUGGED_POINTS, wrong.isEmpty() ? "Every unit is at one place, and every channel does for what is on it." : "Not as it is: " + String.join("; ", wrong) + ".",
                warned.isEmpty() ? put.unpowered().isEmpty() ? null : "PWR-001" : warned.get(0).rule());
        warned.forEach(said -> sum.cap(said.severity() == Severity.DANGER ? DANGER_SHARE : CARE_SHARE, said.says()));
    }

    /** Gives each in turn what the trade puts there first, or what comes first of what is left, and puts it as near as there is a place. */
    @Override
    public Answer usual() {
        Map<String, Integer> left = new TreeMap<>(units);
        Answer usual = Answer.NOTHING;
        for (int seat = 0; seat < seats(); seat++) {
            Source source = sources.get(seat);
            List<String> there = left.entrySet().stream().filter(of -> of.getValue() > 0).map(Map.Entry::getKey).toList();
            String type = source.habits().stream().filter(habit -> habit.rank() == HabitRank.FIRST).map(habit -> habit.micType()).filter(there::contains).findFirst().orElse(there.get(0));
            left.merge(type, -1, Integer::sum);
            Position nearest = OneMic.standing(source).stream().min(Comparator.comparingDouble(position -> position.distanceM().typical())).orElseThrow();
            usual = usual.with(mic(seat), type).with(place(seat), nearest.id());
        }
        return usual;
    }

    @Override
    public List<Need> kit() {
        return List.of();
    }

    /** What is held against a ribbon of these units that somebody puts on the channels with power. */
    private List<Said> ribbon() {
        for (int seat = 0; seat < seats(); seat++) {
            for (String type : units.keySet()) {
                Optional<Offer> ribbon = session.best(seat, type, null).filter(offer -> SmallSession.Sockets.suffersPower(SessionPut.mic(offer)));
                if (ribbon.isPresent()) {
                    return session.saidUnderPower(seat, ribbon.get()).stream().filter(said -> said.severity() != Severity.NOTE).toList();
                }
            }
        }
        return List.of();
    }

    @Override
    public Set<String> restsOn() {
        Set<String> rests = new LinkedHashSet<>();
        right().forEach(offer -> offer.findings().stream().filter(finding -> finding.centipoints() != 0).forEach(finding -> rests.add(finding.rule().id())));
        if (planned() != null) {
            planned().reasons().forEach(said -> rests.add(said.rule()));
        }
        if (session.sockets() != null) {
            rests.add("PWR-001");
            ribbon().forEach(said -> rests.add(said.rule()));
        }
        return rests;
    }
}
