package pairwright.locker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import pairwright.model.Catalogue;
import pairwright.model.Fault;

/** Holds the rows of a table against the units of a locker. */
final class TableCheck {
    private final Map<String, Unit> units = new HashMap<>();
    private final Map<String, Unit> byLabel = new HashMap<>();
    private final Catalogue catalogue;
    private final TableFaults faults = new TableFaults();
    private final List<TablePreview.Row> rows = new ArrayList<>();
    private final Map<String, Integer> lineOfId = new HashMap<>();
    private final Map<String, Integer> lineOfTag = new HashMap<>();

    TableCheck(List<Unit> units, Catalogue catalogue) {
        this.catalogue = catalogue;
        for (Unit unit : units) {
            this.units.put(unit.id(), unit);
            byLabel.putIfAbsent(key(unit.label()), unit);
        }
    }

    TablePreview preview(String text) {
        TableFile file = TableFile.read(text, faults);
        Map<String, Unit> tagsElsewhere = tagsElsewhere(file);
        for (TableFile.Row row : file.rows()) {
            row(row, file.decimalComma(), tagsElsewhere);
        }
        return new TablePreview(rows, faults.list(), faults.more());
    }

    private void row(TableFile.Row row, boolean decimalComma, Map<String, Unit> tagsElsewhere) {
        int before = faults.count();
        Unit now = units.get(row.cells().getOrDefault(UnitColumn.ID, "").strip());
        UnitDraft unit = new UnitRow(row, now == null ? null : now.draft(), decimalComma, faults).draft();
        if (faults.count() == before) {
            UnitChecks checks = new UnitChecks(catalogue.mics());
            Unit read = checks.read(unit, now);
            for (Fault fault : checks.faults()) {
                fault(row, UnitColumn.at(fault.at(), unit), fault.says());
            }
            unit = checks.faults().isEmpty() ? nothingForEmpty(read.draft()) : unit;
        }
        List<TablePreview.Change> changes = now == null ? List.of() : UnitRow.changes(now.draft(), unit);
        alone(row, unit, tagsElsewhere);
        if (unit.id() == null && unit.label() != null && byLabel.containsKey(key(unit.label()))) {
            fault(row, UnitColumn.LABEL, "is what unit " + byLabel.get(key(unit.label())).id() + " is called, and the row has no id. Give that id to change "
                    + "the unit, or another label for a new one");
        }
        if (faults.count() == before) {
            rows.add(new TablePreview.Row(row.line(), now == null ? TablePreview.Effect.NEW : changes.isEmpty() ? TablePreview.Effect.SAME
                    : TablePreview.Effect.CHANGED, unit, changes));
        }
    }

    /** An id and a label that are yet to be made are read as empty. */
    private static UnitDraft nothingForEmpty(UnitDraft unit) {
        return new UnitDraft(unit.id().isEmpty() ? null : unit.id(), unit.kind(), unit.micType(), unit.label().isEmpty() ? null : unit.label(), unit.serial(),
                unit.tag(), unit.pairMate(), unit.condition(), unit.note(), unit.storedAt(), unit.channel(), unit.stand(), unit.pad(), unit.booster(),
                unit.response());
    }

    /** No two rows are of one unit, and no two units share a tag. */
    private void alone(TableFile.Row row, UnitDraft unit, Map<String, Unit> tagsElsewhere) {
        if (unit.id() != null) {
            Integer other = lineOfId.putIfAbsent(unit.id(), row.line());
            if (other != null) {
                fault(row, UnitColumn.ID, "stands in line " + other + " as well. Keep one of the two rows, or give this one an id of its own");
                return;
            }
        }
        if (unit.tag() != null) {
            Integer other = lineOfTag.putIfAbsent(key(unit.tag()), row.line());
            Unit holder = tagsElsewhere.get(key(unit.tag()));
            if (other != null) {
                fault(row, UnitColumn.TAG, "stands in line " + other + " as well. Give every unit a tag of its own, or none");
            } else if (holder != null) {
                fault(row, UnitColumn.TAG, "is on unit " + holder.id() + " (" + holder.label() + "). Give every unit a tag of its own, or bring that unit "
                        + "in as well with another tag");
            }
        }
    }

    /** The tags of units the file does not speak of. */
    private Map<String, Unit> tagsElsewhere(TableFile file) {
        Set<String> ids = new HashSet<>();
        file.rows().forEach(row -> ids.add(row.cells().getOrDefault(UnitColumn.ID, "").strip()));
        Map<String, Unit> tags = new HashMap<>();
        for (Unit unit : units.values()) {
            if (unit.tag() != null && !ids.contains(unit.id())) {
                tags.put(key(unit.tag()), unit);
            }
        }
        return tags;
    }

    private void fault(TableFile.Row row, UnitColumn column, String says) {
        faults.add(new TableFault(row.line(), column == null ? null : column.title(),
                column == null ? "" : CellText.shown(row.cells().getOrDefault(column, "").strip()), says));
    }

    static String key(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
