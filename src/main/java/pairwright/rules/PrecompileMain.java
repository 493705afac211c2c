package pairwright.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Build step: rules/ to classes, so that nothing is compiled when the program starts. Arguments: rules folder, output folder. */
public final class PrecompileMain {
    private PrecompileMain() {
    }

    public static void main(String[] arguments) throws IOException {
        Path out = Path.of(arguments[1]);
        Path list = out.resolve(RuleBase.FOLDER + "classes");
        RuleFolder folder = relative(Path.of(arguments[0]));
        String inputs = RuleFolder.version(List.of(folder.toString(), facts(out)));
        if (Files.exists(list) && Files.readString(out.resolve(RuleBase.FOLDER + "inputs")).equals(inputs)) {
            return;
        }
        RuleCompiler.Result compiled = RuleCompiler.builtIn().compile(folder.drl(), folder.cases(), folder.statements());
        if (!compiled.problems().isEmpty()) {
            compiled.problems().forEach(problem -> System.err.println("[RULE ERROR] " + problem));
            throw new IllegalStateException("The rules do not compile, see above: " + compiled.problems().size());
        }
        if (Files.exists(list)) {
            for (String old : Files.readAllLines(list)) {
                Files.deleteIfExists(out.resolve(old));
            }
        }
        for (Map.Entry<String, byte[]> one : compiled.classes().entrySet()) {
            Path file = out.resolve(one.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, one.getValue());
        }
        Files.createDirectories(list.getParent());
        Files.write(list, new ArrayList<>(compiled.classes().keySet()));
        Files.write(out.resolve(RuleBase.FOLDER + "models"), compiled.models());
        Files.writeString(out.resolve(RuleBase.FOLDER + "index"), RuleIndex.write(compiled.infos()));
        Files.writeString(out.resolve(RuleBase.FOLDER + "version"), folder.version());
        Files.writeString(out.resolve(RuleBase.FOLDER + "inputs"), inputs);
        System.out.println("Compiled " + compiled.infos().size() + " rules of " + folder.drl().size() + " files");
    }

    /** File names as seen from the project, so that nothing of this machine gets into the program. */
    private static RuleFolder relative(Path rules) throws IOException {
        RuleFolder folder = RuleFolder.read(rules);
        Map<String, String> drl = new HashMap<>();
        folder.drl().forEach((file, text) -> drl.put("rules/" + rules.relativize(Path.of(file)).toString().replace('\\', '/'), text));
        return new RuleFolder(new java.util.TreeMap<>(drl), folder.cases(), folder.statements());
    }

    /** The compiled facts: when they change, the rules must be compiled again. */
    private static String facts(Path out) throws IOException {
        List<String> seen = new ArrayList<>();
        for (String facts : List.of("pairwright/model", "pairwright/rules")) {
            try (Stream<Path> files = Files.walk(out.resolve(facts))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    seen.add(file.getFileName() + " " + java.util.Arrays.hashCode(Files.readAllBytes(file)));
                }
            }
        }
        return seen.toString();
    }
}
