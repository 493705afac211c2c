package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairwright.drawing.Reader;
import pairwright.locker.Act;
import pairwright.locker.Document;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;
import pairwright.session.LineUp;
import pairwright.sheet.ReadingParts.Link;

/** One line-up and its floor: to be looked at, and for whoever may, to be changed. */
public final class SessionPage {
    static final String SENT_BEFORE = "This form was sent before with something else in it, and that was done. Press the button again if this is to be done as well";
    private static final String NEW = "/sessions/new";
    private static final String DO = "do";
    private static final String VERSION = "version";
    private static final Pattern BUTTON = Pattern.compile("(add-seat|double-seat|remove-seat|add-gobo|remove-gobo)(?:\\.(\\d{1,3}))?");
    private static final Map<String, String> DONE = Map.of("saved", "The line-up is saved.", "brought", "The line-up is taken from the file.",
            "demo", "This is a session to try it with. Change whatever you like.");

    private SessionPage() {
    }

    /** What a page asks before a session is taken out. */
    public record Removing(SendForm form, Link back) {
    }

    /** A form for a new one. */
    public static Page begin(AtSession at) {
        SessionRows rows = new SessionRows(new Sent(Map.of()));
        rows.addSeat();
        rows.addSeat();
        Sent sent = rows.sent();
        return page(at, 200, null, sent, SessionReading.of(at.at(), sent, null), List.of(), "name", "");
    }

    /** One that is kept; null for no such session. */
    public static Page of(AtSession at, String id) {
        Document document = at.document(id);
        if (document == null) {
            return null;
        }
        SessionText.Read read = at.read(document);
        if (read.lineUp() == null) {
            return at.page(200, "unreadable", document.name(), SessionsPage.trail(at), "", read.faults().stream().map(AtSession::line).toList());
        }
        Sent sent = SessionValues.of(at.at(), read.lineUp());
        return page(at, 200, document, sent, SessionReading.of(at.at(), sent, read.lineUp()), List.of(), "", DONE.getOrDefault(Objects.requireNonNullElse(at.at().visit().first("done"), ""), ""));
    }

    /** Does what a button of the form asks for; null for no such session. */
    public static UnitWritePages.Done sent(AtSession at, String id, Sent sent, Act act) {
        Document document = id == null ? null : at.document(id);
        if (id != null && document == null) {
            return null;
        }
        LineUp kept = at.kept(document);
        Matcher button = BUTTON.matcher(Objects.requireNonNullElse(sent.first(DO), ""));
        if (button.matches() || "look".equals(sent.first(DO))) {
            return new UnitWritePages.Done(null, altered(at, document, sent, kept, button.matches() ? button : null));
        }
        SessionReading reading = SessionReading.of(at.at(), sent, kept);
        return reading.faults().isEmpty() ? saved(at, document, sent, act, reading) : new UnitWritePages.Done(null, page(at, 400, document, sent, reading, reading.faults(), "", ""));
    }

    private static Page altered(AtSession at, Document document, Sent sent, LineUp kept, Matcher button) {
        Reader reader = at.at().visit().reader();
        SessionRows rows = new SessionRows(sent);
        rows.place(SessionReading.of(at.at(), sent, kept), reader);
        String focus = button == null ? "" : press(rows, button, SessionReading.of(at.at(), sent, kept).lineUp(), reader);
        Sent then = rows.sent();
        // whom a button put into the line-up has a place at once
        rows.place(SessionReading.of(at.at(), then, kept), reader);
        then = rows.sent();
        return page(at, 200, document, then, SessionReading.of(at.at(), then, kept), List.of(), focus, "");
    }

    /** Says which control it leads to. */
    private static String press(SessionRows rows, Matcher button, LineUp lineUp, Reader reader) {
        int row = button.group(2) == null ? -1 : Integer.parseInt(button.group(2));
        switch (button.group(1)) {
            case "add-seat" -> {
                return field(SessionNames.SEAT, rows.addSeat(), "what");
            }
            case "double-seat" -> {
                return row < 0 ? "" : field(SessionNames.SEAT, rows.doubleSeat(row), "player");
            }
            case "remove-seat" -> rows.removeSeat(row);
            case "add-gobo" -> {
                return field(SessionNames.GOBO, rows.addGobo(lineUp.floor(), reader), "x1M");
            }
            default -> rows.remove(SessionNames.GOBO, row);
        }
        return button.group(1).equals("remove-gobo") ? "add-gobo" : "add-seat";
    }

    private static String field(String kind, int row, String field) {
        return SessionNames.of(kind, row, field).replace('.', '-');
    }

    private static UnitWritePages.Done saved(AtSession at, Document document, Sent sent, Act act, SessionReading reading) {
        Long version = version(sent);
        try {
            String id = at.at().locker().change(act, changes -> changes.put(SessionsPage.draft(at, document == null ? null : document.id(), reading.lineUp()),
                    document == null ? null : version).id()).text();
            return new UnitWritePages.Done("/sessions/" + id + "?done=saved", null);
        } catch (LockerFault.Unusable wrong) {
            return new UnitWritePages.Done(null, page(at, 400, document, sent, reading, wrong.faults(), "", ""));
        } catch (LockerFault.Changed changed) {
            Document now = at.document(document.id());
            String says = "Somebody changed this session since you opened the page" + (now == null ? "" : ": " + now.by() + ", " + at.at().moments().moment(now.at()))
                    + ", and nothing of yours was saved. Pressing the button again puts yours in place of theirs";
            return new UnitWritePages.Done(null, page(at, 412, now == null ? document : now, sent, reading, List.of(new Fault("", says)), "", ""));
        } catch (LockerFault.KeyUsedOtherwise other) {
            return new UnitWritePages.Done(null, page(at, 422, document, sent, reading, List.of(new Fault("", SENT_BEFORE)), "", ""));
        }
    }

    private static Long version(Sent sent) {
        String text = sent.first(VERSION);
        return text == null || !text.matches("\\d{1,18}") ? null : Long.valueOf(text);
    }

    /** Asks before a session is taken out; null for no such session. */
    public static Page remove(AtSession at, String id) {
        Document document = at.document(id);
        return document == null ? null : removing(at, 200, removeForm(at, document), document);
    }

    private static SendForm removeForm(AtSession at, Document document) {
        return SendForm.to(at.at().visit(), "/sessions/" + document.id() + "/remove", "remove", List.of()).hiding(VERSION, Long.toString(document.version()));
    }

    private static Page removing(AtSession at, int status, SendForm form, Document document) {
        List<Link> trail = SessionsPage.trail(at);
        trail.add(at.at().at().link("/sessions/" + document.id(), document.name()));
        return at.page(status, "remove", "Remove " + document.name() + "?", trail, "", new Removing(form, at.at().at().link("/sessions/" + document.id(), "Keep it")));
    }

    /** Takes it out; null for no such session. */
    public static UnitWritePages.Done removed(AtSession at, String id, Sent sent, Act act) {
        Document document = at.document(id);
        if (document == null) {
            return null;
        }
        try {
            at.at().locker().change(act, changes -> {
                changes.removeDocument(id, version(sent));
                return id;
            });
            return new UnitWritePages.Done("/sessions?done=removed", null);
        } catch (LockerFault.Unusable | LockerFault.Changed | LockerFault.KeyUsedOtherwise refused) {
            return new UnitWritePages.Done(null, removing(at, 409, removeForm(at, document).wrong(refused.getMessage()), document));
        }
    }

    private static Page page(AtSession at, int status, Document document, Sent sent, SessionReading reading, List<Fault> faults, String focus, String done) {
        boolean may = at.at().mayWrite();
        String address = document == null ? NEW : "/sessions/" + document.id();
        SessionForm shown = new SessionForm(at.at(), sent, reading);
        SendForm form = shown.fields(address);
        form = document == null ? form : form.hiding(VERSION, status == 200 && sent.first(VERSION) != null ? sent.first(VERSION) : Long.toString(document.version()));
        form = faults.isEmpty() ? form : form.wrong(faults);
        List<SessionForm.Menu> menu = new ArrayList<>();
        if (document != null) {
            for (String[] one : PlanFrame.PAGES) {
                menu.add(new SessionForm.Menu(at.at().visit().to(address + (one[0].isEmpty() ? "" : "/" + one[0])), one[1], one[0].isEmpty()));
            }
        }
        SessionForm.Content content = shown.content(form, menu, focus, document == null || !may ? null : at.at().at().link(address + "/remove", "Remove it"),
                at.at().asReader("engineers change sessions"));
        return at.page(status, "session", document == null ? "New session" : document.name(), SessionsPage.trail(at), done, content);
    }
}
