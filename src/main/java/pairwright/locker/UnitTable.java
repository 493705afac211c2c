package pairwright.locker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVPrinter;
import pairwright.model.Catalogue;
import pairwright.model.Fault;

/**
 * Units as a CSV file, one row a unit, to be written and read. What is written comes back exactly, byte for byte when it is written again. How texts
 * are kept from being run by a spreadsheet is told at {@link CellText}.
 */
public final class UnitTable {
    private UnitTable() {
    }

    /**
     * Units as CSV (RFC 4180): commas, decimals with a point, lines that end with CR LF, every column.
     *
     * @param units one row each, in their order
     */
    public static String write(List<Unit> units) {
        return write(units, false);
    }

    /**
     * The same for a spreadsheet that writes decimals with a comma: semicolons, decimals with a comma, and a byte order mark, by which such programs
     * know UTF-8.
     */
    public static String writeWithDecimalComma(List<Unit> units) {
        return "\uFEFF" + write(units, true);
    }

    private static String write(List<Unit> units, boolean decimalComma) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, TableFile.format(decimalComma ? ';' : ','))) {
            printer.printRecord(UnitColumn.titles());
            for (Unit unit : units) {
                UnitDraft draft = unit.draft();
                printer.printRecord(Arrays.stream(UnitColumn.values()).map(column -> CellText.of(column.of(draft), decimalComma)).toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    /**
     * The text of a file.
     *
     * @throws LockerFault.Unusable where it is not UTF-8
     */
    public static String text(byte[] file) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(file)).toString();
        } catch (CharacterCodingException notUtf8) {
            throw new LockerFault.Unusable(List.of(new Fault("", "The file is not in UTF-8. Save it as CSV in UTF-8")));
        }
    }

    /**
     * What a file would do, with every fault; nothing is changed. A row is of the unit whose id it names, and of a new one if there is none or it names
     * none. Units the file does not name stay as they are.
     *
     * @param text commas or semicolons; with semicolons decimals may have a comma
     * @param units every unit there is
     * @param catalogue for the mic types
     */
    public static TablePreview preview(String text, List<Unit> units, Catalogue catalogue) {
        return new TableCheck(units, catalogue).preview(text);
    }

    /**
     * Brings a file in within a transaction, all of it or nothing.
     *
     * @return what it did
     * @throws LockerFault.Unusable with every fault, at pointers such as {@code /lines/3/tag}
     */
    public static TablePreview importInto(Changes changes, String text, Catalogue catalogue) {
        List<Unit> units = changes.units();
        TablePreview preview = preview(text, units, catalogue);
        if (!preview.usable()) {
            throw new LockerFault.Unusable(faults(preview));
        }
        stepAside(changes, units, preview);
        for (TablePreview.Row row : preview.rows()) {
            try {
                if (row.effect() == TablePreview.Effect.NEW) {
                    changes.add(row.unit());
                } else if (row.effect() == TablePreview.Effect.CHANGED) {
                    changes.alter(row.unit().id(), row.unit(), null);
                }
            } catch (LockerFault.Unusable refused) {
                throw new LockerFault.Unusable(refused.faults().stream()
                        .map(fault -> new Fault("/lines/" + row.line() + fault.at(), "line " + row.line() + ": " + fault.says())).toList());
            }
        }
        return preview;
    }

    /** Faults as they are said of anything that came in. */
    private static List<Fault> faults(TablePreview preview) {
        List<Fault> faults = new ArrayList<>();
        for (TableFault fault : preview.faults()) {
            faults.add(new Fault("/lines/" + fault.line() + (fault.column() == null ? "" : "/" + fault.column()), fault.sentence()));
        }
        if (preview.more() > 0) {
            faults.add(new Fault("/lines", preview.more() + " more faults are in the file. Correct the first ones, and look again"));
        }
        return faults;
    }

    /** Where units trade tags, each of them first lays its own down. */
    private static void stepAside(Changes changes, List<Unit> units, TablePreview preview) {
        Set<String> wanted = new HashSet<>();
        Set<String> giving = new HashSet<>();
        for (TablePreview.Row row : preview.rows()) {
            boolean tagChanges = row.effect() == TablePreview.Effect.NEW || row.changes().stream().anyMatch(change -> change.column().equals("tag"));
            if (tagChanges && row.unit().tag() != null) {
                wanted.add(TableCheck.key(row.unit().tag()));
            }
            if (tagChanges && row.unit().id() != null) {
                giving.add(row.unit().id());
            }
        }
        for (Unit unit : units) {
            if (unit.tag() != null && giving.contains(unit.id()) && wanted.contains(TableCheck.key(unit.tag()))) {
                changes.alter(unit.id(), unit.draft().tagged(null), null);
            }
        }
    }
}
