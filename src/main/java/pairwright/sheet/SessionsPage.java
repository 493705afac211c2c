package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pairwright.locker.Act;
import pairwright.locker.Document;
import pairwright.locker.DocumentDraft;
import pairwright.locker.DocumentKind;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;
import pairwright.session.LineUp;
import pairwright.sheet.ReadingParts.Link;

/** The sessions that are kept, and the ways to a new one. */
public final class SessionsPage {
    private static final int MOST = 200;
    private static final String FILE = "file";
    private static final String UNNAMED = "Session without a name";

    private SessionsPage() {
    }

    /**
     * What it shows.
     *
     * @param rows those of the latest day first
     * @param more how many others there are
     * @param begin where a new one is made; null for whoever may not
     * @param demo makes one to try it with; null for whoever may not
     * @param bring takes a file; null for whoever may not
     * @param wrong what is wrong with a file
     * @param buy what would raise their plans most
     * @param asReader why there is nothing to change; empty for whoever may
     */
    public record Content(List<Row> rows, long more, Link begin, SendForm demo, SendForm bring, List<String> wrong, Link buy, String asReader) {
    }

    /**
     * A session.
     *
     * @param when empty where that is not known
     * @param seats how many; in words where it cannot be read
     * @param written when it was last written, and by whom
     */
    public record Row(Link name, String when, String seats, String written) {
    }

    /** All of them. */
    public static Page of(AtSession at) {
        String done = "removed".equals(at.at().visit().first("done")) ? "The session is removed. The history still says what was done." : "";
        return page(at, 200, bring(at), List.of(), done);
    }

    private static SendForm bring(AtSession at) {
        return SendForm.to(at.at().visit(), "/sessions/import", "bring", List.of(FormField.lines(FILE, "The line-up").needed()
                .hint("As YAML or JSON: who plays, where, and in what room; the same that programs send to be planned.")));
    }

    private static Page page(AtSession at, int status, SendForm bring, List<String> wrong, String done) {
        boolean may = at.at().mayWrite();
        List<Row> rows = at.at().locker().documents().all(DocumentKind.LINE_UP, MOST).stream().map(document -> row(at, document)).toList();
        Content content = new Content(rows, at.at().locker().documents().count(DocumentKind.LINE_UP) - rows.size(),
                may ? at.at().at().link("/sessions/new", "New session") : null, may ? SendForm.to(at.at().visit(), "/sessions/demo", "demo", List.of()) : null, may ? bring : null, wrong, at.at().at().link("/sessions/buy", "What to buy next for them"),
                at.at().asReader("engineers make and change sessions"));
        return at.page(status, "sessions", "Sessions", List.of(), done, content);
    }

    private static Row row(AtSession at, Document document) {
        LineUp lineUp = at.kept(document);
        Moments moments = at.at().moments();
        String seats = lineUp == null ? "cannot be read as it is" : Integer.toString(lineUp.seats().size());
        return new Row(at.at().at().link("/sessions/" + document.id(), document.name()), lineUp == null ? "" : SessionForm.when(at.at(), lineUp), seats,
                moments.moment(document.at()) + " by " + document.by());
    }

    /** Keeps what somebody brought along, or says what is wrong with it. */
    public static UnitWritePages.Done brought(AtSession at, Sent sent, Act act) {
        SendForm form = bring(at).typed(sent).underAnotherKey();
        String text = sent.lines(FILE);
        if (text.isBlank()) {
            return new UnitWritePages.Done(null, page(at, 400, form.wrong(List.of(new Fault("/" + FILE, "There is no line-up yet. Paste one, or choose a file"))), List.of(), ""));
        }
        return kept(at, at.text().read(text, at.at().known()), act, "brought", form);
    }

    /** Makes the session to try it with. */
    public static UnitWritePages.Done demo(AtSession at, Act act) {
        return kept(at, at.text().read(at.text().demo(), at.at().known()), act, "demo", bring(at));
    }

    private static UnitWritePages.Done kept(AtSession at, SessionText.Read read, Act act, String done, SendForm form) {
        LineUp lineUp = read.lineUp();
        if (lineUp == null) {
            return new UnitWritePages.Done(null, page(at, 400, form, read.faults().stream().map(AtSession::line).toList(), ""));
        }
        LineUp named = lineUp.name() == null ? lineUp.named(UNNAMED) : lineUp;
        try {
            String id = at.at().locker().change(act, changes -> changes.put(draft(at, null, named), null).id()).text();
            return new UnitWritePages.Done("/sessions/" + id + "?done=" + done, null);
        } catch (LockerFault.Unusable wrong) {
            return new UnitWritePages.Done(null, page(at, 400, form, wrong.faults().stream().map(AtSession::line).toList(), ""));
        } catch (LockerFault.KeyUsedOtherwise other) {
            return new UnitWritePages.Done(null, page(at, 422, form, List.of(SendForm.sentence(SessionPage.SENT_BEFORE)), ""));
        }
    }

    static DocumentDraft draft(AtSession at, String id, LineUp lineUp) {
        return DocumentDraft.lineUp(id, lineUp.name(), lineUp.from() == null ? null : lineUp.from().toInstant(), lineUp.until() == null ? null : lineUp.until().toInstant(),
                at.text().written(lineUp));
    }

    static List<Link> trail(AtSession at) {
        return new ArrayList<>(List.of(at.at().at().link("/sessions", "Sessions")));
    }
}
