package pairwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import pairwright.advice.AtHand;
import pairwright.locker.Booking;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.Span;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Units for a time. */
@Command(
        name = "book",
        description = "Books units for a time: all of them, or none.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright locker book ribbon-3 ribbon-4 --from 2027-03-01T10:00 --until 2027-03-01T18:00 --for \"sextet, first day\""})
final class LockerBook implements Callable<Integer> {
    @Parameters(paramLabel = "UNIT", arity = "1..*", description = "Ids, tags, serial numbers or labels.")
    private List<String> units;

    @Option(names = "--for", paramLabel = "WHAT", description = "The session, class, borrower or workshop.")
    private String forWhat;

    @Option(names = "--by", paramLabel = "NAME", description = "Who answers for it. You unless said.")
    private String by;

    @Option(names = "--kind", paramLabel = "KIND", description = "session, lab, loan or repair. session unless said.")
    private BookingKind kind;

    @Option(names = "--note", paramLabel = "WORDS", description = "What else to know.")
    private String note;

    @Mixin
    private Times times;

    @Mixin
    private LockerAt at;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!times.saidUntil()) {
            throw new ParameterException(spec.commandLine(), "--until is missing. Say when the booking ends, such as --until 18:00");
        }
        Span span = times.span(AtHand.USUAL_LENGTH);
        return at.with(locker -> {
            List<String> ids = units.stream().map(unit -> UnitNamed.of(locker, unit).id()).toList();
            at.change(locker, changes -> {
                Booking made = changes.book(new BookingDraft(ids, span.from(), span.until(), kind, forWhat, by, note));
                return "Booked as " + made.id() + ": " + String.join(", ", made.units()) + " from " + MomentText.shown(made.span().from()) + " until "
                        + MomentText.shown(made.span().until()) + ".";
            });
            return 0;
        });
    }
}
