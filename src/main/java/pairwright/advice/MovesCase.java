package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Arrangement;
import pairwright.model.Caution;
import pairwright.model.Complaint;
import pairwright.model.Danger;
import pairwright.model.DangerKind;
import pairwright.model.Gauge;
import pairwright.model.Heard;
import pairwright.model.Meaning;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.MoveKind;
import pairwright.model.Moves;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.PairRecipe;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Predicted;
import pairwright.model.Remedy;
import pairwright.model.RuledOut;
import pairwright.model.Severity;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Together;
import pairwright.rules.Figure;
import pairwright.rules.Finding;
import pairwright.rules.Paired;
import pairwright.rules.Placed;

/** One set-up and one complaint: tries the moves the catalogue names, predicts and judges each, and keeps the first that help. */
final class MovesCase {
    private static final int MOST_MOVES = 3;
    /** Distances closer than this to each other are one. */
    private static final double SAME_DISTANCE = 1.03;
    private static final double PROXIMITY_HZ = 100;
    /** So much farther than its range a place is still the same place, for a microphone on a stand. */
    private static final double BACK = 1.5;
    private static final double NEXT_TO_NOTHING_DB = 0.5;
    /** What a person would not notice is not told beside what was asked for. */
    private static final double WORTH_TELLING_DB = 1;
    private static final double LITTLE_HEADROOM_DB = 6;

    private final Knowledge now;
    private final Meaning meaning;
    private final Scene scene;
    private final Standing standing;
    private final Complaint complaint;
    private final Bench bench;
    private final Trial base;
    private final List<Trial> trials = new ArrayList<>();

    MovesCase(Knowledge now, Meaning meaning, Standing standing, Complaint complaint) {
        this.now = now;
        this.meaning = meaning;
        this.scene = Scene.of(meaning.question(), now.catalogue());
        this.standing = standing;
        this.complaint = complaint;
        this.bench = new Bench(scene);
        this.base = bench.trial(null, 0, standing.mics(), false);
    }

    /** Where placements of one scene are set up, and judged all at once. */
    private final class Bench {
        private final Scene scene;
        private final Placements placements;
        private final Pairs pairs;
        private final List<Placed> placed = new ArrayList<>();
        private final List<Paired> paired = new ArrayList<>();
        private List<Judged> judged;
        private final Map<Paired, List<Finding>> together = new IdentityHashMap<>();

        Bench(Scene scene) {
            this.scene = scene;
            this.placements = Placements.none(scene);
            this.pairs = Pairs.none(scene);
        }

        Trial trial(Remedy remedy, int mic, List<Standing.Mic> mics, boolean turnedOver) {
            List<Placed> set = new ArrayList<>();
            for (Standing.Mic one : mics) {
                boolean twin = !set.isEmpty() && one.equals(mics.get(0));
                set.add(twin ? set.get(0) : placements.set(one.mic(), one.pattern(), one.position(), one.distanceM(), one.aimDegrees()));
                if (!twin) {
                    placed.add(set.get(set.size() - 1));
                }
            }
            Paired pair = standing.single() ? null : pairs.paired(standing.recipe(), set.get(0), set.get(1));
            if (pair != null && turnedOver) {
                pair = new Paired(pair.first(), pair.second(), pair.technique(), pair.known(), pair.knownShare(), pair.asked(), pair.why(),
                        !pair.secondInverted(), pair.together());
            }
            if (pair != null) {
                paired.add(pair);
            }
            return new Trial(this, remedy, mic, mics, set, pair);
        }

        Candidate candidate(Trial trial) {
            if (judged == null) {
                judged = Advisor.judged(scene, now.rules(), placed);
                paired.forEach(pair -> together.put(pair, new ArrayList<>()));
                if (!paired.isEmpty()) {
                    now.rules().score(scene.setting(), paired).stream().filter(finding -> finding.subject() instanceof Paired)
                            .forEach(finding -> together.get((Paired) finding.subject()).add(finding));
                }
            }
            Judged first = judged.get(trial.placed.get(0).index());
            return trial.pair == null ? Candidate.of(first)
                    : Candidate.of(first, judged.get(trial.placed.get(1).index()), trial.pair, together.get(trial.pair));
        }
    }

    /** A set-up that is tried: what was moved, and what stands then. */
    private record Trial(Bench bench, Remedy remedy, int mic, List<Standing.Mic> mics, List<Placed> placed, Paired pair) {
        /** The microphone that is looked at: the one that was moved, or the first. */
        Placed moved() {
            return placed.get(Math.max(0, mic - 1));
        }

        Together together() {
            return pair == null ? null : pair.together();
        }

        boolean ruledOut() {
            Candidate candidate = bench.candidate(this);
            return candidate.first().ruledOut() || !candidate.isSingle() && (candidate.second().ruledOut() || candidate.ruledOut());
        }
    }

    Moves answer() {
        List<List<Trial>> byRemedy = new ArrayList<>();
        for (Remedy remedy : complaint.moves()) {
            List<Trial> of = applies(remedy) ? trials(remedy) : List.of();
            byRemedy.add(of);
            trials.addAll(of);
        }
        List<Candidate> worthWarning = new ArrayList<>(List.of(bench.candidate(base)));
        trials.stream().filter(trial -> trial.bench == bench && helps(trial)).forEach(trial -> worthWarning.add(bench.candidate(trial)));
        Explainer explainer = new Explainer(scene, now.rules(), worthWarning);
        Option option = explainer.option(1, bench.candidate(base), null);

        List<Moves.Move> all = new ArrayList<>();
        for (int i = 0; i < byRemedy.size(); i++) {
            Remedy remedy = complaint.moves().get(i);
            if (!applies(remedy)) {
                continue;
            }
            Moves.Move move = byRemedy.get(i).isEmpty() ? words(remedy, option) : best(remedy, byRemedy.get(i), option, explainer);
            if (move != null) {
                all.add(move);
            }
        }
        List<Moves.Move> moves = chosen(all);
        return new Moves(Advisor.asked(meaning, scene), complaint.id(), complaint.name(), complaint.says(), option, ruledOut(), moves,
                notes(moves), now.rules().version(), now.catalogue().version());
    }

    /** Three in the order of the catalogue, of which at most one is words alone where others can be computed. */
    private static List<Moves.Move> chosen(List<Moves.Move> all) {
        List<Moves.Move> chosen = new ArrayList<>();
        Moves.Move words = all.stream().filter(move -> move.effect().isEmpty()).findFirst().orElse(null);
        for (Moves.Move move : all) {
            if (chosen.size() < MOST_MOVES && (!move.effect().isEmpty() || move == words)) {
                chosen.add(move);
            }
        }
        for (Moves.Move move : all) {
            if (chosen.size() < 2 && !chosen.contains(move)) {
                chosen.add(move);
            }
        }
        chosen.sort(Comparator.comparingInt(all::indexOf));
        return List.copyOf(chosen);
    }

    private List<RuledOut> ruledOut() {
        List<RuledOut> out = new ArrayList<>();
        Candidate candidate = bench.candidate(base);
        List<Judged> judged = candidate.isSingle() ? List.of(candidate.first()) : List.of(candidate.first(), candidate.second());
        for (Judged one : judged) {
            one.findings().stream().filter(WhyNotCase::rulesOut).forEach(finding -> out.add(new RuledOut(one.placed().mic().id(),
                    one.placed().pattern(), one.placed().position().id(), finding.rule().id(), now.rules().says(finding, scene.setting()),
                    finding.values())));
        }
        return out.stream().distinct().toList();
    }

    private boolean applies(Remedy remedy) {
        Source source = scene.setting().source();
        boolean anywhere = remedy.sources().isEmpty() && remedy.sourceFamilies().isEmpty();
        boolean here = (anywhere || remedy.sources().contains(source.id()) || remedy.sourceFamilies().contains(source.family()))
                && !remedy.notSourceFamilies().contains(source.family());
        boolean mic = remedy.by() == MoveKind.MIC || remedy.micFamilies().isEmpty()
                || standing.mics().stream().anyMatch(one -> remedy.micFamilies().contains(one.mic().family()));
        boolean danger = remedy.dangers().isEmpty() || standing.mics().stream().anyMatch(one -> reached(one, remedy.dangers()));
        boolean neighbours = complaint.gauge() != Gauge.NEIGHBOURS || !scene.beside().isEmpty();
        boolean two = switch (remedy.by()) {
            case PATHS, SPACING, POLARITY -> !standing.single();
            default -> true;
        };
        return here && mic && danger && two && (neighbours || remedy.unmeasured());
    }

    private static boolean reached(Standing.Mic mic, List<DangerKind> kinds) {
        for (Danger danger : mic.position().dangers()) {
            if (kinds.contains(danger.kind()) && mic.distanceM() <= danger.withinM()) {
                return true;
            }
        }
        return false;
    }

    /** What a remedy comes to here, to be judged; empty where it is words alone. */
    private List<Trial> trials(Remedy remedy) {
        List<Trial> list = new ArrayList<>();
        if (remedy.levelDb() != null && scene.setting().source().level() != null) {
            Bench softer = new Bench(Louder.by(remedy.levelDb(), scene));
            list.add(softer.trial(remedy, order().get(0), standing.mics(), false));
            return list;
        }
        for (int mic : order()) {
            Standing.Mic one = standing.mics().get(mic - 1);
            if (remedy.by() == MoveKind.SCREEN || remedy.by() == MoveKind.POLARITY) {
                continue;
            }
            if (remedy.by() == MoveKind.PATHS) {
                paths(remedy, mic, list);
            } else if (remedy.by() == MoveKind.SPACING) {
                spacing(remedy, mic, list);
            } else if (!remedy.factors().isEmpty()) {
                remedy.factors().forEach(factor -> distance(remedy, mic, one.distanceM() * factor, list));
            } else if (!remedy.turnsDegrees().isEmpty()) {
                turns(remedy, mic, list);
            } else if (remedy.by() == MoveKind.POSITION) {
                positions(remedy, mic, list);
            } else if (remedy.by() == MoveKind.PATTERN) {
                one.mic().patterns().stream().filter(pattern -> pattern != one.pattern()
                                && (remedy.patterns().isEmpty() || remedy.patterns().contains(pattern.pattern())))
                        .forEach(pattern -> moved(remedy, mic, one.in(pattern), list));
            } else if (remedy.by() == MoveKind.MIC) {
                mics(remedy, mic, list);
            }
        }
        return list;
    }

    /** Of two, the one that shows the complaint more comes first. */
    private List<Integer> order() {
        if (standing.single()) {
            return List.of(1);
        }
        Double first = micGauge(base.placed.get(0));
        Double second = micGauge(base.placed.get(1));
        boolean secondWorse = first == null || second != null && (complaint.more() ? second < first : second > first);
        return secondWorse ? List.of(2, 1) : List.of(1, 2);
    }

    private Arrangement arrangement() {
        return standing.single() ? null : technique().arrangement();
    }

    private Technique technique() {
        return scene.catalogue().techniques().get(standing.recipe().technique());
    }

    private boolean moveTogether() {
        return switch (arrangement()) {
            case SAME_SPOT, COINCIDENT, NEAR_COINCIDENT, SPACED, MID_SIDE -> true;
            default -> false;
        };
    }

    private void distance(Remedy remedy, int mic, double wantedM, List<Trial> list) {
        Standing.Mic one = standing.mics().get(mic - 1);
        if (Standing.wired(one.position())) {
            return;
        }
        // what a place allows, unless the microphone stands beyond that already; nothing stands in the way of going back
        double leastM = Math.min(one.distanceM(), one.position().distanceM().low());
        double mostM = Math.max(one.distanceM(), one.position().distanceM().high() * (free(one.position().mount()) ? BACK : 1));
        double distanceM = Math.max(leastM, Math.min(mostM, wantedM));
        if (Math.max(distanceM / one.distanceM(), one.distanceM() / distanceM) < SAME_DISTANCE) {
            return;
        }
        if (!standing.single() && moveTogether()) {
            list.add(bench.trial(remedy, mic, standing.mics().stream().map(each -> each.at(distanceM)).toList(), false));
        } else {
            moved(remedy, mic, one.at(distanceM), list);
        }
    }

    private static boolean free(Mount mount) {
        return mount == Mount.STAND || mount == Mount.BOOM || mount == Mount.OVERHEAD;
    }

    private void turns(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = standing.mics().get(mic - 1);
        boolean turns = Placements.turns(one.pattern()) && (standing.single() || !technique().stereo());
        if (!turns || Standing.wired(one.position())) {
            return;
        }
        double most = Math.max(Placements.MOST_TURN_DEGREES, one.position().aimDegrees().high());
        for (double turn : remedy.turnsDegrees()) {
            for (double degrees : complaint.gauge() == Gauge.NEIGHBOURS && turn > 0 ? new double[] {turn, -turn} : new double[] {turn}) {
                if (Math.abs(degrees) <= most && Math.abs(degrees - one.aimDegrees()) >= 1) {
                    moved(remedy, mic, one.turned(degrees), list);
                }
            }
        }
    }

    private void positions(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = standing.mics().get(mic - 1);
        if (!standing.single()) {
            return; // the places of a pair are the pair
        }
        for (Position position : scene.setting().source().positions()) {
            if (!position.id().equals(one.position().id()) && !position.notAlone() && Placements.fits(one.mic(), position)
                    && Placements.sensible(scene, position)) {
                for (double distanceM : Placements.distances(position)) {
                    moved(remedy, mic, new Standing.Mic(one.mic(), one.pattern(), position, distanceM, position.aimDegrees().low()), list);
                }
            }
        }
    }

    private void mics(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = standing.mics().get(mic - 1);
        int others = standing.mics().stream().mapToInt(each -> each.mic().channels()).sum() - one.mic().channels();
        for (MicType other : scene.catalogue().mics().values()) {
            if (!other.captures() || other.id().equals(one.mic().id()) || !Placements.within(scene.question().limits(), other)
                    || other.channels() + others > scene.setting().channels() || !Placements.fits(other, one.position())
                    || !remedy.micFamilies().isEmpty() && !remedy.micFamilies().contains(other.family())
                    || !standing.single() && (other.channels() > 1 || !named(mic, other))) {
                continue;
            }
            for (PatternData pattern : other.patterns()) {
                double aimDegrees = Placements.turns(pattern) || one.aimDegrees() == Placements.SIDE_DEGREES ? one.aimDegrees() : one.position().aimDegrees().low();
                moved(remedy, mic, new Standing.Mic(other, pattern, one.position(), one.distanceM(), aimDegrees), list);
            }
        }
    }

    private boolean named(int mic, MicType other) {
        PairRecipe.Part part = mic == 1 ? standing.recipe().first() : standing.recipe().second();
        return part.micTypes().isEmpty() || part.micTypes().contains(other.id());
    }

    private void moved(Remedy remedy, int mic, Standing.Mic to, List<Trial> list) {
        if (!remedy.dangers().isEmpty() && reached(to, remedy.dangers())) {
            return; // it is to be moved out of reach
        }
        List<Standing.Mic> mics = new ArrayList<>(standing.mics());
        mics.set(mic - 1, to);
        if (!standing.single()) {
            Technique technique = technique();
            if (technique.sameType()) {
                Standing.Mic other = mics.get(2 - mic);
                mics.set(2 - mic, new Standing.Mic(to.mic(), to.pattern(), other.position(), other.distanceM(), other.aimDegrees()));
            }
            if (!allowed(technique.firstPatterns(), mics.get(0)) || !allowed(technique.secondPatterns(), mics.get(1))) {
                return;
            }
        }
        list.add(bench.trial(remedy, mic, List.copyOf(mics), false));
    }

    private static boolean allowed(List<Pattern> patterns, Standing.Mic mic) {
        return patterns.isEmpty() || patterns.contains(mic.pattern().pattern());
    }

    private static double pathM(Standing.Mic mic) {
        return mic.distanceM() + (mic.position().pathM() == null ? 0 : mic.position().pathM());
    }

    private void paths(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = standing.mics().get(mic - 1);
        Standing.Mic other = standing.mics().get(2 - mic);
        if (moveTogether() || Standing.wired(one.position()) || Standing.wired(other.position())) {
            return;
        }
        double distanceM = pathM(other) - (one.position().pathM() == null ? 0 : one.position().pathM());
        if (distanceM >= one.position().distanceM().low() && distanceM <= one.position().distanceM().high()) {
            distance(remedy, mic, distanceM, list);
        }
    }

    private void spacing(Remedy remedy, int mic, List<Trial> list) {
        Standing.Mic one = standing.mics().get(mic - 1);
        Standing.Mic other = standing.mics().get(2 - mic);
        if (!moveTogether() && !Standing.wired(other.position()) && one.distanceM() >= other.distanceM()) {
            remedy.factors().forEach(factor -> distance(remedy, mic, other.distanceM() * factor, list));
        }
    }

    /** How much of the complaint a microphone shows; null where no number tells. */
    private Double micGauge(Placed placed) {
        Predicted predicted = placed.predicted();
        return switch (complaint.gauge()) {
            case TONE -> Band.mean(predicted.colourDb(), scene.weights(), band(complaint.fromHz()), band(complaint.toHz()));
            case ROOM -> predicted.directToReverbDb();
            case NEIGHBOURS -> predicted.separationDb();
            case NOISE -> predicted.signalToNoiseDb();
            case HEADROOM -> predicted.headroomDb();
            case COMB -> predicted.directToReverbDb() == null ? null : -predicted.directToReverbDb();
            case NONE -> null;
        };
    }

    private Double gauge(Trial trial, int mic) {
        if (complaint.gauge() == Gauge.COMB && trial.pair != null) {
            return trial.together().firstNullHz() == null ? 0 : trial.together().rippleDb();
        }
        return micGauge(trial.placed.get(Math.max(0, mic - 1)));
    }

    private static int band(double hz) {
        int nearest = 0;
        for (int band = 1; band < Band.COUNT; band++) {
            if (Math.abs(Math.log(Octaves.centreHz(band) / hz)) < Math.abs(Math.log(Octaves.centreHz(nearest) / hz))) {
                nearest = band;
            }
        }
        return nearest;
    }

    /** How much better it gets; null where no number tells. */
    private Double gainDb(Trial trial) {
        Double before = gauge(base, trial.mic);
        Double after = gauge(trial, trial.mic);
        return before == null || after == null ? null : complaint.more() ? after - before : before - after;
    }

    private boolean helps(Trial trial) {
        Double gain = gainDb(trial);
        boolean better = complaint.gauge() == Gauge.NONE || (gain == null ? trial.remedy.unmeasured()
                : gain >= (trial.remedy.unmeasured() ? -complaint.leastDb() : complaint.leastDb()));
        return better && !trial.ruledOut();
    }

    /** Distances and turns in the order they are named; of places, patterns and types the best by the rules. */
    private Moves.Move best(Remedy remedy, List<Trial> of, Option option, Explainer explainer) {
        List<Trial> helping = new ArrayList<>(of.stream().filter(this::helps).toList());
        boolean byScore = switch (remedy.by()) {
            case POSITION, PATTERN, MIC -> true;
            default -> false;
        };
        long score = bench.candidate(base).centipoints();
        if (byScore) {
            // what scores below nothing is no advice, unless what stands there does as well
            helping.removeIf(trial -> score > 0 && trial.bench.candidate(trial).centipoints() <= 0);
            helping.sort(Comparator.<Trial>comparingLong(trial -> -trial.bench.candidate(trial).centipoints())
                    .thenComparingInt(of::indexOf));
        } else if (complaint.gauge() == Gauge.NEIGHBOURS && remedy.by() == MoveKind.ANGLE) {
            helping.sort(Comparator.<Trial>comparingDouble(trial -> -gainDb(trial)).thenComparingInt(of::indexOf));
        }
        for (Trial trial : helping) {
            Candidate candidate = trial.bench.candidate(trial);
            Explainer own = trial.bench == bench ? explainer : new Explainer(trial.bench.scene, now.rules(), List.of(candidate));
            Option then = own.option(1, candidate, null);
            List<Caution> fresh = fresh(option, then);
            if (fresh.stream().noneMatch(caution -> caution.severity() == Severity.DANGER)) {
                return new Moves.Move(remedy.by(), trial.mic, remedy.says(), remedy.why(), change(trial), effect(trial), changed(trial),
                        (candidate.centipoints() - score) / 100.0, fresh, then);
            }
        }
        return null;
    }

    private static List<Caution> fresh(Option before, Option after) {
        Set<String> known = new HashSet<>();
        before.cautions().forEach(caution -> known.add(caution.rule() + caution.mic()));
        return after.cautions().stream().filter(caution -> !known.contains(caution.rule() + caution.mic())).toList();
    }

    /** A move that leaves the microphones where they are. What can be computed of it is told all the same. */
    private Moves.Move words(Remedy remedy, Option option) {
        String effect = "";
        int mic = standing.single() ? 1 : 0;
        String change = "";
        switch (remedy.by()) {
            case SCREEN -> {
                Double most = roomAllowsDb(option);
                Double here = base.placed.get(0).predicted().separationDb();
                if (most == null || here == null || most - here < complaint.leastDb()) {
                    return null;
                }
                effect = "from " + over(here) + " the neighbours to " + over(most) + " them at the very best, for more the room does not allow";
            }
            case GAIN -> {
                Predicted predicted = base.placed.get(0).predicted();
                if (predicted.gainDb() == null) {
                    return null;
                }
                double padDb = base.placed.get(0).padDb();
                effect = "about " + figure(predicted.gainDb()) + " dB of gain is right here"
                        + (padDb > 0 ? ", with the pad of " + figure(padDb) + " dB in" : "");
            }
            case POLARITY -> {
                Double firstNullHz = base.together().firstNullHz();
                change = "second channel " + (base.pair.secondInverted() ? "inverted -> as it comes" : "as it comes -> inverted");
                if (firstNullHz != null) {
                    effect = "the first gap lies at " + Figure.forPeople(firstNullHz, "Hz") + " with both the same way round and at "
                            + Figure.forPeople(2 * firstNullHz, "Hz") + " with one turned over, which also takes out the bass below about "
                            + Figure.forPeople(firstNullHz / 3, "Hz");
                }
            }
            case PLAYER, INSTRUMENT, ROOM, FITTING -> {
                if (!remedy.factors().isEmpty() || remedy.levelDb() != null) {
                    return null; // it was tried, and there is no room for it
                }
            }
            default -> {
                return null;
            }
        }
        return new Moves.Move(remedy.by(), mic, remedy.says(), remedy.why(), change, effect, null, null, List.of(), null);
    }

    /** What would be left if nothing of the neighbours came straight. */
    private static Double roomAllowsDb(Option option) {
        double power = 0;
        for (Heard heard : option.mics().get(0).neighbours()) {
            power += heard.roomAllowsDb() == null ? 0 : Math.pow(10, -heard.roomAllowsDb() / 10);
        }
        return power == 0 ? null : -10 * Math.log10(power);
    }

    private String change(Trial trial) {
        if (trial.bench != bench) {
            return "source " + figure(trial.remedy.levelDb()) + " dB";
        }
        Standing.Mic from = standing.mics().get(trial.mic - 1);
        Standing.Mic to = trial.mics.get(trial.mic - 1);
        List<String> parts = new ArrayList<>();
        if (!from.mic().id().equals(to.mic().id())) {
            parts.add(Nested.named(from.mic()) + " -> " + Nested.named(to.mic()));
        }
        if (from.pattern().pattern() != to.pattern().pattern()) {
            parts.add(from.pattern().pattern().id() + " -> " + to.pattern().pattern().id());
        }
        if (!from.position().id().equals(to.position().id())) {
            parts.add(Naming.small(from.position().name()) + " -> " + Naming.small(to.position().name()));
        }
        if (from.distanceM() != to.distanceM()) {
            parts.add(fromTo(from.distanceM(), to.distanceM()));
        }
        if (from.aimDegrees() != to.aimDegrees() && from.position().id().equals(to.position().id())) {
            parts.add(aim(from.aimDegrees()) + " -> " + aim(to.aimDegrees()));
        }
        return String.join("; ", parts);
    }

    private static String fromTo(double fromM, double toM) {
        String from = Figure.forPeople(fromM, "m");
        String to = Figure.forPeople(toM, "m");
        String unit = from.substring(from.indexOf(' '));
        return (to.endsWith(unit) && to.substring(to.indexOf(' ')).equals(unit) ? from.substring(0, from.indexOf(' ')) : from) + " -> " + to;
    }

    private static String aim(double degrees) {
        return degrees == 0 ? "straight" : Math.round(Math.abs(degrees)) + " degrees " + (degrees < 0 ? "toward the neighbour" : "off");
    }

    private Moves.Changed changed(Trial trial) {
        Predicted before = base.placed.get(Math.max(0, trial.mic - 1)).predicted();
        Predicted after = trial.moved().predicted();
        return new Moves.Changed(
                after.colourDb().minus(before.colourDb()),
                difference(after.typicalDbSpl(), before.typicalDbSpl()),
                after.proximityDb() - before.proximityDb(),
                difference(after.directToReverbDb(), before.directToReverbDb()),
                difference(after.separationDb(), before.separationDb()),
                difference(after.signalToNoiseDb(), before.signalToNoiseDb()),
                difference(after.headroomDb(), before.headroomDb()),
                difference(after.gainDb(), before.gainDb()),
                trial.pair == null ? null : trial.together().rippleDb() - base.together().rippleDb(),
                trial.pair == null ? null : trial.together().firstNullHz());
    }

    private static Double difference(Double after, Double before) {
        return after == null || before == null ? null : after - before;
    }

    private String effect(Trial trial) {
        Moves.Changed changed = changed(trial);
        List<String> parts = new ArrayList<>();
        if (complaint.gauge() == Gauge.TONE && gainDb(trial) != null && Math.abs(gainDb(trial)) >= NEXT_TO_NOTHING_DB) {
            parts.add(tone(trial, changed));
        }
        if (trial.pair != null && complaint.gauge() == Gauge.COMB) {
            parts.add(comb(trial));
        }
        Predicted after = trial.moved().predicted();
        if (complaint.gauge() == Gauge.HEADROOM) {
            parts.add(figure(changed.headroomDb() == null ? 0 : changed.headroomDb()) + " dB more in hand, " + figure(after.headroomDb()) + " then");
        } else if (after.headroomDb() != null && after.headroomDb() < LITTLE_HEADROOM_DB && worth(changed.headroomDb())) {
            parts.add("leaves " + figure(after.headroomDb()) + " dB in hand");
        }
        told(changed.directToReverbDb(), "less room", "more room", parts);
        told(changed.separationDb(), "less of the neighbours", "more of the neighbours", parts);
        if (complaint.gauge() == Gauge.NOISE || changed.signalToNoiseDb() != null && changed.signalToNoiseDb() < 0) {
            told(changed.signalToNoiseDb(), "farther from the noise", "nearer to the noise", parts);
        }
        aside(Band.HZ_125, changed.colourDb(), parts);
        aside(Band.HZ_4000, changed.colourDb(), parts);
        aside(Band.HZ_8000, changed.colourDb(), parts);
        return parts.isEmpty() ? "no number that is predicted changes by a decibel" : String.join(", ", parts);
    }

    /** The octave of the complaint that changes most the way that is wanted; of closeness the 100 Hz everybody speaks of. */
    private String tone(Trial trial, Moves.Changed changed) {
        int from = band(complaint.fromHz());
        int to = band(complaint.toHz());
        boolean closeness = complaint.fromHz() <= PROXIMITY_HZ && complaint.toHz() >= PROXIMITY_HZ && worth(changed.proximityDb())
                && trial.mics.get(trial.mic - 1).distanceM() != standing.mics().get(trial.mic - 1).distanceM()
                && trial.mics.get(trial.mic - 1).position().id().equals(standing.mics().get(trial.mic - 1).position().id());
        if (closeness) {
            return figure(Math.abs(changed.proximityDb())) + " dB " + (changed.proximityDb() < 0 ? "less" : "more") + " at 100 Hz";
        }
        int most = from;
        for (int band = from + 1; band <= to; band++) {
            double here = changed.colourDb().at(band) * (complaint.more() ? 1 : -1);
            double before = changed.colourDb().at(most) * (complaint.more() ? 1 : -1);
            most = here * scene.weights().at(band) > before * scene.weights().at(most) ? band : most;
        }
        double db = changed.colourDb().at(most);
        return figure(Math.abs(db)) + " dB " + (db < 0 ? "less" : "more") + " at " + Figure.forPeople(Octaves.centreHz(most), "Hz");
    }

    private String comb(Trial trial) {
        Together before = base.together();
        Together after = trial.together();
        String gap = before.firstNullHz() == null ? "" : " from " + Figure.forPeople(before.firstNullHz(), "Hz");
        return after.firstNullHz() == null ? "the first gap goes" + gap + " to nowhere, for both hear it at once"
                : "the first gap goes" + gap + " to " + Figure.forPeople(after.firstNullHz(), "Hz") + " and the ripple from "
                        + figure(before.rippleDb()) + " to " + figure(after.rippleDb()) + " dB";
    }

    private static boolean worth(Double db) {
        return db != null && Math.abs(db) >= WORTH_TELLING_DB;
    }

    private static void told(Double db, String more, String less, List<String> parts) {
        if (worth(db)) {
            parts.add(figure(Math.abs(db)) + " dB " + (db > 0 ? more : less));
        }
    }

    /** What else changes of the tone, outside what was complained of. */
    private void aside(int band, OctaveCurve colourDb, List<String> parts) {
        boolean asked = complaint.gauge() == Gauge.TONE && band >= band(complaint.fromHz()) && band <= band(complaint.toHz());
        if (!asked && Math.abs(colourDb.at(band)) >= 1.5 * WORTH_TELLING_DB && scene.weights().at(band) > 0) {
            parts.add(figure(Math.abs(colourDb.at(band))) + " dB " + (colourDb.at(band) < 0 ? "less" : "more") + " at "
                    + Figure.forPeople(Octaves.centreHz(band), "Hz"));
        }
    }

    private static String figure(double db) {
        String shown = Figure.forPeople(db, "dB");
        return shown.substring(0, shown.length() - " dB".length());
    }

    private static String over(double db) {
        return figure(Math.abs(db)) + " dB " + (db < 0 ? "under" : "over");
    }

    private List<String> notes(List<Moves.Move> moves) {
        List<String> notes = new ArrayList<>();
        Double here = gauge(base, order().get(0));
        if (complaint.gauge() == Gauge.NEIGHBOURS && scene.beside().isEmpty()) {
            notes.add("The question names no neighbour, so nothing can be computed of it: add neighbours with distance and angle.");
        } else if (here != null) {
            notes.add(switch (complaint.gauge()) {
                case TONE -> "By the numbers the set-up has " + figure(Math.abs(here)) + " dB " + (here < 0 ? "less" : "more") + " than the source itself "
                        + (complaint.fromHz().equals(complaint.toHz()) ? "at " : "from " + Figure.forPeople(complaint.fromHz(), "Hz") + " to ")
                        + Figure.forPeople(complaint.toHz(), "Hz") + ".";
                case ROOM -> "By the numbers the source is " + over(here) + " the room.";
                case NEIGHBOURS -> "By the numbers the source is " + over(here) + " its neighbours.";
                case NOISE -> "By the numbers the source is " + over(here) + " the noise.";
                case HEADROOM -> "By the numbers there are " + figure(here) + " dB in hand at the loudest peak.";
                case COMB -> base.pair == null ? "One microphone combs only with what comes back from a surface near it."
                        : base.together().firstNullHz() == null ? "By the numbers the two hear it at once and cannot comb."
                        : "By the numbers the first gap lies at " + Figure.forPeople(base.together().firstNullHz(), "Hz") + ".";
                case NONE -> "";
            });
        }
        if (moves.stream().noneMatch(move -> move.changed() != null) && complaint.gauge() != Gauge.NONE) {
            notes.add("No move of the microphone that the rules allow changes it enough to be told in numbers.");
        }
        return List.copyOf(notes);
    }
}
