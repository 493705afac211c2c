package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Address;
import pairwright.model.Arrangement;
import pairwright.model.Body;
import pairwright.model.BodyShape;
import pairwright.model.Catalogue;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.PatternData;
import pairwright.model.Placement;
import pairwright.model.Point;
import pairwright.model.Standpoint;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.Question;
import pairwright.model.Source;
import pairwright.model.Technique;

/**
 * An option as it stands in space, before anybody looks at it.
 *
 * @param source what is recorded
 * @param body how it stands
 * @param technique null for one microphone
 * @param mics as they stand, those without air between as well
 * @param beside who plays next to it
 */
record SetUp(Source source, Body body, Technique technique, List<Stood> mics, List<Beside> beside) {
    /** A spot farther from the middle of two drums is on one of them. */
    private static final double ON_ONE_DRUM_M = 0.05;
    private static final double ASIDE_M = 0.02;

    /** A neighbour: its name, and where it is from the microphone, as {@link Neighbour} says. */
    record Beside(String name, double distanceM, double angleDegrees) {
    }

    static SetUp of(Catalogue catalogue, Question question, Option option) {
        Source source = catalogue.sources().get(question.source());
        Body body = Bodies.of(source);
        Technique technique = option.mics().size() < 2 ? null : catalogue.techniques().get(option.technique());
        List<Stood> mics = new ArrayList<>();
        for (int i = 0; i < option.mics().size(); i++) {
            mics.add(stood(catalogue, source, body, technique, option.mics(), i));
        }
        List<Beside> beside = new ArrayList<>();
        for (Neighbour neighbour : question.neighbours()) {
            Source other = catalogue.sources().get(neighbour.source());
            beside.add(new Beside(other == null ? neighbour.source() : other.name(), neighbour.distanceM(), neighbour.angleDegrees()));
        }
        return new SetUp(source, body, technique, List.copyOf(mics), List.copyOf(beside));
    }

    private static Stood stood(Catalogue catalogue, Source source, Body body, Technique technique, List<Placement> placements, int index) {
        Placement placement = placements.get(index);
        Position position = position(source, placement.position());
        MicType type = catalogue.mics().get(placement.micType());
        boolean air = placement.mount() != Mount.LEAD && placement.mount() != Mount.CONTACT;
        boolean onePlace = placements.size() == 2 && placements.get(0).position().equals(placements.get(1).position());
        boolean asPair = technique != null && technique.stereo() && onePlace;
        Standpoint standpoint = asPair ? Standpoint.ofPair(body, position, placement.distanceM()) : Standpoint.of(body, position, placement.distanceM());
        Point capsule = standpoint.place();
        double turnDegrees = placement.aimDegrees();
        if (asPair && technique.arrangement() == Arrangement.SPACED && body.shape() == BodyShape.DRUM_PAIR && Math.abs(standpoint.surface().leftM()) > ON_ONE_DRUM_M) {
            // the spot is on one of two drums: each microphone has its own, the first the one to the left
            boolean left = standpoint.surface().leftM() > 0;
            standpoint = left == (index == 0) ? standpoint : standpoint.acrossTheMiddle();
            capsule = standpoint.place();
        } else if (asPair) {
            // the first is the left one, as one stands behind the pair and looks at the source
            int side = index == 0 ? 1 : -1;
            Point left = left(standpoint);
            capsule = capsule.plus(left.times(side * (technique.spacingM() == null ? 0 : technique.spacingM()) / 2));
            if (technique.arrangement() != Arrangement.MID_SIDE) {
                turnDegrees += side * (technique.includedDegrees() == null ? 0 : technique.includedDegrees()) / 2;
            }
        } else if (apart(technique) && onePlace) {
            standpoint = standpoint.moved(Point.LEFT.times((index == 0 ? 1 : -1) * source.sizeM() / 4));
            capsule = standpoint.place();
        } else if (placements.size() == 2) {
            Placement other = placements.get(1 - index);
            Position otherPosition = position(source, other.position());
            standpoint = clearOf(standpoint, position, Standpoint.of(body, otherPosition, other.distanceM()), otherPosition, index == 1 && apart(technique));
            capsule = standpoint.place();
        }
        return new Stood(index + 1, placement, position, type == null ? Address.END : type.address(), type == null ? PowerNeed.NONE : type.power(),
                pattern(type, placement), standpoint, capsule,
                turnDegrees, air);
    }

    /**
     * Where the catalogue leaves open on which side it stands: on its own side of the other, so that neither looks past the other; from
     * one point on the other side, where they are wanted apart.
     */
    private static Standpoint clearOf(Standpoint mine, Position position, Standpoint other, Position otherPosition, boolean wantedApart) {
        if (!mine.mayBeMirrored(position)) {
            return mine;
        }
        double asideM = mine.surface().leftM() - other.surface().leftM();
        boolean sameSide = mine.leansLeftM() * other.leansLeftM() > 0;
        boolean wrong = Math.abs(asideM) > ASIDE_M ? asideM * mine.leansLeftM() < 0 : sameSide && (wantedApart || !other.mayBeMirrored(otherPosition));
        return wrong ? mine.mirrored() : mine;
    }

    /** To the left of whoever stands behind a microphone and looks at the source. */
    private static Point left(Standpoint standpoint) {
        Point sight = standpoint.surface().minus(standpoint.place()).withUp(0);
        return sight.alongFloorM() < 1e-6 ? Point.LEFT : Point.UP.cross(sight.unit());
    }

    /** Two places that are drawn on different sides of the source where the catalogue does not say on which they are. */
    private static boolean apart(Technique technique) {
        return technique != null && switch (technique.arrangement()) {
            case TWO_SPOTS, TWO_ENDS, NEAR_AND_FAR, SPACED -> true;
            default -> false;
        };
    }

    private static Position position(Source source, String id) {
        for (Position position : source.positions()) {
            if (position.id().equals(id)) {
                return position;
            }
        }
        throw new IllegalArgumentException(source.id() + " has no position " + id);
    }

    private static PatternData pattern(MicType type, Placement placement) {
        if (type != null) {
            for (PatternData data : type.patterns()) {
                if (data.pattern() == placement.pattern()) {
                    return data;
                }
            }
        }
        return new PatternData(placement.pattern(), null, null);
    }

    /** Those with air between them and the source. */
    List<Stood> inAir() {
        return mics.stream().filter(Stood::air).toList();
    }

    /** Whether the two stand in one spot and are measured as one. */
    boolean asOne() {
        return mics.size() == 2 && mics.get(0).air() && mics.get(1).air() && mics.get(0).standpoint().equals(mics.get(1).standpoint());
    }

    boolean stereo() {
        return technique != null && technique.stereo();
    }
}
