package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.drawing.Reader;
import pairwright.model.Address;
import pairwright.model.Arrangement;
import pairwright.model.Catalogue;
import pairwright.model.MicFamily;
import pairwright.model.Mount;
import pairwright.model.Naming;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Question;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.session.Line;

/** How microphones are set up, in words: one way for the page, the sheet and the terminal. */
public final class SetUpWords {
    /** A null this near a neighbour is on it, as far as anybody can aim by eye. */
    private static final double ON_IT_DEGREES = 15;

    private final Catalogue catalogue;
    private final Question question;
    private final Reader reader;
    private final AimOnFloor floor;
    private final List<Line> lines;

    /**
     * @param question as it was understood
     * @param reader in whose measures
     */
    public SetUpWords(Catalogue catalogue, Question question, Reader reader) {
        this(catalogue, question, reader, null, List.of());
    }

    private SetUpWords(Catalogue catalogue, Question question, Reader reader, AimOnFloor floor, List<Line> lines) {
        this.catalogue = catalogue;
        this.question = question;
        this.reader = reader;
        this.floor = floor;
        this.lines = lines;
    }

    /** The same for a seat of a plan, whose neighbours have names: with its lines, one for each microphone. */
    public SetUpWords on(AimOnFloor other, List<Line> itsLines) {
        return new SetUpWords(catalogue, question, reader, other, List.copyOf(itsLines));
    }

    /** The line of a microphone; null where there is no floor. */
    private Line line(int index) {
        return lines.stream().filter(line -> line.mic() == index + 1).findFirst().orElse(null);
    }

    /** The types of an option, and how they relate. */
    String title(Option option) {
        String first = option.mics().get(0).name();
        if (option.mics().size() == 1) {
            return first;
        }
        String second = option.mics().get(1).name();
        if (first.equals(second)) {
            return "2 \u00d7 " + Naming.small(shortName(first));
        }
        boolean alike = shortName(first).equals(shortName(second)); // then what stands behind the comma tells them apart
        return (alike ? first : shortName(first)) + " and " + Naming.small(alike ? second : shortName(second));
    }

    private static String shortName(String name) {
        int comma = name.indexOf(',');
        return comma < 0 ? name : name.substring(0, comma);
    }

    /** Behind the name of a type: place, pattern, distance, aim, null, what holds it, power. */
    public String line(Option option, int index) {
        Placement mic = option.mics().get(index);
        List<String> set = new ArrayList<>();
        if (!wired(mic)) {
            if (!mic.name().endsWith(", " + mic.pattern().id())) {
                set.add(mic.pattern().id());
            }
            set.add(reader.distance(mic.distanceM()));
        }
        set.add(Naming.small(reader.sentence(mic.positionName())));
        if (!wired(mic)) {
            String aim = aim(option, index);
            if (!aim.isEmpty()) {
                set.add(aim);
            }
            String nulled = nulled(option, index);
            if (!nulled.isEmpty()) {
                set.add(nulled);
            }
        }
        Line line = line(index);
        String held = line != null && line.standLabel() != null ? "on " + line.standLabel() : held(mic.mount());
        if (!held.isEmpty()) {
            set.add(held);
        }
        set.add(line != null && line.phantomWanted() && !mic.phantom() ? "phantom on for the " + (line.booster() == null ? "line box" : "booster")
                : catalogue.mics().get(mic.micType()).power().switched(mic.phantom()));
        if (mic.pad()) {
            set.add(Math.round(mic.padDb()) + " dB pad in");
        }
        if (mic.invertPolarity()) {
            set.add("polarity inverted");
        }
        if (mic.channels() > 1) {
            set.add(mic.channels() + " channels");
        }
        return String.join(", ", set);
    }

    /** What the two of an option are together, and of a stereo pair how they stand to each other; empty for one alone. */
    String together(Option option) {
        Technique technique = catalogue.techniques().get(option.technique());
        if (option.mics().size() < 2 || technique == null || !technique.stereo() || technique.spacingM() == null) {
            return option.mics().size() < 2 ? "" : option.techniqueName();
        }
        if (technique.arrangement() == Arrangement.MID_SIDE) {
            return option.techniqueName() + ", one close above the other";
        }
        String apart = technique.spacingM() == 0 ? "capsules one close above the other" : "capsules " + reader.distance(technique.spacingM()) + " apart";
        String turned = technique.includedDegrees() == null ? "" : technique.includedDegrees() == 0 ? ", parallel" : ", turned " + Math.round(technique.includedDegrees()) + " degrees apart";
        return option.techniqueName() + ", " + apart + turned + "; left is left as one stands behind the pair and looks at the source";
    }

    static boolean wired(Placement mic) {
        return mic.family() == MicFamily.LINE || mic.family() == MicFamily.PICKUP;
    }

    /** Where it is turned; empty where the name of the place says so. */
    String aim(Option option, int index) {
        Placement mic = option.mics().get(index);
        if (index == 1 && arrangement(option) == Arrangement.MID_SIDE) {
            return "across it: marked face to the left, null to the source";
        }
        long degrees = Math.round(Math.abs(mic.aimDegrees()));
        if (degrees == 0) {
            boolean side = catalogue.mics().get(mic.micType()).address() == Address.SIDE;
            return Naming.saysWhereItLooks(mic.positionName()) ? side ? "marked side forward" : "" : side ? "its marked side aimed at it" : "aimed at it";
        }
        Line line = line(index);
        return line != null ? floor.turned(line) : degrees + " degrees " + (mic.aimDegrees() < 0 ? "toward the neighbour" : "off");
    }

    /** Where its null points, if at a neighbour; empty otherwise. */
    String nulled(Option option, int index) {
        Placement mic = option.mics().get(index);
        Line line = line(index);
        if (line != null) {
            return floor.nulled(line);
        }
        Neighbour loudest = loudest();
        return mic.nullMissDegrees() == null || mic.nullMissDegrees() > ON_IT_DEGREES || loudest == null ? ""
                : "null to the " + Naming.small(catalogue.sources().get(loudest.source()).name());
    }

    /** The neighbour that is loudest where the microphone is; null without any. */
    private Neighbour loudest() {
        return question.neighbours().stream().max(Comparator.comparingDouble(neighbour -> {
            Source source = catalogue.sources().get(neighbour.source());
            return source.level() == null ? Double.NEGATIVE_INFINITY : source.level().typicalDbSpl() - 20 * Math.log10(neighbour.distanceM());
        })).orElse(null);
    }

    Arrangement arrangement(Option option) {
        Technique technique = catalogue.techniques().get(option.technique());
        return technique == null ? null : technique.arrangement();
    }

    /** Which pads are in, and where; "out" for none. */
    static String pads(Reader reader, Line line) {
        List<String> pads = new ArrayList<>();
        if (line.between().ownPadDb() > 0) {
            pads.add(reader.value(line.between().ownPadDb(), "dB"));
        }
        if (line.between().pad() != null) {
            pads.add(line.between().padLabel() + " in the line");
        }
        return pads.isEmpty() ? "out" : String.join(" and ", pads);
    }

    /** The type, and by way of which line box it goes if it is none itself. */
    static String byWayOf(Line line) {
        return line.placement().name() + (line.between().boxed() ? ", through " + line.between().box().called() : line.between().instrument() ? ", into the instrument input" : "");
    }

    /** What holds it; empty for a lead. */
    static String held(Mount mount) {
        return switch (mount) {
            case STAND -> "straight stand";
            case BOOM -> "boom stand";
            case OVERHEAD -> "tall stand";
            case CLIP -> "clipped on";
            case FLOOR -> "on the floor";
            case INSIDE -> "held inside";
            case HAND -> "in the hand";
            case CONTACT, LEAD -> "";
        };
    }
}
