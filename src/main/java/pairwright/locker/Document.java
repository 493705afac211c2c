package pairwright.locker;

import java.time.Instant;

/**
 * Something that is kept of a session as a whole.
 *
 * @param id never changes
 * @param kind what it is
 * @param name what people call it
 * @param belongsTo id of the line-up it belongs to; null for a line-up
 * @param from when its session begins; null for not known
 * @param until when it ends; null for not known
 * @param booking number of the booking that was made for it, which may have been cancelled since; null for none
 * @param text what is written in it, as JSON; the locker does not read it
 * @param version rises with every change of what is written, from 1
 * @param at when it was last written
 * @param by who did
 */
public record Document(String id, DocumentKind kind, String name, String belongsTo, Instant from, Instant until, String booking, String text, long version,
        Instant at, String by) {

    /** The id of what a line-up has one of: no line-up has such an id. */
    public static String idOf(String lineUp, DocumentKind kind) {
        return lineUp + "." + kind.id();
    }

    /** What is said in it, to be altered. */
    public DocumentDraft draft() {
        return new DocumentDraft(id, kind, name, belongsTo, from, until, text);
    }
}
