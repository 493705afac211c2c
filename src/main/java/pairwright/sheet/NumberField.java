package pairwright.sheet;

import java.util.List;

/**
 * One field of the form of a calculation.
 *
 * @param name in the query
 * @param label what it is called
 * @param unit what a bare number is in, as shown; empty for none
 * @param hint what is meant and what may be given
 * @param text what stands in it
 * @param choices words to choose from; empty where something is typed
 * @param required whether there is no answer without it
 * @param fault what is wrong with it; null for nothing
 */
public record NumberField(String name, String label, String unit, String hint, String text, List<String> choices, boolean required, String fault) {
    public NumberField {
        fault = fault == null || fault.endsWith(".") ? fault : fault + ".";
    }

    NumberField wrong(String says) {
        return new NumberField(name, label, unit, hint, text, choices, required, says);
    }

    /** The word as it is read. */
    public static String read(String choice) {
        return choice.replace('-', ' ');
    }
}
