package pairwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.Knowledge;
import pairwright.drawing.Reader;
import pairwright.http.SessionRequest;
import pairwright.http.SessionView;
import pairwright.model.Catalogue;
import pairwright.model.Lead;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Question;
import pairwright.model.Severity;
import pairwright.rules.RuleInfo;
import pairwright.session.Arrival;
import pairwright.session.Between;
import pairwright.session.Change;
import pairwright.session.HearingWords;
import pairwright.session.Leads;
import pairwright.session.Line;
import pairwright.session.LineUp;
import pairwright.session.Plan;
import pairwright.session.Planned;
import pairwright.session.Said;
import pairwright.session.Seat;
import pairwright.session.Telling;
import pairwright.session.Told;
import pairwright.sheet.AimOnFloor;
import pairwright.sheet.Crowding;
import pairwright.sheet.SetUpWords;

/** A plan as a person likes to read it, 80 columns wide: what can harm first, then what goes where, why, what is heard where and when, and what else to mind. */
final class PlanText {
    /** Of the others a line hears so many are told, the loudest. */
    private static final int TOLD = 2;
    private static final double SMALL_POINTS = 1;
    private static final double CM = 100;

    private final LineUp lineUp;
    private final List<String> assumed;
    private final Catalogue catalogue;
    private final List<RuleInfo> rules;
    private final Reader reader = Reader.METRIC;
    private final Colour colour;
    private final StringBuilder text = new StringBuilder(8192);

    PlanText(SessionRequest request, Knowledge known, Colour colour) {
        this.lineUp = request.lineUp();
        this.assumed = request.assumed();
        this.catalogue = known.catalogue();
        this.rules = known.rules().rules();
        this.colour = colour;
    }

    /** The plans of a line-up, one of them in full. */
    String of(Planned planned, Plan plan) {
        head((lineUp.name() == null ? "" : lineUp.name() + ": ") + "plan " + plan.rank() + " of " + planned.plans().size() + ", " + score(plan));
        Stream.of(assumed, planned.assumed(), Crowding.of(lineUp, catalogue)).flatMap(List::stream).distinct().forEach(one -> wrap("Assumed: ", "         ", one));
        whole(plan);
        if (planned.timeShort() != null && plan == planned.plans().get(0)) {
            timeShort(planned.timeShort());
        }
        if (plan == planned.plans().get(0)) {
            head("Better seats");
            planned.moves().forEach(move -> wrap("   ", "   ", move.says()));
            if (planned.noMoves() != null) {
                wrap("   ", "   ", planned.noMoves());
            }
        }
        others(planned, plan);
        if (planned.noMorePlans(lineUp) != null) {
            head("No more plans");
            wrap("   ", "   ", planned.noMorePlans(lineUp));
        }
        return text.toString();
    }

    /** How to get to a plan from what stands. */
    String of(Change change) {
        head((lineUp.name() == null ? "" : lineUp.name() + ": ") + "changed plan, " + score(change.plan()));
        Set<String> gone = lineUp.seats().stream().map(Seat::id).filter(seat -> change.plan().linesOf(seat).isEmpty() && !change.plan().leftOut().contains(seat)).collect(Collectors.toSet());
        Stream.of(assumed, Crowding.of(lineUp.without(List.copyOf(gone)), catalogue)).flatMap(List::stream).distinct().forEach(one -> wrap("Assumed: ", "         ", one));
        cautions(change.plan());
        head("To do, about " + minutes(change.timeS()) + (change.setUp() == null ? "" : " of work; there are " + change.setUp().words()));
        if (change.steps().isEmpty()) {
            wrap("   ", "   ", "Nothing: what stands stays as it is.");
        }
        for (int i = 0; i < change.steps().size(); i++) {
            Change.Step step = change.steps().get(i);
            wrap(String.format(Locale.ROOT, "%4d  ", i + 1), "      ", step.says() + " (" + minutes(step.timeS()) + ")");
        }
        if (!change.kept().isEmpty()) {
            wrap("   ", "   ", "Untouched: " + change.kept().stream().map(this::seatName).collect(Collectors.joining(", ")) + ".");
        }
        wrap("   ", "   ", String.format(Locale.ROOT, "It is worth %.2f points less than one planned from scratch, which would be %.2f.", change.costPoints(), change.bestScore()));
        body(change.plan());
        return text.toString();
    }

    /** Why there is no plan, and what would make one possible. */
    String impossible(Planned planned) {
        wrap("pairwright: ", "            ", "there is no plan that serves everybody who must be served.");
        if (!planned.shortOf().isEmpty()) {
            text.append(Columns.of(List.of("short of", "needed", "there", "who waits"), planned.shortOf().stream().map(one -> List.of(one.resource(),
                    Integer.toString(one.needed()), Integer.toString(one.there()), one.seats().stream().map(this::seatName).collect(Collectors.joining(", ")))).toList()));
        }
        if (!planned.waysOut().isEmpty()) {
            text.append("Ways out, the easiest first:\n");
            planned.waysOut().forEach(way -> wrap("   ", "   ", way.says()));
        }
        return text.toString();
    }

    private void timeShort(Planned.TimeShort time) {
        head("What the time costs");
        wrap("   ", "   ", String.format(Locale.ROOT, "With %d min to set up in place of %d the plan would be worth %.2f points more.", time.neededMinutes(), time.minutes(), time.costPoints()));
        time.without().forEach(one -> wrap("   ", "   ", one));
        time.waysOut().forEach(way -> wrap("   ", "   ", way.says() + String.format(Locale.ROOT, " The plan is then worth %.2f.", way.score())));
    }

    private void whole(Plan plan) {
        cautions(plan);
        body(plan);
    }

    private void body(Plan plan) {
        head("Input list");
        text.append(Columns.of(List.of("no", "channel", "for", "microphone", "stand", "48 V", "gain"), plan.lines().stream().map(this::row).toList(),
                plan.lines().stream().map(line -> below(plan, line)).toList()));
        if (!plan.leftOut().isEmpty()) {
            wrap("   ", "   ", "Without a microphone: " + plan.leftOut().stream().map(this::seatName).collect(Collectors.joining(", ")) + ".");
        }
        why(plan);
        bleed(plan);
        timing(plan);
        used(plan);
        notes(plan);
    }

    /** What can hurt somebody or something comes before everything else. */
    private void cautions(Plan plan) {
        List<Told> grave = Telling.of(plan, lineUp, rules).grave();
        if (!grave.isEmpty()) {
            text.append('\n');
        }
        grave.forEach(one -> {
            text.append(colour.alarm);
            wrap(one.severity() == Severity.DANGER ? "!! DANGER: " : "!  Care: ", "   ", says(one));
            text.append(colour.plain);
        });
    }

    private void notes(Plan plan) {
        List<Told> notes = Telling.of(plan, lineUp, rules).notes();
        if (!notes.isEmpty()) {
            head("To mind");
            notes.forEach(one -> wrap("   ", "   ", says(one)));
        }
    }

    private String says(Told told) {
        String who = told.named() || told.seats().isEmpty() ? "" : told.seats().stream().map(this::seatName).collect(Collectors.joining(", ")) + ": ";
        return who + told.says() + " (" + told.rule() + ")";
    }

    private List<String> row(Line line) {
        return List.of(Integer.toString(line.number()), line.channelLabel() == null ? "any" : line.channelLabel(), line.name(),
                line.unit() == null ? line.placement().name() : line.unit().label(), stand(line), line.phantom() ? "on" : "off",
                line.gainDb() == null ? "" : Math.round(line.gainDb()) + " dB");
    }

    private static String stand(Line line) {
        return line.sharesStandWith() != null ? "with " + line.sharesStandWith() : line.standLabel() != null ? line.standLabel()
                : line.standKind() == null ? "none" : line.standKind().id();
    }

    /** What stands below a row: the type where the row names a unit, how it stands, and what else is set. */
    private String below(Plan plan, Line line) {
        Placement mic = line.placement();
        List<String> parts = new ArrayList<>();
        if (line.unit() != null) {
            parts.add(mic.name());
        }
        parts.add(set(plan, line));
        if (line.booster() != null) {
            parts.add("by way of " + line.booster() + ", " + Math.round(line.boosterGainDb()) + " dB");
        }
        if (line.between().boxed()) {
            parts.add("through " + line.between().box().called() + (line.between().box().power() == Between.BoxPower.BATTERY ? " on a fresh cell" : ""));
        } else if (line.between().box() != null && line.between().box().power() == Between.BoxPower.BATTERY) {
            parts.add("on a fresh cell");
        }
        if (line.between().instrument()) {
            parts.add("into the instrument input");
        }
        if (line.between().ownPadDb() > 0) {
            parts.add("its pad in, " + Math.round(line.between().ownPadDb()) + " dB");
        }
        if (line.between().pad() != null) {
            parts.add("through " + line.between().padLabel());
        }
        if (mic.invertPolarity()) {
            parts.add("polarity inverted");
        }
        if (line.highPassHz() != null) {
            parts.add("high-pass at " + reader.frequency(line.highPassHz()));
        }
        String unit = line.unit() == null ? "" : (line.unit().storedAt() == null ? "" : " From " + line.unit().storedAt() + ".")
                + (line.unit().note() == null ? "" : " Mind: " + UnitText.oneLine(line.unit().note()) + ".");
        return String.join(", ", parts) + "." + unit;
    }

    private String set(Plan plan, Line line) {
        Option option = plan.served().stream().filter(served -> served.seat().equals(line.seat())).map(Plan.Served::option).findFirst().orElse(null);
        int index = line.mic() - 1;
        if (option == null || index >= option.mics().size()) {
            return Naming.small(line.placement().positionName());
        }
        Seat seat = lineUp.seat(line.seat()).orElseThrow();
        Question question = new Question("", seat.source(), seat.ways(), seat.dynamics(), lineUp.floor().room(), seat.character(), seat.limits(), List.of(), seat.circumstances(),
                List.of(), 1, null, null);
        return new SetUpWords(catalogue, question, reader).on(new AimOnFloor(lineUp, plan, catalogue), plan.linesOf(seat.id())).line(option, index);
    }

    private void why(Plan plan) {
        head("Why");
        text.append(Columns.of(List.of("points", "for", "what"), plan.served().stream().map(served -> List.of(points(served.option().score()), seatName(served.seat()),
                AnswerText.title(served.option()))).toList()));
        double small = plan.reasons().stream().filter(said -> Math.abs(said.points()) < SMALL_POINTS).mapToDouble(Said::points).sum();
        plan.reasons().stream().filter(said -> Math.abs(said.points()) >= SMALL_POINTS)
                .forEach(said -> wrap(String.format(Locale.ROOT, "%+6.2f  ", said.points()), "        ", said.says() + " (" + said.rule() + ")"));
        long few = plan.reasons().stream().filter(said -> Math.abs(said.points()) < SMALL_POINTS).count();
        if (few > 0) {
            wrap(String.format(Locale.ROOT, "%+6.2f  ", small + 0.0), "        ", few == 1 ? "one smaller reason." : few + " smaller reasons.");
        }
    }

    private void bleed(Plan plan) {
        HearingWords words = HearingWords.of(lineUp);
        List<String> says = plan.lines().stream().flatMap(line -> words.of(line, plan.bleed(), TOLD).stream()).toList();
        if (!says.isEmpty()) {
            head("Who is heard where");
            says.forEach(one -> wrap("   ", "   ", one));
        }
    }

    private void timing(Plan plan) {
        if (plan.timing().isEmpty()) {
            return;
        }
        head("When it arrives (samples at 48 kHz)");
        text.append(Columns.of(List.of("source", "lines", "ms", "samples", "cm", "first null", "ripple", "do"), plan.timing().stream().map(this::arrival).toList()));
    }

    private List<String> arrival(Arrival arrival) {
        return List.of(seatName(arrival.seat()), arrival.lines().stream().map(String::valueOf).collect(Collectors.joining(" and ")),
                String.format(Locale.ROOT, "%.2f", arrival.delayMs()), Integer.toString(SessionView.samplesOf(arrival.delayMs())),
                Long.toString(Math.round(arrival.pathM() * CM)), arrival.firstNullHz() == null ? "none" : reader.frequency(arrival.firstNullHz()),
                String.format(Locale.ROOT, "%.1f dB", arrival.rippleDb()), arrival.treat().id() + (arrival.inverted() ? ", invert one" : ""));
    }

    private void used(Plan plan) {
        head("What is used");
        wrap("   ", "   ", "setting up: about " + plan.setUp().words() + ".");
        plan.counts().forEach(count -> wrap("   ", "   ", count.of() + ": " + count.used() + (count.there() != null ? " of " + count.there() : count.of().endsWith(" stands") ? "" : ", not counted") + "."));
        Leads leads = Leads.of(lineUp, plan, catalogue.leads().get(Lead.MICROPHONE));
        if (!leads.counts().isEmpty()) {
            wrap("   ", "   ", "Microphone leads: " + leads.counts().stream().map(count -> count.count() + " of " + reader.distance(count.lengthM())).collect(Collectors.joining(", "))
                    + (leads.box().assumed() == null ? "" : ", to a box in the middle of the " + leads.box().assumed() + " wall, as nobody said where it is (room: patch)") + ".");
        }
        plan.supplies().stream().filter(supply -> supply.used() > 0).forEach(supply -> wrap("   ", "   ", supply.bank() + ": " + supply.used() + " of " + supply.channels()
                + (supply.channels() == 1 ? " channel" : " channels") + ", phantom power " + (supply.phantom() ? "on, " + milliamperes(supply.drawnMa())
                + (supply.supplyMa() == null ? "" : " of " + milliamperes(supply.supplyMa())) : "off") + "."));
        if (!plan.patch().isEmpty()) {
            head("In this order");
            for (int i = 0; i < plan.patch().size(); i++) {
                wrap(String.format(Locale.ROOT, "%4d  ", i + 1), "      ", plan.patch().get(i));
            }
        }
    }

    private void others(Planned planned, Plan shown) {
        for (Plan other : planned.plans()) {
            if (other == shown) {
                continue;
            }
            List<String> differs = other.served().stream().map(served -> differs(served, shown)).filter(Objects::nonNull).toList();
            head("Plan " + other.rank() + ", " + score(other));
            wrap("   ", "   ", differs.isEmpty() ? "The same microphones, set up otherwise." : "Instead: " + String.join("; ", differs) + ".");
        }
    }

    private String differs(Plan.Served served, Plan shown) {
        String title = AnswerText.title(served.option());
        String before = shown.served().stream().filter(one -> one.seat().equals(served.seat())).map(one -> AnswerText.title(one.option())).findFirst().orElse("nothing");
        return title.equals(before) ? null : seatName(served.seat()) + ": " + Naming.small(title);
    }

    private static String score(Plan plan) {
        return String.format(Locale.ROOT, "score %.2f, ", plan.score()) + (plan.proven() ? "and none has more"
                : String.format(Locale.ROOT, "and none has more than %.2f", plan.bound()));
    }

    private String seatName(String id) {
        return lineUp.seat(id).map(seat -> seat.player() == null ? sourceName(seat) + lineUp.toldApart(seat) : lineUp.playsTwice(seat) ? seat.player() + " (" + sourceName(seat) + ")" : seat.player()).orElse(id);
    }

    private String sourceName(Seat seat) {
        return catalogue.sources().containsKey(seat.source()) ? Naming.small(catalogue.sources().get(seat.source()).name()) : seat.source();
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.2f", points);
    }

    private static String milliamperes(double currentMa) {
        return String.format(Locale.ROOT, "%.1f mA", currentMa);
    }

    private static String minutes(double timeS) {
        return timeS < 120 && timeS != 60 ? Math.round(timeS) + " s" : Math.round(timeS / 60) + " min";
    }

    private void head(String title) {
        text.append(text.length() == 0 ? "" : "\n").append(colour.strong);
        wrap("", "", title);
        text.append(colour.plain);
    }

    private void wrap(String lead, String indent, String words) {
        AnswerText.wrapped(lead, indent, words, AnswerText.WIDTH).forEach(line -> text.append(line).append('\n'));
    }
}
