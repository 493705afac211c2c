package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import pairwright.locker.Unit;
import pairwright.model.PowerNeed;
import pairwright.session.Between;
import pairwright.session.Leads;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.StandKind;

/**
 * What a plan takes out of the store, place by place, and what is counted without being a unit.
 *
 * @param session what it is called
 * @param places where units lie, in the order of their names; last what lies nobody knows where
 * @param counted stands and leads that are no units of the locker, and what belongs to a microphone
 */
public record PackingList(String session, List<Place> places, List<Counted> counted) {
    private static final List<String> COLUMNS = List.of("storedAt", "unit", "label", "tag", "what", "for", "count", "note");

    /** One place; storedAt is null where that is not noted. */
    public record Place(String storedAt, List<Thing> things) {
    }

    /** A unit: its id, what is written on it, what a scanner reads, what it is, for whom, and what to know of it. */
    public record Thing(String unit, String label, String tag, String what, String forWhom, String note) {
    }

    /** So many of a thing, and for whom. */
    public record Counted(String what, int count, String forWhom) {
    }

    /** What a plan takes. */
    public static PackingList of(AtPlan at, Plan plan) {
        Map<String, Set<String>> whom = new LinkedHashMap<>();
        for (Line line : plan.lines()) {
            Stream.of(line.unit() == null ? null : line.unit().id(), line.booster(), line.between().box() == null ? null : line.between().box().unit(), line.between().pad(), line.stand(), line.channel()).filter(Objects::nonNull)
                    .forEach(unit -> whom.computeIfAbsent(unit, any -> new LinkedHashSet<>()).add(line.name()));
        }
        Map<String, List<Thing>> places = new TreeMap<>(Comparator.nullsLast(Comparator.naturalOrder()));
        whom.forEach((id, names) -> {
            Unit unit = at.unit(id);
            String storedAt = unit == null ? null : unit.storedAt();
            places.computeIfAbsent(storedAt, any -> new ArrayList<>()).add(thing(at, plan, id, unit, String.join(", ", names)));
        });
        return new PackingList(at.name(), places.entrySet().stream().map(place -> new Place(place.getKey(), List.copyOf(place.getValue()))).toList(), counted(at, plan));
    }

    private static Thing thing(AtPlan at, Plan plan, String id, Unit unit, String names) {
        if (unit == null) {
            Line in = plan.lines().stream().filter(one -> id.equals(one.between().pad()) || one.between().boxed() && id.equals(one.between().box().unit())).findFirst().orElse(null);
            if (in != null) {
                boolean pad = id.equals(in.between().pad());
                return new Thing(id, pad ? in.between().padLabel() : in.between().box().called(), null, pad ? "Pad for a line" : in.between().box().name(), names, null);
            }
            Line line = plan.lines().stream().filter(one -> one.unit() != null && one.unit().id().equals(id)).findFirst().orElse(null);
            return new Thing(id, line == null ? id : line.unit().label(), line == null ? null : line.unit().tag(), line == null ? "" : line.placement().name(), names,
                    line == null ? null : line.unit().note());
        }
        String what = unit.micType() == null ? LockerChoices.named(unit.kind()) : at.catalogue().mics().containsKey(unit.micType())
                ? at.catalogue().mics().get(unit.micType()).name() : unit.micType();
        return new Thing(id, unit.label(), unit.tag(), what, names, unit.note());
    }

    private static List<Counted> counted(AtPlan at, Plan plan) {
        List<Counted> all = new ArrayList<>();
        for (StandKind kind : StandKind.values()) {
            List<Line> lines = plan.lines().stream().filter(line -> line.standKind() == kind && line.stand() == null && line.sharesStandWith() == null).toList();
            add(all, StandSheet.kind(kind), lines);
        }
        Leads leads = StandSheet.leads(at, plan);
        leads.counts().forEach(count -> all.add(new Counted("Microphone leads, " + Csv.text(count.lengthM()) + " m", count.count(), lines(leads.runs().stream()
                .filter(run -> run.lengthsM().contains(count.lengthM())).map(run -> Integer.toString(run.line())).toList()))));
        add(all, "Leads from an instrument", plan.lines().stream().filter(line -> SetUpWords.wired(line.placement())).toList());
        add(all, "Short leads from a pickup to its box or instrument input", plan.lines().stream().filter(line -> line.between().boxed() || line.between().instrument()).toList());
        add(all, "Line boxes", plan.lines().stream().filter(line -> line.between().boxed() && line.between().box().unit() == null).toList());
        add(all, "Fresh cells for a line box", plan.lines().stream().filter(line -> line.between().box() != null && line.between().box().power() == Between.BoxPower.BATTERY).toList());
        add(all, "Supplies with the cable that belongs to them", plan.lines().stream().filter(line -> {
            var type = at.catalogue().mics().get(line.placement().micType());
            return type != null && type.power() == PowerNeed.OWN_SUPPLY;
        }).toList());
        return all;
    }

    private static String lines(List<String> numbers) {
        return (numbers.size() == 1 ? "line " : "lines ") + String.join(", ", numbers);
    }

    private static void add(List<Counted> all, String what, List<Line> lines) {
        if (!lines.isEmpty()) {
            all.add(new Counted(what, lines.size(), String.join(", ", lines.stream().map(Line::name).distinct().toList())));
        }
    }

    /** As a table: units with a count of 1 each, then what is only counted. */
    public String csv() {
        List<List<String>> rows = new ArrayList<>();
        places.forEach(place -> place.things().forEach(thing -> rows.add(List.of(Csv.text(place.storedAt()), Csv.text(thing.unit()), Csv.text(thing.label()), Csv.text(thing.tag()),
                Csv.text(thing.what()), Csv.text(thing.forWhom()), "1", Csv.text(thing.note())))));
        counted.forEach(one -> rows.add(List.of("", "", "", "", Csv.text(one.what()), Csv.text(one.forWhom()), Csv.text(one.count()), "")));
        return Csv.of(COLUMNS, rows);
    }
}
