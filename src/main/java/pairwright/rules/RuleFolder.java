package pairwright.rules;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The texts of a folder of rules.
 *
 * @param drl rule texts by file, in order
 * @param cases by rule id, in the order they stand
 * @param statements of trade practice, by id
 */
record RuleFolder(Map<String, String> drl, Map<String, List<RuleInfo.Case>> cases, Map<String, String> statements) {
    static final String PRACTICE = "practice.yaml";
    private static final int VERSION_LENGTH = 12;

    static RuleFolder read(Path folder) throws IOException {
        Map<String, String> drl = new TreeMap<>();
        Map<String, List<RuleInfo.Case>> cases = new TreeMap<>();
        Map<String, String> statements = new TreeMap<>();
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        for (Path file : files) {
            String name = file.toString();
            if (name.endsWith(".drl")) {
                drl.put(name, text(file));
            } else if (name.endsWith(".cases.yaml")) {
                readCases(text(file), cases);
            } else if (file.endsWith(PRACTICE)) {
                readStatements(text(file), statements);
            }
        }
        return new RuleFolder(drl, cases, statements);
    }

    /** As an editor shows it: without the mark some editors put at the start, and with one sign for the end of a line. */
    private static String text(Path file) throws IOException {
        String text;
        try {
            text = Files.readString(file);
        } catch (CharacterCodingException notUtf8) {
            throw new IOException(file + " is not UTF-8. Save it as plain text in UTF-8", notUtf8);
        }
        return (text.startsWith("\uFEFF") ? text.substring(1) : text).replace("\r\n", "\n").replace('\r', '\n');
    }

    /** Only what a page needs: the rule, whether it fires, and the situation in words. A test holds this against a YAML parser. */
    private static void readCases(String yaml, Map<String, List<RuleInfo.Case>> cases) {
        for (String one : yaml.split("(?m)^- ")) {
            String rule = null;
            String says = null;
            boolean fires = false;
            for (String line : one.lines().map(String::strip).toList()) {
                if (line.startsWith("rule: ")) {
                    rule = line.substring("rule: ".length());
                } else if (line.startsWith("says: ")) {
                    says = line.substring("says: ".length());
                } else if (line.startsWith("fires:")) {
                    fires = true;
                }
            }
            if (rule != null && says != null) {
                cases.computeIfAbsent(rule, any -> new ArrayList<>()).add(new RuleInfo.Case(says, fires));
            }
        }
    }

    /** Only what a rule needs: the id and the sentence, each on a line of its own. The same test holds this against a YAML parser. */
    private static void readStatements(String yaml, Map<String, String> statements) {
        String id = null;
        for (String line : yaml.lines().toList()) {
            if (line.startsWith("- id: ")) {
                id = line.substring("- id: ".length());
            } else if (line.startsWith("  says: ")) {
                String says = line.substring("  says: ".length());
                statements.put(id, says.startsWith("\"") && says.endsWith("\"") ? says.substring(1, says.length() - 1) : says);
            }
        }
    }

    /** Changes when any rule changes: a few hex digits, the same wherever the folder lies. */
    static String version(Iterable<String> texts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            texts.forEach(text -> digest.update((text + "\0").getBytes(StandardCharsets.UTF_8)));
            return HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_LENGTH);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    String version() {
        return version(drl.values());
    }
}
