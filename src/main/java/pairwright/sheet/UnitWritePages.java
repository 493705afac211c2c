package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import pairwright.locker.Act;
import pairwright.locker.Changes;
import pairwright.locker.LockerFault;
import pairwright.locker.Unit;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;
import pairwright.model.Fault;
import pairwright.sheet.ReadingParts.Link;

/** Adding a unit, altering one, taking one out of the locker for good. */
public final class UnitWritePages {
    static final String VERSION = "version";

    private UnitWritePages() {
    }

    /** What was done and where that leads, or the page again with what is wrong. */
    public record Done(String address, Page page) {
    }

    /** What the page of a form shows; with no form, the kinds to choose from. */
    public record Content(String says, List<Link> kinds, SendForm form, List<String> order, String button, Link back) {
    }

    /** The first step chooses what it is, the second says the rest. */
    public static Page add(AtLocker at) {
        UnitKind kind = kind(at.visit().first("kind"));
        return kind == null ? kinds(at) : adding(at, 200, addForm(at, kind), kind);
    }

    private static UnitKind kind(String id) {
        return Stream.of(UnitKind.values()).filter(kind -> kind.id().equals(id)).findFirst().orElse(null);
    }

    private static Page kinds(AtLocker at) {
        List<Link> kinds = Stream.of(UnitKind.values()).map(kind -> at.at().link("/locker/units/new?kind=" + kind.id(), LockerChoices.named(kind))).toList();
        return at.page("unit-form", at.frame("Add a unit", "units", trail(at, null), "").withoutTimes(), "content",
                new Content("What is it?", kinds, null, List.of(), "", at.at().link("/locker", "Back to the units")));
    }

    private static SendForm addForm(AtLocker at, UnitKind kind) {
        UnitDraft draft = UnitForm.empty(kind);
        return SendForm.to(at.visit(), "/locker/units/new?kind=" + kind.id(), "unit", new UnitForm(at, kind).fields(draft));
    }

    private static Page adding(AtLocker at, int status, SendForm form, UnitKind kind) {
        return at.page(status, "unit-form", at.frame("Add a unit", "units", trail(at, null), "").withoutTimes(), "content",
                new Content(LockerChoices.named(kind) + ".", List.of(), form, names(form), "Add it", at.at().link("/locker/units/new", "Another kind")));
    }

    private static List<String> names(SendForm form) {
        return form.fields().stream().map(FormField::name).toList();
    }

    /** Adds what a form says. */
    public static Done added(AtLocker at, Sent sent, Act act) {
        UnitKind kind = kind(at.visit().first("kind"));
        if (kind == null) {
            return new Done(null, kinds(at));
        }
        UnitForm read = new UnitForm(at, kind);
        UnitDraft draft = read.draft(null, sent);
        SendForm form = addForm(at, kind).typed(sent);
        return tried(at, act, form, read.faults(), changes -> changes.add(draft).id(), "added",
                (status, wrong) -> adding(at, status, wrong, kind));
    }

    /** What is said of a unit, to be altered; null for no such unit. */
    public static Page alter(AtLocker at, String id) {
        Unit unit = at.locker().unit(id).orElse(null);
        return unit == null ? null : altering(at, 200, alterForm(at, unit).hiding(VERSION, Long.toString(unit.version())), unit);
    }

    private static SendForm alterForm(AtLocker at, Unit unit) {
        return SendForm.to(at.visit(), "/locker/units/" + unit.id() + "/alter", "unit", new UnitForm(at, unit.kind()).fields(unit.draft()));
    }

    private static Page altering(AtLocker at, int status, SendForm form, Unit unit) {
        return at.page(status, "unit-form", at.frame("Alter " + unit.label(), "units", trail(at, unit), "").withoutTimes(), "content",
                new Content("", List.of(), form, names(form), "Alter it", at.at().link("/locker/units/" + unit.id(), "Leave it as it is")));
    }

    /** Alters a unit as a form says; null for no such unit. */
    public static Done altered(AtLocker at, String id, Sent sent, Act act) {
        Unit unit = at.locker().unit(id).orElse(null);
        if (unit == null) {
            return null;
        }
        UnitForm read = new UnitForm(at, unit.kind());
        UnitDraft draft = read.draft(id, sent);
        Long version = version(sent);
        SendForm form = alterForm(at, unit).typed(sent);
        try {
            return tried(at, act, form.hiding(VERSION, Objects.requireNonNullElse(sent.first(VERSION), "")), read.faults(),
                    changes -> changes.alter(id, draft, version).id(), "altered", (status, wrong) -> altering(at, status, wrong, unit));
        } catch (LockerFault.Changed changed) {
            List<String> differs = UnitWords.differences(unit.draft(), draft, at);
            String says = "Somebody altered this unit since you opened the page, and nothing of yours was saved. Pressing the button again puts yours in place of theirs"
                    + (differs.isEmpty() ? ". By now both say the same" : ": " + String.join("; ", differs));
            return new Done(null, altering(at, 412, form.underAnotherKey().hiding(VERSION, Long.toString(changed.version())).wrong(says), unit));
        }
    }

    private static Long version(Sent sent) {
        String text = sent.first(VERSION);
        return text == null || !text.matches("\\d{1,18}") ? null : Long.valueOf(text);
    }

    /** Asks before a unit leaves for good; null for no such unit. */
    public static Page remove(AtLocker at, String id) {
        Unit unit = at.locker().unit(id).orElse(null);
        return unit == null ? null : removing(at, 200, removeForm(at, unit), unit);
    }

    private static SendForm removeForm(AtLocker at, Unit unit) {
        return SendForm.to(at.visit(), "/locker/units/" + unit.id() + "/remove", "remove", List.of()).hiding(VERSION, Long.toString(unit.version()));
    }

    private static Page removing(AtLocker at, int status, SendForm form, Unit unit) {
        return at.page(status, "unit-form", at.frame("Remove " + unit.label() + "?", "units", trail(at, unit), "").withoutTimes(), "content", new Content(
                "It leaves the locker for good. Past bookings keep its label, and the history stays. If it is lost or in repair, alter its condition instead.",
                List.of(), form, List.of(), "Remove it", at.at().link("/locker/units/" + unit.id(), "Keep it")));
    }

    /** Removes a unit; null for no such unit. */
    public static Done removed(AtLocker at, String id, Sent sent, Act act) {
        Unit unit = at.locker().unit(id).orElse(null);
        if (unit == null) {
            return null;
        }
        SendForm form = removeForm(at, unit);
        try {
            at.locker().change(act, changes -> {
                changes.remove(id, version(sent));
                return id;
            });
            return new Done("/locker?done=removed", null);
        } catch (LockerFault.Unusable | LockerFault.Taken | LockerFault.Changed | LockerFault.KeyUsedOtherwise refused) {
            return new Done(null, removing(at, 409, form.wrong(refused.getMessage()), unit));
        }
    }

    private interface Shown {
        Page page(int status, SendForm form);
    }

    /** Undoes what was only tried. */
    private static final class OnlyTried extends RuntimeException {
        private static final long serialVersionUID = 1;

        OnlyTried() {
            super(null, null, false, false);
        }
    }

    /** What the locker has against the rest of a form of which something could not be read: so all of it is told at once. */
    private static List<Fault> besides(AtLocker at, List<Fault> unread, Function<Changes, String> work) {
        try {
            at.locker().change(Act.by(""), changes -> {
                work.apply(changes);
                throw new OnlyTried();
            });
        } catch (LockerFault.Unusable wrong) {
            return wrong.faults().stream().filter(fault -> unread.stream().noneMatch(one -> one.at().equals(fault.at()))).toList();
        } catch (OnlyTried | LockerFault.Taken | LockerFault.Changed fine) {
            return List.of(); // what is taken or was changed meanwhile is told once the rest can be read
        }
        return List.of();
    }

    /** Does it and leads to the unit, or shows the form again with all that is wrong. */
    private static Done tried(AtLocker at, Act act, SendForm form, List<Fault> unread, Function<Changes, String> work, String done, Shown again) {
        List<Fault> faults = new ArrayList<>(unread);
        if (!unread.isEmpty()) {
            faults.addAll(besides(at, unread, work));
        }
        if (faults.isEmpty()) {
            try {
                return new Done("/locker/units/" + at.locker().change(act, work).text() + "?done=" + done, null);
            } catch (LockerFault.Unusable wrong) {
                faults.addAll(wrong.faults());
            } catch (LockerFault.Taken taken) {
                return new Done(null, again.page(409, form.wrong(taken.getMessage())));
            } catch (LockerFault.KeyUsedOtherwise other) {
                return new Done(null, again.page(422, form.underAnotherKey()
                        .wrong("This form was sent before with something else in it, and that was done. Press the button again if this is to be done as well")));
            }
        }
        return new Done(null, again.page(400, form.wrong(faults)));
    }

    private static List<Link> trail(AtLocker at, Unit unit) {
        return unit == null ? List.of(at.at().link("/locker", "Units"))
                : List.of(at.at().link("/locker", "Units"), at.at().link("/locker/units/" + unit.id(), unit.label()));
    }
}
