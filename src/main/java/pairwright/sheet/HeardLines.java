package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairwright.acoustics.Octaves;
import pairwright.listen.Traits;

/** What was heard of a player, as the seat of a line-up has it. */
public final class HeardLines {
    private HeardLines() {
    }

    /** Lines of YAML, to be put below a seat. */
    public static String of(Traits traits) {
        StringBuilder text = new StringBuilder("  heard:\n");
        field(text, "typicalDbSpl", traits.typicalDbSpl());
        field(text, "peakDbSpl", traits.peakDbSpl());
        List<String> tone = new ArrayList<>();
        for (int band = 0; band < Octaves.COUNT; band++) {
            tone.add(String.format(Locale.ROOT, "%.1f", traits.toneDb().at(band) + 0.0));
        }
        text.append("    toneDb: [").append(String.join(", ", tone)).append("]\n");
        field(text, "lowestHz", traits.lowestHz());
        field(text, "highestHz", traits.highestHz());
        field(text, "crestDb", traits.crestDb());
        if (traits.attack() != null) {
            text.append("    attack: ").append(traits.attack().id()).append('\n');
        }
        return text.toString();
    }

    private static void field(StringBuilder text, String name, Double value) {
        if (value != null) {
            text.append("    ").append(name).append(": ").append(String.format(Locale.ROOT, "%.0f", value)).append('\n');
        }
    }
}
