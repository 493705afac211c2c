package pairwright.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Complaint;
import pairwright.model.Gauge;
import pairwright.model.Habit;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Vocabulary;
import pairwright.model.Way;

/** What no schema can say: whether entries agree with themselves and with each other. */
final class CrossChecks {
    /** Counts and classes, not figures somebody measured: they need no basis. */
    private static final Set<String> NEED_NO_BASIS = Set.of("channels");
    private static final List<String> MORE_THAN_ZERO = List.of("sensitivityMvPerPa", "impedanceOhm", "inputOhm", "massKg");
    private static final Set<String> OF_A_RANGE = Set.of("low", "typical", "high");

    private final Catalogue under;
    private final List<Entry<?>> entries;
    private final Map<String, CatalogueReader.WordFile<?>> words;
    private final List<FileFault> faults;
    private final Set<String> micTypes;
    private final Set<String> sources;
    private final Set<String> characters;
    private final Set<String> techniques;

    CrossChecks(Catalogue under, List<Entry<?>> entries, Map<String, CatalogueReader.WordFile<?>> words,
            List<FileFault> faults) {
        this.under = under;
        this.entries = entries;
        this.words = words;
        this.faults = faults;
        this.micTypes = ids(Kind.MICS);
        this.sources = ids(Kind.SOURCES);
        this.characters = ids(Kind.CHARACTERS);
        this.techniques = ids(Kind.TECHNIQUES);
    }

    void run() {
        twice();
        for (Entry<?> entry : entries) {
            if (entry.value() == null) {
                continue;
            }
            fileName(entry);
            ranges(entry.yaml(), entry.yaml().root(), "");
            wordsTwice(entry);
            basis(entry);
            if (entry.value() instanceof MicType mic) {
                micType(entry.yaml(), mic);
            } else if (entry.value() instanceof Source source) {
                source(entry.yaml(), source);
            } else if (entry.value() instanceof Character character) {
                character(entry.yaml(), character);
            } else if (entry.value() instanceof Complaint complaint) {
                complaint(entry.yaml(), complaint);
            }
        }
        sharedWords();
        wordFiles();
    }

    /** Ids of a kind, those of files with faults too, so that one fault does not drag others behind it. */
    private Set<String> ids(Kind.Entries<?> kind) {
        Set<String> ids = new TreeSet<>(kind.in().apply(under).keySet());
        entries.stream().filter(entry -> entry.is(kind)).forEach(entry -> ids.add(entry.id()));
        return ids;
    }

    /** The entry in force; null if its file has faults. */
    private <T> T effective(Kind.Entries<T> kind, String id) {
        for (Entry<?> entry : entries) {
            if (entry.is(kind) && entry.id().equals(id)) {
                return kind.record().cast(entry.value());
            }
        }
        return kind.in().apply(under).get(id);
    }

    private void twice() {
        Map<String, Entry<?>> seen = new HashMap<>();
        for (Entry<?> entry : entries) {
            Entry<?> before = seen.putIfAbsent(entry.kind().folder() + "/" + entry.id(), entry);
            if (before != null && entry.yaml() != null && before.yaml() != null) {
                faults.add(entry.yaml().fault("/id", "the " + entry.kind().says() + " " + entry.id() + " stands in "
                        + before.yaml().file() + " too. Keep one of the two files"));
            }
        }
    }

    private void fileName(Entry<?> entry) {
        String written = entry.yaml().root().path("id").asText();
        if (!written.equals(entry.id())) {
            faults.add(entry.yaml().fault("/id", "id is \"" + written + "\", but the file is " + entry.id()
                    + ".yaml. Give both the same name"));
        }
        if (entry.value() instanceof Source source) {
            String folder = entry.yaml().file().toAbsolutePath().getParent().getFileName().toString();
            if (!folder.equals(source.family().id())) {
                faults.add(entry.yaml().fault("/family", "family is " + source.family().id() + ", but the file lies in " + folder
                        + "/. Move the file to " + source.family().id() + "/ or correct the family"));
            }
        }
    }

    private void ranges(YamlFile yaml, JsonNode node, String at) {
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                ranges(yaml, node.get(i), at + "/" + i);
            }
        } else if (node.isObject()) {
            Set<String> names = new HashSet<>();
            node.fieldNames().forEachRemaining(names::add);
            if (names.equals(OF_A_RANGE)) {
                double low = node.get("low").doubleValue();
                double typical = node.get("typical").doubleValue();
                double high = node.get("high").doubleValue();
                if (low > typical || typical > high) {
                    faults.add(yaml.fault(at, at.substring(at.lastIndexOf('/') + 1) + " runs from "
                            + EntrySchema.shown(node.get("low"))
                            + " over " + EntrySchema.shown(node.get("typical")) + " to " + EntrySchema.shown(node.get("high"))
                            + ". Put low, typical and high in rising order"));
                }
            }
            for (String name : names) {
                ranges(yaml, node.get(name), at + "/" + YamlFile.escaped(name));
            }
        }
    }

    private void wordsTwice(Entry<?> entry) {
        Set<String> seen = new HashSet<>();
        JsonNode list = entry.yaml().root().path("words");
        for (int i = 0; i < list.size(); i++) {
            if (!seen.add(plain(list.get(i).asText()))) {
                faults.add(entry.yaml().fault("/words/" + i, "\"" + list.get(i).asText()
                        + "\" stands in words twice. Take one out"));
            }
        }
    }

    /** Every figure rests on one thing; nothing else is said to rest on anything. */
    private void basis(Entry<?> entry) {
        YamlFile yaml = entry.yaml();
        EntrySchema schema = EntrySchema.named(entry.kind().schema());
        Map<String, String> named = new HashMap<>();
        JsonNode list = yaml.root().path("basis");
        for (int i = 0; i < list.size(); i++) {
            JsonNode of = list.get(i).path("of");
            for (int j = 0; j < of.size(); j++) {
                String field = of.get(j).asText();
                String at = "/basis/" + i + "/of/" + j;
                if (!schema.knows(field)) {
                    faults.add(yaml.fault(at, "basis names \"" + field + "\", which is no field. "
                            + Nearest.to(field, schema.fields()).map(near -> "Did you mean " + near
                                    + "?").orElse("Take it out")));
                } else if (!yaml.root().has(field)) {
                    faults.add(yaml.fault(at, "basis names " + field + ", which this entry does not have. Take it out"));
                } else if (named.putIfAbsent(field, at) != null) {
                    faults.add(yaml.fault(at, "basis names " + field + " twice, first in line " + yaml.at(named.get(field)).line()
                            + ". Keep the one it rests on"));
                }
            }
        }
        yaml.root().fields().forEachRemaining(field -> {
            if (holdsNumber(field.getValue()) && !named.containsKey(field.getKey()) && !NEED_NO_BASIS.contains(field.getKey())) {
                faults.add(yaml.faultAtName("/" + field.getKey(), field.getKey()
                        + " is not named in basis. Say what its figures rest on"));
            }
        });
    }

    private static boolean holdsNumber(JsonNode node) {
        if (node.isContainerNode()) {
            for (JsonNode inside : node) {
                if (holdsNumber(inside)) {
                    return true;
                }
            }
            return false;
        }
        return node.isNumber();
    }

    private void micType(YamlFile yaml, MicType mic) {
        Set<Pattern> offered = new HashSet<>();
        for (int i = 0; i < mic.patterns().size(); i++) {
            PatternData data = mic.patterns().get(i);
            String at = "/patterns/" + i;
            String pattern = data.pattern().id();
            boolean lobe = data.pattern() == Pattern.LOBAR;
            if (!offered.add(data.pattern())) {
                faults.add(yaml.fault(at, "the pattern " + pattern + " stands here twice. Keep one of the two"));
            }
            if (lobe ? data.directivityIndexDb() == null : data.coefficient() == null) {
                faults.add(yaml.fault(at, "the pattern " + pattern + " has no " + (lobe
                        ? "directivityIndexDb. Give its directivity index"
                        : "coefficient. Give its omni part") + ", one value an octave"));
            }
            if (lobe ? data.coefficient() != null : data.directivityIndexDb() != null) {
                String wrong = lobe ? "coefficient" : "directivityIndexDb";
                faults.add(yaml.faultAtName(at + "/" + wrong, "the pattern " + pattern + " has a " + wrong + ", which only "
                        + (lobe ? "patterns other than lobar have" : "lobar has") + ". Take it out"));
            }
        }
        boolean takesPhantom = mic.power() == PowerNeed.PHANTOM || mic.power() == PowerNeed.PHANTOM_OR_BATTERY;
        if (takesPhantom && mic.currentMa() == null) {
            faults.add(yaml.fault("/power", "power is " + mic.power().id()
                    + ", but currentMa is missing. Give the current a channel takes"));
        }
        if (!takesPhantom && mic.currentMa() != null) {
            faults.add(yaml.faultAtName("/currentMa", "currentMa is given, but power is " + mic.power().id()
                    + ". Take it out or correct power"));
        }
        if (mic.power() != PowerNeed.NONE && mic.sensitivityMvPerPa() != null && mic.selfNoiseDba() == null) {
            faults.add(yaml.fault("/power", "power is " + mic.power().id()
                    + ", so the type is active, but selfNoiseDba is missing."
                    + " Give its equivalent noise"));
        }
        if (mic.power() == PowerNeed.NONE && mic.sensitivityMvPerPa() != null && mic.selfNoiseDba() == null && mic.impedanceOhm() == null) {
            faults.add(yaml.fault("/power", "power is none, so the type is passive, but impedanceOhm is missing."
                    + " Give its source impedance, which its noise is computed from"));
        }
        for (String figure : MORE_THAN_ZERO) {
            aboveZero(yaml, "/" + figure);
        }
        for (int i = 1; i < mic.padsDb().size(); i++) {
            if (mic.padsDb().get(i) <= mic.padsDb().get(i - 1)) {
                faults.add(yaml.fault("/padsDb/" + i, "the pad " + EntrySchema.shown(yaml.root().at("/padsDb/" + i))
                        + " does not exceed the one before it. Put the smallest first and each once"));
            }
        }
        if (mic.family() == MicFamily.LINE && mic.captures() && (mic.inputOhm() == null || mic.maxInputDbu() == null)) {
            faults.add(yaml.fault("/family", "a line box needs inputOhm and maxInputDbu, but has "
                    + (mic.inputOhm() == null && mic.maxInputDbu() == null ? "neither" : "only one") + ". Give both"));
        }
    }

    /** Schemas leave ranges open; what is computed from these must not meet a zero or less. */
    private void aboveZero(YamlFile yaml, String at) {
        JsonNode range = yaml.root().at(at);
        if (range.isObject() && !(range.path("low").doubleValue() > 0)) {
            faults.add(yaml.fault(at, at.substring(at.lastIndexOf('/') + 1) + " starts at " + EntrySchema.shown(range.path("low"))
                    + ". Give figures above 0"));
        }
    }

    private void angles(YamlFile yaml, String at) {
        JsonNode range = yaml.root().at(at);
        if (range.path("low").doubleValue() < 0 || range.path("high").doubleValue() > 180) {
            faults.add(yaml.fault(at, at.substring(at.lastIndexOf('/') + 1) + " runs from " + EntrySchema.shown(range.path("low"))
                    + " to " + EntrySchema.shown(range.path("high")) + ". Give angles from 0 to 180 degrees"));
        }
    }

    private void source(YamlFile yaml, Source source) {
        boolean acoustic = source.signal() == Signal.ACOUSTIC;
        if (acoustic ? source.level() == null : source.lead() == null) {
            faults.add(yaml.fault("/signal", "signal is " + source.signal().id() + ", but " + (acoustic
                    ? "level is missing. Say how loud the source is"
                            : "lead is missing. Say how strong the signal on the lead is")));
        }
        if (acoustic ? source.lead() != null : source.level() != null) {
            String wrong = acoustic ? "lead" : "level";
            faults.add(yaml.faultAtName("/" + wrong, "signal is " + source.signal().id() + ", but " + wrong
                    + " is given. Take it out or correct signal"));
        }
        if (source.level() != null && source.level().peakDbSpl() < source.level().typicalDbSpl()) {
            faults.add(yaml.fault("/level/peakDbSpl", "peakDbSpl is " + EntrySchema.shown(yaml.root().at("/level/peakDbSpl"))
                    + ", below typicalDbSpl. Give the peak of loud playing"));
        }
        double strongest = Double.NEGATIVE_INFINITY;
        for (double band : source.spectrumDb().toArray()) {
            strongest = Math.max(strongest, band);
        }
        if (strongest != 0) {
            faults.add(yaml.fault("/spectrumDb", "the strongest octave of spectrumDb is "
                    + BigDecimal.valueOf(strongest).stripTrailingZeros().toPlainString()
                            + " dB. Shift all nine so that the strongest is 0"));
        }
        List<String> positions = source.positions().stream().map(Position::id).toList();
        unique(yaml, "/positions", "position", positions);
        unique(yaml, "/ways", "way", source.ways().stream().map(way -> way.id()).toList());
        ways(yaml, source);
        List<String> ways = source.ways().stream().map(Way::id).toList();
        for (int i = 0; i < source.positions().size(); i++) {
            aboveZero(yaml, "/positions/" + i + "/distanceM");
            angles(yaml, "/positions/" + i + "/offAxisDegrees");
            angles(yaml, "/positions/" + i + "/aimDegrees");
            onlyWays(yaml, "/positions/" + i, source.positions().get(i).onlyWays(), ways);
        }
        for (int i = 0; i < source.habits().size(); i++) {
            habit(yaml, "/habits/" + i, source.habits().get(i), source.positions());
            onlyWays(yaml, "/habits/" + i, source.habits().get(i).onlyWays(), ways);
        }
        for (int i = 0; i < source.pairs().size(); i++) {
            pair(yaml, "/pairs/" + i, source.pairs().get(i), source.positions());
        }
    }

    private void ways(YamlFile yaml, Source source) {
        Set<String> known = new TreeSet<>();
        under.words().ways().forEach(way -> known.add(way.id()));
        items(Kind.WAYS).forEach(way -> known.add(way.id()));
        if (known.isEmpty() || broken(Kind.WAYS)) {
            return; // a catalogue that has no words yet
        }
        for (int i = 0; i < source.ways().size(); i++) {
            known(yaml, "/ways/" + i + "/id", source.ways().get(i).id(), known, "way", " in words/ways.yaml");
        }
    }

    private void onlyWays(YamlFile yaml, String at, List<String> onlyWays, List<String> ways) {
        for (int i = 0; i < onlyWays.size(); i++) {
            known(yaml, at + "/onlyWays/" + i, onlyWays.get(i), ways, "way", " among the ways of this source");
        }
    }

    private void habit(YamlFile yaml, String at, Habit habit, List<Position> positions) {
        known(yaml, at + "/micType", habit.micType(), micTypes, "mic type", "");
        for (int i = 0; i < habit.positions().size(); i++) {
            String where = at + "/positions/" + i;
            known(yaml, where, habit.positions().get(i), ids(positions), "position", " at this source");
            takes(yaml, where, habit.positions().get(i), positions, habit.micType(), "position");
        }
        if (habit.withinM() != null && habit.beyondM() != null && habit.beyondM() >= habit.withinM()) {
            faults.add(yaml.fault(at + "/beyondM", "beyondM is " + EntrySchema.shown(yaml.root().at(at + "/beyondM"))
                    + ", not closer than withinM, so the habit never holds. Swap or correct the two"));
        }
        MicType mic = effective(Kind.MICS, habit.micType());
        for (int i = 0; mic != null && i < habit.patterns().size(); i++) {
            Pattern pattern = habit.patterns().get(i);
            if (!offers(mic, List.of(pattern))) {
                faults.add(yaml.fault(at + "/patterns/" + i, mic.id() + " has no pattern " + pattern.id() + ". It has "
                        + patterns(mic) + ". Correct one of the two"));
            }
        }
    }

    private void pair(YamlFile yaml, String at, PairRecipe pair, List<Position> positions) {
        known(yaml, at + "/technique", pair.technique(), techniques, "technique", "");
        part(yaml, at + "/first", pair.first(), positions);
        part(yaml, at + "/second", pair.second(), positions);
        Technique technique = effective(Kind.TECHNIQUES, pair.technique());
        if (technique == null) {
            return;
        }
        possible(yaml, at + "/first", pair.first(), technique, technique.firstPatterns());
        possible(yaml, at + "/second", pair.second(), technique, technique.secondPatterns());
        if (technique.sameType() && !pair.first().micTypes().isEmpty() && !pair.second().micTypes().isEmpty()
                && pair.first().micTypes().stream().noneMatch(pair.second().micTypes()::contains)) {
            faults.add(yaml.fault(at, technique.id()
                    + " wants two of one type, but first and second name none in common. Name the same types"));
        }
    }

    private void part(YamlFile yaml, String at, PairRecipe.Part part, List<Position> positions) {
        known(yaml, at + "/position", part.position(), ids(positions), "position", " at this source");
        for (int i = 0; i < part.micTypes().size(); i++) {
            String where = at + "/micTypes/" + i;
            known(yaml, where, part.micTypes().get(i), micTypes, "mic type", "");
            takes(yaml, where, part.position(), positions, part.micTypes().get(i), "type");
        }
    }

    private static List<String> ids(List<Position> positions) {
        return positions.stream().map(Position::id).toList();
    }

    /** Whether a type can be set up where it is named; what is unknown has a fault of its own. */
    private void takes(YamlFile yaml, String at, String positionId, List<Position> positions, String micType, String instead) {
        MicType mic = effective(Kind.MICS, micType);
        Position position = positions.stream().filter(each -> each.id().equals(positionId)).findFirst().orElse(null);
        if (mic == null || position == null) {
            return;
        }
        String family = mic.family().id();
        if (!position.onlyFamilies().isEmpty() && !position.onlyFamilies().contains(mic.family())) {
            faults.add(yaml.fault(at, position.id() + " takes only " + String.join(", ", position.onlyFamilies().stream()
                    .map(MicFamily::id).toList()) + ", but " + mic.id() + " is of the family " + family + ". Name another "
                            + instead + ", or add " + family + " to the onlyFamilies of " + position.id()));
        } else if (position.onlyFamilies().isEmpty() && (mic.family() == MicFamily.LINE || mic.family() == MicFamily.PICKUP)) {
            faults.add(yaml.fault(at, position.id() + " is a place for microphones, but " + mic.id() + " is of the family "
                    + family + ". Name another " + instead
                    + ", or give " + position.id() + " onlyFamilies with " + family + " in it"));
        }
    }

    /** Each type named has one of the patterns; one that is a stereo pair by itself is asked nothing. */
    private void possible(YamlFile yaml, String at, PairRecipe.Part part, Technique technique, List<Pattern> wanted) {
        for (int i = 0; !wanted.isEmpty() && i < part.micTypes().size(); i++) {
            MicType mic = effective(Kind.MICS, part.micTypes().get(i));
            if (mic != null && mic.channels() == 1 && !offers(mic, wanted)) {
                faults.add(yaml.fault(at + "/micTypes/" + i, technique.id() + " wants " + String.join(" or ", wanted.stream()
                        .map(Pattern::id).toList()) + " here, but " + mic.id() + " has only " + patterns(mic)
                                + ". Name another type"));
            }
        }
    }

    private static boolean offers(MicType mic, List<Pattern> wanted) {
        return mic.patterns().stream().anyMatch(data -> wanted.contains(data.pattern()));
    }

    private static String patterns(MicType mic) {
        return String.join(", ", mic.patterns().stream().map(data -> data.pattern().id()).toList());
    }

    private void character(YamlFile yaml, Character character) {
        for (int i = 0; i < character.against().size(); i++) {
            String at = "/against/" + i;
            String other = character.against().get(i);
            if (other.equals(character.id())) {
                faults.add(yaml.fault(at, character.id() + " contradicts itself. Take it out of against"));
            } else {
                known(yaml, at, other, characters, "character", "");
            }
        }
    }

    /** No word may mean two sources unless words/ambiguities.yaml says that it does. */
    private void complaint(YamlFile yaml, Complaint complaint) {
        boolean tone = complaint.gauge() == Gauge.TONE;
        if (tone && (complaint.fromHz() == null || complaint.toHz() == null)) {
            faults.add(yaml.fault("/gauge", "gauge is tone, but " + (complaint.fromHz() == null ? "fromHz" : "toHz")
                    + " is missing. Say in which octaves it is heard"));
        } else if (tone && complaint.fromHz() > complaint.toHz()) {
            faults.add(yaml.fault("/fromHz", "fromHz is above toHz. Swap them"));
        }
        for (int i = 0; i < complaint.moves().size(); i++) {
            List<String> named = complaint.moves().get(i).sources();
            for (int j = 0; j < named.size(); j++) {
                if (!sources.contains(named.get(j))) {
                    faults.add(yaml.fault("/moves/" + i + "/sources/" + j, "there is no source " + named.get(j) + ". "
                            + Nearest.remedy(named.get(j), sources)));
                }
            }
        }
    }

    private void sharedWords() {
        Set<String> ambiguous = new HashSet<>();
        under.words().ambiguities().forEach(each -> each.words().forEach(word -> ambiguous.add(plain(word))));
        items(Kind.AMBIGUITIES).forEach(each -> each.words().forEach(word -> ambiguous.add(plain(word))));
        Map<String, String> taken = new HashMap<>();
        Set<String> replaced = new HashSet<>();
        entries.stream().filter(entry -> entry.is(Kind.SOURCES)).forEach(entry -> replaced.add(entry.id()));
        under.sources().forEach((id, source) -> {
            if (!replaced.contains(id)) {
                names(source).forEach(word -> taken.putIfAbsent(word, id));
            }
        });
        Set<String> namedAnew = items(Kind.NAMES).stream().map(Vocabulary.SourceWords::source).collect(Collectors.toSet());
        under.words().names().stream().filter(more -> !namedAnew.contains(more.source()))
                .forEach(more -> more.words().forEach(word -> taken.putIfAbsent(plain(word), more.source())));
        for (Entry<?> entry : entries) {
            if (!entry.is(Kind.SOURCES) || entry.value() == null) {
                continue;
            }
            Source source = entry.source();
            for (int i = -1; i < source.words().size(); i++) {
                String word = i < 0 ? source.name() : source.words().get(i);
                String before = taken.putIfAbsent(plain(word), entry.id());
                if (before != null && !before.equals(entry.id()) && !ambiguous.contains(plain(word))) {
                    faults.add(entry.yaml().fault(i < 0 ? "/name" : "/words/" + i, "\"" + word + "\" already means " + before
                            + ". Take it out of one of the two, or list it in words/ambiguities.yaml with both"));
                }
            }
        }
        CatalogueReader.WordFile<?> file = words.get(Kind.NAMES.name());
        for (int i = 0; i < items(Kind.NAMES).size(); i++) {
            Vocabulary.SourceWords more = items(Kind.NAMES).get(i);
            for (int j = 0; j < more.words().size(); j++) {
                String before = taken.get(plain(more.words().get(j)));
                if (before != null && !before.equals(more.source()) && !ambiguous.contains(plain(more.words().get(j)))) {
                    faults.add(file.yaml().fault("/" + i + "/words/" + j, "\"" + more.words().get(j) + "\" already means "
                            + before + ". Take it out of one of the two, or list it in words/ambiguities.yaml with both"));
                }
            }
        }
    }

    private static List<String> names(Source source) {
        List<String> names = new ArrayList<>();
        names.add(plain(source.name()));
        source.words().forEach(word -> names.add(plain(word)));
        return names;
    }

    private void wordFiles() {
        for (CatalogueReader.WordFile<?> file : words.values()) {
            if (file.items() == null) {
                continue;
            }
            List<Object> seen = new ArrayList<>();
            Map<String, String> taken = new HashMap<>();
            for (int i = 0; i < file.items().size(); i++) {
                Object item = file.items().get(i);
                Object key = item instanceof String word ? word : keyOf(file, item);
                if (seen.contains(key)) {
                    faults.add(file.yaml().fault("/" + i, shown(key) + " stands in this list twice. Keep one of the two"));
                }
                seen.add(key);
                wordsOfItem(file, i, shown(key), taken);
            }
        }
        moreNames();
        opposites();
        combinations();
        CatalogueReader.WordFile<?> ambiguities = words.get(Kind.AMBIGUITIES.name());
        for (int i = 0; i < items(Kind.AMBIGUITIES).size(); i++) {
            Vocabulary.Ambiguity ambiguity = items(Kind.AMBIGUITIES).get(i);
            for (int j = 0; j < ambiguity.readings().size(); j++) {
                known(ambiguities.yaml(), "/" + i + "/readings/" + j, ambiguity.readings().get(j), sources, "source", "");
            }
        }
        CatalogueReader.WordFile<?> limits = words.get(Kind.LIMITS.name());
        for (int i = 0; i < items(Kind.LIMITS).size(); i++) {
            var sets = items(Kind.LIMITS).get(i).sets();
            for (int j = 0; j < sets.onlyMicTypes().size(); j++) {
                known(limits.yaml(), "/" + i + "/sets/onlyMicTypes/" + j, sets.onlyMicTypes().get(j), micTypes, "mic type", "");
            }
            for (int j = 0; j < sets.withoutMicTypes().size(); j++) {
                known(limits.yaml(), "/" + i + "/sets/withoutMicTypes/" + j, sets.withoutMicTypes().get(j), micTypes, "mic type",
                        "");
            }
        }
    }

    private void moreNames() {
        CatalogueReader.WordFile<?> file = words.get(Kind.NAMES.name());
        for (int i = 0; i < items(Kind.NAMES).size(); i++) {
            known(file.yaml(), "/" + i + "/source", items(Kind.NAMES).get(i).source(), sources, "source", "");
        }
    }

    private void opposites() {
        CatalogueReader.WordFile<?> file = words.get(Kind.OPPOSITES.name());
        for (int i = 0; i < items(Kind.OPPOSITES).size(); i++) {
            Vocabulary.Opposite opposite = items(Kind.OPPOSITES).get(i);
            known(file.yaml(), "/" + i + "/character", opposite.character(), characters, "character", "");
            known(file.yaml(), "/" + i + "/wants", opposite.wants(), characters, "character", "");
            known(file.yaml(), "/" + i + "/ratherThanTooMuch", opposite.ratherThanTooMuch(), characters, "character", "");
            if (opposite.wants().equals(opposite.character())) {
                faults.add(file.yaml().fault("/" + i + "/wants", "too much " + opposite.character() + " wants " + opposite.wants()
                        + " again. Name another character"));
            }
        }
    }

    private void combinations() {
        CatalogueReader.WordFile<?> file = words.get(Kind.COMBINATIONS.name());
        Set<String> with = new TreeSet<>();
        under.words().ways().forEach(way -> with.add(way.id()));
        under.words().circumstances().forEach(circumstance -> with.add(circumstance.id()));
        items(Kind.WAYS).forEach(way -> with.add(way.id()));
        items(Kind.CIRCUMSTANCES).forEach(circumstance -> with.add(circumstance.id()));
        boolean all = !broken(Kind.WAYS) && !broken(Kind.CIRCUMSTANCES);
        for (int i = 0; i < items(Kind.COMBINATIONS).size(); i++) {
            Vocabulary.Combination combination = items(Kind.COMBINATIONS).get(i);
            for (int j = 0; j < combination.of().size(); j++) {
                for (int k = 0; k < combination.of().get(j).size(); k++) {
                    known(file.yaml(), "/" + i + "/of/" + j + "/" + k, combination.of().get(j).get(k), sources, "source", "");
                }
            }
            if (all) {
                known(file.yaml(), "/" + i + "/with", combination.with(), with, "way or circumstance", "");
            }
            known(file.yaml(), "/" + i + "/source", combination.source(), sources, "source", "");
        }
    }

    /** What two items share, as a person would write it. */
    private static String shown(Object key) {
        if (key instanceof List<?> list) {
            return list.stream().map(CrossChecks::shown).collect(Collectors.joining(", "));
        }
        return key instanceof Double number ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString() : key.toString();
    }

    private static <T> Object keyOf(CatalogueReader.WordFile<T> file, Object item) {
        return file.kind().key().apply(file.kind().record().cast(item));
    }

    /** One word, one meaning, within a list; only of ways it may have two, as long as no source knows both. */
    private void wordsOfItem(CatalogueReader.WordFile<?> file, int item, String key, Map<String, String> taken) {
        String field = file.kind().equals(Kind.OPPOSITES) ? "faults" : "words";
        JsonNode list = file.yaml().root().path(item).path(field);
        for (int j = 0; j < list.size(); j++) {
            // "behind" before a name and "behind" after it are two things
            String side = file.yaml().root().path(item).path("follows").asBoolean() ? " after it" : "";
            String before = taken.putIfAbsent(plain(list.get(j).asText()) + side, key);
            if (before != null && (!file.kind().equals(Kind.WAYS) || before.equals(key) || oneSourceKnows(before, key))) {
                faults.add(file.yaml().fault("/" + item + "/" + field + "/" + j, "\"" + list.get(j).asText() + "\" "
                        + (before.equals(key) ? "stands here twice. Take one out" : "already means " + before
                                + ". Take it out of one of the two")));
            }
        }
    }

    private boolean oneSourceKnows(String way, String other) {
        return sources.stream().map(id -> effective(Kind.SOURCES, id)).filter(Objects::nonNull)
                .map(source -> source.ways().stream().map(Way::id).toList())
                .anyMatch(ways -> ways.contains(way) && ways.contains(other));
    }

    private <T> List<T> items(Kind.Words<T> kind) {
        CatalogueReader.WordFile<?> file = words.get(kind.name());
        return file == null || file.items() == null ? List.of() : file.items().stream().map(kind.record()::cast).toList();
    }

    private boolean broken(Kind.Words<?> kind) {
        return words.containsKey(kind.name()) && words.get(kind.name()).items() == null;
    }

    private void unique(YamlFile yaml, String at, String what, List<String> ids) {
        for (int i = 0; i < ids.size(); i++) {
            if (ids.indexOf(ids.get(i)) < i) {
                faults.add(yaml.fault(at + "/" + i + "/id", "the " + what + " " + ids.get(i)
                        + " stands here twice. Give one another id"));
            }
        }
    }

    private void known(YamlFile yaml, String at, String id, Collection<String> known, String what, String where) {
        if (!known.contains(id)) {
            String remedy = Nearest.to(id, known).map(near -> "Did you mean " + near + "?").orElseGet(() ->
                    known.size() > 12 ? "Use a known id or add the entry" : Nearest.remedy(id, known));
            faults.add(yaml.fault(at, "there is no " + what + " \"" + id + "\"" + where + ". " + remedy));
        }
    }

    /** A word as it is compared: without capitals and outer blanks. */
    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }
}
