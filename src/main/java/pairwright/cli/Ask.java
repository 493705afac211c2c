package pairwright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.UnusableQuestion;
import pairwright.catalogue.Json;
import pairwright.model.Answer;
import pairwright.model.Request;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One question, one answer. */
@Command(
        name = "ask",
        description = "Answers a question: what to put on a source, where, and why.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class Ask implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--json", description = "Print the answer as JSON, as the HTTP interface gives it.")
    private boolean asJson;

    @Option(names = "--options", paramLabel = "N", description = "How many options to give, 1 to 6. Usually 3.")
    private Integer options;

    @Option(names = "--draws", paramLabel = "N", defaultValue = "200",
            description = "How often what is uncertain is drawn anew to see how sure the answer is, 0 to 1000; 0 for not at all. Usually 200.")
    private int draws;

    @Mixin
    private House house;

    @Parameters(paramLabel = "WORDS", arity = "1..*",
            description = "The source, and whatever matters: how it is played, the room, the sound that is wanted, limits, who plays next to it.")
    private List<String> words;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        KnowledgeStore knowledge = house.knowledge();
        List<String> said = knowledge.faults();
        Answer answer;
        try {
            answer = new Advisor(knowledge::current).ask(new Request(String.join(" ", words), null, null, null, null, null, null, null,
                    null, null, options, null, null, draws));
        } catch (UnusableQuestion unusable) {
            unusable.faults().forEach(fault -> err.println("pairwright: " + fault.says()));
            return Main.UNUSABLE;
        }
        knowledge.faults().stream().filter(fault -> !said.contains(fault)).forEach(err::println); // a house rule that failed on it
        if (asJson) {
            ObjectMapper json = Json.mapper();
            out.println(json.writerWithDefaultPrettyPrinter().writeValueAsString(answer));
        } else {
            out.print(new AnswerText(answer, knowledge.current().catalogue(), Colour.wanted()).text());
        }
        out.flush();
        return 0;
    }
}
