package pairwright.http;

import io.javalin.config.RoutesConfig;
import pairwright.sheet.AtLocker;
import pairwright.sheet.DeskPage;
import pairwright.sheet.Sent;
import pairwright.sheet.UnitWritePages;

/** The page of the desk, where units go out and come back. */
final class LockerDeskPageRoutes {
    private final LockerPageRoutes pages;

    LockerDeskPageRoutes(LockerPageRoutes pages) {
        this.pages = pages;
    }

    void add(RoutesConfig routes) {
        pages.page(routes, DeskPage.ADDRESS, DeskPage::of);
        routes.post(DeskPage.ADDRESS, context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            UnitWritePages.Done done = DeskPage.sent(at, sent, FormBody.act(context, sent));
            if (done.page() != null) {
                LockerPageRoutes.show(context, done.page());
            } else {
                LockerPageRoutes.leadOn(context, at, done.address());
            }
        });
    }
}
