package pairwright.sheet;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.Condition;
import pairwright.locker.Span;
import pairwright.locker.Unit;
import pairwright.locker.UnitKind;
import pairwright.model.MicType;
import pairwright.sheet.ReadingParts.Link;

/** The units there are, to be searched, and how each stands. */
public final class UnitsPage {
    private static final Duration USUAL = Duration.ofHours(4);
    private static final int ON_A_PAGE = 100;
    private static final int LONGEST_SEARCH = 200;
    private static final Map<String, String> DONE = Map.of("removed", "The unit has left the locker.", "imported", "The table was brought in.");

    private UnitsPage() {
    }

    /** One unit; type and mate may be null, tag, note and place empty. */
    public record Row(Link unit, String tag, Link type, String typeName, String condition, String note, String storedAt, String word, String state, Link mate) {
    }

    /**
     * What it shows.
     *
     * @param fields of the search
     * @param folded whether the rest of the search is folded away, as nothing of it is used
     * @param faults what is wrong with what was searched for
     * @param overdue how many are, leading to the desk; null for none
     * @param counts of each kind, leading to those alone
     * @param during the time the states are told for; empty for now
     * @param found how many there are in all
     * @param rows those of this page
     * @param pages before and after this one
     * @param empty whether the locker holds nothing at all
     * @param mayWrite whether the reader may change anything
     */
    public record Content(List<FormField> fields, boolean folded, List<String> faults, Link overdue, List<Link> counts, String during, int found, List<Row> rows,
            List<Link> pages, boolean empty, boolean mayWrite) {
        /** A field of the search by its name. */
        public FormField field(String name) {
            return fields.stream().filter(field -> field.name().equals(name)).findFirst().orElseThrow();
        }
    }

    /** What the query asks for. */
    public static Page of(AtLocker at) {
        List<String> faults = new ArrayList<>();
        Visit visit = at.visit();
        Instant from = moment(at, "from", faults);
        Instant until = moment(at, "until", faults);
        Span span = span(at, from, until, faults);
        List<Unit> units = at.locker().units();
        List<Unit> found = units.stream().filter(wanted(at, faults)).filter(free(at, span)).toList();
        int pages = Math.max(1, (found.size() + ON_A_PAGE - 1) / ON_A_PAGE);
        int page = page(visit.first("page"), pages);
        Map<String, String> mates = at.locker().mates();
        Map<String, String> labels = units.stream().collect(Collectors.toMap(Unit::id, Unit::label));
        List<Unit> shown = found.stream().skip((page - 1L) * ON_A_PAGE).limit(ON_A_PAGE).toList();
        UnitStates states = span == null ? UnitStates.now(at, shown.stream().map(Unit::id).toList()) : UnitStates.during(at, span);
        List<Row> rows = shown.stream().map(unit -> row(at, unit, states.of(unit), mates, labels)).toList();
        boolean folded = Stream.of("kind", "type", "condition", "from", "until", "free").allMatch(name -> visit.first(name) == null);
        String done = Objects.requireNonNullElse(DONE.get(Objects.requireNonNullElse(visit.first("done"), "")), "");
        return at.page(faults.isEmpty() ? 200 : 400, "units", at.frame("The locker", "units", List.of(), done), "content",
                new Content(fields(at), folded, faults, DeskWords.overdue(at, at.locker().out()), counts(at, units), span == null ? "" : at.moments().span(span), found.size(), rows,
                        pages(at, page, pages), units.isEmpty(), at.mayWrite()));
    }

    /** Where only free ones are wanted, those of the time that is asked about, or of this moment. */
    private static Predicate<Unit> free(AtLocker at, Span span) {
        if (at.visit().first("free") == null) {
            return any -> true;
        }
        Span time = span != null ? span : new Span(at.now(), at.now().plusSeconds(1));
        Set<String> free = at.locker().free(time, null).stream().map(Unit::id).collect(Collectors.toSet());
        return unit -> free.contains(unit.id());
    }

    private static int page(String text, int pages) {
        return text != null && text.matches("\\d{1,6}") ? Math.max(1, Math.min(pages, Integer.parseInt(text))) : 1;
    }

    /** A moment of the query; null where there is none or it cannot be read. */
    static Instant moment(AtLocker at, String name, List<String> faults) {
        String text = at.visit().first(name);
        if (text == null) {
            return null;
        }
        try {
            return at.moments().read(text);
        } catch (DateTimeException noMoment) {
            faults.add("\u201c" + Shown.of(text) + "\u201d is no time. Write one like " + at.moments().field(at.now()).replace('T', ' ') + ".");
            return null;
        }
    }

    private static Span span(AtLocker at, Instant from, Instant until, List<String> faults) {
        if (from == null && until == null) {
            return null;
        }
        Instant begins = from != null ? from : at.now();
        Instant ends = until != null ? until : begins.plus(USUAL);
        if (!begins.isBefore(ends)) {
            faults.add("The time ends " + at.moments().moment(ends) + ", not after it begins, " + at.moments().moment(begins) + ". Choose a later end.");
            return null;
        }
        return new Span(begins, ends);
    }

    private static Predicate<Unit> wanted(AtLocker at, List<String> faults) {
        Visit visit = at.visit();
        String typed = Objects.requireNonNullElse(visit.first("words"), "");
        if (typed.length() > LONGEST_SEARCH) {
            faults.add("These are " + typed.length() + " characters. At most " + LONGEST_SEARCH + " are searched for: use fewer words.");
            typed = "";
        }
        List<String> words = List.of(typed.toLowerCase(Locale.ROOT).split("\\s+"));
        String kind = visit.first("kind");
        String type = visit.first("type");
        String condition = visit.first("condition");
        known("kind", kind, Stream.of(UnitKind.values()).map(UnitKind::id), faults);
        known("condition", condition, Stream.of(Condition.values()).map(Condition::id), faults);
        return unit -> (kind == null || unit.kind().id().equals(kind)) && (type == null || type.equals(unit.micType()))
                && (condition == null || unit.condition().id().equals(condition)) && words.stream().allMatch(said(at, unit)::contains);
    }

    private static void known(String what, String value, Stream<String> known, List<String> faults) {
        List<String> all = known.toList();
        if (value != null && !all.contains(value)) {
            faults.add("There is no " + what + " \u201c" + Shown.of(value) + "\u201d. Choose one of " + String.join(", ", all) + ".");
        }
    }

    /** All that is written of a unit and what its type is called, to look for words in. */
    private static String said(AtLocker at, Unit unit) {
        MicType type = unit.micType() == null ? null : at.known().catalogue().mics().get(unit.micType());
        return Stream.of(unit.id(), unit.label(), unit.micType(), type == null ? null : type.name(), unit.serial(), unit.tag(), unit.note(), unit.storedAt(),
                unit.channel() == null ? null : unit.channel().bank()).filter(Objects::nonNull).collect(Collectors.joining("\n")).toLowerCase(Locale.ROOT);
    }

    private static Row row(AtLocker at, Unit unit, UnitStates.State state, Map<String, String> mates, Map<String, String> labels) {
        MicType type = unit.micType() == null ? null : at.known().catalogue().mics().get(unit.micType());
        String mate = mates.get(unit.id());
        return new Row(link(at, unit.id(), unit.label()), Objects.requireNonNullElse(unit.tag(), ""), type == null ? null : at.at().mic(type),
                unit.micType() == null ? LockerChoices.named(unit.kind()) : unit.micType(), LockerChoices.named(unit.condition()),
                Objects.requireNonNullElse(unit.note(), ""), Objects.requireNonNullElse(unit.storedAt(), ""), state.word(), state.says(),
                mate == null ? null : link(at, mate, labels.getOrDefault(mate, mate)));
    }

    static Link link(AtLocker at, String id, String label) {
        return at.at().link("/locker/units/" + id, label);
    }

    private static List<FormField> fields(AtLocker at) {
        Visit visit = at.visit();
        return Stream.of(FormField.line("words", "Find by label, type, tag, place"),
                FormField.choice("kind", "Kind", any("Any kind", LockerChoices.kinds())),
                FormField.grouped("type", "Mic type", Stream.concat(Stream.of(new Choice.Group("", List.of(new Choice("", "Any type", false)))),
                        LockerChoices.types(at.known().catalogue()).stream()).toList()),
                FormField.choice("condition", "Condition", any("Any condition", LockerChoices.conditions())),
                FormField.moment("from", "How it stands from").hint("Left empty: now."), FormField.moment("until", "Until").hint("Left empty: four hours on."),
                FormField.tick("free", "Only what is free then")).map(field -> field.value(visit.first(field.name()))).toList();
    }

    private static List<Choice> any(String label, List<Choice> choices) {
        return Stream.concat(Stream.of(new Choice("", label, false)), choices.stream()).toList();
    }

    private static List<Link> counts(AtLocker at, List<Unit> units) {
        Map<UnitKind, Long> counts = units.stream().collect(Collectors.groupingBy(Unit::kind, Collectors.counting()));
        return Stream.of(UnitKind.values()).filter(counts::containsKey)
                .map(kind -> at.at().link("/locker?kind=" + kind.id(), LockerChoices.counted(kind, counts.get(kind)))).toList();
    }

    private static List<Link> pages(AtLocker at, int page, int pages) {
        List<Link> links = new ArrayList<>();
        if (page > 1) {
            links.add(at.at().link(other(at, page - 1), "Units before"));
        }
        if (page < pages) {
            links.add(at.at().link(other(at, page + 1), "Units after"));
        }
        return links;
    }

    private static String other(AtLocker at, int page) {
        List<Param> params = new ArrayList<>();
        at.visit().query().forEach((name, values) -> {
            if (!name.equals("page") && !name.equals("done") && !name.equals("units")) {
                values.stream().filter(value -> !value.isBlank()).forEach(value -> params.add(new Param(Visit.escaped(name), value)));
            }
        });
        params.add(new Param("page", Integer.toString(page)));
        return Param.address("/locker", params);
    }
}
