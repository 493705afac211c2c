package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.session.Change;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.session.Plan;
import pairwright.session.PlanDesk;
import pairwright.session.Planned;
import pairwright.session.Seat;
import pairwright.sheet.AtLocker;
import pairwright.sheet.AtPlan;
import pairwright.sheet.BleedPage;
import pairwright.sheet.CheckPage;
import pairwright.sheet.InputList;
import pairwright.sheet.PackingList;
import pairwright.sheet.Page;
import pairwright.sheet.PlanChosen;
import pairwright.sheet.PlanPage;
import pairwright.sheet.PlanSheets;
import pairwright.sheet.RePlanPage;
import pairwright.sheet.RecallPage;
import pairwright.sheet.Sent;
import pairwright.sheet.TimingPage;
import pairwright.sheet.UnitWritePages;
import pairwright.sheet.Visit;

/** The pages of a session that is planned: its plans, who hears whom, the line check, the sheets. */
final class SessionPlanPageRoutes {
    /** When to come again for what is being worked out. */
    private static final int AGAIN_S = 2;

    private final LockerPageRoutes pages;
    private final Locker locker;
    private final SessionKept kept;
    private final PlanDesk desk;
    private final ObjectMapper json;

    SessionPlanPageRoutes(LockerPageRoutes pages, Locker locker, Supplier<Knowledge> knowledge, PlanDesk desk, ObjectMapper json) {
        this.pages = pages;
        this.locker = locker;
        this.kept = new SessionKept(locker, knowledge, json);
        this.desk = desk;
        this.json = json;
    }

    void add(RoutesConfig routes) {
        page(routes, "plan", PlanPage::of);
        page(routes, "bleed", BleedPage::of);
        page(routes, "timing", TimingPage::of);
        page(routes, "replan", at -> RePlanPage.of(at, again(at)));
        page(routes, "recall", RecallPage::of);
        page(routes, "sheets", PlanSheets::index);
        routes.post("/sessions/{id}/plan/take", this::take);
        routes.post("/sessions/{id}/plan/book", this::book);
        routes.post("/sessions/{id}/plan/seat", this::seat);
        routes.post("/sessions/{id}/plan/stop", this::stop);
        routes.post("/sessions/{id}/plan/again", this::searchAgain);
        routes.post("/sessions/{id}/replan", this::change);
        Routes.get(routes, "/sessions/{id}/check", this::check);
        routes.post("/sessions/{id}/check", this::tick);
        routes.post("/sessions/{id}/recall", this::recall);
        list(routes, "input.csv", (at, plan) -> InputList.of(at, plan).csv());
        list(routes, "input.json", (at, plan) -> Routes.write(json, InputList.of(at, plan)));
        list(routes, "packing.csv", (at, plan) -> PackingList.of(at, plan).csv());
        list(routes, "packing.json", (at, plan) -> Routes.write(json, PackingList.of(at, plan)));
        Routes.get(routes, "/sessions/{id}/sheets/{name}", context -> {
            Page sheet = PlanSheets.of(at(context), context.pathParam("name"));
            if (sheet == null) {
                throw new BadRequest(Problem.of(404, "There is no sheet \"" + Shown.of(context.pathParam("name")) + "\". All of them are at /sessions/"
                        + Shown.of(id(context)) + "/sheets"));
            }
            LockerPageRoutes.show(context, sheet);
        });
    }

    private void page(RoutesConfig routes, String name, Function<AtPlan, Page> page) {
        Routes.get(routes, "/sessions/{id}/" + name, context -> LockerPageRoutes.show(context, page.apply(at(context))));
    }

    /** What a list is made of. */
    @FunctionalInterface
    private interface Listed {
        String of(AtPlan at, Plan plan);
    }

    private void list(RoutesConfig routes, String file, Listed list) {
        Routes.get(routes, "/sessions/{id}/sheets/" + file, context -> {
            AtPlan at = at(context);
            PlanChosen chosen = PlanSheets.chosen(at);
            if (chosen.plan() == null) {
                throw new BadRequest(noList(context, chosen));
            }
            if (file.endsWith(".csv")) {
                context.header("Content-Disposition", "attachment; filename=\"" + file + "\"");
            }
            context.contentType(file.endsWith(".csv") ? "text/csv; charset=utf-8" : "application/json; charset=utf-8").result(list.of(at, chosen.plan()));
        });
    }

    /** Why there is no plan of which this could be a list. */
    private static Problem noList(Context context, PlanChosen chosen) {
        String there = "/sessions/" + Shown.of(id(context)) + "/plan";
        if (chosen.waits()) {
            context.header("Retry-After", Integer.toString(AGAIN_S));
            return Problem.of(503, "The plan of this list is still being worked out: " + chosen.progress().doing() + ". Ask again in " + AGAIN_S + " seconds, or see how far it is at " + there);
        }
        return chosen.fault().isEmpty() ? Problem.of(409, "No plan is possible as it stands, so there is no list of it. What is short, and the ways out, are at " + there)
                : Problem.of(chosen.taken() ? 409 : 400, chosen.fault());
    }

    private static String id(Context context) {
        return context.pathParam("id");
    }

    private AtPlan at(Context context) {
        SessionKept.Session session = kept.session(id(context));
        return new AtPlan(pages.at(context), session.document().id(), session.lineUp(), kept.gear(session), session.picks(), session.document().booking(), desk);
    }

    private RePlanPage.Again again(AtPlan at) {
        return (before, lost, pricePoints) -> desk.again(at.lineUp(), at.gear(), before, lost, pricePoints);
    }

    /** The plan a form names, where it is there; null otherwise. */
    private Plan named(AtPlan at, Sent sent) {
        Planned planned = desk.found(at.lineUp(), at.gear());
        String rank = sent.first("plan");
        return planned == null || rank == null || !rank.matches("[1-9]\\d?") || Integer.parseInt(rank) > planned.plans().size() ? null
                : planned.plans().get(Integer.parseInt(rank) - 1);
    }

    private static void gone(Context context, AtPlan at) {
        LockerPageRoutes.show(context, PlanPage.of(at, 409, List.of("The line-up, the locker or the rules have changed since that page was made, so nothing was done. These are the plans now.")));
    }

    private void take(Context context) {
        Sent sent = pages.sent(context);
        AtPlan at = at(context);
        Plan plan = named(at, sent);
        if (plan == null) {
            gone(context, at);
            return;
        }
        kept.take(FormBody.act(context, sent), at.id(), Picks.of(plan));
        LockerPageRoutes.leadOn(context, at.at(), "/sessions/" + at.id() + "/plan?plan=" + plan.rank() + "&done=taken");
    }

    private void book(Context context) {
        Sent sent = pages.sent(context);
        AtPlan at = at(context);
        Plan plan = named(at, sent);
        if (plan == null) {
            gone(context, at);
            return;
        }
        try {
            String booking = kept.book(FormBody.act(context, sent), kept.session(at.id()), Picks.of(plan));
            LockerPageRoutes.leadOn(context, at.at(), "/locker/bookings/" + booking);
        } catch (LockerFault.Taken | LockerFault.KeyUsedOtherwise refused) {
            LockerPageRoutes.show(context, PlanPage.of(at, 409, List.of("Nothing was booked: " + refused.getMessage())));
        } catch (LockerFault.Unusable wrong) {
            LockerPageRoutes.show(context, PlanPage.of(at, 400, wrong.faults().stream().map(fault -> "Nothing was booked: " + fault.says() + ".").toList()));
        }
    }

    /** Seats somebody as it was suggested; only what keeps within the walls can have been. */
    private void seat(Context context) {
        Sent sent = pages.sent(context);
        AtLocker reader = pages.at(context);
        SessionKept.Session session = kept.session(id(context));
        LineUp lineUp = session.lineUp();
        Seat seat = lineUp.seat(Objects.requireNonNullElse(sent.first("seat"), "")).orElse(null);
        Double xM = number(sent.first("xM"));
        Double yM = number(sent.first("yM"));
        Double facingDegrees = number(sent.first("facingDegrees"));
        if (seat == null || xM == null || yM == null || facingDegrees == null || !lineUp.floor().holds(xM, yM)) {
            throw new BadRequest(Problem.of(400, "There is nobody of that name, or no such place in the room. Look at the plan again, and press the button there"));
        }
        try {
            kept.seat(FormBody.act(context, sent), session, lineUp.seated(lineUp.seats().stream().map(one -> one == seat ? one.at(xM, yM, facingDegrees) : one).toList()));
            LockerPageRoutes.leadOn(context, reader, "/sessions/" + session.document().id() + "/plan?done=seated");
        } catch (LockerFault.Changed | LockerFault.KeyUsedOtherwise meanwhile) {
            gone(context, at(context));
        }
    }

    private static Double number(String text) {
        return text == null || !text.matches("-?\\d{1,6}(\\.\\d{1,30})?") ? null : Double.valueOf(text);
    }

    private void stop(Context context) {
        pages.sent(context);
        AtPlan at = at(context);
        desk.cancel(at.id());
        desk.cancelAgain(at.lineUp());
        LockerPageRoutes.leadOn(context, at.at(), "/sessions/" + at.id());
    }

    private void searchAgain(Context context) {
        pages.sent(context);
        AtPlan at = at(context);
        desk.tryAgain(at.lineUp(), at.gear());
        LockerPageRoutes.leadOn(context, at.at(), "/sessions/" + at.id() + "/plan");
    }

    private void change(Context context) {
        Sent sent = pages.sent(context);
        AtPlan at = at(context);
        List<String> faults = new ArrayList<>();
        Visit asked = new Visit(at.at().visit().path(), merged(at.at().visit(), sent), at.at().visit().reader());
        RePlanPage.Wanted wanted = RePlanPage.wanted(asked, faults);
        Picks before = RePlanPage.before(at);
        if (!faults.isEmpty() || before == null) {
            LockerPageRoutes.leadOn(context, at.at(), RePlanPage.address(at, asked));
            return;
        }
        try {
            Change change = desk.again(at.lineUp(), at.gear(), before, wanted.lost(), wanted.pricePoints());
            if (change == null) {
                LockerPageRoutes.leadOn(context, at.at(), RePlanPage.address(at, asked));
                return;
            }
            kept.take(FormBody.act(context, sent), at.id(), Picks.of(change.plan()));
            LockerPageRoutes.leadOn(context, at.at(), "/sessions/" + at.id() + "/check");
        } catch (IllegalArgumentException | IllegalStateException none) {
            gone(context, at);
        }
    }

    private static Map<String, List<String>> merged(Visit visit, Sent sent) {
        Map<String, List<String>> all = new LinkedHashMap<>(visit.query());
        all.putAll(sent.values());
        return all;
    }

    private void check(Context context) {
        AtPlan at = at(context);
        Map<String, AtPlan.Tick> ticks = kept.ticks(at.id());
        if ("ticks".equals(context.queryParam("part"))) {
            ticked(context, at, ticks);
        } else {
            LockerPageRoutes.show(context, CheckPage.of(at, ticks));
        }
    }

    private void tick(Context context) {
        Sent sent = pages.sent(context);
        AtPlan at = at(context);
        kept.tick(Access.who(context), at.id(), CheckPage.changed(sent), OffsetDateTime.ofInstant(locker.now(), ZoneOffset.UTC));
        if (Faults.wantsPage(context.header("Accept"), context.path())) {
            String plan = at.at().visit().first("plan");
            LockerPageRoutes.leadOn(context, at.at(), "/sessions/" + at.id() + "/check" + (plan == null ? "" : "?plan=" + Visit.escaped(plan)));
        } else {
            ticked(context, at, kept.ticks(at.id()));
        }
    }

    private void ticked(Context context, AtPlan at, Map<String, AtPlan.Tick> ticks) {
        context.header("Cache-Control", "no-store");
        Routes.answer(context, json, CheckPage.ticked(at, ticks));
    }

    private void recall(Context context) {
        Sent sent = pages.sent(context);
        AtPlan at = at(context);
        UnitWritePages.Done done = RecallPage.sent(at, sent, FormBody.act(context, sent));
        if (done.page() != null) {
            LockerPageRoutes.show(context, done.page());
        } else {
            LockerPageRoutes.leadOn(context, at.at(), done.address());
        }
    }
}
