package pairwright.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What every command that answers takes: a house folder to lay over what ships with the program. */
final class House {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--house", paramLabel = "DIR", description = "A folder with catalogue/ and rules/ of your own, laid over the built-in ones.")
    private Path folder;

    /** What is known with it, as far as it is sound; its faults are said at once. */
    KnowledgeStore knowledge() {
        KnowledgeStore knowledge = folder == null ? KnowledgeStore.builtIn() : KnowledgeStore.withHouse(checked());
        say(knowledge, spec.commandLine().getErr());
        return knowledge;
    }

    /** As much of it as is needed to find faults in what somebody wrote: no rules, unless a house has some. */
    Knowledge toCheckWith() {
        return folder == null ? KnowledgeStore.unjudging() : knowledge().current();
    }

    /** The folder; another where none is named. */
    Path or(Path usual) {
        return folder == null ? usual : checked();
    }

    private Path checked() {
        if (!Files.isDirectory(folder)) {
            throw new ParameterException(spec.commandLine(), "there is no folder " + folder
                    + ". Name one with catalogue/ or rules/ in it, or leave --house out");
        }
        return folder;
    }

    static void say(KnowledgeStore knowledge, PrintWriter err) {
        knowledge.faults().forEach(err::println);
        err.flush();
    }
}
