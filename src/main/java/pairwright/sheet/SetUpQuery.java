package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.model.Pattern;
import pairwright.model.Setup;
import pairwright.model.Word;

/**
 * A set-up as an address says it, and back: {@code mic=long-ribbon,figure-8,bell-to-keys,0.45,0} for each microphone, distance in metres
 * and aim in degrees, and for two {@code pair=} with the technique.
 *
 * @param setup how the microphones stand; null where none is given or one cannot be read
 * @param faults what cannot be read
 */
record SetUpQuery(Setup setup, List<Fault> faults) {
    private static final int FIELDS = 5;
    private static final java.util.regex.Pattern NUMBER = java.util.regex.Pattern.compile("-?\\d{1,9}(\\.\\d{1,25})?");
    static final String SHAPE = "Take a set-up from an answer, or write type, pattern, place, metres and degrees with commas between: long-ribbon,figure-8,bell-to-keys,0.45,0";

    static SetUpQuery read(Visit visit) {
        List<Fault> faults = new ArrayList<>();
        List<Setup.Put> mics = new ArrayList<>();
        for (String mic : visit.all("mic")) {
            Setup.Put put = put(mic, faults);
            if (put != null) {
                mics.add(put);
            }
        }
        boolean readable = faults.isEmpty() && !mics.isEmpty();
        return new SetUpQuery(readable ? new Setup(visit.first("pair"), List.copyOf(mics)) : null, List.copyOf(faults));
    }

    private static Setup.Put put(String mic, List<Fault> faults) {
        String[] parts = mic.split(",", -1);
        Pattern pattern = parts.length < 2 ? null : pattern(parts[1].strip());
        Double distanceM = parts.length < FIELDS ? null : number(parts[3]);
        Double aimDegrees = parts.length < FIELDS ? null : number(parts[4]);
        if (parts.length != FIELDS || distanceM == null || aimDegrees == null) {
            faults.add(new Fault("mic", "\"" + Shown.of(mic) + "\" is no microphone as it stands. " + SHAPE));
            return null;
        }
        if (pattern == null) {
            faults.add(new Fault("mic", "there is no pattern \"" + Shown.of(parts[1]) + "\". Use one of "
                    + Stream.of(Pattern.values()).map(Word::id).collect(Collectors.joining(", "))));
            return null;
        }
        return new Setup.Put(parts[0].strip(), pattern, parts[2].strip(), distanceM, aimDegrees);
    }

    private static Double number(String text) {
        return NUMBER.matcher(text.strip()).matches() ? Double.valueOf(text.strip()) : null;
    }

    static Pattern pattern(String id) {
        return Stream.of(Pattern.values()).filter(one -> one.id().equals(id)).findFirst().orElse(null);
    }

    /** The query that says how the microphones stand. */
    static List<Param> written(Setup setup) {
        List<Param> query = new ArrayList<>();
        for (Setup.Put mic : setup.mics()) {
            query.add(new Param("mic", String.join(",", mic.micType(), mic.pattern().id(), mic.position(), Param.number(mic.distanceM()),
                    Param.number(mic.aimDegrees() == null ? 0 : mic.aimDegrees()))));
        }
        if (setup.mics().size() > 1) {
            query.add(new Param("pair", setup.technique()));
        }
        return query;
    }
}
