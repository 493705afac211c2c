package pairwright.http;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.listen.BleedHeard;
import pairwright.listen.Measured;
import pairwright.listen.PairHeard;
import pairwright.listen.TakesCompared;
import pairwright.listen.TracksHeard;
import pairwright.listen.Traits;

/** What was heard, for programs: the same from the interface and from the terminal. */
public final class ListenView {
    private ListenView() {
    }

    /**
     * Of one source.
     *
     * @param traits against its kind; null where no source was named
     */
    public static Map<String, Object> of(Measured measured, Traits traits) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("measured", measured);
        view.put("usable", measured.usable());
        view.put("traits", traits);
        return view;
    }

    private static Map<String, Object> of(PairHeard pair, List<String> says) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("pair", pair);
        view.put("related", pair.related());
        view.put("says", says);
        return view;
    }

    /** Of several pairs. */
    public static Map<String, Object> of(TracksHeard tracks) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("says", tracks.says());
        view.put("pairs", tracks.pairs().stream().map(pair -> of(pair, tracks.says(pair))).toList());
        return view;
    }

    /** Of two takes. */
    public static Map<String, Object> of(Measured before, Measured after, TakesCompared compared) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("before", before);
        view.put("after", after);
        view.put("change", compared);
        return view;
    }

    /** Of a neighbour. */
    public static Map<String, Object> of(Measured own, Measured neighbour, BleedHeard bleed) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("own", own);
        view.put("neighbour", neighbour);
        view.put("bleed", bleed);
        return view;
    }
}
