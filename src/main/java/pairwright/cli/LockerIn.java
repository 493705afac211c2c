package pairwright.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Scanner;
import java.util.concurrent.Callable;
import pairwright.locker.Booking;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Units that are back in their place. */
@Command(
        name = "in",
        description = "Units are back in their place; what is left of their bookings is free again.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker in 0117 0118"})
final class LockerIn implements Callable<Integer> {
    @Parameters(paramLabel = "TAG", arity = "1..*", description = "What is scanned or typed; - for one on each line of the standard input.")
    private List<String> tags;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return at.with(locker -> {
            int exit = 0;
            for (String tag : tags) {
                exit = Math.max(exit, tag.equals("-") ? scanned(locker) : back(locker, tag));
            }
            return exit;
        });
    }

    private int scanned(Locker locker) {
        int exit = 0;
        Scanner lines = new Scanner(System.in, StandardCharsets.UTF_8);
        while (lines.hasNextLine()) {
            String tag = lines.nextLine().strip();
            exit = Math.max(exit, tag.isEmpty() ? 0 : back(locker, tag));
        }
        return exit;
    }

    /** One that cannot be brought back does not hold up those behind it. */
    private int back(Locker locker, String tag) {
        try {
            at.change(locker, changes -> {
                Booking booking = changes.bringBack(tag);
                return tag + " is back, from booking " + booking.id() + (booking.forWhat().isEmpty() ? "" : ", " + booking.forWhat()) + ".";
            });
            spec.commandLine().getOut().flush();
            return 0;
        } catch (LockerFault.Unreachable away) {
            throw away;
        } catch (LockerFault fault) {
            spec.commandLine().getErr().println("pairwright: " + AnswerText.harmless(fault.getMessage()));
            return 1;
        }
    }
}
