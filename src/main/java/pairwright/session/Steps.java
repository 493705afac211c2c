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
    static final String POWER_DOWN = "power-down";
    static final String STRIKE = "strike";
    private static final String SWAP = "swap";
    static final String MOVE = "move";
    private static final String REPATCH = "repatch";
    static final String SET_UP = "set-up";
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
     * @param time there is for it; null for as long as it takes
     * @param label what is written on a unit or channel, or what a mic type is called, by its id
     */
    static Change change(Picks before, Lost lost, Plan plan, double bestScore, LineUp lineUp, Map<String, Task> tasks,
            SetUpTime time, UnaryOperator<String> label) {
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
        return new Change(plan, all, all.stream().mapToDouble(Change.Step::timeS).sum(), kept, bestScore - plan.score(), bestScore, time);
    }

    private void atSeat(String seat, Picks.AtSeat was, Picks.AtSeat is, List<Change.Step> steps) {
        List<Picks.Mic> before = was == null ? List.of() : was.mics();
        List<Picks.Mic> after = is == null ? List.of() : is.mics();
        for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
            Picks.Mic old = at(before, i);
            Picks.Mic now = at(after, i);
            for (String task : tasks(old, now)) {
                steps.add(step(task, seat, says(task, seat, i + 1, old)));
            }
            if (old != null && now != null) {
                changed(seat, i + 1, old, old.box(), now.box(), steps);
                changed(seat, i + 1, old, old.pad(), now.pad(), steps);
            }
        }
    }

    /** What is to be done at one seat, task by task; power, boxes and pads aside. */
    static List<String> tasks(List<Picks.Mic> before, List<Picks.Mic> after) {
        List<String> tasks = new ArrayList<>();
        for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
            tasks.addAll(tasks(at(before, i), at(after, i)));
        }
        return tasks;
    }

    private static Picks.Mic at(List<Picks.Mic> mics, int index) {
        return index < mics.size() ? mics.get(index) : null;
    }

    private static List<String> tasks(Picks.Mic was, Picks.Mic is) {
        if (was == null || is == null) {
            return List.of(was == null ? SET_UP : STRIKE);
        }
        List<String> tasks = new ArrayList<>();
        boolean samePlace = was.position().equals(is.position()) && (was.distanceM() == null || Math.abs(was.distanceM() - is.distanceM()) < 0.005)
                && (was.aimDegrees() == null || Math.abs(was.aimDegrees() - is.aimDegrees()) < 0.5);
        if (!was.micType().equals(is.micType()) || !Objects.equals(was.unit(), is.unit())) {
            tasks.add(SWAP);
        } else if (!samePlace || !Objects.equals(was.pattern(), is.pattern())) {
            tasks.add(MOVE);
        }
        if (was.channel() != null && !was.channel().equals(is.channel())) {
            tasks.add(REPATCH);
        }
        return tasks;
    }

    private String says(String task, String seat, int number, Picks.Mic was) {
        return switch (task) {
            case STRIKE -> "Take away " + called(was) + " from " + names.of(seat) + ".";
            case SWAP -> "Take away " + called(was) + gone(was) + " and put up " + line(seat, number) + ".";
            case MOVE -> "Move " + line(seat, number) + ".";
            case REPATCH -> "Patch " + line(seat, number) + ", away from " + label.apply(was.channel()) + ".";
            default -> "Set up " + line(seat, number) + ".";
        };
    }

    /** What is in the line besides: a box or a pad that comes, goes or is another. */
    private void changed(String seat, int number, Picks.Mic old, String was, String is, List<Change.Step> steps) {
        if (!Objects.equals(was, is)) {
            steps.add(step(REPATCH, seat, was == null ? "Put " + label.apply(is) + " into " + line(seat, number) + "." : is == null
                    ? "Take " + label.apply(was) + " off the lead of " + called(old) + "." : "Put " + label.apply(is) + " in the place of " + label.apply(was) + " into " + line(seat, number) + "."));
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
