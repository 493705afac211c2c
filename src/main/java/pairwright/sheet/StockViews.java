package pairwright.sheet;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import pairwright.advice.AtHand;
import pairwright.advice.OutWords;
import pairwright.locker.Span;
import pairwright.model.Answer;
import pairwright.model.FromLocker;
import pairwright.model.Question;

/** Makes of what an answer says of the locker what a page shows. */
final class StockViews {
    private static final int MOST_UNITS = 4;
    static final String AWAY = "The locker cannot be reached just now, so nobody can say what is free. The whole catalogue was ranked. Ask again in a moment.";

    private StockViews() {
    }

    /**
     * Null where there is no locker, or nothing in it.
     *
     * @param answer may be one that was to do without the locker
     */
    static StockView of(AtQuestion at, Answer answer) {
        return answer.stock() == null && !at.hasLocker() ? null
                : new StockView(says(at, answer.question().meant()), answer.stock() == null || answer.stock().reachable() ? "" : AWAY,
                        fields(at.moments(), answer.question().meant()), at.moments().zone(), missed(at, answer.out()));
    }

    /** The same on a sheet, which stands alone: also for now. */
    static String sheet(AtQuestion at, Question question) {
        String says = says(at, question);
        return !says.isEmpty() ? says : "Needed from " + at.moments().moment(at.clock().instant().truncatedTo(ChronoUnit.MINUTES)) + ", for " + AtHand.USUAL_LENGTH.toHours() + " hours.";
    }

    /** For when, and what was ranked; empty for what is free now. */
    private static String says(AtQuestion at, Question question) {
        FromLocker use = use(question);
        String when = use == FromLocker.ANY ? "" : needed(at, question);
        String ranked = switch (use) {
            case FREE -> when.isEmpty() ? "" : "What is free then was ranked.";
            case OWNED -> "All that the locker owns was ranked, free or not.";
            case ANY -> "The whole catalogue was ranked, whatever the locker holds.";
        };
        return (when + " " + ranked).strip();
    }

    /** Whether a question that names a time or what of a locker may be used does so in vain. */
    static String inVain(Question question) {
        return question.from() == null && question.until() == null && question.locker() == null ? ""
                : "No locker here holds a microphone, so the time and what to choose from change nothing: the whole catalogue was ranked.";
    }

    private static FromLocker use(Question question) {
        return question.locker() == null ? FromLocker.FREE : question.locker();
    }

    private static String needed(AtQuestion at, Question question) {
        OffsetDateTime from = question.from();
        OffsetDateTime until = question.until();
        if (from == null && until == null) {
            return "";
        }
        Moments moments = at.moments();
        String when = from == null ? "until " + moments.moment(until.toInstant())
                : until == null ? "from " + moments.moment(from.toInstant()) + ", for " + AtHand.USUAL_LENGTH.toHours() + " hours"
                : moments.span(new Span(from.toInstant(), until.toInstant()));
        OffsetDateTime end = until != null ? until : from.plus(AtHand.USUAL_LENGTH);
        return "Needed " + when + "." + (end.toInstant().isAfter(at.clock().instant()) ? "" : " That is over.");
    }

    private static List<FormField> fields(Moments moments, Question question) {
        return List.of(FormField.moment("from", AskQuery.FIELDS.get("from")).hint("Left empty: now.").value(typed(moments, question.from())),
                FormField.moment("until", AskQuery.FIELDS.get("until")).hint("Left empty: " + AtHand.USUAL_LENGTH.toHours() + " hours on.")
                        .value(typed(moments, question.until())),
                FormField.choice("locker", AskQuery.FIELDS.get("locker"), Stream.of(FromLocker.values()).map(use -> new Choice(use.id(), named(use), false)).toList())
                        .value(use(question).id()));
    }

    private static String typed(Moments moments, OffsetDateTime at) {
        return at == null ? "" : moments.field(at.toInstant());
    }

    private static String named(FromLocker use) {
        return switch (use) {
            case FREE -> "What is free then";
            case OWNED -> "All that the locker owns";
            case ANY -> "The whole catalogue";
        };
    }

    static List<StockView.Missed> missed(AtQuestion at, List<Answer.Missed> out) {
        return out == null ? List.of() : out.stream().map(missed -> missed(at, missed)).toList();
    }

    private static StockView.Missed missed(AtQuestion at, Answer.Missed missed) {
        int units = missed.says().indexOf(OutWords.says(missed.units().get(0))); // all of them follow as a list; a label is nothing to convert
        int more = missed.units().size() - MOST_UNITS;
        return new StockView.Missed(at.visit().reader().sentence(missed.says().substring(0, units).strip()), missed.units().stream().limit(MOST_UNITS)
                .map(unit -> new StockView.Taken(unit.label(), at.visit().to("/locker/units/" + unit.id()), OutWords.says(unit).substring(unit.label().length()))).toList(),
                more <= 0 ? "" : more == 1 ? "One more is out." : more + " more are out.");
    }
}
