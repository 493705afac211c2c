package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.catalogue.Shown;
import pairwright.sheet.AtSession;
import pairwright.sheet.Page;
import pairwright.sheet.Sent;
import pairwright.sheet.SessionPage;
import pairwright.sheet.SessionText;
import pairwright.sheet.SessionsPage;
import pairwright.sheet.UnitWritePages;

/** The pages of sessions: the list, a line-up with its floor, and what brings one in or takes one out. */
final class SessionPageRoutes {
    /** A line-up of a hundred seats, as its form sends it. */
    private static final int LARGEST_FORM_BYTES = 512 * 1024;

    private final LockerPageRoutes pages;
    private final SessionText text;

    SessionPageRoutes(LockerPageRoutes pages, SessionText text) {
        this.pages = pages;
        this.text = text;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/sessions", context -> LockerPageRoutes.show(context, SessionsPage.of(at(context))));
        // where a page with what is wrong with a file stands, so that its own links lead to a page
        Routes.get(routes, "/sessions/import", context -> LockerPageRoutes.show(context, SessionsPage.of(at(context))));
        routes.post("/sessions/import", context -> {
            Sent sent = pages.sent(context, LARGEST_FORM_BYTES);
            done(context, SessionsPage.brought(at(context), sent, FormBody.act(context, sent)));
        });
        routes.post("/sessions/demo", context -> {
            Sent sent = pages.sent(context);
            done(context, SessionsPage.demo(at(context), FormBody.act(context, sent)));
        });
        Routes.get(routes, "/sessions/new", context -> LockerPageRoutes.show(context, SessionPage.begin(atForm(context))));
        routes.post("/sessions/new", context -> {
            Sent sent = pages.sent(context, LARGEST_FORM_BYTES);
            done(context, SessionPage.sent(at(context), null, sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/sessions/{id}", context -> show(context, SessionPage.of(at(context), id(context))));
        routes.post("/sessions/{id}", context -> {
            Sent sent = pages.sent(context, LARGEST_FORM_BYTES);
            done(context, SessionPage.sent(at(context), id(context), sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/sessions/{id}/remove", context -> show(context, SessionPage.remove(atForm(context), id(context))));
        routes.post("/sessions/{id}/remove", context -> {
            Sent sent = pages.sent(context);
            done(context, SessionPage.removed(at(context), id(context), sent, FormBody.act(context, sent)));
        });
    }

    private AtSession at(Context context) {
        return new AtSession(pages.at(context), text);
    }

    private AtSession atForm(Context context) {
        return new AtSession(pages.atForm(context), text);
    }

    private static String id(Context context) {
        return context.pathParam("id");
    }

    private static void show(Context context, Page page) {
        if (page == null) {
            throw noSession(context);
        }
        LockerPageRoutes.show(context, page);
    }

    private void done(Context context, UnitWritePages.Done done) {
        if (done == null) {
            throw noSession(context);
        }
        if (done.page() != null) {
            LockerPageRoutes.show(context, done.page());
        } else {
            LockerPageRoutes.leadOn(context, pages.at(context), done.address());
        }
    }

    private static BadRequest noSession(Context context) {
        return new BadRequest(Problem.of(404, "There is no session \"" + Shown.of(id(context)) + "\". All of them are at /sessions"));
    }
}
