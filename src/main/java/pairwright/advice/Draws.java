package pairwright.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import pairwright.model.Naming;
import pairwright.model.Sure;
import pairwright.model.Sureness;
import pairwright.rules.Figure;
import pairwright.rules.RuleBase;

/**
 * How sure an answer is. What is not known for certain is drawn within its range, the best set-ups are judged again each time, and it is
 * counted who comes first. Then each unknown alone is moved to its ends, those the draws show to matter first: where the lead changes,
 * the place of the change is found by halving. The draws are the same for the same question.
 */
final class Draws {
    private static final long SEED = 20261125;
    /** What is judged in each draw: the best of each set-up, as far as anything could come first. */
    private static final int MOST_SET_UPS = 16;
    /** A set-up this far behind the last that is shown is not judged again. */
    private static final long FAR_BEHIND_CENTIPOINTS = 500;
    private static final int UNKNOWNS_TRIED = 8;
    private static final int TURNS_SHOWN = 3;
    private static final int HALVINGS = 6;
    private static final int SHOWN = 3;
    /** Who comes first this much as often as the first option is as good a choice. */
    private static final double CLOSE_SHARE = 0.75;
    private static final double SLIGHT_DB = 0.25;

    private final List<Candidate> chosen;
    private final Doubts doubts;
    private final List<Candidate> setUps;
    private final int draws;
    private final Map<String, Integer> first = new HashMap<>();
    private final Map<String, Integer> firstThree = new HashMap<>();
    private int exactlyFirst;
    private final Sureness sureness;

    private Draws(Scene scene, RuleBase rules, List<Candidate> all, List<Candidate> chosen, int draws) {
        this.chosen = chosen;
        this.draws = draws;
        this.setUps = setUps(all, chosen);
        this.doubts = new Doubts(scene, rules, setUps);
        double[] weight = draw();
        this.sureness = sureness(turns(weight));
    }

    /**
     * Draws for an answer.
     *
     * @param all every candidate, best first
     * @param chosen those that are shown, best first
     * @param draws how often
     */
    static Draws of(Scene scene, RuleBase rules, List<Candidate> all, List<Candidate> chosen, int draws) {
        return new Draws(scene, rules, all, chosen, draws);
    }

    Sureness sureness() {
        return sureness;
    }

    /** What was judged each time, the shown ones first. */
    List<Candidate> setUps() {
        return setUps;
    }

    /** Of one of those that are shown. */
    Sure sure(int option) {
        String idea = chosen.get(option).idea();
        return new Sure(share(first, idea), share(firstThree, idea));
    }

    private double share(Map<String, Integer> counts, String idea) {
        return counts.getOrDefault(idea, 0) / (double) draws;
    }

    /** The shown ones and the best of every other set-up that is not hopeless: same technique, types and places are one set-up. */
    private static List<Candidate> setUps(List<Candidate> all, List<Candidate> chosen) {
        long least = chosen.get(chosen.size() - 1).centipoints() - FAR_BEHIND_CENTIPOINTS;
        Map<String, Candidate> best = new LinkedHashMap<>();
        chosen.forEach(candidate -> best.put(setUp(candidate), candidate));
        List<Candidate> near = all.stream().filter(candidate -> candidate.centipoints() >= least).toList();
        near.forEach(candidate -> { // other ideas before variants
            if (best.size() < MOST_SET_UPS && best.values().stream().noneMatch(other -> other.idea().equals(candidate.idea()))) {
                best.put(setUp(candidate), candidate);
            }
        });
        near.forEach(candidate -> {
            if (best.size() < MOST_SET_UPS) {
                best.putIfAbsent(setUp(candidate), candidate);
            }
        });
        return List.copyOf(best.values());
    }

    private static String setUp(Candidate candidate) {
        return candidate.technique() + " " + candidate.first().place() + (candidate.isSingle() ? "" : " " + candidate.second().place());
    }

    /** Draws, counts, and returns for each unknown how much it moves the first option against the best of the others. */
    private double[] draw() {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] moved = new double[doubts.unknowns().size()];
        double[] values = new double[moved.length];
        for (int i = 0; i < draws; i++) {
            if (i % 2 == 0) {
                Arrays.setAll(values, any -> random.nextDouble() + random.nextDouble() - 1);
            } else {
                Arrays.setAll(values, at -> -values[at]); // draws in opposite pairs, so that chance leans neither way
            }
            List<Candidate> judged = doubts.judged(values);
            List<Candidate> ranked = judged.stream().filter(Objects::nonNull).sorted(Candidate.bestFirst()).toList();
            if (ranked.isEmpty()) {
                continue;
            }
            count(first, ranked.get(0).idea());
            if (setUp(ranked.get(0)).equals(setUp(chosen.get(0)))) {
                exactlyFirst++;
            }
            Choice.of(ranked, SHOWN).stream().map(Candidate::idea).distinct().forEach(idea -> count(firstThree, idea));
            double lead = lead(judged);
            for (int unknown = 0; unknown < moved.length; unknown++) {
                moved[unknown] += values[unknown] * lead;
            }
        }
        return moved;
    }

    private static void count(Map<String, Integer> counts, String idea) {
        counts.merge(idea, 1, Integer::sum);
    }

    /** By how much the idea of the first option leads the best of the others; negative where it does not. */
    private double lead(List<Candidate> judged) {
        long own = best(judged, true);
        long others = best(judged, false);
        return own - others;
    }

    private long best(List<Candidate> judged, boolean ofFirst) {
        return judged.stream().filter(Objects::nonNull).filter(candidate -> candidate.idea().equals(chosen.get(0).idea()) == ofFirst)
                .mapToLong(Candidate::centipoints).max().orElse(0);
    }

    private List<Sureness.Turn> turns(double[] moved) {
        List<Integer> byWeight = new ArrayList<>();
        for (int i = 0; i < moved.length; i++) {
            byWeight.add(i);
        }
        byWeight.sort(Comparator.comparingDouble(i -> -Math.abs(moved[i])));
        record Found(Sureness.Turn turn, double value) {
        }
        List<Found> found = new ArrayList<>();
        for (int unknown : byWeight.subList(0, Math.min(UNKNOWNS_TRIED, byWeight.size()))) {
            double end = moved[unknown] > 0 ? -1 : 1;
            if (leader(unknown, end) >= 0) {
                double value = threshold(unknown, end);
                found.add(new Found(turn(unknown, value, leader(unknown, value)), value));
            }
        }
        found.sort(Comparator.comparingDouble(one -> Math.abs(one.value())));
        return found.stream().limit(TURNS_SHOWN).map(Found::turn).toList();
    }

    /** Which set-up of another idea comes first when one unknown is moved and all others are as usual; -1 where none does. */
    private int leader(int unknown, double value) {
        double[] values = new double[doubts.unknowns().size()];
        values[unknown] = value;
        List<Candidate> judged = doubts.judged(values);
        return judged.stream().filter(Objects::nonNull).min(Candidate.bestFirst())
                .filter(leads -> !leads.idea().equals(chosen.get(0).idea())).map(judged::indexOf).orElse(-1);
    }

    /** The value nearest to the usual one at which another set-up leads. */
    private double threshold(int unknown, double end) {
        double usual = 0;
        double other = end;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (usual + other) / 2;
            if (leader(unknown, middle) < 0) {
                usual = middle;
            } else {
                other = middle;
            }
        }
        return other;
    }

    private Sureness.Turn turn(int index, double value, int leader) {
        Unknown unknown = doubts.unknowns().get(index);
        Candidate leads = setUps.get(leader);
        int rank = 1 + chosen.stream().map(Candidate::idea).toList().indexOf(leads.idea());
        double threshold = doubts.reading(unknown, value);
        double usual = doubts.reading(unknown, 0);
        boolean above = value > 0;
        String who = rank > 0 ? "option " + rank : "something not shown (" + oneLine(leads) + ")";
        return new Sureness.Turn(unknown.kind().id(), unknown.of(), above, threshold, usual, unknown.kind().unit(), rank > 0 ? rank : null,
                oneLine(leads), "If " + condition(unknown, above, threshold, usual) + ", " + who + " leads.");
    }

    private String condition(Unknown unknown, boolean above, double threshold, double usual) {
        String name = Naming.small(doubts.name(unknown)).replaceFirst(", (.*)", " ($1)");
        return switch (unknown.kind()) {
            case LEVEL -> "the loudest peaks of the " + name + " are " + (above ? "louder" : "softer") + " than " + Math.round(threshold)
                    + " dB SPL at 1 m (" + Math.round(usual) + " is usual)";
            case SOURCE_TONE -> "this " + name + " is " + tone(above, threshold) + " than its kind";
            case REVERBERATION -> "the room rings " + (above ? "longer" : "shorter") + " than " + two(threshold) + " s (" + two(usual) + " s is usual)";
            case NEIGHBOUR_LEVEL -> "the " + name + " beside it plays " + (above ? "louder" : "softer") + " than " + Math.round(threshold)
                    + " dB SPL at 1 m (" + Math.round(usual) + " is usual)";
            case TYPE_TONE -> "your " + name + " is " + tone(above, threshold) + " than its class";
            case TYPE_LIMIT -> "your " + name + " takes " + (above ? "more" : "less") + " than " + Math.round(threshold) + " dB SPL ("
                    + Math.round(usual) + " is usual)";
            case TYPE_NOISE -> "your " + name + " makes " + (above ? "more" : "less") + " noise than " + Math.round(threshold) + " dB(A) ("
                    + Math.round(usual) + " is usual)";
            case TYPE_SENSITIVITY -> "your " + name + " gives " + (above ? "more" : "less") + " than " + two(threshold) + " mV/Pa ("
                    + two(usual) + " is usual)";
            case PLACE_TONE -> "the sound at the place \"" + Naming.small(doubts.name(unknown)) + "\" is " + tone(above, threshold) + " than reckoned";
        };
    }

    private static String tone(boolean above, double threshold) {
        double db = Math.abs(threshold);
        return (db < SLIGHT_DB ? "even slightly " : Figure.forPeople(db, "dB") + " ") + (above ? "brighter" : "darker") + " at 8 kHz";
    }

    private Sureness sureness(List<Sureness.Turn> turns) {
        int others = draws - chosen.stream().map(Candidate::idea).distinct().mapToInt(idea -> first.getOrDefault(idea, 0)).sum();
        double exactly = exactlyFirst / (double) draws;
        StringBuilder says = new StringBuilder("Drawn ").append(draws)
                .append(" times as players, rooms and single microphones differ, option 1 or a variant of it comes first ")
                .append(times(count(chosen.get(0)))).append(" (exactly as shown ").append(times(exactlyFirst)).append(")");
        int rival = 0;
        for (int i = 1; i < chosen.size(); i++) {
            if (!chosen.get(i).idea().equals(chosen.get(0).idea()) && count(chosen.get(i)) > 0) {
                says.append(", option ").append(i + 1).append(" or a variant ").append(times(count(chosen.get(i))));
                rival = rival == 0 || count(chosen.get(i)) > count(chosen.get(rival)) ? i : rival;
            }
        }
        if (others > 0) {
            says.append(", something that is not shown ").append(times(others));
        }
        says.append('.');
        if (rival > 0 && count(chosen.get(rival)) >= CLOSE_SHARE * count(chosen.get(0))) {
            says.append(" That is close: option ").append(rival + 1).append(" is as good a choice until you hear them.");
        }
        if (turns.isEmpty()) {
            says.append(" Nothing that is unknown changes the lead by itself.");
        }
        return new Sureness(draws, setUps.size(), exactly, others / (double) draws, turns, says.toString());
    }

    private int count(Candidate candidate) {
        return first.getOrDefault(candidate.idea(), 0);
    }

    private static String times(int count) {
        return count == 0 ? "never" : count == 1 ? "once" : count + " times";
    }

    private static String two(double number) {
        return String.format(Locale.ROOT, "%.2g", number);
    }

    static String oneLine(Candidate candidate) {
        String line = words(candidate.first());
        return candidate.isSingle() ? line : line + " and " + words(candidate.second());
    }

    private static String words(Judged judged) {
        return Naming.small(judged.placed().mic().name()) + ", " + Naming.small(judged.placed().position().name());
    }
}
