package pairwright.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.Instant;
import java.util.concurrent.Callable;
import pairwright.lab.DoesNotFit;
import pairwright.lab.Fits;
import pairwright.lab.LabDesk;
import pairwright.lab.Wanted;
import pairwright.locker.ExerciseSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Exercises for a class. */
@Command(
        name = "make",
        description = "Makes exercises for a class, one for each bench, and books what they use where the class has a time.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright lab make choose --level 2 --benches 3 --from 2027-03-01T10:00 --until 2027-03-01T12:00"})
final class LabMake implements Callable<Integer> {
    @Parameters(paramLabel = "KIND", description = "Which exercises; pairwright lab kinds lists them.")
    private String kind;

    @Option(names = "--level", paramLabel = "N", defaultValue = "1", description = "How hard, 1 to 5. Usually 1.")
    private int level;

    @Option(names = "--benches", paramLabel = "N", defaultValue = "1", description = "How many work at one time. Usually 1.")
    private int benches;

    @Option(names = "--seed", paramLabel = "WORDS", description = "The same gives the same. One that nobody guesses unless said.")
    private String seed;

    @Option(names = "--opens", paramLabel = "TIME", description = "From when on everybody may see the keys, written like --from. Never unless said.")
    private String opens;

    @Mixin
    private Times times;

    @Mixin
    private LabAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Instant from = times.start() == null ? null : times.start().toInstant();
        Instant until = times.end() == null ? null : times.end().toInstant();
        Wanted wanted = new Wanted(kind, seed, level, benches, from, until, opens());
        return at.made((locker, desk) -> made(desk, wanted));
    }

    private Instant opens() {
        try {
            return opens == null ? null : new MomentText(Clock.systemDefaultZone()).read(opens, false);
        } catch (IllegalArgumentException fault) {
            throw new ParameterException(spec.commandLine(), "--opens " + fault.getMessage());
        }
    }

    private int made(LabDesk desk, Wanted wanted) {
        try {
            ExerciseSet set = desk.make(wanted, LockerAt.who());
            at.locker().say("Made " + set.id() + ": " + set.kind() + ", level " + set.level() + ", for " + set.benches().size() + (set.benches().size() == 1 ? " bench" : " benches")
                    + ", from the seed " + set.seed() + "." + (set.booking() == null ? "" : " What they use is booked as " + set.booking() + "."));
            at.locker().say(LabText.spread(set));
            at.locker().say("Print the handouts with: pairwright lab show " + set.id() + at.locker().option());
            return 0;
        } catch (DoesNotFit refused) {
            PrintWriter err = spec.commandLine().getErr();
            LabText.say(err, "", "pairwright: " + refused.getMessage() + ".");
            for (Fits fits : desk.instead(refused)) {
                LabText.say(err, "  ", "- " + fits.says() + ": " + fits.kind() + " --level " + fits.level() + " --benches " + fits.benches());
            }
            return 1;
        }
    }
}
