package pairwright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import pairwright.lab.Kind;
import pairwright.lab.KindInfo;
import pairwright.lab.Kinds;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What can be made. */
@Command(
        name = "kinds",
        description = "Lists the kinds of exercises: what each aims at, what it does not teach, and its levels.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE)
final class LabKinds implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        for (Kind kind : new Kinds().all()) {
            KindInfo info = kind.info();
            out.println(info.id() + ": " + info.name() + (info.handsOn() ? "" : " (on paper)"));
            LabText.say(out, "  ", "Aim: " + info.aim());
            LabText.say(out, "  ", "Not taught: " + info.notTaught());
            IntStream.range(0, KindInfo.LEVELS).forEach(level -> LabText.say(out, "  ", level + 1 + ". " + info.levels().get(level) + ", " + info.minutes().get(level) + " minutes"));
            out.println();
        }
        out.println("Make some with: pairwright lab make KIND --level 1 --benches 6");
        return 0;
    }
}
