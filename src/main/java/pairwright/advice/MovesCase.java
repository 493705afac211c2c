package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pairwright.model.Caution;
import pairwright.model.Complaint;
import pairwright.model.Gauge;
import pairwright.model.Meaning;
import pairwright.model.MoveKind;
import pairwright.model.Moves;
import pairwright.model.Option;
import pairwright.model.Remedy;
import pairwright.model.Severity;
import pairwright.model.Source;

/** One set-up and one complaint: tries the moves the catalogue names, predicts and judges each, and keeps the first that help. */
final class MovesCase {
    /** More than a player waits through. */
    private static final int MOST_MOVES = 3;

    private final Knowledge now;
    private final Meaning meaning;
    private final Scene scene;
    private final Standing standing;
    private final Complaint complaint;
    private final Trial base;
    private final ComplaintGauge gauge;
    private final MoveTrials finder;
    private final MoveWords words;

    MovesCase(Knowledge now, Meaning meaning, Scene scene, Standing standing, Complaint complaint) {
        this.now = now;
        this.meaning = meaning;
        this.scene = scene;
        this.standing = standing;
        this.complaint = complaint;
        Bench bench = new Bench(now, standing, scene);
        this.base = bench.trial(null, 0, standing.mics());
        this.gauge = new ComplaintGauge(complaint, scene.weights());
        this.finder = new MoveTrials(complaint, gauge, new Rig(standing, bench), base);
        this.words = new MoveWords(complaint, gauge, base);
    }

    Moves answer() {
        List<Trial> trials = new ArrayList<>();
        List<List<Trial>> byRemedy = new ArrayList<>();
        for (Remedy remedy : complaint.moves()) {
            List<Trial> of = applies(remedy) ? finder.of(remedy) : List.of();
            byRemedy.add(of);
            trials.addAll(of);
        }
        List<Candidate> worthWarning = new ArrayList<>(List.of(base.candidate()));
        trials.stream().filter(trial -> trial.bench() == base.bench() && gauge.helps(base, trial)).forEach(trial -> worthWarning.add(trial.candidate()));
        Explainer explainer = new Explainer(scene, now.rules(), worthWarning);
        Option option = explainer.option(1, base.candidate(), null);

        List<Moves.Move> all = new ArrayList<>();
        for (int i = 0; i < byRemedy.size(); i++) {
            Remedy remedy = complaint.moves().get(i);
            if (!applies(remedy)) {
                continue;
            }
            Moves.Move move = byRemedy.get(i).isEmpty() ? new StillMoves(complaint, base).of(remedy, option)
                    : best(remedy, byRemedy.get(i), option, explainer);
            if (move != null) {
                all.add(move);
            }
        }
        List<Moves.Move> moves = chosen(all);
        return new Moves(Advisor.asked(meaning, scene), complaint.id(), complaint.name(), complaint.says(), option,
                SetUpJudge.ruledOut(base.candidate(), scene, now), moves,
                new MoveNotes(complaint, base).of(moves, gauge.of(base, finder.order().get(0))), now.rules().version(), now.catalogue().version());
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

    /** Whether it is a move for this source, these microphones, and what is beside them. */
    private boolean applies(Remedy remedy) {
        Source source = scene.setting().source();
        boolean anywhere = remedy.sources().isEmpty() && remedy.sourceFamilies().isEmpty();
        boolean here = (anywhere || remedy.sources().contains(source.id()) || remedy.sourceFamilies().contains(source.family()))
                && !remedy.notSourceFamilies().contains(source.family());
        boolean mic = remedy.by() == MoveKind.MIC || remedy.micFamilies().isEmpty()
                || standing.mics().stream().anyMatch(one -> remedy.micFamilies().contains(one.mic().family()));
        boolean danger = remedy.dangers().isEmpty() || standing.mics().stream().anyMatch(one -> one.reachedBy(remedy.dangers()));
        boolean neighbours = complaint.gauge() != Gauge.NEIGHBOURS || !scene.others().isEmpty();
        boolean two = switch (remedy.by()) {
            case PATHS, SPACING, POLARITY -> !standing.single() && !base.pair().technique().stereo(); // a stereo pair faces the source as one
            default -> true;
        };
        return here && mic && danger && two && (neighbours || remedy.unmeasured());
    }

    /** Distances and turns in the order they are named; of places, patterns and types the best by the rules. */
    private Moves.Move best(Remedy remedy, List<Trial> of, Option option, Explainer explainer) {
        List<Trial> helping = new ArrayList<>(of.stream().filter(trial -> gauge.helps(base, trial)).toList());
        boolean byScore = switch (remedy.by()) {
            case POSITION, PATTERN, MIC -> true;
            default -> false;
        };
        long score = base.candidate().centipoints();
        if (byScore) {
            // what scores below nothing is no advice, unless what stands there does as well
            helping.removeIf(trial -> score > 0 && trial.candidate().centipoints() <= 0);
            helping.sort(Comparator.<Trial>comparingLong(trial -> -trial.candidate().centipoints())
                    .thenComparingInt(of::indexOf));
        } else if (complaint.gauge() == Gauge.NEIGHBOURS && remedy.by() == MoveKind.ANGLE) {
            helping.sort(Comparator.<Trial>comparingDouble(trial -> -gauge.gainDb(base, trial)).thenComparingInt(of::indexOf));
        }
        for (Trial trial : helping) {
            Candidate candidate = trial.candidate();
            Explainer own = trial.bench() == base.bench() ? explainer : new Explainer(trial.bench().scene(), now.rules(), List.of(candidate));
            Option then = own.option(1, candidate, null);
            List<Caution> fresh = fresh(option, then);
            if (fresh.stream().noneMatch(caution -> caution.severity() == Severity.DANGER)) {
                return new Moves.Move(remedy.by(), trial.mic(), remedy.says(), remedy.why(), words.change(trial), words.effect(trial), trial.changedFrom(base),
                        (candidate.centipoints() - score) / 100.0, fresh, then);
            }
        }
        return null;
    }

    /** What must be minded after and need not be before. */
    private static List<Caution> fresh(Option before, Option after) {
        Set<String> known = new HashSet<>();
        before.cautions().forEach(caution -> known.add(caution.rule() + caution.mic()));
        return after.cautions().stream().filter(caution -> !known.contains(caution.rule() + caution.mic())).toList();
    }
}
