package pairwright.session;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.model.Catalogue;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.model.Way;

/** What is wrong with one seat by itself. */
final class SeatCheck {
    /** What stands between the threshold of pain and a jet is no instrument; what is quieter than that no room lets hear. */
    private static final int MOST_HABITS = 12;
    private static final int LONGEST_HABIT = 300;

    private final Faults faults;
    private final Catalogue catalogue;
    private final Set<String> ways;
    private final Set<String> dynamics;
    private final Set<String> circumstances;

    SeatCheck(Faults faults, Catalogue catalogue) {
        this.faults = faults;
        this.catalogue = catalogue;
        ways = catalogue.words().ways().stream().map(Vocabulary.WayWords::id).collect(Collectors.toSet());
        dynamics = catalogue.words().dynamics().stream().map(Vocabulary.Dynamic::id).collect(Collectors.toSet());
        circumstances = catalogue.words().circumstances().stream().map(Vocabulary.Circumstance::id).collect(Collectors.toSet());
    }

    void check(String at, Seat seat) {
        faults.text(at + "/player", seat.player(), LineUpCheck.LONGEST_NAME, "player");
        if (seat.source() == null) {
            faults.add(at + "/source", "a seat has no source. Give the id of one, such as trumpet");
        }
        faults.known(at + "/source", seat.source(), catalogue.sources().keySet(), "source");
        faults.within(at + "/facingDegrees", seat.facingDegrees(), -360, 360, "facingDegrees");
        ways(at + "/ways", seat);
        faults.knownAll(at + "/dynamics", seat.dynamics(), dynamics, "dynamic");
        faults.knownAll(at + "/character", seat.character(), catalogue.characters().keySet(), "character");
        faults.knownAll(at + "/circumstances", seat.circumstances(), circumstances, "circumstance");
        limits(at, seat.limits());
        if (seat.heard() != null) {
            heard(at + "/heard", seat.heard());
        }
    }

    /** A way the source does not know would change nothing, and nobody would be told. */
    private void ways(String at, Seat seat) {
        Source source = seat.source() == null ? null : catalogue.sources().get(seat.source());
        faults.knownAll(at, seat.ways(), source == null ? ways : source.ways().stream().map(Way::id).toList(), "way of playing" + (source == null ? "" : " of " + source.id()));
    }

    private void limits(String at, Limits limits) {
        faults.within(at + "/maxMics", limits.mics(), 1, Limits.MOST_CHANNELS, "maxMics");
        faults.within(at + "/limits/preampGainDb", limits.preampGainDb(), 0, Limits.MOST_GAIN_DB, "preampGainDb");
        faults.within(at + "/limits/preampNoiseDbu", limits.preampNoiseDbu(), -130, -80, "preampNoiseDbu");
        faults.knownAll(at + "/limits/onlyMicTypes", limits.onlyMicTypes(), catalogue.mics().keySet(), "mic type");
        faults.knownAll(at + "/limits/withoutMicTypes", limits.withoutMicTypes(), catalogue.mics().keySet(), "mic type");
    }

    private void heard(String at, HeardBefore heard) {
        heard.faults(at).forEach(fault -> faults.add(fault.at(), fault.says()));
        habits(at + "/habits", heard.habits());
    }

    private void habits(String at, List<String> habits) {
        if (habits.size() > MOST_HABITS) {
            faults.add(at, habits.size() + " habits are given; at most " + MOST_HABITS + " are kept. Keep those that change what is set up");
        }
        for (int i = 0; i < habits.size() && i < MOST_HABITS; i++) {
            faults.text(at + "/" + i, habits.get(i), LONGEST_HABIT, "a habit");
        }
    }
}
