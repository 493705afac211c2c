package pairwright.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairwright.advice.Offer;
import pairwright.model.MicType;
import pairwright.model.MoveKind;

/** Two set-ups that differ in one thing, brought to one level and heard without knowing which is which. */
final class CompareKind implements Kind {
    private static final KindInfo INFO = new KindInfo("compare", "Compare two",
            "Compare two microphones so that the comparison means something: one thing differs, the levels are the same, and nobody knows which is which.",
            "Which of the two is better: that depends on what is wanted.",
            List.of("One type, two distances", "Two types in one place", "One type, two patterns or turns", "One type, two places", "Two types in one place that are hard to tell apart"),
            List.of(25, 25, 30, 30, 35), true);
    private static final List<List<MoveKind>> DIFFER = List.of(List.of(MoveKind.DISTANCE), List.of(MoveKind.MIC), List.of(MoveKind.PATTERN, MoveKind.ANGLE), List.of(MoveKind.POSITION),
            List.of(MoveKind.MIC));
    private static final int HARD = 5;
    private static final int TYPES = 4;
    private static final int TRIES = 12;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        List<MicType> all = OneMic.types(lab);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<MicType> twice = all.stream().filter(type -> lab.units(type.id()) >= 2).toList();
        List<MoveKind> differ = twice.isEmpty() ? List.of(MoveKind.MIC) : DIFFER.get(level - 1);
        boolean two = differ.contains(MoveKind.MIC);
        Case drawn = OneMic.surroundings(Case.empty().with("source", draw.one(OneMic.sources(lab, 1)).id())
                .with("types", draw.some(TYPES, two ? all : twice).stream().map(MicType::id).sorted().toList()), draw, true, false, false, lab);
        OneMic one = OneMic.of(drawn, lab);
        for (Offer first : draw.some(TRIES, one.all().stream().filter(CompareKind::within).toList())) {
            for (Moved move : draw.shuffled(Moved.from(first, one.all()))) {
                Optional<Case> found = differ.contains(move.by()) && within(move.to()) ? asked(draw, drawn, level, first, move) : Optional.empty();
                if (found.isPresent()) {
                    lab.worked(found.get(), one);
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** Nothing goes up over people for a comparison. */
    private static boolean within(Offer offer) {
        return !OneMic.mic(offer).position().overPeople() && OneMic.mic(offer).predicted().gainDb() != null;
    }

    private static Optional<Case> asked(Draw draw, Case drawn, int level, Offer first, Moved move) {
        List<String> asked = new ArrayList<>();
        boolean tell = false;
        boolean big = false;
        for (Trait trait : Trait.values()) {
            Optional<Trait.Which> which = trait.which(OneMic.mic(first), OneMic.mic(move.to()));
            if (which.isPresent()) {
                asked.add(trait.id());
                tell |= which.get() != Trait.Which.NEITHER;
                big |= Math.abs(trait.moreDb(OneMic.mic(first), OneMic.mic(move.to()))) > Trait.PLAIN_DB;
            }
        }
        if (!tell || asked.size() < 3 || level == HARD && big) {
            return Optional.empty();
        }
        boolean turned = draw.share() < 0.5;
        Offer one = turned ? move.to() : first;
        Offer other = turned ? first : move.to();
        return Optional.of(drawn.with("setUps", List.of(OneMic.name(one), OneMic.name(other))).with("differs", move.by().id()).with("asked", asked)
                .with("a", draw.share() < 0.5 ? "1" : "2"));
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new CompareExercise(drawn, lab.worked(drawn, OneMic.class, () -> OneMic.of(drawn, lab)), lab);
    }
}
