package pairwright.lab;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Severity;
import pairwright.model.Source;
import pairwright.rules.Claim;
import pairwright.rules.RuleInfo;
import pairwright.session.Arrival;
import pairwright.session.Gear;
import pairwright.session.Line;
import pairwright.session.LineUp;
import pairwright.session.Plan;
import pairwright.session.StoodPlan;
import pairwright.session.Said;

/** A few players on a floor, each on a channel of its own: what may stand there, and what is wrong with what does. Not safe to share. */
final class FaultsPlan {
    private static final String BANK = "stage box";
    private static final String WHOLE = "whole";
    private static final String GEAR = "gear";
    /** What costs as much against is more than a matter of taste. */
    private static final int CLEAR_POINTS = 3;
    private static final int SLIGHT_POINTS = 2;

    /** What kind of channel a seat is on. */
    enum On {
        /** As good as any. */
        USUAL(65, 0, 2400, PhantomSwitch.CHANNEL),
        /** Has little gain. */
        WEAK(35, 0, 2400, PhantomSwitch.CHANNEL),
        /** Does not go low. */
        HOT(70, 30, 2400, PhantomSwitch.CHANNEL),
        /** Loads what is plugged in. */
        LOADING(65, 0, 600, PhantomSwitch.CHANNEL),
        /** Shares a switch with others. */
        SHARED(65, 0, 2400, PhantomSwitch.BANK),
        /** Phantom power is on whether wanted or not. */
        LIVE(65, 0, 2400, PhantomSwitch.CHANNEL),
        /** Has no phantom power. */
        WITHOUT(65, 0, 2400, PhantomSwitch.NONE);

        private static final String ID = "channel-";
        private final double mostGainDb;
        private final double leastGainDb;
        private final double inputOhm;
        private final PhantomSwitch phantom;

        On(double mostGainDb, double leastGainDb, double inputOhm, PhantomSwitch phantom) {
            this.mostGainDb = mostGainDb;
            this.leastGainDb = leastGainDb;
            this.inputOhm = inputOhm;
            this.phantom = phantom;
        }

        Gear.Channel channel(int number) {
            return new Gear.Channel(id(number), "channel " + number, phantom == PhantomSwitch.BANK ? BANK : null, phantom, leastGainDb, mostGainDb, inputOhm, null, null);
        }

        static String id(int number) {
            return ID + number;
        }
    }

    private final Lab lab;
    private final int leastAgainstPoints;
    private final LineUp lineUp;
    private final List<On> on;
    private final StoodPlan standing;

    /**
     * As a case has it: room, sources, places, each as x, y and facing, characters that are wanted, "-" for none, and channels.
     *
     * @param level from the fourth on what speaks only a little against a set-up is a fault as well
     * @throws IllegalArgumentException where the catalogue does not have something of it
     */
    FaultsPlan(Case drawn, int level, Lab lab) {
        this.lab = lab;
        this.leastAgainstPoints = level >= 4 ? SLIGHT_POINTS : CLEAR_POINTS;
        this.on = drawn.all("channels").stream().map(On::valueOf).toList();
        this.lineUp = RoundFloor.lineUp(drawn.one("room"), drawn.all("sources"), drawn.all("places"), drawn.all("characters"), seat -> limits(on.get(seat)), null, null, lab);
        this.standing = new StoodPlan(lineUp, channels(), lab.knowledge());
    }

    private static Limits limits(On on) {
        return new Limits(2, on == On.WITHOUT ? Boolean.FALSE : null, on.mostGainDb, null, null, null, null, null);
    }

    private List<Gear.Channel> channels() {
        // those for the second microphones of pairs are as good as any
        return IntStream.range(0, 2 * on.size()).mapToObj(i -> (i < on.size() ? on.get(i) : On.USUAL).channel(i + 1)).toList();
    }

    /** Numbers of the channels of a seat. */
    private List<Integer> channels(int seat, SeatTrials.Trial trial) {
        return trial.pair() ? List.of(seat + 1, on.size() + seat + 1) : List.of(seat + 1);
    }

    int leastAgainstPoints() {
        return leastAgainstPoints;
    }

    LineUp lineUp() {
        return lineUp;
    }

    On on(int seat) {
        return on.get(seat);
    }

    Source source(int seat) {
        return lab.source(lineUp.seats().get(seat).source());
    }

    /** What the rules say in the words of a seat. */
    Claim claim(int seat) {
        List<String> wanted = lineUp.seats().get(seat).character();
        return Claims.of(source(seat), lab.room(lineUp.floor().room()), wanted == null || wanted.isEmpty() ? null : wanted.get(0), lab);
    }

    List<SeatTrials.Trial> trials(int seat, List<MicType> types, boolean pairs) {
        return new SeatTrials(standing, lineUp.seats().get(seat).id(), source(seat), 100L * leastAgainstPoints).of(types, pairs);
    }

    /**
     * One seat as it is set up.
     *
     * @param faults of it, gravest first
     * @param vague whether nothing is wrong with it but that little speaks for it, which nobody can find on a sheet
     * @param speaking ids of all rules that say anything of it
     * @param late what reaches one of its lines later than another line
     */
    record At(SeatTrials.Trial trial, List<Line> lines, List<SetUpFault> faults, boolean vague, Set<String> speaking, List<Arrival> late) {
        boolean faulty() {
            return !faults.isEmpty();
        }

        boolean dangerous() {
            return of(SetUpFault.Grade.DANGER).isPresent();
        }

        /** The first fault of a grade. */
        Optional<SetUpFault> of(SetUpFault.Grade grade) {
            return faults.stream().filter(fault -> fault.grade() == grade).findFirst();
        }
    }

    /** All seats with what the rules say of each by itself and in the plan. */
    List<At> stood(List<SeatTrials.Trial> trials) {
        List<StoodPlan.Put> all = new ArrayList<>();
        List<String> live = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            all.add(new StoodPlan.Put(lineUp.seats().get(i).id(), trials.get(i).of(), trials.get(i).offer(), channels(i, trials.get(i)).stream().map(On::id).toList()));
            if (on.get(i) == On.LIVE) {
                live.add(On.id(i + 1));
            }
        }
        Plan plan = standing.plan(all, live);
        List<At> stood = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            stood.add(at(trials.get(i), plan.linesOf(lineUp.seats().get(i).id()), plan));
        }
        return stood;
    }

    private At at(SeatTrials.Trial trial, List<Line> lines, Plan plan) {
        List<SetUpFault> faults = new ArrayList<>(trial.faults());
        Set<String> speaking = new HashSet<>(trial.speaking());
        List<Said> said = new ArrayList<>();
        lines.forEach(line -> {
            said.addAll(line.cautions());
            // what comes too late comes too late to the farther of the two
            plan.timing().stream().filter(arrival -> arrival.lines().get(1) == line.number()).forEach(arrival -> said.addAll(arrival.cautions()));
        });
        for (Said one : said) {
            speaking.add(one.rule());
            // what stands and units there are the sheet tells, and the plan does not know
            if (one.severity() != Severity.NOTE && !lab.rules().rule(one.rule()).topic().equals(GEAR)) {
                faults.add(new SetUpFault(one.rule(), SetUpFault.Grade.of(one.severity()), one::says));
            }
        }
        // that all in all little speaks for it says nothing of what is wrong where anything else does
        List<SetUpFault> own = faults.stream().filter(fault -> !ofTheWhole(fault.rule())).toList();
        return new At(trial, lines, SetUpFault.sorted(own.isEmpty() ? faults : own), own.isEmpty() && !faults.isEmpty(), speaking,
                plan.timing().stream().filter(arrival -> lines.stream().anyMatch(line -> line.number() == arrival.lines().get(1))).toList());
    }

    private boolean ofTheWhole(String rule) {
        RuleInfo info = lab.rules().rule(rule);
        return info.ofAPlan() && info.topic().equals(WHOLE);
    }

    /** What there is to know of the channels. */
    Shown.Table channelTable(List<At> stood) {
        List<List<String>> rows = new ArrayList<>();
        for (At at : stood) {
            for (Line line : at.lines()) {
                On kind = kind(number(line));
                boolean live = kind == On.LIVE || kind != On.WITHOUT && line.placement().phantom();
                rows.add(List.of(String.valueOf(number(line)), whole(kind.leastGainDb) + " to " + whole(kind.mostGainDb), whole(kind.inputOhm),
                        switch (kind.phantom) {
                            case NONE -> "there is none";
                            case BANK -> "one for the whole stage box";
                            case CHANNEL -> "its own";
                        }, live ? "on" : "off"));
            }
        }
        return new Shown.Table("The channels", List.of("Channel", "Gain, dB", "Input, \u03a9", "Switch for phantom power", "Phantom power"), rows);
    }

    private On kind(int number) {
        return number <= on.size() ? on.get(number - 1) : On.USUAL;
    }

    /** The number of the channel of a line. */
    static int number(Line line) {
        return Integer.parseInt(line.channel().substring(On.ID.length()));
    }

    private static String whole(double number) {
        return String.format(Locale.ROOT, "%.0f", number);
    }
}
