package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.drawing.Reader;
import pairwright.rules.Figure;
import pairwright.rules.UnitNames;

/** Every text of catalogue, rules and answers in other measures. */
class MeasuresTest {
    private static final Reader INCHES = new Reader(true, Locale.US);
    private static final Reader COMMA = new Reader(false, Locale.GERMANY);
    private static final Pattern METRES_LEFT = Pattern.compile("\\d ?(?:m|cm|mm|metres?|kg|m2|m3)\\b(?!/)");
    private static final Pattern POINT_LEFT = Pattern.compile("(?<![\\w.])\\d+\\.\\d");
    private static final Pattern NUMBERS = Pattern.compile("[\\d.,/]+| (?:cm|mm|m|in|ft|to|-|metres?|kg|lb|oz|m2|m3|sq|cu|Celsius|Fahrenheit)(?=[ ,.;:)]|$)|[ -]");

    @Test
    void everySentenceCanBeReadInFeetAndInchesOrWithACommaAndIsOtherwiseTheSame() throws IOException {
        Set<String> changed = new TreeSet<>();
        for (String says : sentences()) {
            String imperial = INCHES.sentence(says);
            String comma = COMMA.sentence(says);
            assertSame(says, Reader.METRIC.sentence(says));
            assertTrue(!METRES_LEFT.matcher(imperial).find(), imperial);
            assertTrue(!POINT_LEFT.matcher(comma).find() || comma.contains("CFR"), comma);
            assertEquals(words(says), words(imperial), imperial);
            assertEquals(says.replace(',', '.'), comma.replace(',', '.'));
            assertEquals(imperial, INCHES.sentence(imperial));
            assertEquals(comma, COMMA.sentence(comma));
            if (!imperial.equals(says)) {
                changed.add(says + "\n    " + imperial);
            }
        }
        assertTrue(changed.size() > 500, "only " + changed.size());
        if (Boolean.getBoolean("show")) {
            changed.forEach(System.out::println);
        }
    }

    @Property
    void aValueIsRoundedAsTheSentencesOfTheRulesRoundIt(@ForAll @DoubleRange(min = -150, max = 150) @Scale(7) double value) {
        for (String unit : Set.copyOf(UnitNames.all().values())) {
            if (!Set.of("m2", "m3", "kg").contains(unit) && !(unit.equals("m") && Math.abs(value) < 0.1) && !unit.equals("h")) {
                String rounded = Figure.forPeople(value, unit);
                assertEquals(unit.equals("1") && rounded.endsWith("0") && rounded.contains(".") ? rounded.substring(0, rounded.length() - 1) : rounded,
                        Reader.METRIC.value(value, unit));
            }
        }
        assertEquals(Figure.forPeople(Math.abs(value), "h"), Reader.METRIC.value(Math.abs(value), "h"));
    }

    private static String words(String text) {
        return NUMBERS.matcher(text).replaceAll("");
    }

    private static List<String> sentences() throws IOException {
        Set<String> all = new TreeSet<>();
        Knowledge knowledge = KnowledgeStore.builtIn().current();
        gather(knowledge.catalogue(), all);
        gather(knowledge.rules().rules(), all);
        for (String page : List.of("docs/answers.md", "docs/rules.md", "docs/practice.md", "rules/practice.yaml")) {
            all.addAll(Files.readAllLines(Path.of(page)));
        }
        assertTrue(all.size() > 5000);
        return List.copyOf(all);
    }

    private static void gather(Object from, Set<String> into) {
        if (from instanceof String text) {
            into.add(text);
        } else if (from instanceof Map<?, ?> map) {
            map.values().forEach(value -> gather(value, into));
        } else if (from instanceof Collection<?> many) {
            many.forEach(value -> gather(value, into));
        } else if (from instanceof Record record) {
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                try {
                    gather(part.getAccessor().invoke(record), into);
                } catch (ReflectiveOperationException hidden) {
                    throw new AssertionError(hidden);
                }
            }
        }
    }
}
