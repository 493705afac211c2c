package pairwright.lab;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pairwright.model.Caution;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.Position;
import pairwright.model.PowerNeed;
import pairwright.model.SourceFamily;
import pairwright.rules.Setting;

/** What is said before anybody touches anything. */
final class HandsOn {
    /** From about there on a loud player hurts whoever stands beside. */
    private static final double LOUD_PEAK_DB_SPL = 120;
    /** What stands higher comes down on somebody. */
    private static final double HIGH_M = 1.6;

    private HandsOn() {
    }

    /**
     * Cautions, people first.
     *
     * @param types that may be put up
     * @param places where they may stand
     * @param always what the rules warn of wherever a microphone stands
     */
    static List<String> cautions(Setting setting, Collection<MicType> types, Collection<Position> places, Collection<Caution> always) {
        Set<String> said = new LinkedHashSet<>();
        said.add(supervised(setting, types, places));
        always.forEach(caution -> said.add(caution.says()));
        places.stream().filter(Position::overPeople).findFirst().ifPresent(place -> said.add("Nothing goes up over people before the supervisor has looked at stand, weight and fixing."));
        said.add("Stands open on their widest feet, a leg under the weight, before a microphone goes on; leads lie flat and out of the way.");
        said.add("Phantom power is off, the gain down and the loudspeakers silent whenever something is plugged or unplugged; headphones start quiet.");
        if (types.stream().anyMatch(MicType::passiveRibbon)) {
            said.add("A ribbon is carried upright and covered, and gets no phantom power.");
        }
        places.stream().flatMap(place -> place.keepClear().stream()).findFirst().ifPresent(clear -> said.add("Nobody moves a stand while the player plays, and the player says where arms and instrument need room."));
        return List.copyOf(said);
    }

    private static String supervised(Setting setting, Collection<MicType> types, Collection<Position> places) {
        List<String> why = new ArrayList<>();
        if (setting.source().family() == SourceFamily.AMPLIFIERS || setting.pluggedInBeside() || setting.live() || setting.room().outdoors()
                || types.stream().anyMatch(type -> type.power() == PowerNeed.OWN_SUPPLY)) {
            why.add("mains power");
        }
        if (places.stream().anyMatch(place -> place.overPeople() || place.mount() == Mount.OVERHEAD || place.heightM() != null && place.heightM() >= HIGH_M)) {
            why.add("stands above heads");
        }
        if (setting.allowedHours() <= 8 || setting.peakDbSpl() >= LOUD_PEAK_DB_SPL) {
            why.add("levels that harm ears");
        }
        return (why.isEmpty() ? "Whoever runs the room agrees before you begin" : "A competent supervisor is there all the time: this has to do with " + String.join(", ", why))
                + ". Local rules and those of the house come before this sheet.";
    }
}
