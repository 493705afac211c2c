package pairwright.model;

import java.util.List;

/**
 * What the answer must keep to. A null or an empty list sets no limit.
 *
 * @param mics the most channels the option may take
 * @param phantom false: no phantom power at all
 * @param preampGainDb the most gain the preamplifier has
 * @param preampNoiseDbu equivalent input noise of the preamplifier, unweighted, 150 ohm
 * @param onlyFamilies only these families
 * @param withoutFamilies none of these
 * @param onlyMicTypes only these types
 * @param withoutMicTypes none of these
 */
public record Limits(
        Integer mics,
        Boolean phantom,
        Double preampGainDb,
        Double preampNoiseDbu,
        List<MicFamily> onlyFamilies,
        List<MicFamily> withoutFamilies,
        List<String> onlyMicTypes,
        List<String> withoutMicTypes) {

    /** More channels than any desk has for one source. */
    public static final int MOST_CHANNELS = 32;
    /** More gain than any preamplifier has. */
    public static final double MOST_GAIN_DB = 100;

    /** No limit at all. */
    public static final Limits NONE = new Limits(null, null, null, null, List.of(), List.of(), List.of(), List.of());

    public Limits {
        onlyFamilies = onlyFamilies == null ? List.of() : List.copyOf(onlyFamilies);
        withoutFamilies = withoutFamilies == null ? List.of() : List.copyOf(withoutFamilies);
        onlyMicTypes = onlyMicTypes == null ? List.of() : List.copyOf(onlyMicTypes);
        withoutMicTypes = withoutMicTypes == null ? List.of() : List.copyOf(withoutMicTypes);
    }
}
