package pairwright.advice;

import java.util.List;
import pairwright.model.Option;
import pairwright.model.Technique;
import pairwright.model.Together;
import pairwright.rules.Finding;

/** One way to record a source: one microphone, or two. What it is worth is known; why is worked out when it is asked for. */
public final class Offer {
    private final Offers offers;
    private final Candidate candidate;
    private final List<OfferedMic> mics;

    Offer(Offers offers, Candidate candidate, List<OfferedMic> mics) {
        this.offers = offers;
        this.candidate = candidate;
        this.mics = mics;
    }

    Candidate candidate() {
        return candidate;
    }

    /** Single, or the id of a technique. */
    public String technique() {
        return candidate.technique();
    }

    /** How the two relate; null for one. */
    public Technique pairing() {
        return candidate.isSingle() ? null : candidate.pair().technique();
    }

    /** The sum of the points of its reasons, in hundredths. */
    public long centipoints() {
        return candidate.centipoints();
    }

    /** One or two. */
    public List<OfferedMic> mics() {
        return mics;
    }

    /** Whether it takes two units that were matched to each other. */
    public boolean matchedPair() {
        return !candidate.isSingle() && candidate.pair().matchedPair();
    }

    /** Whether the channel of the second is inverted. */
    public boolean secondInverted() {
        return !candidate.isSingle() && candidate.pair().secondInverted();
    }

    /** What the two do together; null for one. */
    public Together together() {
        return candidate.isSingle() ? null : candidate.pair().together();
    }

    /** How many channels it takes. */
    public int channels() {
        return mics.stream().mapToInt(mic -> mic.micType().channels()).sum();
    }

    /** What the rules find for and against it, with no sentence yet. */
    public List<Finding> findings() {
        return candidate.findings();
    }

    /** The sentence of one of its findings. */
    public String says(Finding finding) {
        return offers.says(finding);
    }

    /** Why it is worth what it is, as the only one that is shown; for several ask {@link Offers#explained(List)}, which is faster. */
    public Option option() {
        return offers.explained(List.of(this)).get(0);
    }
}
