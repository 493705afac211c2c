package pairwright.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.MicType;
import pairwright.model.Position;
import pairwright.model.Range;
import pairwright.rules.Finding;
import pairwright.rules.Paired;
import pairwright.rules.Placed;
import pairwright.rules.RuleBase;

/** A few set-ups, everything about them that is not known for certain, and their scores when that is set to this or that. */
final class Doubts {
    private final Scene scene;
    private final RuleBase rules;
    private final List<Candidate> setUps;
    private final List<Unknown> unknowns = new ArrayList<>();
    private final Map<String, MicType> mics = new LinkedHashMap<>();
    private final Map<String, Position> positions = new LinkedHashMap<>();
    private final Set<Placed> placements = new LinkedHashSet<>();

    Doubts(Scene scene, RuleBase rules, List<Candidate> setUps) {
        this.scene = scene;
        this.rules = rules;
        this.setUps = setUps;
        for (Candidate candidate : setUps) {
            add(candidate.first().placed());
            if (!candidate.isSingle()) {
                add(candidate.second().placed());
            }
        }
        list();
    }

    private void add(Placed placed) {
        placements.add(placed);
        mics.put(placed.mic().id(), placed.mic());
        positions.put(placed.position().id(), placed.position());
    }

    private void list() {
        if (scene.setting().source().level() != null) {
            unknowns.add(new Unknown(Unknown.Kind.LEVEL, null, 0));
            unknowns.add(new Unknown(Unknown.Kind.SOURCE_TONE, null, 0));
            if (!scene.setting().room().outdoors()) {
                unknowns.add(new Unknown(Unknown.Kind.REVERBERATION, null, 0));
            }
        }
        for (int i = 0; i < scene.others().size(); i++) {
            unknowns.add(new Unknown(Unknown.Kind.NEIGHBOUR_LEVEL, scene.others().get(i).source().id(), i));
        }
        for (MicType mic : mics.values()) {
            unknowns.add(new Unknown(Unknown.Kind.TYPE_TONE, mic.id(), 0));
            if (mic.maxDbSpl() != null) {
                unknowns.add(new Unknown(Unknown.Kind.TYPE_LIMIT, mic.id(), 0));
            }
            if (mic.selfNoiseDba() != null) {
                unknowns.add(new Unknown(Unknown.Kind.TYPE_NOISE, mic.id(), 0));
            }
            if (mic.sensitivityMvPerPa() != null) {
                unknowns.add(new Unknown(Unknown.Kind.TYPE_SENSITIVITY, mic.id(), 0));
            }
        }
        positions.keySet().forEach(id -> unknowns.add(new Unknown(Unknown.Kind.PLACE_TONE, id, 0)));
    }

    /** Everything that is not known for certain, in a stable order. */
    List<Unknown> unknowns() {
        return unknowns;
    }

    /**
     * The set-ups as they would score.
     *
     * @param values for each unknown, -1 to 1
     * @return in the order of the set-ups; null for one that is ruled out then
     */
    List<Candidate> judged(double[] values) {
        Drawn drawn = new Drawn(values);
        Placements again = new Placements(drawn.scene());
        Map<Placed, Placed> placed = new IdentityHashMap<>();
        placements.forEach(old -> placed.put(old, again.again(old, drawn.mic(old.mic()), drawn.position(old.position()))));
        Map<Candidate, Paired> pairs = new IdentityHashMap<>();
        List<Object> subjects = new ArrayList<>(placements.size() + setUps.size());
        placements.forEach(old -> subjects.add(placed.get(old)));
        for (Candidate candidate : setUps) {
            if (!candidate.isSingle()) {
                Paired pair = Pairs.again(drawn.scene(), candidate.pair(), placed.get(candidate.first().placed()), placed.get(candidate.second().placed()));
                pairs.put(candidate, pair);
                subjects.add(pair);
            }
        }
        Map<Object, List<Finding>> findings = new IdentityHashMap<>();
        subjects.forEach(subject -> findings.put(subject, new ArrayList<>()));
        for (Finding finding : rules.score(drawn.scene().setting(), subjects)) {
            List<Finding> found = findings.get(finding.subject());
            if (found != null) {
                found.add(finding);
            }
        }
        Map<Placed, Judged> judged = new IdentityHashMap<>();
        placements.forEach(old -> judged.put(old, Judged.of(placed.get(old), findings.get(placed.get(old)))));
        List<Candidate> scored = new ArrayList<>(setUps.size());
        for (Candidate candidate : setUps) {
            Judged first = judged.get(candidate.first().placed());
            Candidate now = candidate.isSingle() ? Candidate.of(first)
                    : Candidate.of(first, judged.get(candidate.second().placed()), pairs.get(candidate), findings.get(pairs.get(candidate)));
            boolean out = first.ruledOut() || !candidate.isSingle() && (now.second().ruledOut() || now.ruledOut());
            scored.add(out ? null : now);
        }
        return scored;
    }

    /** What an unknown reads at a value, in the unit of its kind. */
    double reading(Unknown unknown, double value) {
        return switch (unknown.kind()) {
            case LEVEL -> scene.setting().peakDbSpl() + value * scene.setting().source().level().toleranceDb();
            case SOURCE_TONE -> value * Unknown.tiltDb(scene.setting().source().confidence());
            case REVERBERATION -> scene.setting().room().reverbTimeS() * ringing(value);
            case NEIGHBOUR_LEVEL -> neighbourDbSpl(unknown.place()) + value * neighbourToleranceDb(unknown.place());
            case TYPE_TONE -> value * Unknown.tiltDb(mics.get(unknown.of()).confidence());
            case TYPE_LIMIT -> mics.get(unknown.of()).maxDbSpl().moved(value).typical();
            case TYPE_NOISE -> mics.get(unknown.of()).selfNoiseDba().moved(value).typical();
            case TYPE_SENSITIVITY -> mics.get(unknown.of()).sensitivityMvPerPa().moved(value).typical();
            case PLACE_TONE -> value * Unknown.tiltDb(scene.setting().source().confidence());
        };
    }

    /** A name for a sentence: of a neighbour, a type or a position. */
    String name(Unknown unknown) {
        return switch (unknown.kind()) {
            case NEIGHBOUR_LEVEL -> scene.catalogue().sources().get(unknown.of()).name();
            case PLACE_TONE -> positions.get(unknown.of()).name();
            case TYPE_TONE, TYPE_LIMIT, TYPE_NOISE, TYPE_SENSITIVITY -> mics.get(unknown.of()).name();
            default -> scene.setting().source().name();
        };
    }

    private double neighbourDbSpl(int place) {
        return scene.others().get(place).source().level().typicalDbSpl();
    }

    private double neighbourToleranceDb(int place) {
        return scene.others().get(place).source().level().toleranceDb();
    }

    private double ringing(double value) {
        return 1 + value * Unknown.ringingShare(scene.setting().room().confidence());
    }

    /** One draw: the scene, and what differs of types and places. */
    private final class Drawn {
        private final Scene scene;
        private final Map<MicType, MicType> units = new IdentityHashMap<>();
        private final Map<String, double[]> types = new HashMap<>();
        private final Map<String, Position> places = new HashMap<>();

        Drawn(double[] values) {
            double louderDb = 0;
            double brighterDb = 0;
            double ringing = 1;
            double[] neighboursDb = new double[Doubts.this.scene.others().size()];
            for (int i = 0; i < values.length; i++) {
                Unknown unknown = unknowns.get(i);
                switch (unknown.kind()) {
                    case LEVEL -> louderDb = values[i] * Doubts.this.scene.setting().source().level().toleranceDb();
                    case SOURCE_TONE -> brighterDb = reading(unknown, values[i]);
                    case REVERBERATION -> ringing = ringing(values[i]);
                    case NEIGHBOUR_LEVEL -> neighboursDb[unknown.place()] = values[i] * neighbourToleranceDb(unknown.place());
                    case PLACE_TONE -> {
                        Position position = positions.get(unknown.of());
                        places.put(position.id(), values[i] == 0 ? position
                                : position.sounding(position.toneDb().plus(Band.tilt(reading(unknown, values[i])))));
                    }
                    default -> types.computeIfAbsent(unknown.of(), any -> new double[Unknown.Kind.values().length])[unknown.kind().ordinal()] = values[i];
                }
            }
            this.scene = Doubts.this.scene.drawn(louderDb, brighterDb, ringing, neighboursDb);
        }

        private static MicType unit(MicType mic, double[] values) {
            double tilt = values[Unknown.Kind.TYPE_TONE.ordinal()] * Unknown.tiltDb(mic.confidence());
            return mic.unit(tilt == 0 ? mic.responseDb() : mic.responseDb().plus(Band.tilt(tilt)),
                    moved(mic.sensitivityMvPerPa(), values[Unknown.Kind.TYPE_SENSITIVITY.ordinal()]),
                    moved(mic.selfNoiseDba(), values[Unknown.Kind.TYPE_NOISE.ordinal()]),
                    moved(mic.maxDbSpl(), values[Unknown.Kind.TYPE_LIMIT.ordinal()]));
        }

        private static Range moved(Range range, double value) {
            return range == null ? null : range.moved(value);
        }

        Scene scene() {
            return scene;
        }

        MicType mic(MicType mic) {
            return units.computeIfAbsent(mic, type -> unit(type, types.get(type.id())));
        }

        Position position(Position position) {
            return places.get(position.id());
        }
    }
}
