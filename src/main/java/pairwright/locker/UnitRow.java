package pairwright.locker;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A row of a table as what it says of a unit. A column the file does not have says nothing, so the unit keeps what it has there; an empty cell takes
 * it away, but for the label, which every unit has.
 */
final class UnitRow {
    private final Map<UnitColumn, Object> values = new EnumMap<>(UnitColumn.class);

    /**
     * @param now the unit as it is; null for a new one
     */
    UnitRow(TableFile.Row row, UnitDraft now, boolean decimalComma, TableFaults faults) {
        for (UnitColumn column : UnitColumn.values()) {
            String cell = row.cells().get(column);
            Object value;
            if (cell == null) {
                value = now == null ? null : column.of(now);
            } else {
                CellReader reader = new CellReader(decimalComma,
                        says -> faults.add(new TableFault(row.line(), column.title(), CellText.shown(cell.strip()), says)));
                value = reader.read(column.form(), cell);
            }
            values.put(column, value);
        }
        if (now != null) {
            values.putIfAbsent(UnitColumn.LABEL, now.label());
        }
        values.putIfAbsent(UnitColumn.CONDITION, Condition.GOOD);
        if (values.get(UnitColumn.MIC_TYPE) != null) {
            values.putIfAbsent(UnitColumn.KIND, UnitKind.MIC);
        }
    }

    UnitDraft draft() {
        UnitKind kind = value(UnitColumn.KIND);
        return new UnitDraft(value(UnitColumn.ID), kind, value(UnitColumn.MIC_TYPE), value(UnitColumn.LABEL), value(UnitColumn.SERIAL),
                value(UnitColumn.TAG), value(UnitColumn.PAIR_MATE), value(UnitColumn.CONDITION), value(UnitColumn.NOTE), value(UnitColumn.STORED_AT),
                kind == UnitKind.CHANNEL || any(UnitColumn.BANK, UnitColumn.PHANTOM_CURRENT)
                        ? new ChannelData(value(UnitColumn.BANK), value(UnitColumn.LEAST_GAIN), value(UnitColumn.MOST_GAIN), value(UnitColumn.INPUT),
                                value(UnitColumn.NOISE), value(UnitColumn.PHANTOM), value(UnitColumn.PHANTOM_CURRENT))
                        : null,
                kind == UnitKind.STAND || any(UnitColumn.MASS, UnitColumn.HEIGHT)
                        ? new StandData(value(UnitColumn.MASS), value(UnitColumn.REACH), value(UnitColumn.FOOT_RADIUS), value(UnitColumn.LEGS),
                                value(UnitColumn.HEIGHT))
                        : null,
                kind == UnitKind.PAD || any(UnitColumn.LOSS, UnitColumn.LOSS) ? new PadData(value(UnitColumn.LOSS), kind == UnitKind.PAD ? value(UnitColumn.PASSES_PHANTOM) : null) : null,
                kind == UnitKind.BOOSTER || any(UnitColumn.BOOSTER_GAIN, kind == UnitKind.PAD ? UnitColumn.BOOSTER_PHANTOM : UnitColumn.PASSES_PHANTOM)
                        ? new BoosterData(value(UnitColumn.BOOSTER_GAIN), value(UnitColumn.BOOSTER_PHANTOM), kind == UnitKind.PAD ? null : value(UnitColumn.PASSES_PHANTOM))
                        : null,
                value(UnitColumn.RESPONSE));
    }

    /** What differs between two drafts, column by column. */
    static List<TablePreview.Change> changes(UnitDraft from, UnitDraft to) {
        List<TablePreview.Change> changes = new ArrayList<>();
        for (UnitColumn column : UnitColumn.values()) {
            String before = CellText.of(column.of(from), false);
            String after = CellText.of(column.of(to), false);
            if (!before.equals(after)) {
                changes.add(new TablePreview.Change(column.title(), before, after));
            }
        }
        return changes;
    }

    private boolean any(UnitColumn from, UnitColumn to) {
        return values.entrySet().stream().anyMatch(entry -> entry.getKey().compareTo(from) >= 0 && entry.getKey().compareTo(to) <= 0 && entry.getValue() != null);
    }

    @SuppressWarnings("unchecked") // a column's form says what its cells hold
    private <T> T value(UnitColumn column) {
        return (T) values.get(column);
    }
}
