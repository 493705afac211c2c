package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import pairwright.model.Fault;

/**
 * A form that changes something. It is sent to the address it is shown at, which then leads on, or shows it again with what was typed and all
 * that is wrong with it.
 *
 * @param id unlike that of any other form of the page
 * @param action where it is sent
 * @param key made with the page, so that what is sent twice is done once
 * @param hidden what is sent along and not seen
 * @param fields in the order of the page
 * @param faults what is wrong and belongs to no field
 */
public record SendForm(String id, String action, String key, List<Param> hidden, List<FormField> fields, List<String> faults) {
    /** The field that holds the key. */
    public static final String KEY = "key";

    public SendForm {
        hidden = List.copyOf(hidden);
        fields = List.copyOf(fields);
        faults = List.copyOf(faults);
    }

    /** A form of its own key. */
    static SendForm to(Visit visit, String address, String id, List<FormField> fields) {
        return new SendForm(id, visit.to(address), UUID.randomUUID().toString(), List.of(), fields, List.of());
    }

    SendForm hiding(String name, String value) {
        return new SendForm(id, action, key, Param.joined(hidden, List.of(new Param(name, value))), fields, faults);
    }

    /** The same with what was typed, and with the key it came with: what was not done may be sent again under it. */
    SendForm typed(Sent sent) {
        List<FormField> filled = fields.stream()
                .map(field -> field.value(field.kind() == FormField.Kind.LINES ? sent.lines(field.name()) : sent.first(field.name()))).toList();
        return new SendForm(id, action, sent.first(KEY) == null ? key : sent.first(KEY), hidden, filled, faults);
    }

    /** The same under a new key, for what is to be done though something else was done under the old one. */
    SendForm underAnotherKey() {
        return new SendForm(id, action, UUID.randomUUID().toString(), hidden, fields, faults);
    }

    /** The same with every fault at the field it belongs to, or among those of no field. */
    SendForm wrong(List<Fault> wrong) {
        List<FormField> marked = new ArrayList<>(fields);
        List<String> rest = new ArrayList<>(faults);
        for (Fault fault : wrong) {
            int at = place(fault.at());
            if (at < 0 || marked.get(at).fault() != null) {
                rest.add(sentence(begun(fault.says())));
            } else {
                marked.set(at, marked.get(at).wrong(begun(fault.says())));
            }
        }
        return new SendForm(id, action, key, hidden, marked, rest);
    }

    /** The same with something wrong that belongs to no field. */
    SendForm wrong(String says) {
        return wrong(List.of(new Fault("", says)));
    }

    /** The field of a pointer such as /channel/bank, or the nearest above it; -1 for none. */
    private int place(String pointer) {
        for (String name = pointer.replaceFirst("^/", "").replace('/', '.'); !name.isEmpty(); name = name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : "") {
            for (int at = 0; at < fields.size(); at++) {
                if (fields.get(at).name().equals(name)) {
                    return at;
                }
            }
        }
        return -1;
    }

    /** A fault may go on from the name of its place; here it stands in a line of its own. */
    private static String begun(String says) {
        return says.matches("(?s)(is|has|holds) .*") ? "This " + says : Choices.capital(says);
    }

    static String sentence(String says) {
        return says.endsWith(".") || says.endsWith("?") ? says : says + ".";
    }

    /** Whether anything is wrong. */
    public boolean faulty() {
        return !faults.isEmpty() || fields.stream().anyMatch(field -> field.fault() != null);
    }

    /** The fields with something wrong, in the order of the page. */
    public List<FormField> wrongFields() {
        return fields.stream().filter(field -> field.fault() != null).toList();
    }

    /** A field by its name. */
    public FormField field(String name) {
        return fields.stream().filter(field -> field.name().equals(name)).findFirst().orElseThrow();
    }
}
