package pairwright.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The unit of a number is the end of its name: distanceM is in metres, peakDbSpl in dB SPL. */
public final class UnitNames {
    /** Longer endings first, so that DbSpl is not taken for anything else. */
    private static final Map<String, String> UNIT_BY_SUFFIX = table();

    private UnitNames() {
    }

    private static Map<String, String> table() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put("Coefficient", "1");
        units.put("MvPerPa", "mV/Pa");
        units.put("Degrees", "degrees");
        units.put("Channels", "1");
        units.put("DbSpl", "dB SPL");
        units.put("Ratio", "1");
        units.put("Share", "1");
        units.put("Count", "1");
        units.put("Times", "1");
        units.put("Hours", "h");
        units.put("Dbfs", "dBFS");
        units.put("Dba", "dB(A)");
        units.put("Dbu", "dBu");
        units.put("Ohm", "ohm");
        units.put("Fit", "1");
        units.put("Db", "dB");
        units.put("Hz", "Hz");
        units.put("Ms", "ms");
        units.put("Ma", "mA");
        units.put("Kg", "kg");
        units.put("M2", "m2");
        units.put("M3", "m3");
        units.put("M", "m");
        units.put("S", "s");
        return Collections.unmodifiableMap(units);
    }

    /** Every ending and its unit, "1" for a number without one. */
    public static Map<String, String> all() {
        return UNIT_BY_SUFFIX;
    }

    /**
     * The unit of a number.
     *
     * @throws IllegalArgumentException if the name does not end in a unit
     */
    public static String unitOf(String name) {
        for (Map.Entry<String, String> one : UNIT_BY_SUFFIX.entrySet()) {
            if (endsIn(name, one.getKey())) {
                return one.getValue();
            }
        }
        throw new IllegalArgumentException("\"" + name + "\" does not say its unit. End it in one of " + UNIT_BY_SUFFIX.keySet());
    }

    private static boolean endsIn(String name, String suffix) {
        int start = name.length() - suffix.length();
        return start > 0 && name.endsWith(suffix) && !Character.isUpperCase(name.charAt(start - 1));
    }
}
