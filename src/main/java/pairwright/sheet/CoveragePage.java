package pairwright.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.AtHand;
import pairwright.advice.CoverageDesk;
import pairwright.catalogue.Shown;
import pairwright.drawing.CoverageDrawing;
import pairwright.drawing.Drawing;
import pairwright.locker.LockerFault;
import pairwright.locker.Span;
import pairwright.model.Coverage;
import pairwright.model.Coverage.Served;
import pairwright.model.Coverage.Verdict;
import pairwright.model.FromLocker;
import pairwright.model.Grade;
import pairwright.model.Naming;
import pairwright.model.Request;
import pairwright.model.SourceFamily;
import pairwright.model.Stock;
import pairwright.sheet.ReadingParts.Link;

/** Which sources the locker serves, and how well. */
public final class CoveragePage {
    private static final String PATH = "/locker/coverage";
    private static final String POINTS = "Points are those of the first answer to the bare name of the source: with what is at hand, and with all types of the catalogue."
            + " A name leads to the answer.";
    private static final String AHEAD = " What is at hand may be ahead: a matched pair, or a unit with a response of its own, may be worth more than units of which nothing is known.";
    private static final int MOST_HELPS = 8;
    private static final Duration LONGEST = Duration.ofDays(366);

    private CoveragePage() {
    }

    /**
     * What it shows.
     *
     * @param fields what to look at, and which verdicts to show
     * @param faults what is wrong with what was asked for
     * @param looked what was looked at, in a sentence
     * @param again this very page
     * @param done sources that are judged
     * @param of so many
     * @param ready whether that is all; where not, there is nothing more
     * @param counts how many of each verdict, leading to those alone
     * @param picture the same by family; null until it is ready
     * @param helps what would help most
     * @param moreHelps how many more there are
     * @param points what the points are
     * @param families the sources by family, as far as they are wanted
     * @param grades what the verdicts mean
     */
    public record Content(List<FormField> fields, List<String> faults, String looked, String again, int done, int of, boolean ready, List<Link> counts,
            Drawing picture, List<Helping> helps, int moreHelps, String points, List<Family> families, List<Meaning> grades) {
    }

    /** A type that would help: what to bring in, how many sources it raises, which. */
    public record Helping(Link type, String how, int raised, String points, List<Link> sources) {
    }

    /** A family: its name, how it is served in words, its sources. */
    public record Family(String name, String counts, List<Row> rows) {
    }

    /** A source; texts may be empty. */
    public record Row(Link source, Verdict verdict, String word, String score, String best, String with, String against, String missing) {
    }

    /** A verdict, and what it takes. */
    public record Meaning(String name, String says, String why, String basis) {
    }

    /** What the query asks for, as far as it is worked out. */
    public static Page of(AtLocker at, CoverageDesk desk) {
        List<String> faults = new ArrayList<>();
        FromLocker use = use(at, faults);
        Span span = use == FromLocker.OWNED ? null : span(at, faults);
        Verdict only = verdict(at, faults);
        Stock stock = at.locker().stock(span == null ? new Span(at.now(), at.now().plus(AtHand.USUAL_LENGTH)) : span);
        if (stock != null && !stock.reachable()) {
            throw new LockerFault.Unreachable("The locker does not answer just now. Try again in a moment");
        }
        CoverageDesk.State state = desk.state(stock, use);
        String looked = stock == null ? "The locker holds no microphone yet, so nothing is covered; below is what to begin with."
                : span == null ? "All that is owned and in order, whoever has it; not what is in repair or lost."
                : "Only what is free " + at.moments().span(span) + ".";
        Content shown = state.coverage() == null ? new Content(fields(at, use), faults, looked, again(at), state.done(), state.of(), false, List.of(), null,
                List.of(), 0, "", List.of(), List.of()) : content(at, state, use, span, only, faults, looked);
        return at.page(faults.isEmpty() ? 200 : 400, "coverage", at.frame("What the locker covers", "coverage"), "content", shown);
    }

    private static Content content(AtLocker at, CoverageDesk.State state, FromLocker use, Span span, Verdict only, List<String> faults, String looked) {
        Coverage coverage = state.coverage();
        Map<SourceFamily, List<Served>> byFamily = coverage.sources().stream().collect(Collectors.groupingBy(Served::family, TreeMap::new, Collectors.toList()));
        List<CoverageDrawing.Bar> bars = byFamily.entrySet().stream().map(of -> new CoverageDrawing.Bar(ReadingWords.family(of.getKey()),
                count(of.getValue(), Verdict.WELL), count(of.getValue(), Verdict.POORLY), count(of.getValue(), Verdict.NOT_AT_ALL))).toList();
        List<Link> counts = Stream.of(Verdict.values())
                .map(verdict -> at.at().link(address(at, verdict), at.measures().number(count(coverage.sources(), verdict), 0) + " " + words(verdict))).toList();
        List<Family> families = new ArrayList<>();
        byFamily.forEach((family, sources) -> {
            List<Row> rows = sources.stream().filter(one -> only == null || one.verdict() == only).map(one -> row(at, one, use, span)).toList();
            if (!rows.isEmpty()) {
                families.add(new Family(ReadingWords.family(family), Stream.of(Verdict.values()).filter(verdict -> count(sources, verdict) > 0)
                        .map(verdict -> at.measures().number(count(sources, verdict), 0) + " " + words(verdict)).collect(Collectors.joining(", ")), rows));
            }
        });
        List<Helping> helps = coverage.helps().stream().limit(MOST_HELPS).map(help -> helping(at, help, use, span)).toList();
        List<Meaning> grades = Stream.of(Verdict.WELL, Verdict.POORLY).map(verdict -> meaning(at.known().catalogue().grades().get(verdict.id()))).toList();
        return new Content(fields(at, use), faults, looked, again(at), state.done(), state.of(), true, counts,
                CoverageDrawing.of(bars, "coverage", at.visit().reader()), helps, coverage.helps().size() - helps.size(), coverage.ahead() ? POINTS + AHEAD : POINTS, families, grades);
    }

    private static int count(List<Served> sources, Verdict verdict) {
        return (int) sources.stream().filter(one -> one.verdict() == verdict).count();
    }

    private static Row row(AtLocker at, Served served, FromLocker use, Span span) {
        boolean well = served.verdict() == Verdict.WELL;
        return new Row(ask(at, served.source(), served.name(), use, span), served.verdict(), ReadingWords.heading(served.verdict()), points(at, served.score()),
                points(at, served.bestScore()), served.with() == null ? "" : used(served.with()),
                served.against().isEmpty() ? "" : String.join(" ", served.against()), well || served.missing() == null ? "" : served.missing().says());
    }

    private static String used(Coverage.Used used) {
        String mics = used.mics().stream().map(mic -> (mic.count() == 1 ? "" : mic.count() + " \u00d7 ") + mic.name()).collect(Collectors.joining(" and "));
        return used.technique().equals("single") ? mics : mics + ": " + Naming.small(used.techniqueName());
    }

    private static String points(AtLocker at, Double score) {
        return score == null ? "\u2013" : at.measures().number(score, 1);
    }

    private static Helping helping(AtLocker at, Coverage.Help help, FromLocker use, Span span) {
        return new Helping(at.at().link("/mics/" + help.micType(), help.name()), help.units() == 2 ? "a matched pair" : "one", help.raises().size(),
                at.measures().number(help.gainPoints(), 0), help.raises().stream().map(one -> ask(at, one.source(), one.name(), use, span)).toList());
    }

    private static Meaning meaning(Grade grade) {
        return new Meaning(grade.name(), grade.says(), grade.why(), grade.basis().stream().map(rests -> ReadingWords.heading(rests.on()) + ". " + rests.note())
                .collect(Collectors.joining(" ")));
    }

    private static Link ask(AtLocker at, String source, String name, FromLocker use, Span span) {
        Request request = new Request(null, source, null, null, null, null, null, null, null, null, null, null, null, null);
        Request then = request.at(span == null ? null : span.from().atZone(at.clock().getZone()).toOffsetDateTime(),
                span == null ? null : span.until().atZone(at.clock().getZone()).toOffsetDateTime(), use);
        return at.at().link(Param.address("/", AskQuery.written(then)), name);
    }

    private static String words(Verdict verdict) {
        return ReadingWords.words(verdict);
    }

    private static String again(AtLocker at) {
        return at.visit().same(at.visit().reader().imperial());
    }

    /** This page with only the sources of a verdict. */
    private static String address(AtLocker at, Verdict verdict) {
        List<Param> params = new ArrayList<>();
        for (String name : List.of("locker", "from", "until")) {
            String value = at.visit().first(name);
            if (value != null) {
                params.add(new Param(name, value));
            }
        }
        params.add(new Param("served", verdict.id()));
        return Param.address(PATH, params);
    }

    private static List<FormField> fields(AtLocker at, FromLocker use) {
        Visit visit = at.visit();
        List<Choice> lookAt = List.of(new Choice("owned", "All that is owned", false), new Choice("free", "Only what is free", false));
        List<Choice> verdicts = Stream.concat(Stream.of(new Choice("", "All sources", false)),
                Stream.of(Verdict.values()).map(verdict -> new Choice(verdict.id(), "Served " + words(verdict), false))).toList();
        return List.of(FormField.choice("locker", "Look at", lookAt).value(use.id()),
                FormField.moment("from", "Free from").value(said(visit, "from")), FormField.moment("until", "Free until").value(said(visit, "until")),
                FormField.choice("served", "Sources", verdicts).value(said(visit, "served")));
    }

    private static String said(Visit visit, String name) {
        String text = visit.first(name);
        return text == null ? "" : text;
    }

    private static FromLocker use(AtLocker at, List<String> faults) {
        String text = at.visit().first("locker");
        boolean timed = at.visit().first("from") != null || at.visit().first("until") != null;
        if (text == null) {
            return timed ? FromLocker.FREE : FromLocker.OWNED;
        }
        if (!text.equals("owned") && !text.equals("free")) {
            faults.add("\u201c" + Shown.of(text) + "\u201d cannot be looked at. Choose owned or free.");
        }
        // whoever names a time and leaves the first field as it was means that time
        return timed || text.equals("free") ? FromLocker.FREE : FromLocker.OWNED;
    }

    private static Verdict verdict(AtLocker at, List<String> faults) {
        String text = at.visit().first("served");
        Verdict only = Stream.of(Verdict.values()).filter(verdict -> verdict.id().equals(text)).findFirst().orElse(null);
        if (text != null && only == null) {
            faults.add("\u201c" + Shown.of(text) + "\u201d is no way to be served. Choose well, poorly or not-at-all.");
        }
        return only;
    }

    private static Span span(AtLocker at, List<String> faults) {
        Instant from = UnitsPage.moment(at, "from", faults);
        Instant until = UnitsPage.moment(at, "until", faults);
        Instant begins = from != null ? from : until != null && !at.now().isBefore(until) ? until.minus(AtHand.USUAL_LENGTH) : at.now();
        Instant ends = until != null ? until : begins.plus(AtHand.USUAL_LENGTH);
        if (begins.isBefore(ends) && Duration.between(begins, ends).compareTo(LONGEST) <= 0) {
            return new Span(begins, ends);
        }
        faults.add("The time, " + at.moments().moment(begins) + " to " + at.moments().moment(ends) + ", must end after it begins and be no longer than "
                + LONGEST.toDays() + " days. Four hours are shown.");
        return new Span(begins, begins.plus(AtHand.USUAL_LENGTH));
    }
}
