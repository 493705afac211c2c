package pairwright.sheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import pairwright.catalogue.Shown;
import pairwright.locker.Act;
import pairwright.locker.LockerFault;
import pairwright.locker.TablePreview;
import pairwright.locker.UnitTable;
import pairwright.model.Fault;
import pairwright.sheet.ReadingParts.Link;

/** A table of units that is brought in: first what it would do, and only then it is done. */
public final class UnitTablePage {
    private static final String TABLE = "table";
    private static final String DO = "do";
    private static final String BRING_IN = "bring-in";
    private static final String SEEN = "seen";
    private static final int MOST_ROWS = 500;

    private UnitTablePage() {
    }

    /** What would happen to one unit; what changes, from and to. */
    public record Row(int line, String effect, String unit, List<TablePreview.Change> changes) {
    }

    /** One thing that is wrong. */
    public record Wrong(int line, String column, String value, String says) {
    }

    /**
     * What it shows.
     *
     * @param mayWrite whether the reader may bring anything in
     * @param look where a table is pasted
     * @param bringIn does what was looked at; null where there is nothing to do or something is wrong
     * @param sum what would happen in a few words; empty where nothing was looked at
     * @param rows what would happen, unit by unit
     * @param more how many rows are not shown
     * @param wrong everything that is wrong
     * @param moreWrong how many faults are not listed
     * @param export where the units that are there can be had as such a table
     */
    public record Content(boolean mayWrite, SendForm look, SendForm bringIn, String sum, List<Row> rows, int more, List<Wrong> wrong, int moreWrong, List<Link> export) {
    }

    /** A page that waits for a table. */
    public static Page of(AtLocker at) {
        return page(at, 200, look(at), null, null);
    }

    private static SendForm look(AtLocker at) {
        return SendForm.to(at.visit(), "/locker/import", "look", List.of(FormField.lines(TABLE, "The table").needed()
                .hint("As CSV in UTF-8, with the names of the columns in its first line. Commas or semicolons part the cells; with semicolons decimals may have a comma.")));
    }

    /** Looks at a table, or does what was looked at. */
    public static UnitWritePages.Done sent(AtLocker at, Sent sent, Act act) {
        SendForm look = look(at).typed(sent).underAnotherKey();
        String text = sent.lines(TABLE);
        if (text.isBlank()) {
            return new UnitWritePages.Done(null, page(at, 400, look.wrong(List.of(new Fault("/" + TABLE, "There is no table yet. Paste one, or choose a file"))), null, null));
        }
        if (!BRING_IN.equals(sent.first(DO))) {
            return new UnitWritePages.Done(null, seen(at, look, text, null));
        }
        try {
            at.locker().change(act, changes -> {
                TablePreview done = UnitTable.importInto(changes, text, at.known().catalogue());
                if (!mark(done).equals(sent.first(SEEN))) {
                    throw new LockerFault.Changed("The locker was changed since you looked. This is what the table would do now", 0);
                }
                return done.sum();
            });
            return new UnitWritePages.Done("/locker?done=imported", null);
        } catch (LockerFault.Changed | LockerFault.Unusable | LockerFault.Taken | LockerFault.KeyUsedOtherwise refused) {
            return new UnitWritePages.Done(null, seen(at, look, text, refused.getMessage()));
        }
    }

    /** What the table would do, under a form that does it. */
    private static Page seen(AtLocker at, SendForm look, String text, String refused) {
        TablePreview preview = UnitTable.preview(text, at.locker().units(), at.known().catalogue());
        boolean something = preview.rows().stream().anyMatch(row -> row.effect() != TablePreview.Effect.SAME);
        SendForm bringIn = !preview.usable() || !something ? null : SendForm.to(at.visit(), "/locker/import", BRING_IN, List.of())
                .hiding(DO, BRING_IN).hiding(TABLE, text).hiding(SEEN, mark(preview));
        if (bringIn != null && refused != null) {
            bringIn = bringIn.wrong(refused);
        }
        return page(at, !preview.usable() ? 400 : refused != null ? 409 : 200, look, bringIn, preview);
    }

    private static String mark(TablePreview preview) {
        return Assets.mark(preview.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static Page page(AtLocker at, int status, SendForm look, SendForm bringIn, TablePreview preview) {
        List<Row> rows = new ArrayList<>();
        List<Wrong> wrong = new ArrayList<>();
        if (preview != null) {
            preview.rows().stream().filter(row -> row.effect() != TablePreview.Effect.SAME).forEach(row -> rows.add(row(row)));
            preview.rows().stream().filter(row -> row.effect() == TablePreview.Effect.SAME).forEach(row -> rows.add(row(row)));
            preview.faults().forEach(fault -> wrong.add(new Wrong(fault.line(), Objects.requireNonNullElse(fault.column(), "the whole row"), Shown.of(fault.value()),
                    SendForm.sentence(fault.says()))));
        }
        return at.page(status, "import", at.frame("Bring in a table", "units", List.of(at.at().link("/locker", "Units")), "").withoutTimes(), "content",
                new Content(at.mayWrite(), look, bringIn, preview == null ? "" : preview.sum(), rows.subList(0, Math.min(MOST_ROWS, rows.size())),
                        Math.max(0, rows.size() - MOST_ROWS), wrong, preview == null ? 0 : preview.more(), exports(at)));
    }

    private static Row row(TablePreview.Row row) {
        String unit = row.unit().label() != null ? row.unit().label() : row.unit().id() != null ? row.unit().id() : row.unit().micType() != null ? row.unit().micType() : "";
        return new Row(row.line(), row.effect().id(), unit, row.changes());
    }

    /** Where the units can be had as a table; for whoever writes decimals with a comma, also in the way their spreadsheet reads. */
    static List<Link> exports(AtLocker at) {
        List<Link> all = new ArrayList<>(List.of(new Link("/locker/units.csv", "Take the units as a table")));
        if (at.visit().reader().decimalSign() == ',') {
            all.add(new Link("/locker/units.csv?decimals=comma", "The same with decimal commas"));
        }
        return all;
    }

    /** Every unit as a table. */
    public static String table(AtLocker at) {
        return "comma".equals(at.visit().first("decimals")) ? UnitTable.writeWithDecimalComma(at.locker().units()) : UnitTable.write(at.locker().units());
    }
}
