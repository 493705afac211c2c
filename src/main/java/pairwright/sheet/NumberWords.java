package pairwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pairwright.drawing.Reader;
import pairwright.model.Value;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Input;
import pairwright.rules.UnitNames;
import pairwright.sheet.WorkedView.Piece;

/** What inputs and results are called on a page; elsewhere they go by names that end in their unit. */
final class NumberWords {
    private static final Map<String, String> CALLED = Map.ofEntries(
            Map.entry("centreOffsetM", "Centre behind the surface"),
            Map.entry("sourceDirectivityFactor", "Directivity of the source"),
            Map.entry("referenceDistanceM", "Known at"),
            Map.entry("levelDifferenceDb", "Difference in level"),
            Map.entry("pathDifferenceM", "Difference in path"),
            Map.entry("reverbTimeS", "Reverberation time"),
            Map.entry("inputNoiseDbu", "Input noise of the preamplifier"),
            Map.entry("targetDbfs", "Wanted level"),
            Map.entry("fullScaleDbu", "Full scale of the converter"),
            Map.entry("truePeakDbSpl", "True peak"),
            Map.entry("maxDbSpl", "Maximum level"),
            Map.entry("loadOhm", "Input impedance"),
            Map.entry("midOhm", "Impedance in the middle"),
            Map.entry("resonanceOhm", "Impedance at the resonance"),
            Map.entry("currentsMa", "Currents"),
            Map.entry("supplyRatingMa", "Rating of the supply"),
            Map.entry("includedDegrees", "Angle between the two"),
            Map.entry("sideToMidDb", "Side over mid"),
            Map.entry("levelDba", "Level"),
            Map.entry("hours", "Hours"),
            Map.entry("armMassKg", "Mass of the arm"),
            Map.entry("micMassKg", "Mass of the microphone"),
            Map.entry("standMassKg", "Mass of the stand"),
            Map.entry("counterweightMassKg", "Counterweight"),
            Map.entry("counterweightReachM", "Counterweight behind the column"),
            Map.entry("sandbagMassKg", "Sandbags"),
            Map.entry("otherDegrees", "Angle of the other source"),
            Map.entry("otherLouderDb", "Other source louder by"),
            Map.entry("separationDb", "Wanted separation"),
            Map.entry("omniPart", "Omni part"),
            Map.entry("boostDb", "Rise"),
            Map.entry("plannedBoostDb", "Rise to plan with"),
            Map.entry("cornerHz", "Corner"),
            Map.entry("peakDb", "Peaks"),
            Map.entry("dipDb", "Dips"),
            Map.entry("rippleDb", "Top to bottom"),
            Map.entry("omniCriticalDistanceM", "For an omni and an even source"),
            Map.entry("directToReverbDb", "Direct against reverberant"),
            Map.entry("schroederHz", "Room modes rule below"),
            Map.entry("signalToNoiseDb", "Signal to noise"),
            Map.entry("noiseDba", "Noise"),
            Map.entry("outputDbu", "What the microphone puts out"),
            Map.entry("peakDbfs", "Peaks land at"),
            Map.entry("sineEquivalentDbSpl", "A sine with that peak"),
            Map.entry("bassChangeDb", "Bass against the middle"),
            Map.entry("midChangeDb", "Middle"),
            Map.entry("resonanceChangeDb", "At the resonance"),
            Map.entry("wantedLoadOhm", "Wanted input impedance"),
            Map.entry("headroomMa", "Current left"),
            Map.entry("totalMa", "All together"),
            Map.entry("otherModelDegrees", "By the other model"),
            Map.entry("imageAt30Share", "Image of a source at 30 degrees, 1 being the loudspeaker"),
            Map.entry("gainRatio", "Loudness on its axis against the mid"),
            Map.entry("coefficient", "Omni part of each"),
            Map.entry("dose85Percent", "Dose by 85 dB(A) and 3 dB"),
            Map.entry("average85Dba", "As a steady 8 hours by that"),
            Map.entry("dose90Percent", "Dose by 90 dB(A) and 5 dB"),
            Map.entry("average90Dba", "As a steady 8 hours by that one"),
            Map.entry("dose90From80Percent", "The same, from 80 dB(A) up"),
            Map.entry("dose90From90Percent", "The same, from 90 dB(A) up"),
            Map.entry("dailyExposureDba", "Daily exposure level, LEX,8h"),
            Map.entry("allowed85Minutes", "Allowed by 85 dB(A) and 3 dB"),
            Map.entry("allowed90Minutes", "Allowed by 90 dB(A) and 5 dB"),
            Map.entry("holdingRatio", "Holding over tipping"),
            Map.entry("withoutMicRatio", "Without the microphone"),
            Map.entry("largestMicMassKg", "Heaviest microphone that leaves 2"),
            Map.entry("clutchMomentNm", "What the clutch must hold"),
            Map.entry("at90Db", "From the side"),
            Map.entry("at180Db", "From behind"),
            Map.entry("otherDb", "The other source, aimed straight"),
            Map.entry("turnDegrees", "Turn away from it by"),
            Map.entry("wantedDb", "What is wanted, then"),
            Map.entry("directivityIndexDb", "Room less than with an omni"),
            Map.entry("distanceRatio", "Times as far"));
    private static final List<String> ENDINGS = UnitNames.all().keySet().stream().sorted(Comparator.comparing(String::length).reversed()).toList();
    private static final Pattern MIC_RESULT = Pattern.compile("mic(\\d+)(V|Mw)");
    private static final Pattern HUMP = Pattern.compile("(?<=[a-z])(?=[A-Z])");
    private static final Pattern SEE = Pattern.compile("\\b[Ss]ee ([a-z-]+)");
    private static final int DIGITS = 4;

    private NumberWords() {
    }

    /** "distanceM" is called "Distance". */
    static String called(String name) {
        String known = CALLED.get(name);
        if (known != null) {
            return known;
        }
        Matcher mic = MIC_RESULT.matcher(name);
        if (mic.matches()) {
            return "Microphone " + mic.group(1) + (mic.group(2).equals("V") ? " gets" : " takes");
        }
        String bare = ENDINGS.stream().filter(ending -> name.length() > ending.length() && name.endsWith(ending)).findFirst()
                .map(ending -> name.substring(0, name.length() - ending.length())).orElse(name);
        String words = HUMP.matcher(bare).replaceAll(" ").toLowerCase(Locale.ROOT);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A sentence about inputs, with what they are called in place of their names, in this reader's measures. */
    static String told(String says, CalculationInfo info, Reader reader) {
        String text = says;
        for (Input input : info.inputs()) {
            for (int at = text.indexOf(input.name()); at >= 0; at = text.indexOf(input.name(), at + 1)) {
                int end = at + input.name().length();
                boolean whole = (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1)))
                        && (end == text.length() || !Character.isLetterOrDigit(text.charAt(end)));
                boolean wasUnit = input.name().equals("hours") || input.name().equals("pattern") || input.name().equals("boom") || input.name().equals("legs");
                if (whole && !wasUnit) {
                    String called = called(input.name());
                    text = text.substring(0, at) + (at == 0 ? called : "\u201c" + called + "\u201d") + text.substring(end);
                }
            }
        }
        return reader.sentence(text);
    }

    /** The same cut where it says "see" and another calculation, which the piece then leads to. */
    static List<Piece> linked(String text, Map<String, String> names, Visit visit) {
        List<Piece> pieces = new ArrayList<>();
        Matcher see = SEE.matcher(text);
        int at = 0;
        while (see.find()) {
            String name = names.get(see.group(1));
            if (name != null) {
                pieces.add(new Piece(text.substring(at, see.start(1)), null));
                pieces.add(new Piece(name, visit.to("/numbers/" + see.group(1))));
                at = see.end();
            }
        }
        pieces.add(new Piece(text.substring(at), null));
        return pieces;
    }

    /** A result with four digits and its unit; in feet or pounds the SI value stands beside it. */
    static String shown(Value value, Reader reader) {
        String plain = reader.figure(value.value(), DIGITS) + (value.unit().equals("1") ? "" : " " + value.unit());
        return reader.imperial() && List.of("m", "kg", "m2", "m3").contains(value.unit()) ? reader.value(value.value(), value.unit()) + " (" + plain + ")" : plain;
    }

    /** An input that was used, as it is said back. */
    static String shown(Object value, String unit, Reader reader) {
        return value instanceof List<?> list ? list.stream().map(one -> shown(one, unit, reader)).collect(Collectors.joining("; "))
                : value instanceof Double number ? shown(new Value("", number, unit == null ? "1" : unit), reader) : value.toString();
    }
}
