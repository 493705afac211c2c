package pairwright.session;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.acoustics.Level;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Arrangement;
import pairwright.model.Catalogue;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.Reason;
import pairwright.model.Stock;
import pairwright.model.Technique;
import pairwright.rules.PlannedArrival;
import pairwright.rules.PlannedBank;
import pairwright.rules.PlannedHearing;
import pairwright.rules.PlannedInput;
import pairwright.rules.PlannedLine;
import pairwright.rules.PlannedWhole;

/** The parts of one plan as the rules read them: names in words, and numbers put against what the channel, the stand and the supply can do. */
final class PlanFacts {
    private static final double HALF_OCTAVE_RATIO = Math.sqrt(2);
    /** Of what might be borrowed so many are named. */
    private static final int USUAL = 2;

    private final Plan plan;
    private final LineUp lineUp;
    private final Gear gear;
    private final Catalogue catalogue;
    private final SeatNames names;
    private final Map<Integer, Line> lines = new TreeMap<>();
    private final Map<String, Gear.Channel> channels = new HashMap<>();
    private final Map<String, Line> byUnit = new HashMap<>();

    PlanFacts(Plan plan, LineUp lineUp, Gear gear, Catalogue catalogue) {
        this.plan = plan;
        this.lineUp = lineUp;
        this.gear = gear;
        this.catalogue = catalogue;
        this.names = SeatNames.of(lineUp);
        if (gear.channels() != null) {
            gear.channels().forEach(channel -> channels.put(channel.id(), channel));
        }
        for (Line line : plan.lines()) {
            lines.put(line.number(), line);
            if (line.unit() != null) {
                byUnit.put(line.unit().id(), line);
            }
        }
    }

    PlannedLine line(Line line) {
        MicType mic = mic(line);
        Gear.Channel channel = channels.get(line.channel());
        Double mostDb = channel == null ? null : channel.mostGainDb();
        Double inputOhm = channel == null ? null : channel.inputOhm();
        Position position = position(line);
        return new PlannedLine(
                called(line.number()), names.of(line.seat()), type(line),
                line.unit() == null ? "" : line.unit().label(),
                line.unit() == null || line.unit().note() == null ? "" : sentence(line.unit().note()),
                line.channelLabel() == null ? "channel " + line.number() : line.channelLabel(),
                line.bank() == null ? "" : line.bank(),
                line.standLabel() == null ? "its stand" : line.standLabel(),
                mateSeat(line),
                mic.family(), mic.power(), mic.passiveRibbon(), line.phantom(), line.phantomWanted(),
                channel != null && channel.phantom() == PhantomSwitch.BANK,
                line.booster() != null,
                gear.boosters().stream().anyMatch(booster -> booster.id().equals(line.booster()) && booster.passesPhantom()),
                line.gainDb(),
                mostDb == null || line.gainDb() == null ? null : Double.valueOf(Math.max(0, line.gainDb() - mostDb)),
                mostDb == null || line.gainDb() == null ? null : Double.valueOf(Math.max(0, mostDb - line.gainDb())),
                line.placement().pad() || !mic.padsDb().isEmpty(),
                inputOhm == null || mic.impedanceOhm() == null ? null : Double.valueOf(inputOhm / mic.impedanceOhm().typical()),
                inputOhm,
                position != null && position.overPeople(),
                line.placement().mount().boomReachM() > 0,
                line.standRatio(), line.placement().standRatio(),
                line.sharesStandWith() != null,
                elsewhere(line), unlike(line),
                line.between().box() == null ? "" : line.between().box().called(), line.between().boxed(),
                line.between().box() != null && line.between().box().power() == Between.BoxPower.BATTERY, line.between().instrument(),
                line.between().pad() == null ? "" : line.between().padLabel(), line.between().padLossDb(), line.between().ownPadDb(),
                line.between().ownPadDb() > line.placement().padDb(),
                line.mic() == 1 ? served(line.seat()).map(served -> served.option().score()).orElse(null) : null, usual(line), worst(line), line.between().overDb());
    }

    private Optional<Plan.Served> served(String seat) {
        return plan.served().stream().filter(served -> served.seat().equals(seat)).findFirst();
    }

    /** The first choices of the trade for a source as it is played, but for those that are planned for it. */
    private String usual(Line line) {
        List<String> ways = lineUp.seat(line.seat()).map(Seat::ways).orElse(List.of());
        Set<String> there = plan.linesOf(line.seat()).stream().map(own -> own.placement().micType()).collect(Collectors.toSet());
        return catalogue.sources().get(line.source()).habits().stream()
                .filter(habit -> habit.rank() == HabitRank.FIRST && (habit.onlyWays().isEmpty() || habit.onlyWays().stream().anyMatch(ways::contains)))
                .map(Habit::micType).filter(type -> !there.contains(type)).distinct().limit(USUAL)
                .map(type -> Naming.small(Naming.type(catalogue.mics().get(type).name()))).collect(Collectors.joining(", "));
    }

    private String worst(Line line) {
        return served(line.seat()).stream().flatMap(served -> served.option().reasons().stream()).filter(reason -> reason.points() < 0)
                .min(Comparator.comparingDouble(Reason::points)).map(Reason::says).orElse("");
    }

    /** A line whose peaks are over what its channel takes. */
    PlannedInput input(Line line) {
        return new PlannedInput(called(line.number()), names.of(line.seat()), type(line), line.channelLabel() == null ? "channel " + line.number() : line.channelLabel(),
                line.between().overDb());
    }

    /** Who has the other of a matched pair, told once for the two; empty where both are at one seat, or one of them is not in use. */
    private String mateSeat(Line line) {
        if (line.unit() == null || gear.stock() == null) {
            return "";
        }
        return gear.stock().units().stream().filter(unit -> unit.id().equals(line.unit().id()) && unit.pairMate() != null)
                .map(unit -> byUnit.get(unit.pairMate())).filter(Objects::nonNull)
                .filter(mate -> mate.number() > line.number() && !mate.seat().equals(line.seat()))
                .map(mate -> names.of(mate.seat())).findFirst().orElse("");
    }

    /** Whether the line before it of the same seat is not the one before it. */
    private boolean elsewhere(Line line) {
        return before(line) != null && before(line).number() != line.number() - 1;
    }

    private boolean unlike(Line line) {
        Line other = before(line);
        if (other == null || technique(line.seat()) == null || !technique(line.seat()).stereo()) {
            return false;
        }
        Gear.Channel one = channels.get(line.channel());
        Gear.Channel two = channels.get(other.channel());
        return one != null && two != null && !(Objects.equals(one.bank(), two.bank()) && Objects.equals(one.mostGainDb(), two.mostGainDb())
                && Objects.equals(one.inputOhm(), two.inputOhm()) && Objects.equals(one.noiseDbu(), two.noiseDbu()));
    }

    private Line before(Line line) {
        return plan.linesOf(line.seat()).stream().filter(other -> other.number() < line.number()).max(Comparator.comparingInt(Line::number)).orElse(null);
    }

    PlannedHearing hearing(Hears hears) {
        Line line = lines.get(hears.line());
        boolean most = plan.bleed().stream().filter(other -> other.line() == hears.line()).noneMatch(other -> other.separationDb() < hears.separationDb());
        return new PlannedHearing(called(line.number()), names.of(line.seat()), names.of(hears.seat()), line.placement().distanceRatio() >= 1, most,
                hears.distanceM(), line.placement().aimDegrees(), hears.screenDb(), hears.separationDb(), hears.loudestHz(),
                hears.roomAllowsDb() == null ? null : Double.valueOf(Math.max(0, hears.roomAllowsDb() - hears.separationDb())),
                hears.separationDb() - hears.straightDb(), hears.betterAimDegrees(), hears.betterDb() - hears.separationDb(),
                line.highPassHz(), line.highPassHz() != null && hears.loudestHz() * HALF_OCTAVE_RATIO <= line.highPassHz());
    }

    PlannedArrival arrival(Arrival arrival) {
        Technique technique = arrival.own() ? technique(arrival.seat()) : null;
        Arrangement arrangement = technique == null ? null : technique.arrangement();
        return new PlannedArrival(names.of(arrival.seat()), called(arrival.lines().get(0)), called(arrival.lines().get(1)), arrival.own(),
                technique != null && technique.stereo() || arrangement == Arrangement.TWO_ENDS || arrangement == Arrangement.NULLS_APART,
                arrangement == Arrangement.NEAR_AND_FAR, arrival.delayMs(), arrival.firstNullHz(), arrival.rippleDb(), arrival.distanceRatio(),
                arrival.inverted(), arrival.lines().stream().anyMatch(line -> !Listening.inTheAir(lines.get(line).placement())));
    }

    PlannedBank bank(Plan.Supply supply) {
        return new PlannedBank(supply.bank(), supply.phantom(), supply.drawnMa(), supply.supplyMa(),
                supply.supplyMa() == null || supply.supplyMa() <= 0 ? null : Double.valueOf(supply.drawnMa() / supply.supplyMa()));
    }

    PlannedWhole whole() {
        Loudest loudest = Loudest.of(lineUp, catalogue);
        long used = plan.lines().stream().map(Line::channel).filter(Objects::nonNull).distinct().count();
        return new PlannedWhole(
                called(line -> mic(line).passiveRibbon()), called(Line::phantom),
                listed(plan.lines().stream().filter(line -> mic(line).power() == PowerNeed.OWN_SUPPLY).map(line -> type(line) + " for " + names.of(line.seat()))),
                listed(plan.lines().stream().filter(this::lastOne).map(line -> names.of(line.seat())).distinct()),
                loudest == null ? "" : names.of(loudest.seat()), loudest == null ? 0 : loudest.exposureDba(),
                loudest == null ? 24 : loudest.allowedHours(),
                gear.channels() == null ? null : Integer.valueOf((int) (gear.channels().size() - used)),
                plan.lines().size(), plan.lines().isEmpty() ? 0 : Level.openMicRiseDb(plan.lines().size()));
    }

    /** Whether it is of a must-have and all units of its type that are free are in use. */
    private boolean lastOne(Line line) {
        boolean must = lineUp.seat(line.seat()).map(Seat::must).orElse(false);
        return must && line.unit() != null && gear.stock() != null && gear.stock().units().stream().filter(Stock.Held::free)
                .noneMatch(unit -> unit.micType().equals(line.placement().micType()) && !byUnit.containsKey(unit.id()));
    }

    /** A line within a sentence; its number is what everybody at a desk goes by. */
    private static String called(int line) {
        return "line " + line;
    }

    private String called(Predicate<Line> which) {
        List<String> numbers = plan.lines().stream().filter(which).map(line -> String.valueOf(line.number())).toList();
        return numbers.isEmpty() ? "" : (numbers.size() == 1 ? "line " : "lines ") + listed(numbers.stream());
    }

    private static String listed(Stream<String> several) {
        List<String> all = several.toList();
        int last = all.size() - 1;
        return last < 1 ? String.join("", all) : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
    }

    private static String type(Line line) {
        return Naming.the(Naming.type(line.placement().name()));
    }

    /** Whose a line is. */
    String seat(int line) {
        return lines.get(line).seat();
    }

    /** Numbers of the lines that are fed by a bank. */
    List<Integer> linesOn(Plan.Supply supply) {
        return plan.lines().stream().filter(line -> supply.bank().equals(line.bank() == null ? line.channelLabel() : line.bank())).map(Line::number).toList();
    }

    SeatNames names() {
        return names;
    }

    private MicType mic(Line line) {
        return catalogue.mics().get(line.placement().micType());
    }

    private Position position(Line line) {
        return catalogue.sources().get(line.source()).positions().stream().filter(one -> one.id().equals(line.placement().position())).findFirst()
                .orElse(null);
    }

    /** How the two of a seat relate; null for one. */
    private Technique technique(String seat) {
        return plan.served().stream().filter(served -> served.seat().equals(seat)).map(served -> catalogue.techniques().get(served.option().technique()))
                .filter(Objects::nonNull).findFirst().orElse(null);
    }

    private static String sentence(String note) {
        String text = note.strip();
        return text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? text : text + ".";
    }
}
