package pairwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for every rule file. */
class RuleFilesTest {
    private static final RuleBase RULES = RuleBase.builtIn();
    /** The compiler of executable rules takes an accessor whose name is part of these for one of its own, and fails. */
    private static final List<String> TRAPS = List.of("alphaIndexedBy", "betaIndexedBy", "bind");

    @Test
    void noFactHasAnAccessorWhoseNameBreaksTheRuleCompiler() {
        List<String> bad = new ArrayList<>();
        for (Class<?> fact : facts()) {
            for (RecordComponent part : fact.getRecordComponents()) {
                if (TRAPS.stream().anyMatch(trap -> trap.contains(part.getName()))) {
                    bad.add(fact.getSimpleName() + "." + part.getName());
                }
            }
        }
        assertEquals(List.of(), bad);
    }

    /** The facts of a question and of a plan, and every record they reach. */
    private static Set<Class<?>> facts() {
        Set<Class<?>> facts = new LinkedHashSet<>(List.of(Setting.class, Placed.class, Paired.class));
        facts.addAll(PlanFact.kinds());
        List<Class<?>> open = new ArrayList<>(facts);
        while (!open.isEmpty()) {
            for (RecordComponent part : open.remove(0).getRecordComponents()) {
                Type type = part.getGenericType() instanceof ParameterizedType list ? list.getActualTypeArguments()[0] : part.getType();
                if (type instanceof Class<?> one && one.isRecord() && facts.add(one)) {
                    open.add(one);
                }
            }
        }
        assertTrue(facts.size() > 10);
        return facts;
    }

    @Test
    void aRetiredIdIsNeverUsedAgain() throws IOException {
        List<String> retired = Files.readAllLines(Path.of("rules/retired.txt")).stream()
                .filter(line -> !line.startsWith("#") && !line.isBlank()).map(line -> line.split("\\s+")[0]).toList();
        assertEquals(List.of(), retired.stream().filter(id -> RULES.rule(id) != null).toList());
    }

    @Test
    void everyRuleOfTheFilesIsInTheProgramUnderItsFolder() throws IOException {
        List<String> inFiles = new ArrayList<>();
        for (var file : RuleFolder.read(Path.of("rules")).drl().entrySet()) {
            Path path = Path.of(file.getKey());
            String topic = path.getFileName().toString().replace(".drl", "");
            file.getValue().lines().filter(line -> line.startsWith("rule \"")).forEach(line ->
                    inFiles.add(line.substring(6, line.lastIndexOf('"')) + " " + path.getParent().getFileName() + "/" + topic));
        }
        assertEquals(inFiles.stream().sorted().toList(),
                RULES.rules().stream().map(rule -> rule.id() + " " + rule.concern() + "/" + rule.topic()).sorted().toList());
    }

    @Test
    void onePrefixBelongsToOneFolder() {
        TreeMap<String, Set<String>> folders = new TreeMap<>();
        RULES.rules().forEach(rule -> folders.computeIfAbsent(rule.id().substring(0, 3), any -> new LinkedHashSet<>()).add(rule.concern()));
        folders.values().removeIf(concerns -> concerns.size() == 1);
        assertEquals("{}", folders.toString());
    }

    @Test
    void everyRuleFileHasItsCasesBesideIt() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            List<String> lonely = files.map(Path::toString).filter(file -> file.endsWith(".drl"))
                    .filter(file -> !Files.exists(Path.of(file.replace(".drl", ".cases.yaml")))).toList();
            assertEquals(List.of(), lonely);
        }
    }

    @Test
    void everyDangerOfAQuestionIsInTheSafetyFolder() {
        List<String> elsewhere = RULES.rules().stream()
                .filter(rule -> rule.severity() == pairwright.model.Severity.DANGER && !rule.concern().equals("safety") && !rule.ofAPlan())
                .map(RuleInfo::id).toList();
        assertEquals(List.of(), elsewhere);
    }
}
