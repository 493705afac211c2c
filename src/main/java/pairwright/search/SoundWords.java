package pairwright.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How loud, where, how it should sound, with which technique, and what else is said of the session. */
final class SoundWords {

    private final Lexicon lexicon;
    private final Sentence sentence;
    private final Draft draft;
    private final AskBack askBack;

    SoundWords(Lexicon lexicon, Sentence sentence, Draft draft, AskBack askBack) {
        this.lexicon = lexicon;
        this.sentence = sentence;
        this.draft = draft;
        this.askBack = askBack;
    }

    /** One level for the whole: the strongest that is said first. */
    List<String> dynamics() {
        String loudness = null;
        for (var tag : draft.wanted(Kind.DYNAMIC)) {
            var modifier = sentence.modifierBefore(tag).filter(found -> !found.id().equals("only"));
            var dynamic = modifier.map(found -> switch (found.id()) {
                case "very" -> lexicon.stronger(tag.id());
                case "less", "not-too", "without" -> lexicon.weaker(tag.id());
                default -> lexicon.dynamic(tag.id());
            }).orElse(lexicon.dynamic(tag.id()));
            double levelDb = loudness == null ? 0 : lexicon.dynamic(loudness).levelDb();
            boolean isOpposed = levelDb * dynamic.levelDb() < 0;
            int first = modifier.map(Tag::first).orElse(tag.first());
            if (isOpposed) {
                draft.use(first, tag.end());
                draft.alsoReads(sentence.words(first, tag.end()), "dynamic", dynamic.id(), dynamic.name());
                continue;
            }
            draft.understand(first, tag.end(), "dynamic", dynamic.id(), dynamic.name());
            if (loudness == null || Math.abs(dynamic.levelDb()) > Math.abs(levelDb)) {
                loudness = dynamic.id();
            }
        }
        return loudness == null ? List.of() : List.of(loudness);
    }

    String room() {
        Tag room = null;
        for (var tag : draft.wanted(Kind.ROOM)) {
            if (room == null || room.id().equals(tag.id())) {
                draft.understand(tag, "room", tag.id(), lexicon.roomName(tag.id()));
                room = tag;
            } else {
                draft.use(tag);
                draft.alsoReads(sentence.words(tag), "room", tag.id(), lexicon.roomName(tag.id()));
                askBack.otherRoom(room, tag);
            }
        }
        return room == null ? null : room.id();
    }

    private record Wanted(Tag tag, Optional<Tag> modifier, String id) {
    }

    List<String> character() {
        var wanted = new ArrayList<Wanted>();
        for (var tag : sentence.tags()) {
            // a word that names a character and a fault is taken for the character
            boolean isFault = tag.kind() == Kind.FAULT
                    && sentence.tags(Kind.CHARACTER).noneMatch(character -> character.covers(tag));
            if ((tag.kind() == Kind.CHARACTER || isFault) && !draft.isSetAside(tag)) {
                var modifier = sentence.modifierBefore(tag).filter(found -> !found.id().equals("only"));
                wantedCharacter(tag, modifier).ifPresent(id -> wanted.add(new Wanted(tag, modifier, id)));
            }
        }
        Map<Wanted, String> ids = new LinkedHashMap<>();
        wanted.forEach(one -> ids.put(one, complaint(one, wanted).orElse(one.id())));
        ids.forEach((one, id) -> draft.understand(one.modifier().map(Tag::first).orElse(one.tag().first()), one.tag().end(), "character",
                id, lexicon.characterName(id)));
        return List.copyOf(new LinkedHashSet<>(ids.values()));
    }

    /** "It sounds thin, make it fuller": a word that is also a fault complains where its cure is asked for as well. */
    private Optional<String> complaint(Wanted one, List<Wanted> all) {
        return sentence.tags(Kind.FAULT)
                .filter(fault -> one.tag().kind() == Kind.CHARACTER && one.modifier().isEmpty() && one.tag().covers(fault))
                .findFirst()
                .flatMap(fault -> lexicon.opposite(fault.id()))
                .filter(cure -> all.stream().anyMatch(other -> other != one && other.id().equals(cure)));
    }

    /** Too much of a character, or less of it, asks for its opposite; a fault always does. */
    private Optional<String> wantedCharacter(Tag tag, Optional<Tag> modifier) {
        if (tag.kind() == Kind.FAULT) {
            return lexicon.opposite(tag.id());
        }
        return modifier.map(Tag::id).map(id -> switch (id) {
            case "too", "less", "without" -> lexicon.opposite(tag.id());
            case "not-too" -> lexicon.ratherThanTooMuch(tag.id());
            default -> Optional.of(tag.id());
        }).orElse(Optional.of(tag.id()));
    }

    List<String> circumstances() {
        var circumstances = new LinkedHashSet<String>();
        for (var tag : draft.wanted(Kind.CIRCUMSTANCE)) {
            tag.ids().forEach(id -> {
                draft.understand(tag, "circumstance", id, lexicon.circumstanceName(id));
                circumstances.add(id);
            });
        }
        return List.copyOf(circumstances);
    }

    List<String> techniques() {
        var techniques = new LinkedHashSet<String>();
        for (var tag : draft.wanted(Kind.TECHNIQUE)) {
            draft.understand(tag, "technique", tag.id(), lexicon.techniqueName(tag.id()));
            techniques.add(tag.id());
        }
        return List.copyOf(techniques);
    }
}
