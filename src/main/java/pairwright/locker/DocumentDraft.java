package pairwright.locker;

import java.time.Instant;

/**
 * What somebody writes into a document, before it is checked.
 *
 * @param id kebab case; null for one made from the name of a line-up, and for the only one of its kind that belongs to a line-up
 * @param kind what it is; never changes
 * @param name what people call it; null for that of its line-up
 * @param belongsTo id of the line-up it belongs to; null for a line-up
 * @param from when its session begins; null for not known
 * @param until when it ends; null for not known
 * @param text what is written in it, at most {@link #LONGEST} characters
 */
public record DocumentDraft(String id, DocumentKind kind, String name, String belongsTo, Instant from, Instant until, String text) {
    /** So many characters a document may have. */
    public static final int LONGEST = 300_000;

    /** A line-up. */
    public static DocumentDraft lineUp(String id, String name, Instant from, Instant until, String text) {
        return new DocumentDraft(id, DocumentKind.LINE_UP, name, null, from, until, text);
    }

    /** The only one of its kind that belongs to a line-up. */
    public static DocumentDraft of(String lineUp, DocumentKind kind, String text) {
        return new DocumentDraft(null, kind, null, lineUp, null, null, text);
    }
}
