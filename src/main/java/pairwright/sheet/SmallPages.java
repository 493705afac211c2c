package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Room;
import pairwright.drawing.Drawing;
import pairwright.drawing.RoomDrawing;
import pairwright.model.Arrangement;
import pairwright.model.Character;
import pairwright.model.Complaint;
import pairwright.model.Pattern;
import pairwright.model.Remedy;
import pairwright.model.Technique;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Grounds;
import pairwright.sheet.ReadingParts.Link;
import pairwright.sheet.ReadingParts.Mention;
import pairwright.sheet.ReadingParts.Plot;

/** Characters, rooms, techniques and complaints to read. */
public final class SmallPages {
    private SmallPages() {
    }

    /** What the page of a character shows. */
    public record OfCharacter(String says, List<String> words, Plot tone, List<Fact> facts, List<Mention> against, List<Mention> opposites,
            Grounds grounds) {
    }

    /** What the page of a room shows; no plan of the open air. */
    public record OfRoom(String says, List<String> words, Drawing plan, List<Fact> facts, List<Link> numbers, Grounds grounds) {
    }

    /** What the page of a technique shows. */
    public record OfTechnique(String says, List<String> words, List<String> care, List<Fact> facts, List<Link> numbers, List<Mention> pairs, Grounds grounds) {
    }

    /** What the page of a complaint shows. */
    public record OfComplaint(String says, List<String> words, List<Fact> facts, List<Move> moves, Grounds grounds) {
    }

    /** One move; where it is tried stands in links, empty for anywhere. */
    public record Move(String by, String says, String why, List<Link> at, List<Link> notAt, List<Link> with, String how, boolean unmeasured) {
    }

    static Page of(Desk desk, Character character) {
        List<Fact> facts = new ArrayList<>();
        if (character.directToReverbDb() != null) {
            facts.add(new Fact("Direct sound over room", desk.measures().range(character.directToReverbDb(), 0, "dB"),
                    "Above 0 the source outweighs the room."));
        }
        if (!character.speeds().isEmpty()) {
            facts.add(new Fact("Suits microphones that are", String.join(" or ", character.speeds().stream().map(ReadingWords::words).toList()),
                    "How fast they follow a stroke."));
        }
        References named = new References(desk);
        return desk.page("character", desk.entry(Shelf.CHARACTERS, character.name(), "Character"), "character", new OfCharacter(
                desk.measures().sentence(character.says()), character.words(),
                Plots.octaves(desk, "tone", "How the recording should differ from the source as it is", "Wanted", character.toneDb()), facts,
                named.against(character), named.opposites(character), desk.grounds(character.confidence(), character.basis())));
    }

    static Page of(Desk desk, pairwright.model.Room room) {
        Measures measures = desk.measures();
        List<Fact> facts = new ArrayList<>();
        List<Link> numbers = new ArrayList<>();
        if (room.outdoors()) {
            facts.add(new Fact("Walls", "none", "No reverberation, whatever the distance."));
        } else {
            facts.add(new Fact("Size", desk.visit().reader().distance(room.widthM()) + " \u00d7 " + desk.visit().reader().distance(room.depthM()) + " \u00d7 "
                    + desk.visit().reader().distance(room.heightM()), "Width, depth, height."));
            facts.add(new Fact("Volume", measures.with(room.volumeM3(), 0, "m\u00b3"), ""));
            facts.add(new Fact("Reverberation time", measures.with(room.reverbTimeS(), 2, "s"), "Until a sound that stops has fallen by 60 dB."));
            facts.add(new Fact("Critical distance, omni", desk.visit().reader().distance(Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS())),
                    "Where the room is as loud as a source that sounds all round."));
            facts.add(new Fact("Critical distance, cardioid", desk.visit().reader().distance(Room.criticalDistanceM(room.volumeM3(), room.reverbTimeS(), 1,
                    1 / FirstOrder.randomEfficiency(FirstOrder.CARDIOID))), "A directional microphone may stand so much farther."));
            facts.add(new Fact("Single modes below", measures.frequency(Math.rint(Room.schroederHz(room.volumeM3(), room.reverbTimeS()))),
                    "Lower than this some notes stand out by where one is, and an average says little."));
            numbers.add(desk.at().link("/numbers/critical-distance", "Work the critical distance"));
        }
        facts.add(new Fact("Noise", measures.with(room.noiseDba(), 0, "dB(A)"), "When nobody plays."));
        facts.add(new Fact("Its sound", ReadingWords.words(room.kind()), switch (room.kind()) {
            case FLATTERING -> "It adds something wanted.";
            case NEUTRAL -> "It neither adds nor harms.";
            case UNFLATTERING -> "It adds something unwanted: stay closer.";
        }));
        return desk.page("room", desk.entry(Shelf.ROOMS, room.name(), "Room"), "room", new OfRoom(measures.sentence(room.says()), room.words(),
                room.outdoors() ? null : RoomDrawing.fromAbove(room, "plan", desk.visit().reader()), facts, numbers,
                desk.grounds(room.confidence(), room.basis())));
    }

    static Page of(Desk desk, Technique technique) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Arrangement", ReadingWords.heading(technique.arrangement()), ""));
        facts.add(new Fact("Picture", technique.stereo() ? "Stereo" : "Mixed to one", ""));
        facts.add(new Fact("Types", technique.sameType() ? "Both of one type" : "May differ", ""));
        facts.add(new Fact("First microphone", patterns(technique.firstPatterns()), ""));
        facts.add(new Fact("Second microphone", patterns(technique.secondPatterns()), ""));
        if (technique.spacingM() != null) {
            facts.add(new Fact("Spacing", desk.visit().reader().distance(technique.spacingM()), "Between the capsules."));
        }
        if (technique.includedDegrees() != null) {
            facts.add(new Fact("Angle", desk.measures().degrees(technique.includedDegrees()), "Between the two axes."));
        }
        facts.add(new Fact("Polarity", technique.invertSecond() ? "Second channel inverted" : "Both alike", ""));
        return desk.page("technique", desk.entry(Shelf.TECHNIQUES, technique.name(), "Technique"), "technique", new OfTechnique(
                desk.measures().sentence(technique.says()), technique.words(), desk.measures().sentences(technique.care()), facts, numbers(desk, technique),
                new References(desk).pairs(technique), desk.grounds(technique.confidence(), technique.basis())));
    }

    private static List<Link> numbers(Desk desk, Technique technique) {
        if (technique.arrangement() == Arrangement.MID_SIDE) {
            return List.of(desk.at().link("/numbers/mid-side", "Which crossed pair it makes"));
        }
        return technique.stereo() ? List.of(desk.at().link("/numbers/recording-angle", "How wide a scene it spreads"))
                : List.of(desk.at().link("/numbers/comb", "Which frequencies cancel when a sound arrives twice"));
    }

    private static String patterns(List<Pattern> patterns) {
        return patterns.isEmpty() ? "any pattern" : String.join(" or ", patterns.stream().map(ReadingWords::pattern).toList());
    }

    static Page of(Desk desk, Complaint complaint) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Shown by", ReadingWords.gauge(complaint.gauge()), ""));
        if (complaint.fromHz() != null && complaint.toHz() != null) {
            facts.add(new Fact("Octaves", desk.measures().frequency(complaint.fromHz()) + " to " + desk.measures().frequency(complaint.toHz()), "Where it is heard."));
        }
        facts.add(new Fact("A move helps if that", (complaint.more() ? "rises by " : "falls by ") + desk.measures().with(complaint.leastDb(), 1, "dB") + " or more",
                ""));
        return desk.page("complaint", desk.entry(Shelf.COMPLAINTS, complaint.name(), "Complaint"), "complaint", new OfComplaint(
                desk.measures().sentence(complaint.says()), complaint.words(), facts, complaint.moves().stream().map(move -> move(desk, move)).toList(),
                desk.grounds(complaint.confidence(), complaint.basis())));
    }

    private static Move move(Desk desk, Remedy move) {
        List<Link> at = new ArrayList<>();
        move.sources().stream().map(desk.catalogue().sources()::get).filter(Objects::nonNull).map(desk.at()::source).forEach(at::add);
        move.sourceFamilies().forEach(family -> at.add(desk.at().within("/sources", family.id(), ReadingWords.family(family))));
        List<Link> notAt = move.notSourceFamilies().stream().map(family -> desk.at().within("/sources", family.id(), ReadingWords.family(family))).toList();
        List<Link> with = move.micFamilies().stream().map(family -> desk.at().within("/mics", family.id(), ReadingWords.family(family))).toList();
        List<String> how = new ArrayList<>();
        if (!move.patterns().isEmpty()) {
            how.add("to " + String.join(" or ", move.patterns().stream().map(ReadingWords::pattern).toList()));
        }
        if (!move.dangers().isEmpty()) {
            how.add("where it is reached by " + String.join(" or ", move.dangers().stream().map(ReadingWords::words).toList()));
        }
        return new Move(ReadingWords.move(move.by()), desk.measures().sentence(move.says()), desk.measures().sentence(move.why()), at, notAt,
                with, String.join("; ", how), move.unmeasured());
    }
}
