package pairwright.rules;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/** Rule texts to classes. The build and a house folder use the same code. */
final class RuleCompiler {
    private static final String BUILT_IN_PACKAGE = "rules.";
    private static final Pattern AT = Pattern.compile("^\\[ERR \\d+] Line \\d+:(\\d+) ");

    /**
     * What came of it.
     *
     * @param classes by path, "rules/level/C.class"
     * @param models names of the generated model classes
     * @param infos what each rule says of itself
     * @param written where each rule stands, by its id
     * @param problems everything that is wrong; then the rest is empty
     */
    record Result(Map<String, byte[]> classes, List<String> models, List<RuleInfo> infos, Map<String, Written> written, List<Problem> problems) {
        static Result failed(List<Problem> problems) {
            return new Result(Map.of(), List.of(), List.of(), Map.of(), List.copyOf(problems));
        }
    }

    /** A rule as it stands in its file, so that what it does when it runs can be told with its place. */
    record Written(String file, String text, int line, int endLine) {
    }

    private record Source(String file, String text, PackageDescr descr) {
    }

    private record Built(Map<String, byte[]> classes, List<String> models, List<Problem> problems) {
    }

    private final ClassLoader parent;
    private final boolean house;

    private static final Pattern RULE_OR_ITSELF = Pattern.compile("^rule\\s+\"([^\"]+)\"|drools\\.getRule\\(\\)", Pattern.MULTILINE);

    private RuleCompiler(ClassLoader parent, boolean house) {
        this.parent = parent;
        this.house = house;
    }

    /** For the rules that ship with the program. */
    static RuleCompiler builtIn() {
        return new RuleCompiler(RuleCompiler.class.getClassLoader(), false);
    }

    /** For a house's own folder: what its rules may use is limited by {@link HousePolicy}. */
    static RuleCompiler house() {
        return new RuleCompiler(RuleCompiler.class.getClassLoader(), true);
    }

    /**
     * Compiles, or says everything that is wrong.
     *
     * @param drl text by file name, as the author knows it
     * @param cases of each rule, by its id
     */
    Result compile(Map<String, String> drl, Map<String, List<RuleInfo.Case>> cases) {
        return compile(drl, cases, Map.of());
    }

    /**
     * The same for rules that name statements of trade practice.
     *
     * @param statements by id
     */
    Result compile(Map<String, String> drl, Map<String, List<RuleInfo.Case>> cases, Map<String, String> statements) {
        List<Problem> problems = new ArrayList<>();
        List<Source> sources = new ArrayList<>();
        new TreeMap<>(drl).forEach((file, text) -> sources.add(parse(file, text, problems)));
        if (!problems.isEmpty()) {
            return Result.failed(problems);
        }
        List<RuleInfo> infos = infos(sources, cases, statements, problems);
        if (!problems.isEmpty()) {
            return Result.failed(problems);
        }
        Built all = build(sources);
        if (all.problems.isEmpty()) {
            Map<String, Written> written = new HashMap<>();
            sources.forEach(source -> source.descr.getRules().forEach(rule -> written.put(rule.getName(),
                    new Written(source.file, source.text, rule.getLine(), rule.getEndLine()))));
            return new Result(all.classes, all.models, infos, written, List.of());
        }
        // The engine names the generated class, or no line at all, and stops at the first bad phase. Each rule is built by itself,
        // the others blanked and line numbers kept, to say which are wrong.
        for (Source source : sources) {
            for (RuleDescr rule : source.descr.getRules()) {
                for (Problem problem : build(List.of(new Source(source.file, only(source, rule), source.descr))).problems) {
                    Problem located = locate(source, rule, problem);
                    if (!problems.contains(located)) {
                        problems.add(located);
                    }
                }
            }
        }
        return Result.failed(problems.isEmpty() ? all.problems : problems);
    }

    private Source parse(String file, String text, List<Problem> problems) {
        DrlParser parser = new DrlParser();
        PackageDescr descr = null;
        try {
            descr = parser.parse(false, text);
        } catch (Exception unreadable) { // the parser declares and throws a checked one of its own
            problems.add(new Problem(file, -1, null, String.valueOf(unreadable.getMessage())));
        }
        for (DroolsError error : parser.getErrors()) {
            int line = error.getLines().length > 0 ? error.getLines()[0] : -1;
            Matcher at = AT.matcher(error.getMessage());
            int column = at.find() ? Integer.parseInt(at.group(1)) + 1 : -1; // the parser counts columns from 0
            problems.add(new Problem(file, line, column, null, column < 0 ? error.getMessage() : error.getMessage().substring(at.end())));
        }
        if (descr == null) {
            return new Source(file, text, new PackageDescr(""));
        }
        if (house) {
            problems.addAll(HousePolicy.check(file, text, descr));
        } else if (!descr.getNamespace().startsWith(BUILT_IN_PACKAGE)) {
            problems.add(new Problem(file, 1, null, "the file must start with the package of its folder, such as package rules.level;"));
        }
        return new Source(file, text, descr);
    }

    private List<RuleInfo> infos(List<Source> sources, Map<String, List<RuleInfo.Case>> cases, Map<String, String> statements,
            List<Problem> problems) {
        List<RuleInfo> infos = new ArrayList<>();
        Map<String, String> fileById = new HashMap<>();
        for (Source source : sources) {
            String concern = house ? HousePolicy.PACKAGE : source.descr.getNamespace().substring(BUILT_IN_PACKAGE.length()).replaceFirst("\\..*", "");
            String topic = source.file.replaceFirst(".*[/\\\\]", "").replaceFirst("\\.drl$", "");
            for (RuleDescr rule : source.descr.getRules()) {
                String before = fileById.putIfAbsent(rule.getName(), source.file);
                if (before != null) {
                    problems.add(new Problem(source.file, rule.getLine(), rule.getName(), "this id is taken in " + before));
                }
                RuleText text = new RuleText(source.file, source.text, rule, house);
                RuleInfo info = text.read(concern, topic, List.copyOf(cases.getOrDefault(rule.getName(), List.of())), statements);
                problems.addAll(text.problems());
                if (info != null) {
                    infos.add(info);
                }
            }
        }
        return infos;
    }

    /** Rules that say who they are by their id; nothing moves to another line. */
    private static String named(String text) {
        String[] id = {""};
        return RULE_OR_ITSELF.matcher(text).replaceAll(found -> {
            if (found.group(1) == null) {
                return Matcher.quoteReplacement('"' + id[0] + '"');
            }
            id[0] = found.group(1);
            return Matcher.quoteReplacement(found.group());
        });
    }

    private Built build(List<Source> sources) {
        KieServices services = KieServices.get();
        // of the built-in rules two builds give the same bytes; a house may be read twice at once, and each reading has a name of its own
        ReleaseId id = services.newReleaseId("rules", house ? "r" + UUID.randomUUID() : "built-in", "1");
        KieFileSystem files = services.newKieFileSystem();
        files.generateAndWritePomXML(id);
        Map<String, String> fileByPath = new LinkedHashMap<>();
        for (Source source : sources) {
            String path = source.descr.getNamespace().replace('.', '/') + "/f" + fileByPath.size() + ".drl"; // folder = package: no warnings
            fileByPath.put(path, source.file);
            files.write("src/main/resources/" + path, house ? source.text : named(source.text));
        }
        List<Problem> problems = new ArrayList<>();
        Map<String, byte[]> classes = new LinkedHashMap<>();
        List<String> models = new ArrayList<>();
        try {
            KieBuilder builder = services.newKieBuilder(files, parent).buildAll(ExecutableModelProject.class);
            for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
                String text = message.getText();
                if (!text.startsWith("Java source of ") && !text.equals("Parser returned a null Package")) {
                    String path = message.getPath() == null ? "" : message.getPath();
                    problems.add(new Problem(fileByPath.getOrDefault(path, path), (int) message.getLine(), null, firstLine(text)));
                }
            }
            if (problems.isEmpty()) {
                collect((InternalKieModule) builder.getKieModule(), classes, models);
                if (house) {
                    HousePolicy.forbidden(classes)
                            .forEach(use -> problems.add(new Problem("", -1, null, "house rules may not use " + use)));
                }
            }
        } catch (RuntimeException gaveUp) { // the generator itself can throw on input it does not expect
            Throwable root = gaveUp;
            while (root.getCause() != null) {
                root = root.getCause();
            }
            problems.add(new Problem(sources.size() == 1 ? sources.get(0).file : "rules", -1, null, "the rule compiler gave up: " + root));
        } finally {
            services.getRepository().removeKieModule(id); // else every reload stays in memory
        }
        return new Built(classes, models, problems);
    }

    private static void collect(InternalKieModule module, Map<String, byte[]> classes, List<String> models) {
        for (String file : module.getFileNames()) {
            if (file.endsWith(".class")) {
                classes.put(file, module.getBytes(file));
            } else if (file.endsWith("/drools-model")) {
                new String(module.getBytes(file), StandardCharsets.UTF_8).lines()
                        .filter(line -> !line.isBlank() && !line.startsWith("Drools-Model-Version"))
                        .forEach(line -> models.add(line.trim()));
            }
        }
    }

    private static String firstLine(String text) {
        int end = text.indexOf("\nProblem stacktrace");
        end = end < 0 ? text.indexOf('\n') : end;
        return (end < 0 ? text : text.substring(0, end)).trim();
    }

    /** The file with every other rule turned into blank lines. */
    private static String only(Source source, RuleDescr keep) {
        String[] lines = source.text.split("\n", -1);
        for (RuleDescr rule : source.descr.getRules()) {
            for (int line = rule.getLine(); rule != keep && line <= rule.getEndLine(); line++) {
                lines[line - 1] = "";
            }
        }
        return String.join("\n", lines);
    }

    private static Problem locate(Source source, RuleDescr rule, Problem problem) {
        int line = problem.line();
        int column = -1;
        boolean elsewhere = problem.file().startsWith("src/main/java") || problem.what().startsWith("Unable to parse consequence");
        boolean known = !elsewhere && line > 0;
        if (!known) {
            line = rule.getLine();
            Matcher after = Pattern.compile("\\(line (\\d+),col \\d+\\)").matcher(problem.what());
            if (after.find()) {
                line = Math.min(rule.getConsequenceLine() + Integer.parseInt(after.group(1)) - 1, rule.getEndLine());
            }
        }
        String word = wordIn(problem.what());
        Place place = word == null ? null : Place.of(Pattern.compile("(?<![\\w$])" + Pattern.quote(word) + "(?![\\w$])"), source.text,
                known ? line : rule.getLine(), known ? line : rule.getEndLine());
        if (place != null) {
            line = place.line();
            column = place.column();
        }
        return new Problem(source.file, line, column, rule.getName(), plain(problem.what()));
    }

    /** The word a message complains of, so that its line can be found. */
    private static String wordIn(String what) {
        for (String known : List.of("expression: ([A-Za-z_$][\\w$]*)", "Unknown field ([\\w$]+)", "Unable to find class: ([\\w$.]+)",
                "may not use (?:[\\w$]+\\.)*([\\w$]+)", "The method ([\\w$]+)\\(", "^([\\w$.]+) cannot be resolved",
                "Analyse Expression ([A-Za-z_$][\\w$]*)")) {
            Matcher word = Pattern.compile(known).matcher(what);
            if (word.find()) {
                return word.group(1);
            }
        }
        return null;
    }

    private static String plain(String what) {
        if (what.startsWith("Unable to parse left part of expression: ")) {
            return "no such field in: " + what.substring("Unable to parse left part of expression: ".length());
        }
        if (what.startsWith("Unable to find class: ")) {
            return "no such fact type: " + what.substring("Unable to find class: ".length());
        }
        if (what.startsWith("Unable to Analyse Expression ")) {
            return "cannot make sense of: " + what.substring("Unable to Analyse Expression ".length()).replaceFirst(":$", "");
        }
        if (what.contains("alphaIndexedBy(")) {
            return "the two sides of a comparison have different types (a word or number compared with text?)";
        }
        if (what.startsWith("Unable to parse consequence caused by: ")) {
            return "the part after then is not valid: " + what.replaceFirst(".*?Parse error\\. ", "");
        }
        return what;
    }
}
