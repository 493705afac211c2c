package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import pairwright.model.Complaint;
import pairwright.model.Fault;
import pairwright.model.Meaning;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;

/** Finds what to move when something is heard that is not wanted, and computes what each move does. Safe to share between threads. */
public final class MoveFinder {
    private final Supplier<Knowledge> knowledge;
    private final AtHand atHand;

    /**
     * A finder on what is known at the moment of each request.
     *
     * @param knowledge asked once per request
     */
    public MoveFinder(Supplier<Knowledge> knowledge) {
        this(knowledge, AtHand.EVERYTHING);
    }

    /** The same with the microphones of a locker. */
    public MoveFinder(Supplier<Knowledge> knowledge, AtHand atHand) {
        this.knowledge = knowledge;
        this.atHand = atHand;
    }

    /**
     * Two or three moves, cheapest first; fewer where no more help.
     *
     * @throws UnusableQuestion with every fault of the request, the question's under /question, the set-up's under /option
     */
    public Moves find(MovesRequest request) {
        return Knowledge.answered(knowledge, now -> find(request, now));
    }

    private Moves find(MovesRequest request, Knowledge now) {
        List<Fault> faults = new ArrayList<>();
        Meaning meaning = Nested.question(request.question(), now, faults);
        Standing standing = Standing.of(request.option(), meaning, now, faults);
        Complaint complaint = Complaints.of(request.heard(), now.catalogue(), faults);
        if (!faults.isEmpty()) {
            throw new UnusableQuestion(faults);
        }
        Scene scene = Scene.of(meaning.question(), now.catalogue(), Supply.of(atHand, meaning.question(), now.catalogue()), atHand.memory());
        return new MovesCase(now, meaning, scene, standing, complaint).answer();
    }
}
