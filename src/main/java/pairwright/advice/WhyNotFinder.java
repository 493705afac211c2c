package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import pairwright.model.Fault;
import pairwright.model.Meaning;
import pairwright.model.MicType;
import pairwright.model.PatternData;
import pairwright.model.WhyNot;
import pairwright.model.WhyNotRequest;

/** Says why a type is not the first answer, and finds by asking what would make it so. Safe to share between threads. */
public final class WhyNotFinder {
    private final Supplier<Knowledge> knowledge;
    private final AtHand atHand;

    /**
     * A finder on what is known at the moment of each request.
     *
     * @param knowledge asked once per request
     */
    public WhyNotFinder(Supplier<Knowledge> knowledge) {
        this(knowledge, AtHand.EVERYTHING);
    }

    /** The same with the microphones of a locker. */
    public WhyNotFinder(Supplier<Knowledge> knowledge, AtHand atHand) {
        this.knowledge = knowledge;
        this.atHand = atHand;
    }

    /**
     * Why a type is not the first answer.
     *
     * @throws UnusableQuestion with every fault of the request, the question's under /question
     */
    public WhyNot find(WhyNotRequest request) {
        return Knowledge.answered(knowledge, now -> find(request, now));
    }

    private WhyNot find(WhyNotRequest request, Knowledge now) {
        List<Fault> faults = new ArrayList<>();
        Meaning meaning = Nested.question(request.question(), now, faults);
        MicType mic = Nested.mic(request.micType(), "/micType", now, faults);
        PatternData pattern = mic == null || request.pattern() == null ? null : Nested.pattern(mic, request.pattern(), "/pattern", faults);
        if (meaning != null && request.position() != null) {
            Nested.position(now.catalogue().sources().get(meaning.question().source()), request.position(), "/position", faults);
        }
        if (!faults.isEmpty()) {
            throw new UnusableQuestion(faults);
        }
        Wanted wanted = new Wanted(mic, pattern == null ? null : pattern.pattern(), request.position());
        Supply supply = Supply.of(atHand, meaning.question(), now.catalogue());
        return new WhyNotCase(now, meaning, Scene.of(meaning.question(), now.catalogue(), supply, atHand.memory()), wanted).answer();
    }
}
