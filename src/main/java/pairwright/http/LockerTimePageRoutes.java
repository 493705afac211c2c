package pairwright.http;

import io.javalin.config.RoutesConfig;
import pairwright.sheet.MonthPage;

/** The pages of time: bookings, the desk where units go out and come back, the month, coverage. */
final class LockerTimePageRoutes {
    private final LockerPageRoutes pages;

    LockerTimePageRoutes(LockerPageRoutes pages) {
        this.pages = pages;
    }

    void add(RoutesConfig routes) {
        new LockerBookingPageRoutes(pages).add(routes);
        pages.page(routes, "/locker/month", MonthPage::of);
    }
}
