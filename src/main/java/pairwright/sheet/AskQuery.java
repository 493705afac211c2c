package pairwright.sheet;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Neighbour;
import pairwright.model.Request;
import pairwright.model.Word;

/**
 * A question as an address says it, and back. What is left out is as the words say; {@code none} (of a list) and {@code any} (of a
 * single thing) say that it is not so, whatever the words say. A neighbour takes three fields that stand in the same order:
 * {@code near=drum-kit&nearDistance=3m&nearDegrees=120}. A time without an offset is that of the clock on the wall.
 *
 * @param request what is asked, as far as it can be read
 * @param faults what cannot be read, each at the name of its field
 */
record AskQuery(Request request, List<Fault> faults) {
    static final String NONE = "none";
    static final String ANY = "any";
    private static final int MOST_VALUES = 100;
    static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");

    /** The fields and what people call them, in the order of an address. */
    static final Map<String, String> FIELDS = fields();

    private static Map<String, String> fields() {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("words", "What you record");
        names.put("source", "Source");
        names.put("way", "Way of playing");
        names.put("dynamics", "How loud");
        names.put("room", "Room");
        names.put("character", "Sound wanted");
        names.put("near", "Neighbour");
        names.put("nearDistance", "How far the neighbour is");
        names.put("nearDegrees", "Where the neighbour is, in degrees");
        names.put("mics", "Channels");
        names.put("phantom", "Phantom power");
        names.put("gain", "Gain at hand, in dB");
        names.put("noise", "Input noise, in dBu");
        names.put("only", "Only this family");
        names.put("without", "None of this family");
        names.put("onlyType", "Only this type");
        names.put("withoutType", "Not this type");
        names.put("circumstance", "Circumstance");
        names.put("technique", "Technique");
        names.put("wish", "Welcome family");
        names.put("from", "Needed from");
        names.put("until", "Needed until");
        names.put("locker", "Choose from");
        names.put("player", "Who plays");
        names.put(HeardQuery.OF, "Heard of which source");
        names.put(HeardQuery.LEVEL, "Level heard");
        names.put(HeardQuery.PEAK, "Peaks heard");
        names.put(HeardQuery.TONE, "Octaves heard");
        names.put(HeardQuery.LOWEST, "Lowest note heard");
        names.put(HeardQuery.HIGHEST, "Highest note heard");
        names.put(HeardQuery.CREST, "Peaks over the note heard");
        names.put(HeardQuery.ATTACK, "Attack heard");
        names.put("options", "Options");
        names.put("draws", "Draws");
        return names;
    }

    /** Reads a query; nothing in it is too odd, what cannot be read becomes a fault. */
    static AskQuery read(Visit visit, Clock clock) {
        Reading reading = new Reading(visit, clock);
        return new AskQuery(reading.request(), List.copyOf(reading.faults));
    }

    /** The query that asks this question. Draws are no part of it: they change no answer. */
    static List<Param> written(Request request) {
        List<Param> query = new ArrayList<>();
        add(query, "words", request.words());
        add(query, "source", request.source());
        addAll(query, "way", request.ways(), id -> id);
        addAll(query, "dynamics", request.dynamics(), id -> id);
        add(query, "room", request.room());
        addAll(query, "character", request.character(), id -> id);
        if (request.neighbours() != null) {
            for (Neighbour neighbour : request.neighbours()) {
                add(query, "near", neighbour.source());
                add(query, "nearDistance", Param.metres(neighbour.distanceM()));
                add(query, "nearDegrees", Param.number(neighbour.angleDegrees()));
            }
            if (request.neighbours().isEmpty()) {
                add(query, "near", NONE);
            }
        }
        Limits limits = request.limits() == null ? Limits.NONE : request.limits();
        List<String> lifted = request.lifted();
        single(query, "mics", limits.mics() == null ? null : limits.mics().toString(), lifted.contains("mics"));
        single(query, "phantom", limits.phantom() == null ? null : limits.phantom() ? "yes" : "no", lifted.contains("phantom"));
        single(query, "gain", limits.preampGainDb() == null ? null : Param.number(limits.preampGainDb()), lifted.contains("preampGainDb"));
        single(query, "noise", limits.preampNoiseDbu() == null ? null : Param.number(limits.preampNoiseDbu()), lifted.contains("preampNoiseDbu"));
        several(query, "only", limits.onlyFamilies(), lifted.contains("onlyFamilies"), Word::id);
        several(query, "without", limits.withoutFamilies(), lifted.contains("withoutFamilies"), Word::id);
        several(query, "onlyType", limits.onlyMicTypes(), lifted.contains("onlyMicTypes"), id -> id);
        several(query, "withoutType", limits.withoutMicTypes(), lifted.contains("withoutMicTypes"), id -> id);
        addAll(query, "circumstance", request.circumstances(), id -> id);
        addAll(query, "technique", request.techniques(), id -> id);
        addAll(query, "wish", request.wishes(), Word::id);
        query.addAll(LockerQuery.written(request));
        add(query, "player", request.player());
        query.addAll(HeardQuery.written(request.source(), request.heard()));
        add(query, "options", request.options() == null ? null : request.options().toString());
        return query;
    }

    private static void add(List<Param> query, String name, String value) {
        if (value != null) {
            query.add(new Param(name, value));
        }
    }

    private static <T> void addAll(List<Param> query, String name, List<T> values, Function<T, String> id) {
        if (values != null) {
            values.forEach(value -> query.add(new Param(name, id.apply(value))));
            if (values.isEmpty()) {
                query.add(new Param(name, NONE));
            }
        }
    }

    private static void single(List<Param> query, String name, String value, boolean lifted) {
        add(query, name, value != null ? value : lifted ? ANY : null);
    }

    private static <T> void several(List<Param> query, String name, List<T> values, boolean lifted, Function<T, String> id) {
        addAll(query, name, values.isEmpty() && !lifted ? null : values, id);
    }

    /** One query on its way to a request. */
    private static final class Reading {
        private final Visit visit;
        private final Clock clock;
        private final List<Fault> faults = new ArrayList<>();
        private final List<String> lifted = new ArrayList<>();

        Reading(Visit visit, Clock clock) {
            this.visit = visit;
            this.clock = clock;
        }

        Request request() {
            Limits limits = limits();
            LockerQuery locker = LockerQuery.read(visit, clock);
            faults.addAll(locker.faults());
            return new Request(visit.first("words"), single("source"), list("way"), list("dynamics"), single("room"), list("character"),
                    limits.equals(Limits.NONE) ? null : limits, neighbours(), list("circumstance"), list("technique"),
                    whole("options"), locker.from(), locker.until(), locker.use(), families("wish"), List.copyOf(lifted), single("player"),
                    whole("draws"), HeardQuery.read(visit, single("source"), faults));
        }

        private Limits limits() {
            return new Limits(
                    lift("mics", "mics") ? null : whole("mics"),
                    lift("phantom", "phantom") ? null : yesOrNo("phantom"),
                    lift("gain", "preampGainDb") ? null : number("gain", "dB"),
                    lift("noise", "preampNoiseDbu") ? null : number("noise", "dBu"),
                    liftable("onlyFamilies", families("only")),
                    liftable("withoutFamilies", families("without")),
                    liftable("onlyMicTypes", list("onlyType")),
                    liftable("withoutMicTypes", list("withoutType")));
        }

        private boolean lift(String name, String field) {
            boolean any = ANY.equalsIgnoreCase(single(name));
            if (any) {
                lifted.add(field);
            }
            return any;
        }

        private <T> List<T> liftable(String field, List<T> given) {
            if (given != null && given.isEmpty()) {
                lifted.add(field);
            }
            return given;
        }

        /** The last that is not empty, so that a field a reader emptied falls back on the hidden one before it. */
        private String single(String name) {
            List<String> all = visit.all(name);
            return all.isEmpty() ? null : all.get(all.size() - 1);
        }

        /** Null where nothing is said; "none" itself is no entry. */
        private List<String> list(String name) {
            List<String> all = visit.all(name);
            if (all.isEmpty()) {
                return null;
            }
            if (all.size() > MOST_VALUES) {
                fault(name, all.size() + " values are given. Leave most of them out");
                return null;
            }
            return all.stream().filter(value -> !value.equalsIgnoreCase(NONE)).distinct().toList();
        }

        private List<MicFamily> families(String name) {
            List<String> ids = list(name);
            if (ids == null) {
                return null;
            }
            List<MicFamily> families = new ArrayList<>();
            for (String id : ids) {
                Stream.of(MicFamily.values()).filter(family -> family.id().equals(id)).findFirst().ifPresentOrElse(families::add,
                        () -> fault(name, "there is no family \"" + Shown.of(id) + "\". Use one of "
                                + Stream.of(MicFamily.values()).map(Word::id).collect(Collectors.joining(", "))));
            }
            return families;
        }

        private List<Neighbour> neighbours() {
            List<String> sources = visit.query().get("near");
            if (sources == null || sources.stream().allMatch(String::isBlank)) {
                return null;
            }
            if (sources.size() > MOST_VALUES) {
                fault("near", sources.size() + " neighbours are given. Keep the loudest and nearest");
                return null;
            }
            List<Neighbour> neighbours = new ArrayList<>();
            int row = 0;
            for (String given : sources) {
                String source = given.strip();
                if (source.equalsIgnoreCase(NONE)) {
                    continue; // it has no distance beside it
                }
                if (!source.isEmpty()) {
                    neighbours.add(neighbour(source, row));
                }
                row++;
            }
            return neighbours;
        }

        private Neighbour neighbour(String source, int row) {
            String distance = at("nearDistance", row);
            String degrees = at("nearDegrees", row);
            Double distanceM = distance == null ? null : typed("nearDistance", distance, visit.reader().imperial() ? "ft" : "m");
            Double angleDegrees = degrees == null ? Double.valueOf(90) : typed("nearDegrees", degrees, "degrees");
            if (distance == null) {
                fault("nearDistance", "it is not said how far the neighbour \"" + Shown.of(source) + "\" is. Give a length such as 3 m or 10 ft");
            }
            return new Neighbour(source, distanceM == null ? 1 : distanceM, angleDegrees == null ? 90 : angleDegrees);
        }

        private String at(String name, int row) {
            List<String> all = visit.query().getOrDefault(name, List.of());
            return row >= all.size() || all.get(row).isBlank() ? null : all.get(row).strip();
        }

        private Integer whole(String name) {
            String text = single(name);
            if (text != null && !WHOLE.matcher(text).matches()) {
                fault(name, "\"" + Shown.of(text) + "\" is no whole number. Give digits, such as 2");
                return null;
            }
            return text == null ? null : Integer.valueOf(text);
        }

        private Double number(String name, String unit) {
            String text = single(name);
            return text == null ? null : typed(name, text, unit);
        }

        private Double typed(String name, String text, String unit) {
            Typed typed = Typed.parse(text, unit, visit.reader());
            if (typed.fault() != null) {
                fault(name, typed.fault());
                return null;
            }
            return typed.number().getAsDouble();
        }

        private Boolean yesOrNo(String name) {
            String text = single(name);
            if (text == null || text.equalsIgnoreCase("yes")) {
                return text == null ? null : Boolean.TRUE;
            }
            if (!text.equalsIgnoreCase("no")) {
                fault(name, "\"" + Shown.of(text) + "\" is neither yes nor no. Write one of them");
            }
            return text.equalsIgnoreCase("no") ? Boolean.FALSE : null;
        }

        private void fault(String name, String says) {
            faults.add(new Fault(name, says));
        }
    }
}
