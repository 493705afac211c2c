package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import pairwright.model.Task;

/** What is to be done between two plans, seat by seat: first what is taken away, then what is moved, then what is set up. */
final class Steps {
    private static final String POWER_DOWN = "power-down";
    private static final String STRIKE = "strike";
    private static final String SWAP = "swap";
    private static final String MOVE = "move";
    private static final String REPATCH = "repatch";
    private static final String SET_UP = "set-up";
    private static final List<String> ORDER = List.of(POWER_DOWN, STRIKE, SWAP, MOVE, REPATCH, SET_UP);

    private final Plan plan;
    private final SeatNames names;
    private final Map<String, Picks.AtSeat> before = new HashMap<>();
    private final Lost lost;
    private final Map<String, Task> tasks;
    private final UnaryOperator<String> label;

    private Steps(Picks before, Lost lost, Plan plan, LineUp lineUp, Map<String, Task> tasks, UnaryOperator<String> label) {
        this.label = label;
        this.tasks = tasks;
        this.plan = plan;
        this.lost = lost;
        this.names = SeatNames.of(lineUp);
        before.seats().forEach(seat -> this.before.put(seat.seat(), seat));
    }

    /**
     * What leads from what is set up to another plan.
     *
     * @param tasks of the catalogue: how long each takes
     * @param label what is written on a unit or channel, or what a mic type is called, by its id
     */
    static Change change(Picks before, Lost lost, Plan plan, double bestScore, LineUp lineUp, Map<String, Task> tasks,
            UnaryOperator<String> label) {
        Steps steps = new Steps(before, lost, plan, lineUp, tasks, label);
        List<Change.Step> all = new ArrayList<>();
        List<String> kept = new ArrayList<>();
        Map<String, Picks.AtSeat> after = new HashMap<>();
        Picks.of(plan).seats().forEach(seat -> after.put(seat.seat(), seat));
        Set<String> seats = new TreeSet<>(steps.before.keySet());
        seats.addAll(after.keySet());
        for (String seat : seats) {
            int from = all.size();
            steps.atSeat(seat, steps.before.get(seat), after.get(seat), all);
            if (all.size() == from && after.containsKey(seat)) {
                kept.add(seat);
            }
        }
        if (all.stream().anyMatch(step -> !step.kind().equals(MOVE))) {
            all.add(steps.step(POWER_DOWN, null, "Phantom power off wherever something is plugged or patched, gains down, and wait half a minute. It goes on again last."));
        }
        all.sort(Comparator.comparingInt(step -> ORDER.indexOf(step.kind())));
        return new Change(plan, all, all.stream().mapToDouble(Change.Step::timeS).sum(), kept, bestScore - plan.score(), bestScore);
    }

    private void atSeat(String seat, Picks.AtSeat was, Picks.AtSeat is, List<Change.Step> steps) {
        int common = was == null || is == null ? 0 : Math.min(was.mics().size(), is.mics().size());
        for (int i = 0; i < common; i++) {
            mic(seat, i + 1, was.mics().get(i), is.mics().get(i), steps);
        }
        for (int i = common; was != null && i < was.mics().size(); i++) {
            steps.add(step(STRIKE, seat, "Take away " + called(was.mics().get(i)) + " from " + names.of(seat) + "."));
        }
        for (int i = common; is != null && i < is.mics().size(); i++) {
            steps.add(step(SET_UP, seat, "Set up " + line(seat, i + 1) + "."));
        }
    }

    private void mic(String seat, int number, Picks.Mic was, Picks.Mic is, List<Change.Step> steps) {
        boolean samePlace = was.position().equals(is.position()) && (was.distanceM() == null || Math.abs(was.distanceM() - is.distanceM()) < 0.005)
                && (was.aimDegrees() == null || Math.abs(was.aimDegrees() - is.aimDegrees()) < 0.5);
        if (!was.micType().equals(is.micType()) || !Objects.equals(was.unit(), is.unit())) {
            steps.add(step(SWAP, seat, "Take away " + called(was) + gone(was) + " and put up " + line(seat, number) + "."));
        } else if (!samePlace || !Objects.equals(was.pattern(), is.pattern())) {
            steps.add(step(MOVE, seat, "Move " + line(seat, number) + "."));
        }
        changed(seat, number, was.box(), is.box(), steps);
        changed(seat, number, was.pad(), is.pad(), steps);
        if (was.channel() != null && !was.channel().equals(is.channel())) {
            steps.add(step(REPATCH, seat, "Patch " + line(seat, number) + ", away from " + label.apply(was.channel()) + "."));
        }
    }

    /** What is in the line besides: a box or a pad that comes, goes or is another. */
    private void changed(String seat, int number, String was, String is, List<Change.Step> steps) {
        if (!Objects.equals(was, is)) {
            steps.add(step(REPATCH, seat, was == null ? "Put " + label.apply(is) + " into " + line(seat, number) + "." : is == null
                    ? "Take " + label.apply(was) + " out of " + line(seat, number) + "." : "Put " + label.apply(is) + " in the place of " + label.apply(was) + " into " + line(seat, number) + "."));
        }
    }

    private Change.Step step(String task, String seat, String says) {
        return new Change.Step(task, seat, says, tasks.get(task).timeS().typical());
    }

    private String gone(Picks.Mic was) {
        return was.unit() != null && lost.units().contains(was.unit()) ? " (it is lost)" : "";
    }

    private String called(Picks.Mic mic) {
        return label.apply(mic.unit() == null ? mic.micType() : mic.unit());
    }

    private String line(String seat, int mic) {
        return plan.lines().stream().filter(line -> line.seat().equals(seat) && line.mic() == mic).findFirst()
                .map(line -> (line.unit() == null ? line.placement().name() : line.unit().label()) + " for " + line.name()
                        + (line.channelLabel() == null ? "" : " on " + line.channelLabel())).orElse("");
    }
}
