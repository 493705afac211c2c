package pairwright.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pairwright.locker.Document;
import pairwright.locker.DocumentKind;
import pairwright.model.Fault;
import pairwright.session.LineUp;

/**
 * What the pages of line-ups are made with, for one visit.
 *
 * @param at who reads, and from what
 * @param text how a line-up is written down
 */
public record AtSession(AtLocker at, SessionText text) {
    /** What is kept under an id; null for no such session. */
    Document document(String id) {
        return at.locker().documents().of(id).filter(one -> one.kind() == DocumentKind.LINE_UP).orElse(null);
    }

    /** The line-up in it; faults where it can no longer be read, as when a house took a source away. */
    SessionText.Read read(Document document) {
        return text.read(document.text(), at.known());
    }

    /** The line-up in it as far as it can be read, for what a form does not show; null for nothing. */
    LineUp kept(Document document) {
        return document == null ? null : read(document).lineUp();
    }

    /** A page in the part of the site for sessions. */
    Page page(int status, String template, String title, List<ReadingParts.Link> trail, String done, Object content) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new LockerFrame(at.html().shell(title, "sessions", at.visit()), "", trail, done, at.moments().zone()));
        values.put("content", content);
        return new Page(status, at.html().fill("session/" + template + ".jte", values));
    }

    /** A fault of a file as one line says it. */
    static String line(Fault fault) {
        return SendForm.sentence((fault.at().isEmpty() ? "" : fault.at() + ": ") + fault.says());
    }
}
