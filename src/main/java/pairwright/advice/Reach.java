package pairwright.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import pairwright.model.Coverage.Verdict;
import pairwright.model.FromLocker;
import pairwright.model.MicType;
import pairwright.model.Question;
import pairwright.model.Stock;
import pairwright.rules.Paired;

/**
 * What a question can be answered with, whatever is at hand: every type, alone and in pairs, matched and not, is judged once, and then looked through for
 * each stock. It finds what {@link Advisor} puts first with that stock, since what a microphone is worth does not depend on what else there is.
 */
final class Reach {
    private static final String FIRST = "+1";
    private static final String SECOND = "+2";

    private final Scene scene;
    private final List<Stock.Held> units;
    /** With units, best first: those that are there, and two of each type beside them. */
    private final List<Candidate> ofUnits;
    private final List<Verdict> verdicts;
    /** The best verdict from each candidate on. */
    private final List<Verdict> ahead;
    private final Candidate best;

    /**
     * What can be had of a stock.
     *
     * @param first what is put first; null where nothing can be used
     * @param verdict the best that anything of it reaches
     */
    record Found(Candidate first, Verdict verdict) {
        /** Whether this is better, in its verdict or else in its score. */
        boolean betterThan(Found other) {
            return verdict.above(other.verdict) || verdict == other.verdict && centipoints() > other.centipoints();
        }

        /** Its score in hundredths; of nothing the least there is. */
        long centipoints() {
            return first == null ? Long.MIN_VALUE : first.centipoints();
        }

        /** How much more it has than another; all of it where the other has nothing. */
        long gain(Found other) {
            return first == null ? 0 : other.first == null ? centipoints() : centipoints() - other.centipoints();
        }
    }

    private Reach(Scene scene, List<Stock.Held> units, List<Candidate> ofUnits, Candidate best, Grades grades) {
        this.scene = scene;
        this.units = units;
        this.ofUnits = ofUnits;
        this.best = best;
        this.verdicts = ofUnits.stream().map(candidate -> grades.of(candidate, best)).toList();
        List<Verdict> backwards = new ArrayList<>();
        Verdict reached = Verdict.NOT_AT_ALL;
        for (int i = verdicts.size() - 1; i >= 0; i--) {
            reached = verdicts.get(i).above(reached) ? verdicts.get(i) : reached;
            backwards.add(reached);
        }
        Collections.reverse(backwards);
        this.ahead = List.copyOf(backwards);
    }

    /**
     * Judges all there is.
     *
     * @param question what is asked; what it says of a locker and a time does not matter
     * @param stock the units there are, out or not
     */
    static Reach of(Question question, Knowledge now, Stock stock, Grades grades) {
        List<Stock.Held> wide = Stream.concat(stock.units().stream(), now.catalogue().mics().values().stream().flatMap(mic -> two(mic).stream())).toList();
        Scene scene = Scene.of(question, now.catalogue(), Supply.of((from, until) -> new Stock(true, wide), question, now.catalogue(), FromLocker.OWNED));
        List<Judged> judged = Advisor.judged(scene, now.rules(), Placements.of(scene));
        List<Candidate> ofUnits = Offers.candidates(scene, now.rules(), judged);
        return new Reach(scene, stock.units(), List.copyOf(ofUnits), best(scene, now, judged), grades);
    }

    private static Candidate best(Scene scene, Knowledge now, List<Judged> judged) {
        List<Judged> types = judged.stream().filter(one -> !scene.supply().measured(one.placed().mic())).toList();
        List<Candidate> all = new ArrayList<>(alone(types.stream()).toList());
        all.addAll(Advisor.pairs(scene, now.rules(), Pairs.of(scene, types, Rack.EVERYTHING)));
        return all.stream().min(Candidate.bestFirst()).orElse(null);
    }

    private static Stream<Candidate> alone(Stream<Judged> judged) {
        return judged.filter(one -> !one.ruledOut() && Placements.standsAlone(one.placed())).map(Candidate::of);
    }

    /** A matched pair of a type, as if it were there. */
    private static List<Stock.Held> two(MicType mic) {
        return List.of(held(mic, FIRST, SECOND), held(mic, SECOND, FIRST));
    }

    private static Stock.Held held(MicType mic, String one, String mate) {
        return new Stock.Held(mic.id() + one, mic.id(), mic.name(), null, null, null, mic.id() + mate, null, null);
    }

    Scene scene() {
        return scene;
    }

    /** The best with the whole catalogue; nothing where no type can be used. */
    Optional<Candidate> best() {
        return Optional.ofNullable(best);
    }

    /** What may be taken of what is there. */
    Rack rack(Predicate<Stock.Held> taken) {
        return scene.supply().rack(units.stream().filter(taken).toList());
    }

    /** The same and one unit more of a type, or a matched pair of it. */
    static Rack more(Rack rack, MicType mic, int units) {
        return rack.with(mic.id(), two(mic).subList(0, units));
    }

    /** Whether one or two more of a type can bring anything better; where not, there is no need to look. */
    boolean mayHelp(MicType mic, Found now) {
        for (int i = 0; i < ofUnits.size(); i++) {
            Candidate candidate = ofUnits.get(i);
            if (candidate.centipoints() <= now.centipoints() && !ahead.get(i).above(now.verdict())) {
                return false;
            }
            if (uses(candidate, mic) && (candidate.centipoints() > now.centipoints() || verdicts.get(i).above(now.verdict()))) {
                return true;
            }
        }
        return false;
    }

    private static boolean uses(Candidate candidate, MicType mic) {
        return candidate.mainType().equals(mic.id()) || !candidate.isSingle() && candidate.second().placed().mic().id().equals(mic.id());
    }

    /** What is put first with some units, and how well that serves. */
    Found with(Rack rack) {
        Candidate first = null;
        Verdict verdict = Verdict.NOT_AT_ALL;
        for (int i = 0; i < ofUnits.size() && (first == null || ahead.get(i).above(verdict)); i++) {
            if (serves(rack, ofUnits.get(i))) {
                first = first == null ? ofUnits.get(i) : first;
                verdict = verdicts.get(i).above(verdict) ? verdicts.get(i) : verdict;
            }
        }
        return new Found(first, verdict);
    }

    private static boolean serves(Rack rack, Candidate candidate) {
        if (candidate.isSingle()) {
            return rack.alone(candidate.first().placed().mic());
        }
        Paired pair = candidate.pair();
        return rack.serves(pair) && (!pair.unitsKnown() || pair.matchedPair() == rack.matched(pair.first().mic().id()));
    }
}
