package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Complaint;
import pairwright.model.Gauge;
import pairwright.model.Remedy;

/** What a remedy comes to at a set-up: the set-ups to be judged. */
final class MoveTrials {
    private final Complaint complaint;
    private final ComplaintGauge gauge;
    private final Bench bench;
    private final Rig rig;
    private final Trial base;
    private final DistanceTrials distances;
    private final AimTrials aims;
    private final ExchangeTrials exchanges;

    MoveTrials(Complaint complaint, ComplaintGauge gauge, Rig rig, Trial base) {
        this.complaint = complaint;
        this.gauge = gauge;
        this.bench = base.bench();
        this.rig = rig;
        this.base = base;
        this.distances = new DistanceTrials(rig);
        this.aims = new AimTrials(rig);
        this.exchanges = new ExchangeTrials(rig);
    }

    /** In the order they are tried; empty where it is words alone, or where there is no room for it. */
    List<Trial> of(Remedy remedy) {
        List<Trial> list = new ArrayList<>();
        if (remedy.levelDb() != null && rig.scene().setting().source().level() != null) {
            Bench softer = bench.in(Louder.by(remedy.levelDb(), rig.scene()));
            list.add(softer.trial(remedy, order().get(0), rig.mics()));
            return list;
        }
        order().forEach(mic -> add(remedy, mic, list));
        return list;
    }

    private void add(Remedy remedy, int mic, List<Trial> list) {
        switch (remedy.by()) {
            case SCREEN, POLARITY -> {
            }
            case PATHS -> distances.paths(remedy, mic, list);
            case SPACING -> distances.spacing(remedy, mic, list);
            default -> {
                if (!remedy.factors().isEmpty()) {
                    distances.factors(remedy, mic, list);
                } else if (!remedy.turnsDegrees().isEmpty()) {
                    aims.turns(remedy, mic, complaint.gauge() == Gauge.NEIGHBOURS, list);
                } else {
                    exchange(remedy, mic, list);
                }
            }
        }
    }

    private void exchange(Remedy remedy, int mic, List<Trial> list) {
        switch (remedy.by()) {
            case POSITION -> exchanges.positions(remedy, mic, list);
            case PATTERN -> exchanges.patterns(remedy, mic, list);
            case MIC -> exchanges.mics(remedy, mic, list);
            default -> {
            }
        }
    }

    /** Of two, the one that shows the complaint more comes first; a tone that only one of them has is mended there and nowhere else. */
    List<Integer> order() {
        if (rig.single()) {
            return List.of(1);
        }
        Double first = gauge.of(base.placed().get(0));
        Double second = gauge.of(base.placed().get(1));
        boolean secondWorse = first == null || second != null && (complaint.more() ? second < first : second > first);
        boolean onlyOne = complaint.gauge() == Gauge.TONE && first != null && second != null && Math.abs(first - second) > complaint.leastDb();
        int worse = secondWorse ? 2 : 1;
        return onlyOne ? List.of(worse) : List.of(worse, 3 - worse);
    }
}
