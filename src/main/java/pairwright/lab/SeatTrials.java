package pairwright.lab;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.advice.Offers;
import pairwright.model.Effect;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Setup;
import pairwright.model.Severity;
import pairwright.model.Source;
import pairwright.rules.Finding;
import pairwright.rules.Placed;
import pairwright.session.StoodPlan;

/** What may be tried at a seat, and what the rules say is wrong with each. */
final class SeatTrials {
    /** Half as near as the place is meant, and twice as far. */
    private static final double TOO_NEAR_RATIO = 0.5;
    private static final double TOO_FAR_RATIO = 2;
    private static final double LEAST_M = 0.01;
    private static final double MOST_M = 4;

    private final StoodPlan plan;
    private final String seat;
    private final Source source;
    private final long leastAgainstCentipoints;

    /** @param leastAgainstCentipoints what costs as much is a fault and no matter of taste, above 0 */
    SeatTrials(StoodPlan plan, String seat, Source source, long leastAgainstCentipoints) {
        this.plan = plan;
        this.seat = seat;
        this.source = source;
        this.leastAgainstCentipoints = leastAgainstCentipoints;
    }

    /**
     * One set-up, judged where it is.
     *
     * @param faults gravest first; what every set-up of that type brings at that seat is none
     * @param speaking ids of all rules that say anything of it
     */
    record Trial(Offers of, Offer offer, List<SetUpFault> faults, Set<String> speaking) {
        boolean pair() {
            return offer.mics().size() > 1;
        }

        boolean ribbon() {
            return offer.mics().stream().anyMatch(mic -> mic.micType().passiveRibbon());
        }

        /** Ids of its types. */
        List<String> types() {
            return offer.mics().stream().map(mic -> mic.micType().id()).distinct().toList();
        }

        String name() {
            return offer.technique() + offer.mics().stream().map(Trial::name).collect(Collectors.joining(" +", " ", ""));
        }

        private static String name(OfferedMic mic) {
            return mic.micType().id() + " " + mic.pattern().id() + " " + mic.position().id() + " " + mic.distanceM() + " " + mic.aimDegrees();
        }
    }

    /** All of some types, at every place where one can be put up, as near as it is meant, nearer and farther, and in the pairs of the source. */
    List<Trial> of(List<MicType> types, boolean pairs) {
        List<Setup> setups = new ArrayList<>();
        types.forEach(type -> singles(type, setups));
        if (pairs) {
            types.forEach(type -> pairs(type, setups));
        }
        if (setups.isEmpty()) {
            return List.of();
        }
        Offers stood = plan.stood(seat, setups);
        List<List<Finding>> findings = stood.findings(stood.all());
        Map<String, Set<String>> always = new HashMap<>();
        for (int i = 0; i < setups.size(); i++) {
            if (setups.get(i).mics().size() == 1) {
                Set<String> here = findings.get(i).stream().filter(SeatTrials::warns).map(finding -> finding.rule().id()).collect(Collectors.toSet());
                always.computeIfAbsent(setups.get(i).mics().get(0).micType(), any -> new HashSet<>(here)).retainAll(here);
            }
        }
        List<Trial> all = new ArrayList<>();
        for (int i = 0; i < setups.size(); i++) {
            // what comes with the source and the type wherever it stands nobody set up wrong
            Set<String> given = setups.get(i).mics().stream().flatMap(mic -> always.getOrDefault(mic.micType(), Set.of()).stream()).collect(Collectors.toSet());
            all.add(trial(stood, stood.all().get(i), findings.get(i), given));
        }
        return all;
    }

    private void singles(MicType type, List<Setup> setups) {
        for (Position position : OneMic.standing(source)) {
            if (Offers.fits(type, position)) {
                double meantM = position.distanceM().typical();
                Stream.of(meantM, Math.max(LEAST_M, position.distanceM().low() * TOO_NEAR_RATIO), Math.min(MOST_M, position.distanceM().high() * TOO_FAR_RATIO)).map(SeatTrials::millimetres)
                        .distinct().forEach(distanceM -> setups.add(new Setup(null, List.of(put(type, type.patterns().get(0), position, distanceM)))));
                type.patterns().stream().skip(1).forEach(pattern -> setups.add(new Setup(null, List.of(put(type, pattern, position, millimetres(meantM))))));
            }
        }
    }

    private void pairs(MicType type, List<Setup> setups) {
        Set<String> techniques = new HashSet<>();
        for (PairRecipe recipe : source.pairs()) {
            Position first = position(recipe.first().position());
            Position second = position(recipe.second().position());
            if (OneMic.standing(source).containsAll(List.of(first, second)) && Offers.fits(type, first) && Offers.fits(type, second) && techniques.add(recipe.technique())) {
                setups.add(new Setup(recipe.technique(), List.of(put(type, type.patterns().get(0), first, millimetres(first.distanceM().typical())),
                        put(type, type.patterns().get(0), second, millimetres(second.distanceM().typical())))));
            }
        }
    }

    private Position position(String id) {
        return source.positions().stream().filter(position -> position.id().equals(id)).findFirst().orElseThrow();
    }

    private static Setup.Put put(MicType type, PatternData pattern, Position position, double distanceM) {
        return new Setup.Put(type.id(), pattern.pattern(), position.id(), distanceM, 0.0);
    }

    private static double millimetres(double metres) {
        return Math.round(metres * 1000) / 1000.0;
    }

    /** Of one microphone, and more than a note; what two together want minded is no fault of theirs. */
    private static boolean warns(Finding finding) {
        return finding.rule().effect() == Effect.CAUTION && finding.rule().severity() != Severity.NOTE && finding.subject() instanceof Placed;
    }

    private Trial trial(Offers of, Offer offer, List<Finding> findings, Set<String> always) {
        List<SetUpFault> faults = new ArrayList<>();
        for (Finding finding : findings) {
            SetUpFault.Grade grade = grade(finding, always);
            if (grade != null) {
                faults.add(new SetUpFault(finding.rule().id(), grade, () -> of.says(finding)));
            }
        }
        return new Trial(of, offer, SetUpFault.sorted(faults), findings.stream().map(finding -> finding.rule().id()).collect(Collectors.toSet()));
    }

    /** Null for what is no fault. */
    private SetUpFault.Grade grade(Finding finding, Set<String> always) {
        return switch (finding.rule().effect()) {
            case RULES_OUT -> SetUpFault.Grade.FORBIDDEN;
            case AGAINST -> finding.centipoints() <= -leastAgainstCentipoints ? SetUpFault.Grade.AGAINST : null;
            case CAUTION -> warns(finding) && !always.contains(finding.rule().id()) ? SetUpFault.Grade.of(finding.rule().severity()) : null;
            case FOR -> null;
        };
    }
}
