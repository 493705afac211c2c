package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.locker.Role;
import pairwright.sheet.AtLocker;
import pairwright.sheet.Html;
import pairwright.sheet.Page;
import pairwright.sheet.Sent;

/** The pages of the locker, and what they share: who reads, what a form sent, and where it leads. */
final class LockerPageRoutes {
    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final Html html;
    private final int bodyMs;
    private final Clock clock = Clock.systemDefaultZone();

    LockerPageRoutes(Locker locker, Supplier<Knowledge> knowledge, Html html, int bodyMs) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.html = html;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        new LockerUnitPageRoutes(this).add(routes);
        new LockerTimePageRoutes(this).add(routes);
        new LockerDeskPageRoutes(this).add(routes);
    }

    /** What a page is made with, for whoever asks. */
    AtLocker at(Context context) {
        return new AtLocker(html, knowledge.get(), locker, PageRoutes.visit(context), Access.role(context), clock);
    }

    /** A page at an address. */
    void page(RoutesConfig routes, String path, Function<AtLocker, Page> page) {
        Routes.get(routes, path, context -> show(context, page.apply(at(context))));
    }

    /** For a page that is a form and nothing else: whoever cannot send it is told so at once. */
    AtLocker atForm(Context context) {
        checkMayWrite(context);
        return at(context);
    }

    private static void checkMayWrite(Context context) {
        if (!Access.role(context).covers(Role.ENGINEER)) {
            throw new BadRequest(Problem.of(403, "Engineers do this. Ask one, or for a token of that role. What there is and who has it is at /locker"));
        }
    }

    /** What a form of a page sent; refused where whoever sent it may not change anything. */
    Sent sent(Context context) {
        return sent(context, FormBody.LARGEST_BYTES);
    }

    /** The same for a form of another size. */
    Sent sent(Context context, int largestBytes) {
        checkMayWrite(context);
        return FormBody.read(context, bodyMs, largestBytes);
    }

    /** What a form sent that readers fill in as well. */
    Sent handed(Context context) {
        return FormBody.read(context, bodyMs);
    }

    static void show(Context context, Page page) {
        context.status(page.status());
        PageRoutes.show(context, page.content());
    }

    /** Leads on after something was done, so that loading the page anew does not send the form anew. */
    static void leadOn(Context context, AtLocker at, String address) {
        context.redirect(at.visit().to(address), HttpStatus.SEE_OTHER);
    }
}
