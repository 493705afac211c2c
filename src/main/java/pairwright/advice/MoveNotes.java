package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Complaint;
import pairwright.model.Gauge;
import pairwright.model.Moves;
import pairwright.rules.Figure;

/** What the numbers say of the complaint as the set-up stands, and what they cannot say. */
final class MoveNotes {
    private final Complaint complaint;
    private final Scene scene;
    private final Trial base;

    MoveNotes(Complaint complaint, Trial base) {
        this.complaint = complaint;
        this.scene = base.bench().scene();
        this.base = base;
    }

    /** In sentences; here is what the gauge reads, null for nothing. */
    List<String> of(List<Moves.Move> moves, Double here) {
        List<String> notes = new ArrayList<>();
        if (complaint.gauge() == Gauge.NEIGHBOURS && scene.others().isEmpty()) {
            notes.add("The question names no neighbour, so nothing can be computed of it: add neighbours with distance and angle.");
        } else if (here != null) {
            notes.add(switch (complaint.gauge()) {
                case TONE -> "By the numbers the set-up has " + Decibels.figure(Math.abs(here)) + " dB " + (here < 0 ? "less" : "more") + " than the source itself "
                        + (complaint.fromHz().equals(complaint.toHz()) ? "at " : "from " + Figure.forPeople(complaint.fromHz(), "Hz") + " to ")
                        + Figure.forPeople(complaint.toHz(), "Hz") + ".";
                case ROOM -> "By the numbers the source is " + Decibels.over(here) + " the room.";
                case NEIGHBOURS -> "By the numbers the source is " + Decibels.over(here) + " its neighbours.";
                case NOISE -> "By the numbers the source is " + Decibels.over(here) + " the noise.";
                case HEADROOM -> "By the numbers there are " + Decibels.figure(here) + " dB in hand at the loudest peak.";
                case COMB -> base.pair() == null ? "One microphone combs only with what comes back from a surface near it."
                        : base.pair().technique().stereo() ? (base.together().spacingM() > 0
                                ? "On two loudspeakers a stereo pair does not comb; folded to mono it does, for whatever is off its middle. Never turn one of its channels over."
                                : "The two capsules stand in one point and cannot comb: look for a wall, a table or a third microphone.")
                        : base.together().firstNullHz() == null ? "By the numbers the two hear it at once and cannot comb."
                        : "By the numbers the first gap lies at " + Figure.forPeople(base.together().firstNullHz(), "Hz") + ".";
                case NONE -> "";
            });
        }
        if (moves.stream().noneMatch(move -> move.changed() != null) && complaint.gauge() != Gauge.NONE) {
            notes.add("No move of the microphone that the rules allow changes it enough to be told in numbers.");
        }
        return List.copyOf(notes);
    }
}
