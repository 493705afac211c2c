package pairwright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.catalogue.Shown;
import pairwright.model.Attack;
import pairwright.model.Fault;
import pairwright.model.HeardBefore;

/** What was heard of a player before, as part of an address. */
final class HeardQuery {
    /** Of which source it was heard; of another it says nothing. */
    static final String OF = "heardOf";
    static final String LEVEL = "heardLevel";
    static final String PEAK = "heardPeak";
    static final String TONE = "heardTone";
    static final String LOWEST = "heardLowest";
    static final String HIGHEST = "heardHighest";
    static final String CREST = "heardCrest";
    static final String ATTACK = "heardAttack";

    private HeardQuery() {
    }

    /**
     * Null where nothing of it is there, or where it was heard of another source.
     *
     * @param source that is asked about; null where it is in the words
     */
    static HeardBefore read(Visit visit, String source, List<Fault> faults) {
        String of = visit.first(OF);
        if (of != null && source != null && !of.equals(source)) {
            return null;
        }
        HeardBefore heard = new HeardBefore(number(visit, LEVEL, "dB", faults), number(visit, PEAK, "dB", faults), tone(visit, faults), number(visit, LOWEST, "Hz", faults),
                number(visit, HIGHEST, "Hz", faults), number(visit, CREST, "dB", faults), attack(visit, faults), null);
        return heard.changesNoFigure() ? null : heard;
    }

    static List<Param> written(String source, HeardBefore heard) {
        List<Param> query = new ArrayList<>();
        if (heard == null) {
            return query;
        }
        if (source != null) {
            query.add(new Param(OF, source));
        }
        add(query, LEVEL, heard.typicalDbSpl());
        add(query, PEAK, heard.peakDbSpl());
        if (heard.toneDb() != null) {
            query.add(new Param(TONE, Arrays.stream(heard.toneDb().toArray()).mapToObj(Param::number).collect(Collectors.joining(" "))));
        }
        add(query, LOWEST, heard.lowestHz());
        add(query, HIGHEST, heard.highestHz());
        add(query, CREST, heard.crestDb());
        if (heard.attack() != null) {
            query.add(new Param(ATTACK, heard.attack().id()));
        }
        return query;
    }

    private static void add(List<Param> query, String name, Double number) {
        if (number != null) {
            query.add(new Param(name, Param.number(number)));
        }
    }

    private static Double number(Visit visit, String name, String unit, List<Fault> faults) {
        String text = visit.first(name);
        if (text == null) {
            return null;
        }
        Typed typed = Typed.parse(text, unit, visit.reader());
        if (typed.fault() != null) {
            faults.add(new Fault(name, typed.fault()));
            return null;
        }
        return typed.number().getAsDouble();
    }

    private static Attack attack(Visit visit, List<Fault> faults) {
        String text = visit.first(ATTACK);
        Attack attack = Arrays.stream(Attack.values()).filter(one -> one.id().equals(text)).findFirst().orElse(null);
        if (text != null && attack == null) {
            faults.add(new Fault(ATTACK, "there is no attack \"" + Shown.of(text) + "\". Use one of " + Arrays.stream(Attack.values()).map(Attack::id).collect(Collectors.joining(", "))));
        }
        return attack;
    }

    private static OctaveCurve tone(Visit visit, List<Fault> faults) {
        String text = visit.first(TONE);
        if (text == null) {
            return null;
        }
        String[] parts = text.strip().split("[\\s,;]+");
        double[] octaves = new double[Octaves.COUNT];
        try {
            for (int band = 0; band < octaves.length && parts.length == octaves.length; band++) {
                octaves[band] = Double.parseDouble(parts[band]);
            }
        } catch (NumberFormatException none) {
            parts = new String[0];
        }
        if (parts.length != octaves.length || !Arrays.stream(octaves).allMatch(Double::isFinite)) {
            faults.add(new Fault(TONE, "\"" + Shown.of(text) + "\" is not nine numbers. Give one an octave from 63 Hz to 16 kHz, such as 0 0 0 2 4 4 2 0 0"));
            return null;
        }
        return OctaveCurve.of(octaves);
    }
}
