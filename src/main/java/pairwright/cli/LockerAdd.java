package pairwright.cli;

import java.util.concurrent.Callable;
import pairwright.locker.Unit;
import pairwright.locker.UnitKind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A new unit. */
@Command(
        name = "add",
        description = "Adds a unit. Many at once: pairwright locker import.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker add --type long-ribbon --label \"Ribbon 3\" --tag 0117 --stored \"shelf 2\""})
final class LockerAdd implements Callable<Integer> {
    @Mixin
    private UnitOptions said;

    @Option(names = "--id", paramLabel = "ID", description = "Small letters, digits and hyphens; made from the label unless said.")
    private String id;

    @Option(names = "--kind", paramLabel = "KIND", description = "mic, channel, pad, booster or stand. mic unless said.")
    private UnitKind kind;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.made(locker -> {
            at.change(locker, changes -> {
                Unit added = changes.add(said.draft(id, kind, null));
                return "Added " + added.id() + ", " + added.label() + ".";
            });
            return 0;
        });
    }
}
