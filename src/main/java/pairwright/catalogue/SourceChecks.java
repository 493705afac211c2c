package pairwright.catalogue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import pairwright.model.Habit;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.PairRecipe;
import pairwright.model.Pattern;
import pairwright.model.Position;
import pairwright.model.Signal;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Way;

/** Whether a source agrees with itself, and its habits and pairs with the mic types and techniques they name. */
final class SourceChecks {
    private final Around around;
    private final Set<String> micTypes;
    private final Set<String> techniques;

    SourceChecks(Around around) {
        this.around = around;
        this.micTypes = around.ids(Kind.MICS);
        this.techniques = around.ids(Kind.TECHNIQUES);
    }

    void check(YamlFile yaml, Source source) {
        boolean acoustic = source.signal() == Signal.ACOUSTIC;
        if (acoustic ? source.level() == null : source.lead() == null) {
            around.fault(yaml.fault("/signal", "signal is " + source.signal().id() + ", but " + (acoustic
                    ? "level is missing. Say how loud the source is"
                            : "lead is missing. Say how strong the signal on the lead is")));
        }
        if (acoustic ? source.lead() != null : source.level() != null) {
            String wrong = acoustic ? "lead" : "level";
            around.fault(yaml.faultAtName("/" + wrong, "signal is " + source.signal().id() + ", but " + wrong
                    + " is given. Take it out or correct signal"));
        }
        if (source.level() != null && source.level().peakDbSpl() < source.level().typicalDbSpl()) {
            around.fault(yaml.fault("/level/peakDbSpl", "peakDbSpl is " + EntrySchema.shown(yaml.root().at("/level/peakDbSpl"))
                    + ", below typicalDbSpl. Give the peak of loud playing"));
        }
        double strongest = Double.NEGATIVE_INFINITY;
        for (double band : source.spectrumDb().toArray()) {
            strongest = Math.max(strongest, band);
        }
        if (strongest != 0) {
            around.fault(yaml.fault("/spectrumDb", "the strongest octave of spectrumDb is "
                    + BigDecimal.valueOf(strongest).stripTrailingZeros().toPlainString()
                            + " dB. Shift all nine so that the strongest is 0"));
        }
        List<String> positions = source.positions().stream().map(Position::id).toList();
        around.unique(yaml, "/positions", "position", positions);
        around.unique(yaml, "/ways", "way", source.ways().stream().map(way -> way.id()).toList());
        ways(yaml, source);
        List<String> ways = source.ways().stream().map(Way::id).toList();
        for (int i = 0; i < source.positions().size(); i++) {
            around.aboveZero(yaml, "/positions/" + i + "/distanceM");
            around.angles(yaml, "/positions/" + i + "/offAxisDegrees");
            around.angles(yaml, "/positions/" + i + "/aimDegrees");
            onlyWays(yaml, "/positions/" + i, source.positions().get(i).onlyWays(), ways);
        }
        for (int i = 0; i < source.habits().size(); i++) {
            habit(yaml, "/habits/" + i, source.habits().get(i), source.positions());
            onlyWays(yaml, "/habits/" + i, source.habits().get(i).onlyWays(), ways);
        }
        for (int i = 0; i < source.pairs().size(); i++) {
            pair(yaml, "/pairs/" + i, source.pairs().get(i), source.positions());
        }
    }

    private void ways(YamlFile yaml, Source source) {
        Set<String> known = new TreeSet<>();
        around.under().words().ways().forEach(way -> known.add(way.id()));
        around.items(Kind.WAYS).forEach(way -> known.add(way.id()));
        if (known.isEmpty() || around.broken(Kind.WAYS)) {
            return; // a catalogue that has no words yet
        }
        for (int i = 0; i < source.ways().size(); i++) {
            around.known(yaml, "/ways/" + i + "/id", source.ways().get(i).id(), known, "way", " in words/ways.yaml");
        }
    }

    private void onlyWays(YamlFile yaml, String at, List<String> onlyWays, List<String> ways) {
        for (int i = 0; i < onlyWays.size(); i++) {
            around.known(yaml, at + "/onlyWays/" + i, onlyWays.get(i), ways, "way", " among the ways of this source");
        }
    }

    private void habit(YamlFile yaml, String at, Habit habit, List<Position> positions) {
        around.known(yaml, at + "/micType", habit.micType(), micTypes, "mic type", "");
        for (int i = 0; i < habit.positions().size(); i++) {
            String where = at + "/positions/" + i;
            around.known(yaml, where, habit.positions().get(i), ids(positions), "position", " at this source");
            takes(yaml, where, habit.positions().get(i), positions, habit.micType(), "position");
        }
        if (habit.withinM() != null && habit.beyondM() != null && habit.beyondM() >= habit.withinM()) {
            around.fault(yaml.fault(at + "/beyondM", "beyondM is " + EntrySchema.shown(yaml.root().at(at + "/beyondM"))
                    + ", not closer than withinM, so the habit never holds. Swap or correct the two"));
        }
        MicType mic = around.effective(Kind.MICS, habit.micType());
        for (int i = 0; mic != null && i < habit.patterns().size(); i++) {
            Pattern pattern = habit.patterns().get(i);
            if (!offers(mic, List.of(pattern))) {
                around.fault(yaml.fault(at + "/patterns/" + i, mic.id() + " has no pattern " + pattern.id() + ". It has "
                        + patterns(mic) + ". Correct one of the two"));
            }
        }
    }

    private void pair(YamlFile yaml, String at, PairRecipe pair, List<Position> positions) {
        around.known(yaml, at + "/technique", pair.technique(), techniques, "technique", "");
        part(yaml, at + "/first", pair.first(), positions);
        part(yaml, at + "/second", pair.second(), positions);
        Technique technique = around.effective(Kind.TECHNIQUES, pair.technique());
        if (technique == null) {
            return;
        }
        possible(yaml, at + "/first", pair.first(), technique, technique.firstPatterns());
        possible(yaml, at + "/second", pair.second(), technique, technique.secondPatterns());
        if (technique.sameType() && !pair.first().micTypes().isEmpty() && !pair.second().micTypes().isEmpty()
                && pair.first().micTypes().stream().noneMatch(pair.second().micTypes()::contains)) {
            around.fault(yaml.fault(at, technique.id()
                    + " wants two of one type, but first and second name none in common. Name the same types"));
        }
    }

    private void part(YamlFile yaml, String at, PairRecipe.Part part, List<Position> positions) {
        around.known(yaml, at + "/position", part.position(), ids(positions), "position", " at this source");
        for (int i = 0; i < part.micTypes().size(); i++) {
            String where = at + "/micTypes/" + i;
            around.known(yaml, where, part.micTypes().get(i), micTypes, "mic type", "");
            takes(yaml, where, part.position(), positions, part.micTypes().get(i), "type");
        }
    }

    private static List<String> ids(List<Position> positions) {
        return positions.stream().map(Position::id).toList();
    }

    /** Whether a type can be set up where it is named; what is unknown has a fault of its own. */
    private void takes(YamlFile yaml, String at, String positionId, List<Position> positions, String micType, String instead) {
        MicType mic = around.effective(Kind.MICS, micType);
        Position position = positions.stream().filter(each -> each.id().equals(positionId)).findFirst().orElse(null);
        if (mic == null || position == null) {
            return;
        }
        String family = mic.family().id();
        if (!position.onlyFamilies().isEmpty() && !position.onlyFamilies().contains(mic.family())) {
            around.fault(yaml.fault(at, position.id() + " takes only " + String.join(", ", position.onlyFamilies().stream()
                    .map(MicFamily::id).toList()) + ", but " + mic.id() + " is of the family " + family + ". Name another "
                            + instead + ", or add " + family + " to the onlyFamilies of " + position.id()));
        } else if (position.onlyFamilies().isEmpty() && (mic.family() == MicFamily.LINE || mic.family() == MicFamily.PICKUP)) {
            around.fault(yaml.fault(at, position.id() + " is a place for microphones, but " + mic.id() + " is of the family "
                    + family + ". Name another " + instead
                    + ", or give " + position.id() + " onlyFamilies with " + family + " in it"));
        }
    }

    /** Each type named has one of the patterns; one that is a stereo pair by itself is asked nothing. */
    private void possible(YamlFile yaml, String at, PairRecipe.Part part, Technique technique, List<Pattern> wanted) {
        for (int i = 0; !wanted.isEmpty() && i < part.micTypes().size(); i++) {
            MicType mic = around.effective(Kind.MICS, part.micTypes().get(i));
            if (mic != null && mic.channels() == 1 && !offers(mic, wanted)) {
                around.fault(yaml.fault(at + "/micTypes/" + i, technique.id() + " wants " + String.join(" or ", wanted.stream()
                        .map(Pattern::id).toList()) + " here, but " + mic.id() + " has only " + patterns(mic)
                                + ". Name another type"));
            }
        }
    }

    private static boolean offers(MicType mic, List<Pattern> wanted) {
        return mic.patterns().stream().anyMatch(data -> wanted.contains(data.pattern()));
    }

    private static String patterns(MicType mic) {
        return String.join(", ", mic.patterns().stream().map(data -> data.pattern().id()).toList());
    }
}
