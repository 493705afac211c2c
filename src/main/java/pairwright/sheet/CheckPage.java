package pairwright.sheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.session.Line;
import pairwright.session.Picks;
import pairwright.session.Plan;
import pairwright.session.Seat;
import pairwright.session.StandKind;
import pairwright.sheet.ReadingParts.Fact;

/** The line check: what to do in which order, then channel by channel, with boxes that are remembered. */
public final class CheckPage {
    /** The field of a box that is ticked, and of one that was ticked when the page was made. */
    public static final String TICK = "tick";
    public static final String WAS = "was";

    private CheckPage() {
    }

    /**
     * What it shows.
     *
     * @param cautions what can harm somebody or something, gravest first
     * @param steps the patch, in the order that is safe
     * @param lines the channels
     * @param done how many boxes are ticked
     * @param of so many
     * @param action where ticks are sent; null where this reader may not
     * @param read where they are asked for
     * @param mark of the plan that was taken; empty where it is about another
     * @param was what was ticked when the page was made
     */
    public record Content(List<OptionView.CautionView> cautions, List<Box> steps, List<Channel> lines, int done, int of, String action, String read, String mark, List<String> was) {
    }

    /** A box to tick: what it is known by, what it says, whether it is ticked and by whom. */
    public record Box(String key, String says, boolean ticked, String who) {
    }

    /** One channel. */
    public record Channel(int number, String name, String channel, String unit, String storedAt, String type, List<Fact> facts, List<OptionView.CautionView> cautions, List<Box> boxes) {
    }

    /**
     * What is ticked by now.
     *
     * @param plan the mark of the plan that was taken; empty for none
     * @param ticked who did and when, by key; of other plans as well
     */
    public record Ticked(String plan, Map<String, String> ticked) {
    }

    /** What the address asks for. */
    public static Page of(AtPlan at, Map<String, AtPlan.Tick> ticks) {
        PlanChosen chosen = PlanChosen.of(at);
        PlanFrame frame = PlanFrame.of(at, "Line check", "check", List.of(), chosen, chosen.fault().isEmpty() ? List.of() : List.of(chosen.fault()));
        return chosen.plan() == null ? PlanSheets.without(at, frame, chosen) : at.page(200, "check", frame, content(at, chosen, ticks));
    }

    /** What is ticked by now, whether or not there is a plan just now: a box that was ticked stays so while the plans are worked out. */
    public static Ticked ticked(AtPlan at, Map<String, AtPlan.Tick> ticks) {
        Map<String, String> ticked = new LinkedHashMap<>();
        ticks.forEach((key, tick) -> {
            if (tick.on()) {
                ticked.put(key, who(at, tick));
            }
        });
        return new Ticked(mark(at.taken()), ticked);
    }

    /**
     * What a form changes, key by key: what it ticked that was not, and what it no longer ticks that was. What somebody else did meanwhile to another
     * box stays.
     */
    public static Map<String, Boolean> changed(Sent sent) {
        Set<String> was = new LinkedHashSet<>(sent.all(WAS));
        Set<String> now = new LinkedHashSet<>(sent.all(TICK));
        Map<String, Boolean> changed = new LinkedHashMap<>();
        now.stream().filter(key -> !was.contains(key)).forEach(key -> changed.put(key, true));
        was.stream().filter(key -> !now.contains(key)).forEach(key -> changed.put(key, false));
        return changed;
    }

    private static Content content(AtPlan at, PlanChosen chosen, Map<String, AtPlan.Tick> ticks) {
        Plan plan = chosen.plan();
        PlanWords words = new PlanWords(at, plan);
        List<Box> steps = plan.patch().stream().map(says -> box(at, ticks, mark(says), at.reader().sentence(says))).toList();
        List<Channel> lines = plan.lines().stream().map(line -> channel(at, words, plan, line, ticks)).toList();
        List<OptionView.CautionView> grave = words.ofTheWhole();
        List<Box> all = new ArrayList<>(steps);
        lines.forEach(line -> all.addAll(line.boxes()));
        List<String> was = all.stream().filter(Box::ticked).map(Box::key).toList();
        return new Content(grave, steps, lines, was.size(), all.size(), at.at().mayWrite() ? at.visit().to(at.path("check") + chosen.query()) : null,
                at.visit().to(Param.address(at.path("check"), List.of(new Param("part", "ticks")))), chosen.taken() ? mark(at.taken()) : "", was);
    }

    private static Box box(AtPlan at, Map<String, AtPlan.Tick> ticks, String key, String says) {
        AtPlan.Tick tick = ticks.get(key);
        boolean ticked = tick != null && tick.on();
        return new Box(key, says, ticked, !ticked ? "" : who(at, tick));
    }

    private static String who(AtPlan at, AtPlan.Tick tick) {
        return tick.who() + ", " + at.at().moments().time(tick.at().toInstant());
    }

    private static String mark(Picks picks) {
        return picks == null ? "" : mark(picks.toString());
    }

    /** What a box is known by: another microphone, channel or place is another box. */
    private static String mark(String text) {
        return Assets.mark(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Channel channel(AtPlan at, PlanWords words, Plan plan, Line line, Map<String, AtPlan.Tick> ticks) {
        var mic = line.placement();
        String what = line.seat() + "|" + line.mic() + "|" + line.channel() + "|" + (line.unit() == null ? mic.micType() : line.unit().id()) + "|" + mic.position() + "|"
                + Math.round(mic.distanceM() * 1000) + "|" + Math.round(mic.aimDegrees()) + "|" + line.phantom()
                + (line.between().boxed() ? "|" + line.between().box().unit() : "") + (line.between().pad() == null ? "" : "|" + line.between().pad());
        List<Box> boxes = List.of(box(at, ticks, mark("stands|" + what), "Stands"), box(at, ticks, mark("patched|" + what), "Patched"), box(at, ticks, mark("heard|" + what), "Heard"));
        return new Channel(line.number(), line.name(), line.channelLabel() == null ? "" : line.channelLabel(), line.unit() == null ? "" : line.unit().label(),
                line.unit() == null || line.unit().storedAt() == null ? "" : line.unit().storedAt(), mic.name(), facts(at, words, plan, line), words.cautions(line), boxes);
    }

    private static List<Fact> facts(AtPlan at, PlanWords words, Plan plan, Line line) {
        List<Fact> facts = new ArrayList<>();
        var mic = line.placement();
        Seat seat = at.lineUp().seat(line.seat()).orElse(null);
        boolean wired = SetUpWords.wired(mic);
        facts.add(new Fact("Place", at.reader().sentence(mic.positionName()), ""));
        if (!wired) {
            facts.add(new Fact("Distance", at.reader().distance(mic.distanceM()), ""));
            if (mic.heightM() != null) {
                facts.add(new Fact("Height", at.reader().distance(mic.heightM()), ""));
            }
            plan.served().stream().filter(served -> served.seat().equals(line.seat()) && seat != null).findFirst().map(served -> words.setUp(seat).aim(served.option(), line.mic() - 1))
                    .filter(aim -> !aim.isEmpty()).ifPresent(aim -> facts.add(new Fact("Aim", aim, "")));
            facts.add(new Fact("Pattern", mic.pattern().id(), ""));
        }
        facts.add(new Fact("Stand", stand(line), ""));
        facts.add(new Fact("Phantom", line.phantom() ? line.phantomWanted() ? "on" : "on, which it does not need" : "off", ""));
        if (line.booster() != null) {
            facts.add(new Fact("Booster", boosterLabel(at, line) + ", " + at.reader().value(line.boosterGainDb(), "dB") + " up", ""));
        }
        if (line.between().box() != null) {
            facts.add(new Fact("Line box", line.between().box().called() + switch (line.between().box().power()) {
                case PHANTOM -> ", on phantom power";
                case BATTERY -> ", on a fresh cell";
                case NONE -> ", needs no power";
            }, ""));
        }
        if (line.between().instrument()) {
            facts.add(new Fact("Line box", "none: into the instrument input", ""));
        }
        facts.add(new Fact("Pad", SetUpWords.pads(at.reader(), line), ""));
        facts.add(new Fact("High-pass", line.highPassHz() == null ? "off" : at.reader().frequency(line.highPassHz()), ""));
        facts.add(new Fact("Polarity", mic.invertPolarity() ? "inverted" : "as it is", ""));
        if (mic.predicted().peakDbSpl() != null) {
            facts.add(new Fact("Expect there", at.reader().value(mic.predicted().typicalDbSpl(), "dB SPL") + ", peaks to " + at.reader().value(mic.predicted().peakDbSpl(), "dB SPL"), ""));
        }
        if (line.gainDb() != null) {
            facts.add(new Fact("Gain", "about " + at.reader().value(line.gainDb(), "dB"), ""));
        }
        return facts;
    }

    private static String boosterLabel(AtPlan at, Line line) {
        return at.gear().boosters().stream().filter(one -> one.id().equals(line.booster())).map(one -> one.label()).findFirst().orElse(line.booster());
    }

    private static String stand(Line line) {
        if (line.sharesStandWith() != null) {
            return "with line " + line.sharesStandWith();
        }
        String held = line.standKind() == null ? SetUpWords.held(line.placement().mount()) : StandSheet.kindOne(line.standKind());
        return held.isEmpty() ? "none" : line.standLabel() == null ? held : line.standLabel() + (line.standKind() == StandKind.OVERHEAD ? ", with a sandbag" : "");
    }
}
