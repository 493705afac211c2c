package pairwright.locker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVPrinter;

/** Marks as a CSV file, one row a microphone of a session, as {@link UnitTable} writes units. */
public final class MarkTable {
    private static final List<String> COLUMNS = List.of("session", "seat", "mic", "source", "room", "player", "micType", "position", "unit", "kept", "changedTo",
            "toMicType", "toPosition", "why", "at", "by");

    private MarkTable() {
    }

    /** Marks as CSV (RFC 4180): commas, lines that end with CR LF, moments in UTC. */
    public static String write(List<Mark> marks) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, TableFile.format(','))) {
            printer.printRecord(COLUMNS);
            for (Mark mark : marks) {
                printer.printRecord(Arrays.asList(mark.session(), mark.seat(), mark.mic(), mark.source(), mark.room(), mark.player(), mark.micType(), mark.position(),
                        mark.unit(), mark.kept(), mark.changedTo(), mark.toMicType(), mark.toPosition(), mark.why(), mark.at(), mark.by()).stream()
                        .map(value -> CellText.of(value, false)).toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }
}
