package pairwright.advice;

import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.rules.Placed;

/**
 * What somebody would have liked to see.
 *
 * @param mic the type
 * @param pattern only in this pattern; null for any
 * @param position only there; null for anywhere
 */
record Wanted(MicType mic, Pattern pattern, String position) {
    boolean is(Placed placed) {
        return placed.mic().id().equals(mic.id()) && (pattern == null || placed.pattern() == pattern)
                && (position == null || placed.position().id().equals(position));
    }

    /** Whether the candidate is it, or has it for a half. */
    boolean isIn(Candidate candidate) {
        return is(candidate.first().placed()) || !candidate.isSingle() && is(candidate.second().placed());
    }
}
