package pairwright.sheet;

import java.util.List;
import java.util.regex.Pattern;

/**
 * One field of a form that changes something.
 *
 * @param id unlike any other on the page
 * @param name as it is sent; where a fault at {@code /channel/bank} belongs to is called {@code channel.bank}
 * @param label what it is called
 * @param kind how it is filled in
 * @param value what stands in it; empty for nothing
 * @param hint what is meant and what may be given; empty for none
 * @param choices of a choice, those of no group under an empty label
 * @param offers what is offered while a line is typed, without keeping anyone to it
 * @param required whether it must be filled in
 * @param fault what is wrong with it; null for nothing
 */
public record FormField(String id, String name, String label, Kind kind, String value, String hint, List<Choice.Group> choices, List<Choice> offers,
        boolean required, String fault) {
    private static final Pattern MOMENT = Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2})?");

    /** How a field is filled in. */
    public enum Kind {
        LINE, LINES, CHOICE,
        /** A date and a time of day, as the browser asks for them. */
        MOMENT,
        TICK
    }

    public FormField {
        choices = List.copyOf(choices);
        offers = List.copyOf(offers);
        fault = fault == null || fault.endsWith(".") || fault.endsWith("?") ? fault : fault + ".";
    }

    private static FormField of(String name, String label, Kind kind, List<Choice.Group> choices) {
        return new FormField(name.replaceAll("[^A-Za-z0-9-]", "-"), name, label, kind, "", "", choices, List.of(), false, null);
    }

    /** One line of text. */
    static FormField line(String name, String label) {
        return of(name, label, Kind.LINE, List.of());
    }

    /** Several lines of text. */
    static FormField lines(String name, String label) {
        return of(name, label, Kind.LINES, List.of());
    }

    /** A date and a time of day. */
    static FormField moment(String name, String label) {
        return of(name, label, Kind.MOMENT, List.of());
    }

    /** Something that holds or does not. */
    static FormField tick(String name, String label) {
        return of(name, label, Kind.TICK, List.of());
    }

    /** One of some; which is chosen goes by the value of the field alone. */
    static FormField choice(String name, String label, List<Choice> choices) {
        return grouped(name, label, List.of(new Choice.Group("", choices)));
    }

    /** One of some that stand in groups. */
    static FormField grouped(String name, String label, List<Choice.Group> choices) {
        return of(name, label, Kind.CHOICE, choices);
    }

    FormField hint(String says) {
        return new FormField(id, name, label, kind, value, says, choices, offers, required, fault);
    }

    FormField value(String text) {
        return new FormField(id, name, label, kind, text == null ? "" : text, hint, choices, offers, required, fault);
    }

    FormField offering(List<Choice> some) {
        return new FormField(id, name, label, kind, value, hint, choices, some, required, fault);
    }

    FormField needed() {
        return new FormField(id, name, label, kind, value, hint, choices, offers, true, fault);
    }

    /** The same with what is wrong; what was said first stays. */
    FormField wrong(String says) {
        return fault != null ? this : new FormField(id, name, label, kind, value, hint, choices, offers, required, says);
    }

    /** The same on a page where other forms have fields of these names. */
    FormField within(String form) {
        return new FormField(form + "-" + name.replaceAll("[^A-Za-z0-9-]", "-"), name, label, kind, value, hint, choices, offers, required, fault);
    }

    /** What it holds as an attribute has it: a control with a hint and a fault is told by both; null for neither. */
    public String describedBy() {
        String both = (hint.isEmpty() ? "" : id + "-hint ") + (fault == null ? "" : id + "-fault");
        return both.isEmpty() ? null : both.strip();
    }

    /** Whether a control for a date and a time of day can hold what stands in it; another would lose what was typed. */
    public boolean isMoment() {
        return value.isEmpty() || MOMENT.matcher(value).matches();
    }

    /** Whether one of its choices is what stands in it. */
    public boolean known() {
        return choices.stream().flatMap(group -> group.choices().stream()).anyMatch(choice -> choice.value().equals(value));
    }
}
