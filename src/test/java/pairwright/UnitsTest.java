package pairwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Range;

class UnitsTest {
    /** Names that carry no unit because they have none; each says why in docs/units.md. */
    private static final Set<String> PURE = Set.of("score", "bound", "points", "factor", "coefficient", "coherence", "share", "weights", "value", "threshold", "usual", "least", "most", "x", "y",
            "mark", "of", "right", "step", "tolerance");

    @Test
    void everyNumberInARecordCarriesItsUnit() throws Exception {
        Set<String> suffixes = suffixesOfThePage();
        Set<String> without = new TreeSet<>();
        for (JavaClass found : new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("pairwright")) {
            Class<?> type = Class.forName(found.getName(), false, getClass().getClassLoader());
            if (!type.isRecord() || type == Range.class) {
                continue; // a range takes its unit from the component that holds it
            }
            for (RecordComponent component : type.getRecordComponents()) {
                if (isNumber(component.getType()) && !PURE.contains(component.getName())
                        && suffixes.stream().noneMatch(suffix -> carries(component.getName(), suffix))) {
                    without.add(type.getName() + "." + component.getName());
                }
            }
        }
        assertEquals(Set.of(), without, "name the unit, or list a new suffix in docs/units.md");
    }

    @Test
    void thePageListsTheSuffixesThatAreUsed() throws Exception {
        Set<String> suffixes = suffixesOfThePage();
        assertTrue(suffixes.containsAll(List.of("M", "Db", "DbSpl", "Degrees", "Hz")), suffixes.toString());
    }

    private static boolean isNumber(Class<?> type) {
        return type == double.class || type == Double.class || type == Range.class || type == OctaveCurve.class;
    }

    /** "distanceM" carries "M"; a name that is the unit alone ("hours") does too. */
    private static boolean carries(String name, String suffix) {
        return name.endsWith(suffix) || name.equalsIgnoreCase(suffix);
    }

    private static Set<String> suffixesOfThePage() throws Exception {
        Set<String> suffixes = new TreeSet<>();
        Pattern row = Pattern.compile("^\\| `([A-Z][A-Za-z0-9]*)` \\|");
        for (String line : Files.readAllLines(Path.of("docs/units.md"))) {
            Matcher matcher = row.matcher(line);
            if (matcher.find()) {
                suffixes.add(matcher.group(1));
            }
        }
        return suffixes;
    }
}
