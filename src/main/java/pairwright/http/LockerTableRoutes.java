package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.locker.TablePreview;
import pairwright.locker.UnitTable;
import pairwright.model.Catalogue;
import pairwright.model.Word;

/** Units as a table, for programs: taken out, looked at, brought in. */
final class LockerTableRoutes {
    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final LockerJson json;
    private final LockerWrites writes;
    private final int bodyMs;

    /** How numbers are written. */
    private enum Decimals implements Word {
        POINT("point"),
        COMMA("comma");

        private final String id;

        Decimals(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }

    LockerTableRoutes(Locker locker, Supplier<Knowledge> knowledge, LockerJson json, LockerWrites writes, int bodyMs) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.json = json;
        this.writes = writes;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/locker/units.csv", this::takeOut);
        routes.post("/api/locker/units/import", this::bringIn);
    }

    private void takeOut(Context context) {
        Query query = new Query(context, "decimals");
        Decimals decimals = query.word("decimals", Decimals.values());
        query.check();
        String table = decimals == Decimals.COMMA ? UnitTable.writeWithDecimalComma(locker.units()) : UnitTable.write(locker.units());
        context.header("Cache-Control", "no-store");
        context.header("Content-Disposition", "attachment; filename=\"units.csv\"");
        context.contentType("text/csv; charset=utf-8").result(table);
    }

    /** Whoever only looks changes nothing, so a key means nothing then and is left for the table itself. */
    private void bringIn(Context context) {
        Query query = new Query(context, "preview");
        boolean look = query.yes("preview");
        query.check();
        String table = Body.csv(context, bodyMs);
        Catalogue catalogue = knowledge.get().catalogue();
        if (look) {
            TablePreview preview = UnitTable.preview(table, locker.units(), catalogue);
            LockerRoutes.answer(context, json, LockerView.Table.of(false, preview));
        } else {
            writes.write(context, table, changes -> writes.done(LockerView.Table.of(true, UnitTable.importInto(changes, table, catalogue))));
        }
    }
}
