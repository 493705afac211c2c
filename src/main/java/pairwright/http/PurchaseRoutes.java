package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.advice.AtHand;
import pairwright.locker.Locker;
import pairwright.locker.Span;
import pairwright.session.GearOf;
import pairwright.session.PurchaseDesk;
import pairwright.session.Purchases.Wish;
import pairwright.sheet.PurchasePage;

/** What to buy next for the stored sessions: for programs and as a page. */
final class PurchaseRoutes {
    private final Locker locker;
    private final SessionStore store;
    private final PurchaseDesk desk;
    private final LockerJson json;
    private final LockerPageRoutes pages;

    PurchaseRoutes(Locker locker, SessionStore store, PurchaseDesk desk, ObjectMapper json, LockerPageRoutes pages) {
        this.locker = locker;
        this.store = store;
        this.desk = desk;
        this.json = new LockerJson(json);
        this.pages = pages;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/sessions/purchases", this::purchases);
        pages.page(routes, "/sessions/buy", at -> PurchasePage.of(at, store.lineUps(), desk));
    }

    private void purchases(Context context) {
        Query query = new Query(context, "budget", "mostTier");
        Long budget = query.whole("budget", 0, Wish.MOST_BUDGET);
        Long mostTier = query.whole("mostTier", 1, Wish.DEAREST);
        query.check();
        LockerRoutes.answer(context, json, PurchaseView.of(desk.state(new Wish(store.lineUps(), GearOf.owned(locker, new Span(locker.now(), locker.now().plus(AtHand.USUAL_LENGTH))),
                budget == null ? Wish.USUAL_BUDGET : budget.intValue(), mostTier == null ? Wish.DEAREST : mostTier.intValue()))));
    }
}
