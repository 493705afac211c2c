package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class TwoSayingsTest {
    @Test
    void whereOnlyNumbersDifferTheyStandSideBySide() {
        assertEquals("Peaks of 145 and 142 dB SPL, here: no ears.", TwoSayings.joined("Peaks of 145 dB SPL, here: no ears.", "Peaks of 142 dB SPL, here: no ears."));
        assertEquals("At 50 cm and 1.2 m, turn it.", TwoSayings.joined("At 50 cm, turn it.", "At 1.2 m, turn it."));
        assertEquals("It holds 0.78 and 1.1.", TwoSayings.joined("It holds 0.78.", "It holds 1.1."));
    }

    @Test
    void whatIsTheSameIsSaidOnceAndWhatIsNotForEach() {
        assertEquals("Mind your ears.", TwoSayings.joined("Mind your ears.", "Mind your ears."));
        assertEquals("Mic 1: The ribbon is frail. Mic 2: The condenser is frail. Look again.",
                TwoSayings.joined("The ribbon is frail. Look again.", "The condenser is frail. Look again."));
        assertEquals("Mic 1: The ribbon stands at 3 cm. Mic 2: The condenser stands at 3 cm.",
                TwoSayings.joined("The ribbon stands at 3 cm.", "The condenser stands at 3 cm."));
        assertEquals("Mic 1: Short. Mic 2: Short. Then more.", TwoSayings.joined("Short.", "Short. Then more."));
    }

    @Provide
    Arbitrary<String> sentences() {
        return Arbitraries.of("At", "it", "145", "-3", "0.5", "dB", "cm,", "here", "The").list().ofMinSize(1).ofMaxSize(6).map(words -> String.join(" ", words) + ".");
    }

    @Property(tries = 500)
    void noWordOfEitherIsMissing(@ForAll @From("sentences") String first, @ForAll @From("sentences") String second) {
        List<String> all = words(TwoSayings.joined(first, second));
        for (String said : List.of(first, second)) {
            int at = 0;
            for (String word : words(said)) {
                while (at < all.size() && !all.get(at).equals(word)) {
                    at++;
                }
                assertTrue(at++ < all.size(), () -> word + " of " + said + " in " + all);
            }
        }
    }

    private static List<String> words(String text) {
        return List.of(text.replaceAll("[,.;:)](?= |$)", "").split(" "));
    }
}
