package pairwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import pairwright.advice.Advisor;
import pairwright.advice.AtHand;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.MoveFinder;
import pairwright.advice.UnusableQuestion;
import pairwright.advice.WhyNotFinder;
import pairwright.catalogue.Json;
import pairwright.http.HeardFile;
import pairwright.http.LockerAtHand;
import pairwright.model.Answer;
import pairwright.model.Catalogue;
import pairwright.model.FromLocker;
import pairwright.model.Moves;
import pairwright.model.MovesRequest;
import pairwright.model.Pattern;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.WhyNot;
import pairwright.model.WhyNotRequest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

    @Option(names = "--why-not", paramLabel = "TYPE", description = "Say why this mic type is not the first answer, and what would make it so.")
    private String whyNot;

    @Option(names = "--pattern", paramLabel = "PATTERN", description = "With --why-not: only in this pattern.")
    private String pattern;

    @Option(names = "--position", paramLabel = "PLACE", description = "With --why-not: only in this place.")
    private String position;

    @Option(names = "--heard", paramLabel = "WORD", description = "Say what to move when an option sounds boomy, thin, harsh, roomy and so on.")
    private String heard;

    @Option(names = "--option", paramLabel = "N", description = "With --heard: which option stands there. Usually 1.")
    private Integer option;

    @Option(names = "--played", paramLabel = "FILE", description = "Reckon with this player as a recording shows them: what listen RECORDING --source SOURCE --json printed.")
    private Path played;

    @Option(names = "--player", paramLabel = "NAME", description = "Who plays: in a house that writes down what was kept, what was kept with them counts first.")
    private String player;

    @Option(names = "--locker", paramLabel = "WORD", description = "With a locker: free for what can be had then, owned for all there is, any for every type. Usually free.")
    private FromLocker fromLocker;

    @Mixin
    private Times times;

    @Mixin
    private LockerAt at;

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
        Object answer;
        try {
            onlyTogether();
            answer = at.named() ? withLocker(knowledge) : answer(knowledge, AtHand.EVERYTHING);
        } catch (UnusableQuestion unusable) {
            unusable.faults().forEach(fault -> err.println("pairwright: " + fault.says()));
            return Main.UNUSABLE;
        }
        knowledge.faults().stream().filter(fault -> !said.contains(fault)).forEach(err::println); // a house rule that failed on it
        if (asJson) {
            out.println(Json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(answer));
        } else {
            out.print(text(answer, knowledge));
        }
        out.flush();
        if (!knowledge.faults().isEmpty()) {
            err.println("pairwright: answered without what is faulty in the house folder. Mend it and ask again; check lists every fault");
            return 1;
        }
        return 0;
    }

    private void onlyTogether() {
        if (whyNot != null && heard != null) {
            throw new ParameterException(spec.commandLine(), "--why-not and --heard are two questions. Ask one at a time");
        }
        if (whyNot == null && (pattern != null || position != null)) {
            throw new ParameterException(spec.commandLine(), "--pattern and --position go with --why-not. Add it, or leave them out");
        }
        if (!at.named() && (fromLocker != null || times.said())) {
            throw new ParameterException(spec.commandLine(), "--locker, --from and --until need a locker. Name one with --data or --database, or leave them out");
        }
        if (times.start() != null && times.end() != null) {
            times.span(AtHand.USUAL_LENGTH); // says where the end is not after the start
        }
        if (heard == null && option != null) {
            throw new ParameterException(spec.commandLine(), "--option goes with --heard. Add it, or leave it out");
        }
    }

    private Object withLocker(KnowledgeStore knowledge) {
        Object[] answer = new Object[1];
        at.with(locker -> {
            answer[0] = answer(knowledge, new LockerAtHand(locker, Clock.systemDefaultZone()));
            return 0;
        });
        return answer[0];
    }

    private Object answer(KnowledgeStore knowledge, AtHand atHand) {
        Request request = new Request(String.join(" ", words), null, null, null, null, null, null, null, null, null, options, null, null, whyNot == null && heard == null ? draws : 0)
                .at(times.start(), times.end(), fromLocker).by(player);
        if (played != null) {
            request = as(request);
        }
        if (whyNot != null) {
            return new WhyNotFinder(knowledge::current, atHand).find(new WhyNotRequest(request, whyNot, pattern(), position));
        }
        Answer answer = new Advisor(knowledge::current, atHand).ask(request);
        if (heard == null) {
            return answer;
        }
        int number = option == null ? 1 : option;
        if (answer.question().meant().source() != null && (number < 1 || number > answer.options().size())) {
            throw new ParameterException(spec.commandLine(), "There is no option " + number + ". There are " + answer.options().size());
        }
        Setup setup = answer.options().isEmpty() ? null : Setup.of(answer.options().get(number - 1));
        return new MoveFinder(knowledge::current, atHand).find(new MovesRequest(request, setup, heard));
    }

    /** The question with what a recording says of the player. */
    private Request as(Request request) {
        HeardFile.Read read;
        try {
            read = HeardFile.of(Files.readString(played), Json.mapper());
        } catch (IOException unreadable) {
            throw new ParameterException(spec.commandLine(), "--played: " + played + " cannot be read. Give the file that listen --json printed");
        }
        if (!read.faults().isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--played: " + played + ": " + String.join(". ", read.faults()));
        }
        return request.of(read.source(), read.heard());
    }

    private Pattern pattern() {
        if (pattern == null) {
            return null;
        }
        return Arrays.stream(Pattern.values()).filter(one -> one.id().equalsIgnoreCase(pattern)).findFirst().orElseThrow(() ->
                new ParameterException(spec.commandLine(), "There is no pattern \"" + pattern + "\". Use one of "
                        + Arrays.stream(Pattern.values()).map(Pattern::id).collect(Collectors.joining(", "))));
    }

    private static String text(Object answer, KnowledgeStore knowledge) {
        Catalogue catalogue = knowledge.current().catalogue();
        return answer instanceof WhyNot whyNot ? new MoreText(Colour.wanted()).of(whyNot)
                : answer instanceof Moves moves ? new MoreText(Colour.wanted()).of(moves)
                : new AnswerText((Answer) answer, catalogue, Colour.wanted()).text();
    }
}
