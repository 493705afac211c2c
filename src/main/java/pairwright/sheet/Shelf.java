package pairwright.sheet;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.model.Catalogue;
import pairwright.sheet.ReadingParts.Link;

/** The kinds of entries there are to read. */
public enum Shelf {
    SOURCES("sources", "Sources", "source", "What makes the sound: instruments, voices, amplifiers, leads."),
    MICS("mics", "Microphone types", "mic-type", "Classes of microphones and line boxes, never products."),
    CHARACTERS("characters", "Characters", "character", "Words for the sound that is wanted, and what they ask for."),
    ROOMS("rooms", "Rooms", "room", "Usual rooms in numbers. Yours will differ."),
    TECHNIQUES("techniques", "Techniques", "technique", "How two microphones on one source relate."),
    COMPLAINTS("complaints", "It sounds \u2026", "complaint", "What is heard and not wanted, and what to move against it.");

    private final String id;
    private final String title;
    private final String kind;
    private final String says;

    Shelf(String id, String title, String kind, String says) {
        this.id = id;
        this.title = title;
        this.kind = kind;
        this.says = says;
    }

    /** Its word in addresses. */
    public String id() {
        return id;
    }

    public String title() {
        return title;
    }

    /** What one of it is called where a sentence is read. */
    String kind() {
        return kind;
    }

    public String says() {
        return says;
    }

    String address() {
        return "/" + id;
    }

    /** Its entries' names by id. */
    Map<String, String> names(Catalogue catalogue) {
        return switch (this) {
            case SOURCES -> named(catalogue.sources(), one -> one.name());
            case MICS -> named(catalogue.mics(), one -> one.name());
            case CHARACTERS -> named(catalogue.characters(), one -> one.name());
            case ROOMS -> named(catalogue.rooms(), one -> one.name());
            case TECHNIQUES -> named(catalogue.techniques(), one -> one.name());
            case COMPLAINTS -> named(catalogue.complaints(), one -> one.name());
        };
    }

    private static <T> Map<String, String> named(Map<String, T> entries, Function<T, String> name) {
        return entries.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, entry -> name.apply(entry.getValue()), (one, other) -> one,
                LinkedHashMap::new));
    }

    static Optional<Shelf> ofKind(String kind) {
        return Arrays.stream(values()).filter(shelf -> shelf.kind.equals(kind)).findFirst();
    }

    Link link(Addresses at) {
        return at.link(address(), title);
    }

    Link link(Addresses at, String entry, String name) {
        return at.link(address() + "/" + entry, name);
    }
}
