package pairwright.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.Vocabulary;

/** What may be said next, where nothing is begun. */
final class Continuations {
    private final Catalogue catalogue;
    private final Completions completions;
    private final List<Phrase> characters;
    private final List<Phrase> rooms;
    private final List<Phrase> neighbours;
    private final List<Phrase> limits;

    Continuations(Catalogue catalogue, Completions completions) {
        this.catalogue = catalogue;
        this.completions = completions;
        characters = names(Kind.CHARACTER, catalogue.characters().values().stream()
                .sorted(Comparator.comparing(pairwright.model.Character::confidence).reversed()).map(pairwright.model.Character::id).toList()); // the surest first
        rooms = names(Kind.ROOM, catalogue.rooms().values().stream()
                .sorted(Comparator.comparing(Room::outdoors).thenComparingDouble(Room::volumeM3)).map(Room::id).toList()); // small ones are met most
        neighbours = names(Kind.SOURCE, catalogue.sources().values().stream().filter(source -> source.level() != null)
                .sorted(Comparator.comparing(Source::wide).thenComparingDouble(source -> source.level().peakDbSpl()).reversed())
                .map(Source::id).toList()); // what is large and loud is heard by every microphone in the room
        limits = catalogue.words().limits().stream().filter(limit -> !limit.words().isEmpty())
                .map(limit -> new Phrase(Kind.LIMIT, limit.id(), said(limit), true, 0)).toList();
    }

    private List<Phrase> names(Kind kind, List<String> ids) {
        return ids.stream().map(id -> completions.name(kind, id)).toList();
    }

    /** What may follow words that ask for one kind of thing. */
    List<Phrase> after(Head.Wants wants) {
        return switch (wants) {
            case NEIGHBOUR -> neighbours;
            case ROOM -> rooms;
            case LIMIT -> catalogue.words().families().stream().filter(family -> !family.words().isEmpty())
                    .map(family -> new Phrase(Kind.FAMILY, family.id(), Completions.plural(family.words()), true, 0)).toList();
            default -> List.of();
        };
    }

    /** Its name where people say that, else the first word of its list. */
    private static String said(Vocabulary.LimitWords limit) {
        return limit.words().stream().filter(limit.name()::equalsIgnoreCase).findFirst().orElse(limit.words().get(0));
    }

    /** What may be added to a source, a list of each kind, in the order they are told. */
    List<List<Phrase>> of(String source) {
        List<Phrase> ways = new ArrayList<>();
        if (catalogue.sources().get(source).ways() != null) {
            catalogue.sources().get(source).ways().forEach(way -> ways.add(completions.name(Kind.WAY, way.id())));
        }
        return List.of(characters, ways, rooms, neighbours, limits);
    }
}
