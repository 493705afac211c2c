package pairwright.cli;

import java.util.concurrent.Callable;
import pairwright.locker.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A unit that is no longer as it was. */
@Command(
        name = "change",
        description = "Changes what is said of a unit; all else stays. An empty text, as --note \"\", takes back what was said.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker change ribbon-3 --condition limited --note \"crackles when it is moved\""})
final class LockerChange implements Callable<Integer> {
    @Parameters(paramLabel = "UNIT", description = "Its id, tag, serial number or label.")
    private String unit;

    @Mixin
    private UnitOptions said;

    @Mixin
    private LockerAt at;

    @Override
    public Integer call() {
        return at.with(locker -> {
            Unit before = UnitNamed.of(locker, unit);
            at.change(locker, changes -> {
                Unit after = changes.alter(before.id(), said.draft(null, null, before), null);
                return "Changed " + after.id() + ", " + after.label() + ": " + after.condition().id() + (after.note() == null ? "" : ", " + UnitText.oneLine(after.note())) + ".";
            });
            return 0;
        });
    }
}
