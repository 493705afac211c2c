package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.advice.AtHand;
import pairwright.advice.CoverageDesk;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Span;
import pairwright.model.FromLocker;
import pairwright.model.Stock;
import pairwright.sheet.CoveragePage;

/** Which sources the locker serves, and how well: for programs and as a page. */
final class CoverageRoutes {
    private final Locker locker;
    private final CoverageDesk desk;
    private final LockerJson json;
    private final LockerPageRoutes pages;

    CoverageRoutes(Locker locker, CoverageDesk desk, ObjectMapper json, LockerPageRoutes pages) {
        this.locker = locker;
        this.desk = desk;
        this.json = new LockerJson(json);
        this.pages = pages;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/locker/coverage", this::coverage);
        pages.page(routes, "/locker/coverage", at -> CoveragePage.of(at, desk));
    }

    private void coverage(Context context) {
        Query query = new Query(context, "from", "until", "locker");
        boolean timed = query.has("from") || query.has("until");
        FromLocker use = query.word("locker", new FromLocker[] {FromLocker.OWNED, FromLocker.FREE});
        use = use == null ? timed ? FromLocker.FREE : FromLocker.OWNED : use;
        if (use == FromLocker.OWNED && timed) {
            query.fault("locker", "what is owned is looked at for no time. Leave from and until out, or say locker=free");
        }
        Span span = use == FromLocker.OWNED ? null : query.span(locker.now(), AtHand.USUAL_LENGTH);
        query.check();
        LockerRoutes.answer(context, json, CoverageView.of(desk.state(stock(locker, span), use), use, span));
    }

    /** The units there are, and how they stand for a time; for now where there is none. */
    static Stock stock(Locker locker, Span span) {
        Stock stock = locker.stock(span == null ? new Span(locker.now(), locker.now().plus(AtHand.USUAL_LENGTH)) : span);
        if (stock != null && !stock.reachable()) {
            throw new LockerFault.Unreachable("The locker does not answer just now. Try again in a moment");
        }
        return stock;
    }
}
