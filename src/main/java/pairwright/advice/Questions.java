package pairwright.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.model.Ask;
import pairwright.model.Catalogue;
import pairwright.model.Fault;
import pairwright.model.Limits;
import pairwright.model.Meaning;
import pairwright.model.MicFamily;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Reading;
import pairwright.model.Request;
import pairwright.model.Vocabulary;
import pairwright.search.SentenceReader;

/** Makes one question of a sentence and explicit fields; explicit fields win. Finds all faults at once. */
final class Questions {
    static final int LONGEST_SENTENCE = 2_000;
    static final int MOST_OPTIONS = 6;
    private static final int MOST_NEIGHBOURS = 16;
    private static final int MOST_IDS = 40;
    /** So many are listed where none comes near. */
    private static final int MOST_SAID = 40;

    private final Catalogue catalogue;
    private final SentenceReader reader;
    private final Request request;
    private final List<Fault> faults = new ArrayList<>();

    private Questions(Catalogue catalogue, SentenceReader reader, Request request) {
        this.catalogue = catalogue;
        this.reader = reader;
        this.request = request;
    }

    /**
     * The question a request asks.
     *
     * @throws UnusableQuestion with every fault of the request
     */
    static Meaning of(Request request, Catalogue catalogue, SentenceReader reader) {
        return new Questions(catalogue, reader, request).merged();
    }

    private Meaning merged() {
        check();
        if (!faults.isEmpty()) {
            throw new UnusableQuestion(faults);
        }
        Meaning meaning = reader.read(request.words() == null ? "" : request.words());
        Question said = meaning.question();
        List<Reading> understood = new ArrayList<>(meaning.understood());

        boolean sourceGiven = request.source() != null;
        String source = sourceGiven ? request.source() : said.source();
        if (sourceGiven) {
            replace(understood, "source", List.of(source), id -> catalogue.sources().get(id).name());
        }
        if (request.room() != null) {
            replace(understood, "room", List.of(request.room()), id -> catalogue.rooms().get(id).name());
        }
        if (request.character() != null) {
            replace(understood, "character", request.character(), id -> catalogue.characters().get(id).name());
        }
        if (request.neighbours() != null) {
            replace(understood, "neighbour", request.neighbours().stream().map(Neighbour::source).toList(),
                    id -> catalogue.sources().get(id).name());
        }
        if (request.wishes() != null) {
            replace(understood, "wish", request.wishes().stream().map(MicFamily::id).toList(), this::familyName);
        }
        List<String> ways = waysOf(source, chosen(request.ways(), said.ways()));
        Question question = new Question(
                request.words() == null ? "" : request.words(),
                source,
                ways,
                chosen(request.dynamics(), said.dynamics()),
                request.room() != null ? request.room() : said.room(),
                chosen(request.character(), said.character()),
                merged(request.limits(), lifted(said.limits(), request.lifted())),
                chosen(request.neighbours(), said.neighbours()),
                chosen(request.circumstances(), said.circumstances()),
                chosen(request.techniques(), said.techniques()),
                request.options() == null ? Usual.OPTIONS : request.options(),
                request.from(),
                request.until(),
                request.locker(),
                chosen(request.wishes(), said.wishes()),
                request.lifted(),
                request.player() == null ? null : request.player().strip(),
                request.heard());
        List<String> notUnderstood = new ArrayList<>(meaning.notUnderstood());
        if (request.ways() != null) {
            request.ways().stream().filter(way -> !ways.contains(way) && !notUnderstood.contains(way)).forEach(notUnderstood::add);
        }
        List<Ask> ask = meaning.ask().stream().filter(one -> one.choices().stream().noneMatch(choice -> isGiven(choice.as()))).toList();
        return new Meaning(question, List.copyOf(understood), List.copyOf(notUnderstood), meaning.otherReadings(), ask);
    }

    private String familyName(String family) {
        return catalogue.words().families().stream()
                .filter(words -> words.families().size() == 1 && words.families().get(0).id().equals(family))
                .map(Vocabulary.FamilyWords::name).findFirst().orElse(family);
    }

    /** What a field says is not asked back. */
    private boolean isGiven(String as) {
        return switch (as) {
            case "source" -> request.source() != null;
            case "room" -> request.room() != null;
            case "neighbour" -> request.neighbours() != null;
            default -> false;
        };
    }

    private static <T> List<T> chosen(List<T> given, List<T> said) {
        return given != null ? List.copyOf(given) : said;
    }

    /** Ways a source does not know change nothing there, so they are left out, and told as not understood. */
    private List<String> waysOf(String source, List<String> ways) {
        if (source == null) {
            return ways;
        }
        Set<String> known = new LinkedHashSet<>();
        catalogue.sources().get(source).ways().forEach(way -> known.add(way.id()));
        return ways.stream().filter(known::contains).toList();
    }

    private static void replace(List<Reading> readings, String as, List<String> ids, Function<String, String> name) {
        readings.removeIf(reading -> reading.as().equals(as));
        ids.forEach(id -> readings.add(new Reading("", as, id, name.apply(id))));
    }

    /** What the words set, less what was lifted. */
    private static Limits lifted(Limits said, List<String> lifted) {
        return lifted.isEmpty() ? said : new Limits(
                lifted.contains("mics") ? null : said.mics(),
                lifted.contains("phantom") ? null : said.phantom(),
                lifted.contains("preampGainDb") ? null : said.preampGainDb(),
                lifted.contains("preampNoiseDbu") ? null : said.preampNoiseDbu(),
                lifted.contains("onlyFamilies") ? null : said.onlyFamilies(),
                lifted.contains("withoutFamilies") ? null : said.withoutFamilies(),
                lifted.contains("onlyMicTypes") ? null : said.onlyMicTypes(),
                lifted.contains("withoutMicTypes") ? null : said.withoutMicTypes());
    }

    private static Limits merged(Limits given, Limits said) {
        if (given == null) {
            return said;
        }
        return new Limits(
                given.mics() != null ? given.mics() : said.mics(),
                given.phantom() != null ? given.phantom() : said.phantom(),
                given.preampGainDb() != null ? given.preampGainDb() : said.preampGainDb(),
                given.preampNoiseDbu() != null ? given.preampNoiseDbu() : said.preampNoiseDbu(),
                either(given.onlyFamilies(), said.onlyFamilies()),
                either(given.withoutFamilies(), said.withoutFamilies()),
                either(given.onlyMicTypes(), said.onlyMicTypes()),
                either(given.withoutMicTypes(), said.withoutMicTypes()));
    }

    private static <T> List<T> either(List<T> given, List<T> said) {
        return given.isEmpty() ? said : given;
    }

    private void check() {
        String words = request.words();
        if ((words == null || words.isBlank()) && request.source() == null) {
            fault("/words", "there is nothing to answer: words are " + (words == null ? "missing" : "empty")
                    + " and no source is given. Say what is recorded, such as \"brushed snare, small room\", or give a source id");
        }
        if (words != null && words.codePointCount(0, words.length()) > LONGEST_SENTENCE) {
            fault("/words", "words are " + words.codePointCount(0, words.length()) + " characters long; at most " + LONGEST_SENTENCE
                    + " are read. Say it in a sentence or two");
        }
        known("/source", request.source(), catalogue.sources().keySet(), "source");
        known("/room", request.room(), catalogue.rooms().keySet(), "room");
        knownAll("/character", request.character(), catalogue.characters().keySet(), "character");
        Vocabulary vocabulary = catalogue.words();
        knownAll("/ways", request.ways(), ids(vocabulary.ways(), Vocabulary.WayWords::id), "way of playing");
        knownAll("/dynamics", request.dynamics(), ids(vocabulary.dynamics(), Vocabulary.Dynamic::id), "dynamic");
        knownAll("/circumstances", request.circumstances(),
                ids(vocabulary.circumstances(), Vocabulary.Circumstance::id), "circumstance");
        knownAll("/techniques", request.techniques(), catalogue.techniques().keySet(), "technique");
        player(request.player());
        within("/options", request.options(), 1, MOST_OPTIONS, "options");
        within("/draws", request.draws(), 0, Usual.MOST_DRAWS, "draws");
        limits(request.limits());
        wishes(request.wishes());
        neighbours(request.neighbours());
        if (request.heard() != null) {
            faults.addAll(request.heard().faults("/heard"));
            habits(request.heard().habits());
        }
        if (request.from() != null && request.until() != null && !request.from().isBefore(request.until())) {
            fault("/until", "until (" + request.until() + ") is not after from (" + request.from() + "). Swap them or correct one");
        }
    }

    private void habits(List<String> habits) {
        if (!habits.isEmpty()) {
            fault("/heard/habits", "habits are of a seat in a line-up, not of a question. Leave them out, and say in the words what matters, such as \"moves a lot\"");
        }
    }

    private void player(String player) {
        if (player == null) {
            return;
        }
        if (player.isBlank()) {
            fault("/player", "player is empty. Give a name as it is written down in this house, or leave it out");
        }
        int length = player.codePointCount(0, player.length());
        if (length > Request.LONGEST_PLAYER) {
            fault("/player", "player is " + length + " characters long; at most " + Request.LONGEST_PLAYER + " are read. Give the name alone");
        }
    }

    private void limits(Limits limits) {
        if (limits == null) {
            return;
        }
        within("/limits/mics", limits.mics(), 1, Limits.MOST_CHANNELS, "mics");
        within("/limits/preampGainDb", limits.preampGainDb(), 0, Limits.MOST_GAIN_DB, "preampGainDb");
        within("/limits/preampNoiseDbu", limits.preampNoiseDbu(), -130, -80, "preampNoiseDbu");
        knownAll("/limits/onlyMicTypes", limits.onlyMicTypes(), catalogue.mics().keySet(), "mic type");
        knownAll("/limits/withoutMicTypes", limits.withoutMicTypes(), catalogue.mics().keySet(), "mic type");
    }

    private void wishes(List<MicFamily> wishes) {
        if (wishes == null) {
            return;
        }
        if (wishes.size() > MOST_IDS) {
            fault("/wishes", wishes.size() + " entries are given; at most " + MOST_IDS + " are taken. Leave some out");
            return;
        }
        for (int i = 0; i < wishes.size(); i++) {
            if (wishes.get(i) == null) {
                fault("/wishes/" + i, "an entry is null. Give the id of a family or leave it out");
            }
        }
    }

    private void neighbours(List<Neighbour> neighbours) {
        if (neighbours == null) {
            return;
        }
        if (neighbours.size() > MOST_NEIGHBOURS) {
            fault("/neighbours", neighbours.size() + " neighbours are given; at most " + MOST_NEIGHBOURS
                    + " are taken. Keep the loudest and nearest");
            return;
        }
        for (int i = 0; i < neighbours.size(); i++) {
            String at = "/neighbours/" + i;
            Neighbour neighbour = neighbours.get(i);
            if (neighbour == null) {
                fault(at, "a neighbour is null. Give an object with source, distanceM and angleDegrees");
                continue;
            }
            if (neighbour.source() == null) {
                fault(at + "/source", "a neighbour has no source. Give a source id");
            }
            known(at + "/source", neighbour.source(), catalogue.sources().keySet(), "source");
            within(at + "/distanceM", neighbour.distanceM(), Neighbour.LEAST_DISTANCE_M, Neighbour.MOST_DISTANCE_M, "distanceM");
            within(at + "/angleDegrees", neighbour.angleDegrees(), -360, 360, "angleDegrees");
        }
    }

    private static <T> Set<String> ids(Collection<T> entries, Function<T, String> id) {
        Set<String> ids = new LinkedHashSet<>();
        entries.forEach(entry -> ids.add(id.apply(entry)));
        return ids;
    }

    private void knownAll(String at, List<String> given, Collection<String> known, String kind) {
        if (given == null) {
            return;
        }
        if (given.size() > MOST_IDS) {
            fault(at, given.size() + " entries are given; at most " + MOST_IDS + " are taken. Leave some out");
            return;
        }
        for (int i = 0; i < given.size(); i++) {
            if (given.get(i) == null) {
                fault(at + "/" + i, "an entry is null. Give the id of a " + kind + " or leave it out");
            } else {
                known(at + "/" + i, given.get(i), known, kind);
            }
        }
    }

    private void known(String at, String given, Collection<String> known, String kind) {
        if (given == null || known.contains(given)) {
            return;
        }
        List<String> near = reader.nearest(Shown.of(given), 8).stream()
                .map(Reading::id).filter(known::contains).distinct().limit(3).toList();
        fault(at, "there is no " + kind + " \"" + Shown.of(given) + "\". "
                + (near.isEmpty() ? all(known, kind) : "Maybe " + String.join(" or ", near)));
    }

    /** A list a person can look over is said; a longer one is said where to find. */
    private static String all(Collection<String> known, String kind) {
        return known.size() <= MOST_SAID ? "Known: " + known.stream().sorted().collect(Collectors.joining(", "))
                : "All ids are at " + (kind.equals("mic type") ? "/api/mics" : "/api/sources");
    }

    private void within(String at, Number given, double least, double most, String name) {
        if (given == null) {
            return;
        }
        double value = given.doubleValue();
        if (!(value >= least && value <= most)) {
            fault(at, name + " must be " + plain(least) + " to " + plain(most) + ", but was " + given);
        }
    }

    private void fault(String at, String says) {
        faults.add(new Fault(at, says));
    }

    /** As it was given, without the ".0" of a whole number. */
    static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
