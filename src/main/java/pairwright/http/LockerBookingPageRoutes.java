package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.catalogue.Shown;
import pairwright.sheet.AtLocker;
import pairwright.sheet.BookingPage;
import pairwright.sheet.BookingWritePages;
import pairwright.sheet.BookingsPage;
import pairwright.sheet.Page;
import pairwright.sheet.Sent;
import pairwright.sheet.UnitWritePages;

/** The pages of bookings: the list, one booking, booking, altering, cancelling. */
final class LockerBookingPageRoutes {
    private final LockerPageRoutes pages;

    LockerBookingPageRoutes(LockerPageRoutes pages) {
        this.pages = pages;
    }

    void add(RoutesConfig routes) {
        pages.page(routes, "/locker/bookings", BookingsPage::of);
        Routes.get(routes, "/locker/bookings/new", context -> LockerPageRoutes.show(context, BookingWritePages.book(pages.atForm(context))));
        routes.post("/locker/bookings/new", context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            done(context, at, sent, BookingWritePages.booked(at, sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/locker/bookings/{id}", context -> show(context, pages.at(context), BookingPage.of(pages.at(context), id(context))));
        Routes.get(routes, "/locker/bookings/{id}/alter", context -> show(context, pages.at(context), BookingWritePages.alter(pages.atForm(context), id(context))));
        routes.post("/locker/bookings/{id}/alter", context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            done(context, at, sent, BookingWritePages.altered(at, id(context), sent, FormBody.act(context, sent)));
        });
        Routes.get(routes, "/locker/bookings/{id}/cancel", context -> show(context, pages.at(context), BookingWritePages.cancel(pages.atForm(context), id(context))));
        routes.post("/locker/bookings/{id}/cancel", context -> {
            Sent sent = pages.sent(context);
            AtLocker at = pages.at(context);
            done(context, at, null, BookingWritePages.cancelled(at, id(context), sent, FormBody.act(context, sent)));
        });
    }

    private static String id(Context context) {
        return context.pathParam("id");
    }

    private static void show(Context context, AtLocker at, Page page) {
        LockerPageRoutes.show(context, page == null ? gone(context, at, null) : page);
    }

    /** @param typed what is not to be lost where the booking is gone; null for nothing */
    private static void done(Context context, AtLocker at, Sent typed, UnitWritePages.Done done) {
        if (done == null) {
            LockerPageRoutes.show(context, gone(context, at, typed));
        } else if (done.page() != null) {
            LockerPageRoutes.show(context, done.page());
        } else {
            LockerPageRoutes.leadOn(context, at, done.address());
        }
    }

    private static Page gone(Context context, AtLocker at, Sent typed) {
        Page gone = BookingPage.gone(at, id(context), typed);
        if (gone == null) {
            throw new BadRequest(Problem.of(404, "There is no booking \"" + Shown.of(id(context)) + "\". What is booked is at /locker/bookings"));
        }
        return gone;
    }
}
