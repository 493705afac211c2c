package pairwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.model.Catalogue;
import pairwright.model.MicFamily;
import pairwright.model.Nearest;
import pairwright.model.Reading;
import pairwright.model.SourceFamily;
import pairwright.sheet.ReadingParts.Group;
import pairwright.sheet.ReadingParts.Line;
import pairwright.sheet.ReadingParts.Link;

/** The catalogue as a whole, and the lists of its entries. */
public final class Catalogues {
    static final int LONGEST_SEARCH = 200;
    private static final int MOST_FOUND = 12;
    private static final int MOST_NEAR = 4;

    private Catalogues() {
    }

    /** One section of the overview; its parts are families with how many there are, or entries where there are no families. */
    public record Section(Link to, int count, String says, List<Line> parts) {
    }

    /**
     * What the overview shows.
     *
     * @param found null where nothing was searched for
     * @param fault of the search field; empty for none
     */
    public record Overview(String words, String fault, List<Line> found, List<Section> sections, int rules, Link toRules, String version) {
    }

    /** What a list shows. */
    public record Entries(Shelf shelf, int count, List<Group> groups) {
    }

    /** What is said of an address without an entry. */
    public record Missing(String says, List<Link> near, Link all) {
    }

    static Page overview(Desk desk) {
        String words = desk.visit().first("words");
        String fault = "";
        List<Line> found = null;
        if (words != null && words.length() > LONGEST_SEARCH) {
            fault = "These are " + words.length() + " characters. At most " + LONGEST_SEARCH + " are searched for: use fewer words.";
            words = Shown.of(words);
        } else if (words != null) {
            found = found(desk, words);
        }
        return desk.page(fault.isEmpty() ? 200 : 400, "catalogue", desk.catalogueItself(), "catalogue", new Overview(Objects.requireNonNullElse(words, ""), fault,
                found, Arrays.stream(Shelf.values()).map(shelf -> section(desk, shelf)).toList(), desk.known().rules().rules().size(),
                desk.at().link("/rules", "Rules"), desk.catalogue().version()));
    }

    static Page list(Desk desk, Shelf shelf) {
        List<Group> groups = groups(desk, shelf);
        return desk.page("entries", desk.inCatalogue(shelf.title()), "entries",
                new Entries(shelf, groups.stream().mapToInt(group -> group.lines().size()).sum(), groups));
    }

    /** One entry; null for none of that id. */
    static Page entry(Desk desk, Shelf shelf, String id) {
        Catalogue catalogue = desk.catalogue();
        return switch (shelf) {
            case SOURCES -> page(catalogue.sources(), id, one -> SourcePage.of(desk, one));
            case MICS -> page(catalogue.mics(), id, one -> MicPage.of(desk, one));
            case CHARACTERS -> page(catalogue.characters(), id, one -> SmallPages.of(desk, one));
            case ROOMS -> page(catalogue.rooms(), id, one -> SmallPages.of(desk, one));
            case TECHNIQUES -> page(catalogue.techniques(), id, one -> SmallPages.of(desk, one));
            case COMPLAINTS -> page(catalogue.complaints(), id, one -> SmallPages.of(desk, one));
        };
    }

    private static <T> Page page(Map<String, T> entries, String id, Function<T, Page> made) {
        T entry = entries.get(id.toLowerCase(Locale.ROOT));
        return entry == null ? null : made.apply(entry);
    }

    static Page missing(Desk desk, Shelf shelf, String id) {
        Map<String, String> names = shelf.names(desk.catalogue());
        List<Link> near = Stream.concat(Nearest.to(Shown.of(id), names.keySet()).stream(),
                        desk.known().reader().nearest(Shown.of(id).replace('-', ' '), MOST_FOUND).stream()
                                .filter(reading -> reading.as().equals(shelf.kind())).map(Reading::id))
                .distinct().filter(names::containsKey).limit(MOST_NEAR).map(entry -> shelf.link(desk.at(), entry, names.get(entry))).toList();
        return missing(desk, desk.inCatalogue("No such entry"), "There is nothing called \u201c" + Shown.of(id) + "\u201d among these.", near,
                shelf.link(desk.at()));
    }

    static Page noRule(Desk desk, String id) {
        return missing(desk, desk.rule("No such rule", "", null), "There is no rule \u201c" + Shown.of(id) + "\u201d.", RulePages.near(desk, Shown.of(id)),
                desk.at().link("/rules", "All rules"));
    }

    private static Page missing(Desk desk, ReadingParts.Frame frame, String says, List<Link> near, Link all) {
        return desk.page(404, "missing", frame, "missing", new Missing(says, near, all));
    }

    private static List<Line> found(Desk desk, String words) {
        List<Line> found = new ArrayList<>();
        if (RulePages.find(desk, words) != null) {
            found.add(new Line(desk.at().rule(RulePages.find(desk, words)), "rule", ""));
        }
        for (Reading reading : desk.known().reader().nearest(words, MOST_FOUND)) {
            Shelf.ofKind(reading.as()).ifPresent(shelf -> found.add(new Line(shelf.link(desk.at(), reading.id(), reading.name()), tag(shelf), "")));
        }
        String small = words.toLowerCase(Locale.ROOT);
        desk.catalogue().techniques().values().stream().filter(one -> called(one.name(), one.words(), small))
                .forEach(one -> found.add(new Line(desk.at().technique(one), tag(Shelf.TECHNIQUES), "")));
        desk.catalogue().complaints().values().stream().filter(one -> called(one.name(), one.words(), small))
                .forEach(one -> found.add(new Line(desk.at().complaint(one), tag(Shelf.COMPLAINTS), "")));
        return found;
    }

    private static boolean called(String name, List<String> words, String asked) {
        return Stream.concat(Stream.of(name), words.stream()).anyMatch(word -> word.toLowerCase(Locale.ROOT).contains(asked));
    }

    private static String tag(Shelf shelf) {
        return shelf == Shelf.MICS ? "microphone type" : shelf.kind();
    }

    private static Section section(Desk desk, Shelf shelf) {
        List<Group> groups = groups(desk, shelf);
        int count = groups.stream().mapToInt(group -> group.lines().size()).sum();
        List<Line> parts = groups.size() == 1 ? groups.get(0).lines().stream().map(line -> new Line(line.to(), "", "")).toList()
                : groups.stream().map(group -> new Line(desk.at().within(shelf.address(), group.id(), group.name()),
                        Integer.toString(group.lines().size()), "")).toList();
        return new Section(shelf.link(desk.at()), count, shelf.says(), parts);
    }

    private static List<Group> groups(Desk desk, Shelf shelf) {
        Catalogue catalogue = desk.catalogue();
        Addresses at = desk.at();
        Measures measures = desk.measures();
        return switch (shelf) {
            case SOURCES -> Arrays.stream(SourceFamily.values()).map(family -> new Group(family.id(), ReadingWords.family(family),
                    catalogue.sources().values().stream().filter(one -> one.family() == family)
                            .map(one -> new Line(at.source(one), "", measures.sentence(one.says()))).toList())).filter(Catalogues::isFilled).toList();
            case MICS -> Arrays.stream(MicFamily.values()).map(family -> new Group(family.id(), ReadingWords.family(family),
                    catalogue.mics().values().stream().filter(one -> one.family() == family)
                            .map(one -> new Line(at.mic(one), "", measures.sentence(one.says()))).toList())).filter(Catalogues::isFilled).toList();
            case CHARACTERS -> one(shelf, catalogue.characters().values().stream()
                    .map(one -> new Line(at.character(one), "", measures.sentence(one.says()))));
            case ROOMS -> one(shelf, catalogue.rooms().values().stream().map(one -> new Line(at.room(one), "", measures.sentence(one.says()))));
            case TECHNIQUES -> one(shelf, catalogue.techniques().values().stream()
                    .map(one -> new Line(at.technique(one), one.stereo() ? "stereo" : "", measures.sentence(one.says()))));
            case COMPLAINTS -> one(shelf, catalogue.complaints().values().stream()
                    .map(one -> new Line(at.complaint(one), "", measures.sentence(one.says()))));
        };
    }

    private static List<Group> one(Shelf shelf, Stream<Line> lines) {
        return List.of(new Group(shelf.id(), "", lines.toList()));
    }

    private static boolean isFilled(Group group) {
        return !group.lines().isEmpty();
    }
}
