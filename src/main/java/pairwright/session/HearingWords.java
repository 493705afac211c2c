package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pairwright.rules.Figure;

/** What the lines of a plan hear of other seats, in sentences. Lengths are in metres. */
public final class HearingWords {
    /** A difference that nobody hears is not told. */
    private static final double TELLING_DB = 1;
    /** Where the room alone leaves no more than this over what there is, at least half of what is heard comes by way of it. */
    private static final double MOSTLY_ROOM_DB = 3;
    private static final double NO_LOWER_DB = 0.5;

    private final SeatNames names;

    private HearingWords(LineUp lineUp) {
        this.names = SeatNames.of(lineUp);
    }

    public static HearingWords of(LineUp lineUp) {
        return new HearingWords(lineUp);
    }

    /**
     * One line, loudest of the others first, and all of them together.
     *
     * @param heard what it hears
     * @param most so many of the others are told
     */
    public List<String> of(Line line, List<Hears> heard, int most) {
        if (line.side()) {
            return List.of("Line " + line.number() + " is the side of a mid-side pair: its null faces " + names.of(line.seat()) + ", and what it hears is the room and whoever plays beside.");
        }
        List<String> says = new ArrayList<>(heard.stream().filter(one -> one.line() == line.number())
                .sorted(Comparator.comparingDouble(Hears::separationDb)).limit(most).map(one -> of(line, one)).toList());
        Double all = line.placement().predicted().separationDb();
        if (all != null && says.size() > 1) {
            says.add("The others together are " + under(all, names.of(line.seat())) + ".");
        }
        return List.copyOf(says);
    }

    /** One other seat. */
    public String of(Line line, Hears hears) {
        return "Line " + line.number() + " hears " + names.of(hears.seat()) + " " + under(hears.separationDb(), names.of(line.seat()))
                + ", most of it around " + Figure.forPeople(hears.loudestHz(), "Hz") + screened(hears) + turned(line, hears) + ".";
    }

    private static String under(double separationDb, String own) {
        return Math.round(separationDb) == 0 ? "as loud as " + own : under(separationDb) + " " + own;
    }

    private static String under(double separationDb) {
        return decibels(Math.abs(separationDb)) + (separationDb < 0 ? " over" : " under");
    }

    private static String screened(Hears hears) {
        return hears.screenDb() < TELLING_DB ? "" : "; a gobo between takes " + decibels(hears.screenDb()) + " of what comes straight";
    }

    private static String turned(Line line, Hears hears) {
        if (hears.betterDb() - hears.separationDb() >= TELLING_DB) {
            return "; turned " + aim(hears.betterAimDegrees()) + " it would be " + under(hears.betterDb());
        }
        if (hears.roomAllowsDb() != null && hears.roomAllowsDb() - hears.separationDb() <= MOSTLY_ROOM_DB) {
            return "; most of that comes by way of the room, and no turn gets it "
                    + (hears.roomAllowsDb() - hears.separationDb() < NO_LOWER_DB ? "lower" : "lower than " + under(hears.roomAllowsDb()));
        }
        double gainedDb = hears.separationDb() - hears.straightDb();
        if (line.placement().aimDegrees() != 0 && gainedDb >= TELLING_DB) {
            return "; straight at its own source it would be " + under(hears.straightDb());
        }
        return line.placement().aimDegrees() != 0 && gainedDb <= -TELLING_DB ? "; straight at its own source it would be better, " + under(hears.straightDb()) : "";
    }

    /** As whoever stands behind the microphone sees it. */
    private static String aim(double aimDegrees) {
        return aimDegrees == 0 ? "straight at its own source"
                : Math.round(Math.abs(aimDegrees)) + " degrees to the " + (aimDegrees > 0 ? "left" : "right") + " of its own source";
    }

    static String decibels(double db) {
        return Figure.forPeople(db, "dB");
    }

    static String sentence(String says) {
        return says.substring(0, 1).toUpperCase(Locale.ROOT) + says.substring(1);
    }
}
