package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;

/** Reads what somebody wants to book, takes out or brings back. */
final class BookingBody extends JsonReader {
    static final String EXAMPLE = "{\"units\": [\"ribbon-1\"], \"from\": \"2027-03-01T10:00:00+01:00\", \"until\": \"2027-03-01T18:00:00+01:00\"}";
    private static final Set<String> FIELDS = Set.of("units", "from", "until", "kind", "for", "by", "note");

    private BookingBody() {
    }

    /**
     * What a body wants to book.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    static BookingDraft read(JsonNode root) {
        BookingBody reader = new BookingBody();
        reader.onlyKnown(root, "", FIELDS);
        return reader.sound(new BookingDraft(
                reader.texts(root, "/units"),
                reader.moment(root, "/from"),
                reader.moment(root, "/until"),
                reader.constant(root, "/kind", BookingKind.values(), "kind of booking"),
                reader.text(root, "/for"),
                reader.text(root, "/by"),
                reader.text(root, "/note")));
    }

    /**
     * A booking as a whole, as it is to be from now on: what is not there is taken away.
     *
     * @param who answers for it where nobody is named
     * @throws BadRequest with status 400 and every fault of form
     */
    static BookingDraft anew(JsonNode root, String who) {
        BookingBody reader = new BookingBody();
        for (String name : List.of("units", "from", "until")) {
            if (absent(root.path(name))) {
                reader.fault("/" + name, name + " cannot be taken away. Cancel the booking with DELETE");
            }
        }
        reader.sound(root);
        BookingDraft said = read(root);
        return new BookingDraft(said.units(), said.from(), said.until(), said.kind() == null ? BookingKind.SESSION : said.kind(),
                Objects.requireNonNullElse(said.forWhat(), ""), Objects.requireNonNullElse(said.by(), who), Objects.requireNonNullElse(said.note(), ""));
    }

    /**
     * A unit that leaves or comes back.
     *
     * @param unit whatever is typed or scanned
     * @param by who takes it; null for not said
     * @param until when it will be back, where no booking says so; null for not said
     */
    record Passing(String unit, String by, Instant until) {
    }

    /**
     * The unit that leaves.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    static Passing leaving(JsonNode root) {
        BookingBody reader = new BookingBody();
        reader.onlyKnown(root, "", Set.of("unit", "by", "until"));
        return reader.sound(new Passing(reader.scanned(root), reader.text(root, "/by"), reader.moment(root, "/until")));
    }

    /**
     * The unit that comes back.
     *
     * @throws BadRequest with status 400 and every fault of form
     */
    static Passing comingBack(JsonNode root) {
        BookingBody reader = new BookingBody();
        reader.onlyKnown(root, "", Set.of("unit"));
        return reader.sound(new Passing(reader.scanned(root), null, null));
    }

    private String scanned(JsonNode root) {
        String unit = text(root, "/unit");
        if (absent(root.path("unit")) || unit != null && unit.isBlank()) {
            fault("/unit", "unit is missing. Give the tag, serial number, label or id of what leaves or comes back");
        }
        return unit;
    }

    private Instant moment(JsonNode root, String at) {
        OffsetDateTime time = time(root, at);
        return time == null ? null : time.toInstant();
    }
}
