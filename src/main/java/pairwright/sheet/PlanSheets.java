package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pairwright.drawing.Drawing;
import pairwright.drawing.FloorDrawing;
import pairwright.drawing.FloorWords;
import pairwright.model.Severity;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.Seat;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Link;

/** The sheets of a plan, each to be hung up; one page has all of them, for one print. */
public final class PlanSheets {
    /** The sheets in their order: id, name, what is on it. */
    private static final List<Sheet> ALL = List.of(
            new Sheet("input", "Input list", "Every channel with its microphone, power, stand and gain."),
            new Sheet("cautions", "Cautions", "What can harm somebody, gear or a take, and the order in which to patch."),
            new Sheet("floor", "Floor plan", "Who sits where, with every microphone, to scale."),
            new Sheet("set-ups", "Set-ups", "One leaf for each source, with its drawing."),
            new Sheet("tables", "Bleed and alignment", "What each microphone hears of the others, and when."),
            new Sheet("stands", "Stands and leads", "What holds each microphone, and how much of it."),
            new Sheet("packing", "Packing list", "What to fetch, place by place."));

    private PlanSheets() {
    }

    /** A sheet there is. */
    private record Sheet(String id, String name, String says) {
    }

    /**
     * What the list of sheets shows.
     *
     * @param lines each sheet
     * @param all where all of them are on one page
     * @param files the same for other programs
     */
    public record Index(List<ReadingParts.Line> lines, Link all, List<Link> files) {
    }

    /**
     * What is printed. What is null or empty is not on this page.
     *
     * @param heading of the session: its name and day
     * @param input the channels
     * @param cautions what must not be missed
     * @param patch what to do in which order
     * @param floor the room from above
     * @param floorKey what its marks mean
     * @param setUps leaf by leaf
     * @param bleed who is heard where
     * @param timing and when
     * @param stands what holds what
     * @param packing what to fetch
     * @param address this very page
     */
    public record Content(String heading, List<Channel> input, List<OptionView.CautionView> cautions, List<String> patch, Drawing floor, String floorKey, List<SetUp> setUps, BleedPage.Content bleed,
            TimingPage.Content timing, StandSheet.Content stands, PackingList packing, String address) {
    }

    /** A line of the input list. */
    public record Channel(int number, String channel, String name, String unit, String type, String phantom, String pad, String highPass, String polarity, String stand, String gain) {
    }

    /** The leaf of one seat. */
    public record SetUp(String id, String name, String title, String technique, List<Mic> mics, List<Drawing> pictures, List<OptionView.CautionView> cautions,
            List<OptionView.CautionView> notes, List<String> care) {
    }

    /** A microphone of it: its line, what it is and how it stands. */
    public record Mic(int number, String name, String unit, String type, String rest, List<Fact> figures) {
    }

    /** The list of sheets. */
    public static Page index(AtPlan at) {
        PlanChosen chosen = PlanChosen.of(at);
        PlanFrame frame = PlanFrame.of(at, "Sheets", "sheets", List.of(), chosen, chosen.fault().isEmpty() ? List.of() : List.of(chosen.fault()));
        if (chosen.plan() == null) {
            return without(at, frame, chosen);
        }
        Addresses to = at.at().at();
        List<ReadingParts.Line> lines = new ArrayList<>();
        ALL.forEach(sheet -> lines.add(new ReadingParts.Line(to.link(at.path("sheets/" + sheet.id()) + chosen.query(), sheet.name()), "", sheet.says())));
        lines.add(new ReadingParts.Line(to.link(at.path("recall"), "Recall sheet"), "", "What was kept and what was moved, filled in afterwards; the next answer minds it."));
        List<Link> files = List.of(file(at, "input.csv", chosen, "Input list as CSV"), file(at, "input.json", chosen, "Input list as JSON"),
                file(at, "packing.csv", chosen, "Packing list as CSV"), file(at, "packing.json", chosen, "Packing list as JSON"));
        return at.page(200, "sheets", frame, new Index(lines, to.link(at.path("sheets/all") + chosen.query(), "All sheets on one page"), files));
    }

    /** A file is in SI whoever reads. */
    private static Link file(AtPlan at, String name, PlanChosen chosen, String text) {
        return new Link(at.path("sheets/" + name) + chosen.query(), text);
    }

    /** One sheet, or all of them; null where there is none of that name. */
    public static Page of(AtPlan at, String name) {
        Sheet sheet = name.equals("all") ? new Sheet("all", "All sheets", "") : ALL.stream().filter(one -> one.id().equals(name)).findFirst().orElse(null);
        if (sheet == null) {
            return null;
        }
        PlanChosen chosen = PlanChosen.of(at);
        List<Link> trail = List.of(at.at().at().link(at.path("sheets") + chosen.query(), "Sheets"));
        PlanFrame frame = PlanFrame.of(at, sheet.name(), "sheets", trail, chosen, chosen.fault().isEmpty() ? List.of() : List.of(chosen.fault()));
        return chosen.plan() == null ? without(at, frame, chosen) : at.page(200, "sheet", frame, content(at, chosen.plan(), sheet.id()));
    }

    /** The plan of a list that a program takes, or why there is none. */
    public static PlanChosen chosen(AtPlan at) {
        return PlanChosen.of(at);
    }

    /** In place of a page about a plan, where there is none, or none yet. */
    static Page without(AtPlan at, PlanFrame frame, PlanChosen chosen) {
        boolean waits = chosen.waits();
        List<String> faults = waits || !frame.faults().isEmpty() ? frame.faults() : List.of("No plan is possible as it stands. What is short, and the ways out, are under Plan.");
        return new Page(waits || frame.faults().isEmpty() || chosen.undecided() ? 200 : chosen.taken() ? 409 : 400, at.at().html().fill("session/no-plan.jte", Map.of("frame", frame.wrong(faults))));
    }

    private static Content content(AtPlan at, Plan plan, String name) {
        PlanWords words = new PlanWords(at, plan);
        boolean all = name.equals("all");
        return new Content(heading(at), all || name.equals("input") ? plan.lines().stream().map(line -> channel(at, line)).toList() : List.of(),
                all || name.equals("cautions") ? words.grave() : List.of(), all || name.equals("cautions") ? plan.patch().stream().map(at.reader()::sentence).toList() : List.of(),
                all || name.equals("floor") ? FloorDrawing.of(PlanFloor.of(at, plan), "floor", at.reader()) : null,
                all || name.equals("floor") ? FloorWords.key(PlanFloor.of(at, plan)) : "", all || name.equals("set-ups") ? setUps(at, words, plan) : List.of(), all || name.equals("tables") ? BleedPage.content(at, plan) : null,
                all || name.equals("tables") ? TimingPage.content(at, plan) : null, all || name.equals("stands") ? StandSheet.of(at, plan) : null,
                all || name.equals("packing") ? PackingList.of(at, plan) : null, at.visit().same(at.reader().imperial()));
    }

    private static String heading(AtPlan at) {
        return at.lineUp().from() == null ? at.name() : at.name() + ", " + at.at().moments().moment(at.lineUp().from().toInstant());
    }

    private static Channel channel(AtPlan at, Line line) {
        var mic = line.placement();
        String stand = line.sharesStandWith() != null ? "with " + line.sharesStandWith() : line.standLabel() != null ? line.standLabel()
                : line.standKind() == null ? SetUpWords.held(mic.mount()) : line.standKind().id();
        return new Channel(line.number(), line.channelLabel() == null ? "" : line.channelLabel(), line.name(), line.unit() == null ? "" : line.unit().label(), SetUpWords.byWayOf(line),
                line.phantom() ? "on" : "off", line.between().allPadsDb() == 0 ? "" : SetUpWords.pads(at.reader(), line), line.highPassHz() == null ? "" : at.reader().frequency(line.highPassHz()),
                mic.invertPolarity() ? "inverted" : "", stand, line.gainDb() == null ? "" : at.reader().value(line.gainDb(), "dB"));
    }

    private static List<SetUp> setUps(AtPlan at, PlanWords words, Plan plan) {
        List<SetUp> all = new ArrayList<>();
        for (Plan.Served served : plan.served()) {
            Seat seat = at.lineUp().seat(served.seat()).orElse(null);
            if (seat == null) {
                continue;
            }
            List<Mic> mics = plan.linesOf(seat.id()).stream().sorted(Comparator.comparingInt(Line::mic)).map(line -> new Mic(line.number(), line.name(),
                    line.unit() == null ? "" : line.unit().label(), line.placement().name(), words.line(seat, served.option(), line), figures(at, line))).toList();
            all.add(new SetUp(seat.id(), at.seatName(seat), words.title(seat, served.option()), words.setUp(seat).together(served.option()), mics,
                    words.pictures(seat, served.option(), "seat-" + seat.id()), words.cautions(served, Severity.DANGER, Severity.CARE), words.cautions(served, Severity.NOTE),
                    care(at, seat)));
        }
        return all;
    }

    private static List<String> care(AtPlan at, Seat seat) {
        List<String> care = new ArrayList<>();
        if (seat.heard() != null) {
            care.addAll(seat.heard().habits());
        }
        var source = at.catalogue().sources().get(seat.source());
        if (source != null) {
            source.care().forEach(says -> care.add(at.reader().sentence(says)));
        }
        return care;
    }

    private static List<Fact> figures(AtPlan at, Line line) {
        List<Fact> figures = new ArrayList<>();
        figures.add(new Fact("Line", Integer.toString(line.number()), ""));
        if (line.channelLabel() != null) {
            figures.add(new Fact("Channel", line.channelLabel(), ""));
        }
        figures.add(new Fact("Phantom", line.phantom() ? "on" : "off", ""));
        if (line.gainDb() != null) {
            figures.add(new Fact("Gain", at.reader().value(line.gainDb(), "dB"), ""));
        }
        if (line.highPassHz() != null) {
            figures.add(new Fact("High-pass", at.reader().frequency(line.highPassHz()), ""));
        }
        if (line.placement().heightM() != null) {
            figures.add(new Fact("Height", at.reader().distance(line.placement().heightM()), ""));
        }
        if (line.standLabel() != null) {
            figures.add(new Fact("Stand", line.standLabel(), ""));
        }
        return figures;
    }
}
