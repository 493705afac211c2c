package pairwright.cli;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import pairwright.locker.Span;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a command that looks at a time takes. */
final class Times {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--from", paramLabel = "TIME", description = {"The first moment: 2027-03-01T10:00, 2027-03-01 or 10:00 for today. Now unless said.",
            "Times are those of this machine; 2027-03-01T10:00+01:00 is of another zone."})
    private String from;

    @Option(names = "--until", paramLabel = "TIME", description = "When it ends, written like --from; a day alone is taken to its end.")
    private String until;

    boolean said() {
        return from != null || until != null;
    }

    boolean saidUntil() {
        return until != null;
    }

    /**
     * The time that was named.
     *
     * @param usual how long it is where only one end was named
     */
    Span span(Duration usual) {
        MomentText text = new MomentText(Clock.systemDefaultZone());
        Instant end = until == null ? null : read(text, "--until", until, true);
        Instant now = Instant.now();
        Instant start = from != null ? read(text, "--from", from, false) : end == null || now.isBefore(end) ? now : end.minus(usual);
        end = end == null ? start.plus(usual) : end;
        if (!start.isBefore(end)) {
            throw new ParameterException(spec.commandLine(), "--until (" + MomentText.shown(end) + ") must be after --from (" + MomentText.shown(start) + ")");
        }
        return new Span(start, end);
    }

    /** The start as it was said; null for not said. */
    OffsetDateTime start() {
        return from == null ? null : offset(read(new MomentText(Clock.systemDefaultZone()), "--from", from, false));
    }

    /** The end as it was said; null for not said. */
    OffsetDateTime end() {
        return until == null ? null : offset(read(new MomentText(Clock.systemDefaultZone()), "--until", until, true));
    }

    private static OffsetDateTime offset(Instant moment) {
        return moment.atZone(ZoneId.systemDefault()).toOffsetDateTime();
    }

    private Instant read(MomentText text, String option, String said, boolean isEnd) {
        return read(spec, text, option, said, isEnd);
    }

    /** A moment that was typed for an option of a command. */
    static Instant read(CommandSpec spec, MomentText text, String option, String said, boolean isEnd) {
        try {
            return text.read(said, isEnd);
        } catch (IllegalArgumentException unclear) {
            throw new ParameterException(spec.commandLine(), option + " " + unclear.getMessage());
        }
    }
}
