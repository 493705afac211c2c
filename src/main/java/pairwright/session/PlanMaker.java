package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.acoustics.HighPass;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Arrangement;
import pairwright.model.Given;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.PowerNeed;
import pairwright.model.Technique;
import pairwright.session.allocation.Channel;
import pairwright.session.allocation.Solution;

/** Turns what the search has chosen into lines: which unit, on which channel, on which stand, at which gain. */
final class PlanMaker {
    private final List<AtSeat> seats;
    private final Resources resources;
    /** What stands already, by seat. */
    private final Map<String, Picks.AtSeat> standing;
    private final LineUp lineUp;
    private final List<Set<Integer>> sections;

    PlanMaker(LineUp lineUp, List<AtSeat> seats, Resources resources, Map<String, Picks.AtSeat> standing) {
        this.lineUp = lineUp;
        this.seats = seats;
        this.resources = resources;
        this.standing = standing;
        this.sections = lineUp.keep().stream().map(section -> IntStream.range(0, seats.size()).filter(seat -> section.contains(seats.get(seat).seat().id())).boxed()
                .collect(Collectors.toSet())).toList();
    }

    /** What is chosen for one seat; where nothing is, {@code way} leaves it out. */
    record Taken(int seat, SeatChoices.Way way, List<Channel> channels, List<String> stands) {
    }

    /** A plan before it is judged as a whole. */
    record Draft(List<Plan.Served> served, List<String> leftOut, List<Line> lines) {
    }

    Draft draft(List<SeatChoices.Way> ways, Solution solution) {
        List<Taken> taken = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        List<List<Channel>> channels = channels(ways, solution);
        for (int seat = 0; seat < ways.size(); seat++) {
            if (ways.get(seat).offer() == null) {
                leftOut.add(seats.get(seat).seat().id());
            } else {
                taken.add(new Taken(seat, ways.get(seat), channels.get(seat), solution.served().get(seat)));
            }
        }
        List<List<Given>> units = resources.units().handOut(taken.stream().map(one -> new UnitPool.Chosen(one.way().offer(), one.way().choice().takes(), standing(one))).toList());
        StandsHandedOut stands = new StandsHandedOut();
        PadsHandedOut pads = new PadsHandedOut(resources.pads(), padsWanted(taken));
        Set<String> gone = new HashSet<>();
        units.forEach(of -> of.stream().filter(Objects::nonNull).forEach(unit -> gone.add(unit.id())));
        List<Plan.Served> served = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        int boosters = 0;
        for (int i = 0; i < taken.size(); i++) {
            Taken one = taken.get(i);
            AtSeat at = seats.get(one.seat());
            List<String> ids = units.get(i).contains(null) ? List.of() : units.get(i).stream().map(Given::id).toList();
            Option option = at.explained(one.way().offer(), ids);
            served.add(new Plan.Served(at.seat().id(), option));
            boosters = add(one, at, option, units.get(i), stands, boosters, pads, gone, solution, lines);
        }
        return new Draft(List.copyOf(served), List.copyOf(leftOut), numbered(lines, taken));
    }

    private List<List<Channel>> channels(List<SeatChoices.Way> ways, Solution solution) {
        if (!resources.channels().counted()) {
            return solution.channels();
        }
        List<List<Channel>> channels = ChannelsHandedOut.of(resources.channels(), ways, solution, seats.stream().map(this::plugged).toList());
        // what stands stays plugged where it is
        return standing.isEmpty() ? SideBySide.of(resources.channels(), solution.liveBanks(), ways, channels, sections) : channels;
    }

    private List<Channel> plugged(AtSeat at) {
        Picks.AtSeat picked = standing.get(at.seat().id());
        return picked == null ? List.of() : picked.mics().stream().map(Picks.Mic::channel).filter(Objects::nonNull).map(resources.channels()::at).filter(Objects::nonNull).toList();
    }

    private List<String> standing(Taken taken) {
        Picks.AtSeat picked = standing.get(seats.get(taken.seat()).seat().id());
        return picked == null ? null : picked.mics().stream().map(Picks.Mic::unit).toList();
    }

    private int add(Taken taken, AtSeat at, Option option, List<Given> units, StandsHandedOut handedOut, int boostersBefore, PadsHandedOut pads,
            Set<String> gone, Solution solution, List<Line> lines) {
        Offer offer = taken.way().offer();
        List<Stands.Need> needs = Resources.needs(offer, at.source().body());
        boolean oneBar = Resources.onOneBar(offer);
        int boosters = boostersBefore;
        int feed = 0;
        int stand = 0;
        Gear.Stand shared = null;
        for (int i = 0; i < offer.mics().size(); i++) {
            OfferedMic mic = offer.mics().get(i);
            Placement placement = option.mics().get(i);
            Stands.Need need = !mic.position().mount().onStand() ? null : needs.get(oneBar ? 0 : stand);
            Gear.Stand held = null;
            if (need != null && resources.stands().counted()) {
                held = oneBar && i > 0 ? shared : handedOut.next(taken.stands().get(stand), standing(at, i) == null ? null : standing(at, i).stand());
                shared = held;
            }
            stand += need == null ? 0 : 1;
            Course course = taken.way().courses().get(i);
            Gear.Booster booster = course.boosted() ? resources.boosters().get(boosters++) : null;
            Between.Box box = box(course, mic, units.get(i), standing(at, i), gone);
            for (int half = 0; half < mic.micType().channels(); half++) {
                Channel on = taken.channels().isEmpty() ? null : taken.channels().get(feed++);
                Between between = between(mic, course, box, pads.at(new PadsHandedOut.Slot(taken.seat(), i, half)), on);
                lines.add(line(at, offer, option, i, half, placement, units.get(i), need, held, oneBar && i > 0 || half > 0, booster, between, on, solution));
            }
        }
        return boosters;
    }

    private Line line(AtSeat at, Offer offer, Option option, int mic, int half, Placement placement, Given unit, Stands.Need need, Gear.Stand stand, boolean shares,
            Gear.Booster booster, Between between, Channel on, Solution solution) {
        OfferedMic offered = offer.mics().get(mic);
        Gear.Channel channel = on == null ? null : resources.channels().channel(on);
        MicType box = between.boxed() ? resources.type(between.box().micType()) : null;
        boolean fed = box != null && between.box().power() == Between.BoxPower.PHANTOM;
        boolean wanted = booster != null || fed || placement.phantom();
        boolean live = wanted || on != null && solution.liveBanks().contains(on.bank());
        Double gainDb = booster == null ? InputLevel.gainDb(placement.predicted(), between.padLossDb() + between.ownPadDb() - offered.padDb())
                : placement.predicted().gainDb() == null ? null : Double.valueOf(Math.max(0, placement.predicted().gainDb() - booster.gainDb()));
        return new Line(0, channel == null ? null : channel.id(), channel == null ? null : channel.label(), channel == null ? null : channel.bank(), unit,
                at.seat().id(), name(at, offer, option, mic, half, offered.micType().channels()), at.seat().source(), mic + 1, placement,
                at.surroundings().spot(offer, mic),
                stand == null ? null : stand.id(), stand == null ? null : stand.label(), need == null ? null : resources.stands().kind(need),
                stand == null || need == null ? null : Stands.ratio(stand, need), shares ? Integer.valueOf(0) : null, booster == null ? null : booster.id(),
                booster == null ? 0 : booster.gainDb(), live, wanted, booster != null ? booster.phantomMa() : fed ? box.currentMa().typical() : placement.phantom() ? placement.currentMa() : 0,
                gainDb, highPassHz(at), between, List.of());
    }

    private static Double highPassHz(AtSeat at) {
        if (at.source().fundamentalHz() == null) {
            return null;
        }
        double cornerHz = Math.floor(HighPass.cornerHz(at.source().fundamentalHz().low(), at.catalogue().custom("high-pass-loss")));
        return cornerHz < at.catalogue().custom("least-high-pass") ? null : cornerHz;
    }

    private String name(AtSeat at, Offer offer, Option option, int mic, int half, int halves) {
        String who = at.seat().player() == null ? at.source().name() + lineUp.toldApart(at.seat()) : at.seat().player();
        String where = offer.mics().size() == 1 ? "" : option.mics().get(0).position().equals(option.mics().get(1).position())
                ? ", " + ofTwo(at.catalogue().techniques().get(offer.technique()), mic) : ", " + small(option.mics().get(mic).positionName());
        return who + where + (halves == 1 ? "" : half == 0 ? ", left" : ", right");
    }

    /** The first of a stereo pair is the left one, as one stands behind the pair and looks at the source; of mid and side it is the middle. */
    private static String ofTwo(Technique technique, int mic) {
        if (technique == null || !technique.stereo()) {
            return mic == 0 ? "first" : "second";
        }
        return technique.arrangement() == Arrangement.MID_SIDE ? mic == 0 ? "mid" : "side" : mic == 0 ? "left" : "right";
    }

    private static String small(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** In the order of the channels; where those are not counted, in the order of the seats. */
    private List<Line> numbered(List<Line> lines, List<Taken> taken) {
        Map<String, Integer> order = new HashMap<>();
        for (int bank = 0; bank < resources.channels().banks().size(); bank++) {
            resources.channels().of(bank).forEach(channel -> order.put(channel.id(), order.size()));
        }
        List<Line> sorted = new ArrayList<>(lines);
        sorted.sort(Comparator.comparingInt(line -> line.channel() == null ? 0 : order.get(line.channel())));
        List<Line> numbered = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Line line = sorted.get(i);
            numbered.add(line.numbered(i + 1));
        }
        return numbered.stream().map(line -> line.sharesStandWith() == null ? line : line.sharing(numbered.stream()
                .filter(other -> other.seat().equals(line.seat()) && other.sharesStandWith() == null && (line.stand() == null || line.stand().equals(other.stand())))
                .findFirst().map(Line::number).orElse(null))).toList();
    }

    private Picks.Mic standing(AtSeat at, int mic) {
        Picks.AtSeat picked = standing.get(at.seat().id());
        return picked == null || mic >= picked.mics().size() ? null : picked.mics().get(mic);
    }

    private List<PadsHandedOut.Wanted> padsWanted(List<Taken> taken) {
        List<PadsHandedOut.Wanted> wanted = new ArrayList<>();
        for (Taken one : taken) {
            List<String> caps = one.stands().stream().filter(Resources::isPad).toList();
            int feed = 0;
            int cap = 0;
            for (int i = 0; i < one.way().courses().size(); i++) {
                OfferedMic mic = one.way().offer().mics().get(i);
                Course course = one.way().courses().get(i);
                Picks.Mic standing = standing(seats.get(one.seat()), i);
                for (int half = 0; half < mic.micType().channels() && !one.channels().isEmpty(); half++, feed++) {
                    if (course.padded()) {
                        double leastDb = InputLevel.leastGainDb(resources.channels().channel(one.channels().get(feed)));
                        wanted.add(new PadsHandedOut.Wanted(new PadsHandedOut.Slot(one.seat(), i, half), caps.get(cap++), InputLevel.leftOverDb(mic, leastDb), mic.phantom(),
                                standing == null ? null : standing.pad()));
                    }
                }
            }
        }
        return wanted;
    }

    /** @param gone ids of units that are taken; that of the box is added */
    private Between.Box box(Course course, OfferedMic mic, Given unit, Picks.Mic standing, Set<String> gone) {
        MicType type = course.box() == null ? mic.micType() : course.box();
        if (course.box() == null && (type.family() != MicFamily.LINE || !type.captures())) {
            return null;
        }
        Given box = course.box() == null ? unit : resources.units().handOutBox(type.id(), standing == null ? null : standing.box(), gone);
        Between.BoxPower own = mic.phantom() ? Between.BoxPower.PHANTOM : type.power() == PowerNeed.PHANTOM_OR_BATTERY ? Between.BoxPower.BATTERY : Between.BoxPower.NONE;
        return new Between.Box(box == null ? null : box.id(), box == null ? null : box.label(), box == null ? null : box.storedAt(), type.id(), type.name(),
                course.box() == null ? own : course.power(), course.box() == null);
    }

    private Between between(OfferedMic mic, Course course, Between.Box box, Gear.LinePad pad, Channel on) {
        double padLossDb = pad == null ? 0 : pad.lossDb();
        Double overDb = on == null || mic.predicted().outputPeakDbu() == null || course.boosted() || course.box() != null ? null
                : Double.valueOf(InputLevel.overDb(mic.predicted(), InputLevel.leastGainDb(resources.channels().channel(on))) - padLossDb);
        double ownPadDb = overDb == null ? mic.padDb() : InputLevel.ownPadDb(mic, overDb);
        return new Between(box, course.instrument(), pad == null ? null : pad.id(), pad == null ? null : pad.label(), padLossDb, ownPadDb,
                overDb == null ? null : Double.valueOf(InputLevel.tenth(overDb - (ownPadDb - mic.padDb()))));
    }

    /** Hands out the stands of each class, to each seat again what stands there, if that is of the class and not gone. */
    private final class StandsHandedOut {
        private final Set<String> gone = new HashSet<>();
        private final Set<String> reserved = new HashSet<>();

        StandsHandedOut() {
            standing.values().forEach(seat -> seat.mics().forEach(mic -> reserved.add(mic.stand())));
        }

        Gear.Stand next(String cap, String standing) {
            List<Gear.Stand> left = resources.stand(cap).stands().stream().filter(stand -> !gone.contains(stand.id())).toList();
            Gear.Stand next = left.stream().filter(stand -> stand.id().equals(standing)).findFirst()
                    .or(() -> left.stream().filter(stand -> !reserved.contains(stand.id())).findFirst()).orElseGet(() -> left.get(0));
            gone.add(next.id());
            return next;
        }
    }
}
