package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import pairwright.catalogue.Shown;
import pairwright.model.DangerKind;
import pairwright.model.Fault;
import pairwright.model.Meaning;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Setup;
import pairwright.model.Source;

/**
 * Microphones as they stand at a source: every id looked up, every number looked over.
 *
 * @param mics one or two
 * @param recipe the pair they are; null for one
 */
record Standing(List<Mic> mics, PairRecipe recipe) {
    private static final String AT = "/option";
    private static final double LEAST_DISTANCE_M = 0.005;
    private static final double MOST_DISTANCE_M = 100;
    private static final double MOST_AIM_DEGREES = 180;

    /** One microphone. The distance may be any; it need not be one the program would have tried. */
    record Mic(MicType mic, PatternData pattern, Position position, double distanceM, double aimDegrees) {
        Mic at(double otherM) {
            return new Mic(mic, pattern, position, otherM, aimDegrees);
        }

        Mic turned(double otherDegrees) {
            return new Mic(mic, pattern, position, distanceM, otherDegrees);
        }

        Mic in(PatternData other) {
            return new Mic(mic, other, position, distanceM, aimDegrees);
        }

        boolean reachedBy(List<DangerKind> kinds) {
            return position.dangers().stream().anyMatch(danger -> kinds.contains(danger.kind()) && distanceM <= danger.withinM());
        }
    }

    boolean single() {
        return recipe == null;
    }

    /** What a request says stands there; null where it has faults, or where the question has and nothing can be looked up. */
    static Standing of(Setup setup, Meaning meaning, Knowledge now, List<Fault> faults) {
        return of(setup, meaning == null ? null : now.catalogue().sources().get(meaning.question().source()), now, faults);
    }

    /** The same at a source; null for one that is not known. */
    static Standing of(Setup setup, Source source, Knowledge now, List<Fault> faults) {
        int before = faults.size();
        if (setup == null) {
            faults.add(new Fault(AT, "option is missing. Give an option of the answer, or {\"mics\": [{\"micType\", \"position\", \"distanceM\"}]}"));
            return null;
        }
        if (setup.mics() == null || setup.mics().isEmpty() || setup.mics().size() > 2) {
            faults.add(new Fault(AT + "/mics", "mics " + (setup.mics() == null ? "is missing" : "has " + setup.mics().size() + " entries")
                    + ". Give one or two"));
            return null;
        }
        List<Mic> mics = new ArrayList<>();
        for (int i = 0; i < setup.mics().size(); i++) {
            mics.add(mic(setup.mics().get(i), AT + "/mics/" + i, source, now, faults));
        }
        PairRecipe recipe = source == null || faults.size() > before ? null : recipe(setup, mics, source, now, faults);
        if (setup.technique() != null && mics.size() == 1 && !setup.technique().equals(Candidate.SINGLE)) {
            faults.add(new Fault(AT + "/technique", "technique is \"" + Shown.of(setup.technique())
                    + "\", but there is one microphone. Give two, or leave the technique out"));
        }
        return source == null || faults.size() > before ? null : new Standing(List.copyOf(mics), recipe);
    }

    private static Mic mic(Setup.Put put, String at, Source source, Knowledge now, List<Fault> faults) {
        int before = faults.size();
        if (put == null) {
            faults.add(new Fault(at, "an entry is null. Give an object with micType, position and distanceM"));
            return null;
        }
        MicType mic = Nested.mic(put.micType(), at + "/micType", now, faults);
        PatternData pattern = mic == null ? null : Nested.pattern(mic, put.pattern(), at + "/pattern", faults);
        Position position = source == null ? null : Nested.position(source, put.position(), at + "/position", faults);
        if (mic != null && !mic.captures()) {
            faults.add(new Fault(at + "/micType", mic.id() + " plays back and takes nothing up. Give a microphone or a line box"));
        } else if (mic != null && position != null && !Placements.fits(mic, position)) {
            faults.add(new Fault(at + "/position", mic.id() + " cannot be set up at " + position.id() + ". Give another position or another type"));
        }
        if (put.distanceM() == null) {
            faults.add(new Fault(at + "/distanceM", "distanceM is missing. Give the distance from the sounding surface in metres"));
        } else if (!(put.distanceM() >= LEAST_DISTANCE_M && put.distanceM() <= MOST_DISTANCE_M) && !(position != null && wired(position))) {
            faults.add(new Fault(at + "/distanceM", "distanceM must be " + Questions.plain(LEAST_DISTANCE_M) + " to "
                    + Questions.plain(MOST_DISTANCE_M) + ", but was " + Questions.plain(put.distanceM())));
        }
        if (put.aimDegrees() != null && !(Math.abs(put.aimDegrees()) <= MOST_AIM_DEGREES)) {
            faults.add(new Fault(at + "/aimDegrees", "aimDegrees must be -180 to 180, but was " + Questions.plain(put.aimDegrees())));
        }
        return faults.size() > before || position == null ? null : new Mic(mic, pattern, position,
                wired(position) ? position.distanceM().typical() : put.distanceM(), put.aimDegrees() == null ? 0 : put.aimDegrees());
    }

    /** A lead or a contact: no air between, and no distance that counts. */
    static boolean wired(Position position) {
        return switch (position.mount()) {
            case LEAD, CONTACT -> true;
            default -> false;
        };
    }

    private static PairRecipe recipe(Setup setup, List<Mic> mics, Source source, Knowledge now, List<Fault> faults) {
        if (mics.size() == 1) {
            return null;
        }
        if (setup.technique() == null || !now.catalogue().techniques().containsKey(setup.technique())) {
            faults.add(new Fault(AT + "/technique", setup.technique() == null ? "technique is missing, and there are two microphones. Give its id"
                    : "there is no technique \"" + Shown.of(setup.technique()) + "\". All ids are at /api/techniques"));
            return null;
        }
        for (PairRecipe recipe : source.pairs()) {
            if (recipe.technique().equals(setup.technique()) && recipe.first().position().equals(mics.get(0).position().id())
                    && recipe.second().position().equals(mics.get(1).position().id())) {
                return recipe;
            }
        }
        faults.add(new Fault(AT + "/technique", source.id() + " has no pair " + setup.technique() + " of " + mics.get(0).position().id() + " and "
                + mics.get(1).position().id() + ". " + (source.pairs().isEmpty() ? "It has none at all" : "It has " + String.join("; ",
                        source.pairs().stream().map(pair -> pair.technique() + " of " + pair.first().position() + " and " + pair.second().position())
                                .distinct().toList()))));
        return null;
    }
}
