package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.catalogue.Shown;
import pairwright.sheet.AtLocker;
import pairwright.sheet.HistoryPage;
import pairwright.sheet.Page;
import pairwright.sheet.Sent;
import pairwright.sheet.UnitPage;
import pairwright.sheet.UnitTablePage;
import pairwright.sheet.UnitWritePages;
import pairwright.sheet.UnitsPage;

/** The pages of units: the list, one unit, adding, altering, import. */
final class LockerUnitPageRoutes {
    /** Some ten thousand units, as a form sends them. */
    private static final int LARGEST_TABLE_BYTES = 6 * 1024 * 1024;

    private final LockerPageRoutes pages;

    LockerUnitPageRoutes(LockerPageRoutes pages) {
        this.pages = pages;
    }

    void add(RoutesConfig routes) {
        pages.page(routes, "/locker", UnitsPage::of);
        pages.page(routes, "/locker/history", HistoryPage::of);
        pages.page(routes, "/locker/import", UnitTablePage::of);
        routes.post("/locker/import", context -> {
            Sent sent = pages.sent(context, LARGEST_TABLE_BYTES);
            AtLocker at = pages.at(context);
            done(context, at, UnitTablePage.sent(at, sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/locker/units.csv", context -> {
            context.header("Content-Disposition", "attachment; filename=\"units.csv\"");
            context.contentType("text/csv; charset=utf-8").result(UnitTablePage.table(pages.at(context)));
        });
        Routes.get(routes, "/locker/units/new", context -> show(context, UnitWritePages.add(pages.atForm(context))));
        routes.post("/locker/units/new", context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            done(context, at, UnitWritePages.added(at, sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/locker/units/{id}", context -> show(context, UnitPage.of(pages.at(context), context.pathParam("id"))));
        routes.post("/locker/units/{id}", context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            done(context, at, UnitPage.moved(at, context.pathParam("id"), sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/locker/units/{id}/alter", context -> show(context, UnitWritePages.alter(pages.atForm(context), context.pathParam("id"))));
        routes.post("/locker/units/{id}/alter", context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            done(context, at, UnitWritePages.altered(at, context.pathParam("id"), sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/locker/units/{id}/remove", context -> show(context, UnitWritePages.remove(pages.atForm(context), context.pathParam("id"))));
        routes.post("/locker/units/{id}/remove", context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            done(context, at, UnitWritePages.removed(at, context.pathParam("id"), sent, FormBody.act(context, sent)));
        });
    }

    private static void show(Context context, Page page) {
        if (page == null) {
            throw noUnit(context);
        }
        LockerPageRoutes.show(context, page);
    }

    private static void done(Context context, AtLocker at, UnitWritePages.Done done) {
        if (done == null) {
            throw noUnit(context);
        }
        if (done.page() != null) {
            LockerPageRoutes.show(context, done.page());
        } else {
            LockerPageRoutes.leadOn(context, at, done.address());
        }
    }

    private static BadRequest noUnit(Context context) {
        return new BadRequest(Problem.of(404, "There is no unit \"" + Shown.of(context.pathParam("id")) + "\" in the locker. All of them are at /locker"));
    }
}
