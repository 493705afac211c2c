package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pairwright.model.MicFamily;
import pairwright.model.PowerNeed;

/** In which order a plan is plugged in so that no ribbon sees phantom power and nobody gets a bang in the ears. */
final class PatchOrder {
    private PatchOrder() {
    }

    /**
     * The steps, first to last.
     *
     * @param power says where a line takes its power from, boosters aside
     * @param oneSwitch whether the channel of a line is switched together with its bank
     */
    static List<String> of(List<Line> lines, Function<Line, PowerNeed> power, Predicate<Line> oneSwitch) {
        Predicate<Line> ribbon = line -> line.placement().family() == MicFamily.RIBBON && power.apply(line) == PowerNeed.NONE;
        Predicate<Line> valve = line -> power.apply(line) == PowerNeed.OWN_SUPPLY;
        List<String> steps = new ArrayList<>();
        steps.add("Turn every gain and fader down, and headphones and monitors off.");
        steps.add("Switch phantom power off on every channel and every bank, look at each lamp, and wait half a minute.");
        step(lines, line -> line.between().pad() != null, "Put the pads into their lines, at the channel: ", ".", steps);
        step(lines, line -> line.between().boxed(), "Plug the pickups into their line boxes: ", ".", steps);
        step(lines, ribbon, "Plug the passive ribbons now, while nothing is live: ", ". Whoever plugs anything later asks first.", steps);
        step(lines, line -> !ribbon.test(line) && !valve.test(line) && line.booster() == null && !line.phantomWanted(), "Plug what needs no power: ", ".", steps);
        step(lines, line -> line.booster() != null, "Put the inline boosters in and plug them: ", ".", steps);
        step(lines, valve, "Connect the microphones with a supply of their own to their supplies, plug them, and only then switch the supplies on: ",
                ". They want 15 to 30 minutes to warm up.", steps);
        step(lines, line -> line.phantomWanted() && line.booster() == null && !valve.test(line), "Plug the microphones that need phantom power: ", ".", steps);
        // a bank is named only where there is no other switch: on one whose channels have their own, whoever switched on all of it would reach the ribbons
        String live = lines.stream().filter(Line::phantom).map(line -> oneSwitch.test(line) && line.bank() != null ? line.bank()
                : line.channelLabel() == null ? "the channel of line " + line.number() : line.channelLabel() + " (line " + line.number() + ")").distinct().collect(Collectors.joining(", "));
        if (!live.isEmpty()) {
            steps.add("Switch phantom power on, and on these only: " + live + ". Wait until it is quiet.");
        }
        steps.add("Bring up one channel at a time and listen to each before the next. To repatch anything, go back to the second step.");
        return List.copyOf(steps);
    }

    private static void step(List<Line> lines, Predicate<Line> which, String before, String after, List<String> steps) {
        String names = lines.stream().filter(which).map(line -> line.number() + " " + line.name()).collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            steps.add(before + names + after);
        }
    }
}
