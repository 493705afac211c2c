package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.BiFunction;
import pairwright.catalogue.Shown;
import pairwright.lab.LabDesk;
import pairwright.locker.ExerciseSet;
import pairwright.locker.LockerFault;
import pairwright.sheet.AtLab;
import pairwright.sheet.ExerciseBenchPage;
import pairwright.sheet.ExerciseMakePage;
import pairwright.sheet.ExerciseMarksPage;
import pairwright.sheet.ExerciseSetPage;
import pairwright.sheet.ExerciseSetsPage;
import pairwright.sheet.ExerciseSheets;
import pairwright.sheet.Page;
import pairwright.sheet.Sent;
import pairwright.sheet.UnitWritePages.Done;

/** The pages of exercises for a class: made, handed out, handed in, given back. */
final class LabClassPageRoutes {
    private static final String SETS = "/lab/exercises";
    private static final String ONE = SETS + "/{id}";

    private final LockerPageRoutes pages;
    private final LabDesk desk;

    LabClassPageRoutes(LockerPageRoutes pages, LabDesk desk) {
        this.pages = pages;
        this.desk = desk;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, SETS, context -> LockerPageRoutes.show(context, ExerciseSetsPage.of(at(context))));
        Routes.get(routes, SETS + "/new", context -> LockerPageRoutes.show(context, ExerciseMakePage.of(at(context))));
        routes.post(SETS + "/new", context -> {
            Sent sent = pages.sent(context);
            done(context, ExerciseMakePage.made(at(context), sent, FormBody.act(context, sent)));
        });
        page(routes, ONE, ExerciseSetPage::of);
        page(routes, ONE + "/handouts", ExerciseSheets::handouts);
        page(routes, ONE + "/keys", ExerciseSheets::keys);
        page(routes, ONE + "/feedback", ExerciseSheets::feedback);
        page(routes, ONE + "/marks", ExerciseMarksPage::of);
        Routes.get(routes, ONE + "/bench/{bench}", context -> {
            ExerciseSet set = set(context);
            LockerPageRoutes.show(context, ExerciseBenchPage.of(at(context), set, bench(context, set)));
        });
        routes.post(ONE + "/bench/{bench}", context -> {
            Sent sent = pages.handed(context);
            ExerciseSet set = set(context);
            done(context, ExerciseBenchPage.handedIn(at(context), set, bench(context, set), sent, FormBody.act(context, sent)));
        });
        routes.post(ONE + "/opens", context -> {
            Sent sent = pages.sent(context);
            done(context, ExerciseSetPage.opened(at(context), set(context), sent, FormBody.act(context, sent)));
        });
        routes.post(ONE + "/answers", context -> {
            Sent sent = pages.sent(context);
            done(context, ExerciseSetPage.entered(at(context), set(context), sent, FormBody.act(context, sent)));
        });
        routes.post(ONE + "/remove", context -> {
            Sent sent = pages.sent(context);
            done(context, ExerciseSetPage.removed(at(context), set(context), FormBody.act(context, sent)));
        });
    }

    private void page(RoutesConfig routes, String path, BiFunction<AtLab, ExerciseSet, Page> page) {
        Routes.get(routes, path, context -> LockerPageRoutes.show(context, page.apply(at(context), set(context))));
    }

    private AtLab at(Context context) {
        return new AtLab(pages.at(context), desk, Access.who(context));
    }

    private ExerciseSet set(Context context) {
        try {
            return desk.set(context.pathParam("id"));
        } catch (LockerFault.NotThere none) {
            throw new BadRequest(Problem.of(404, "There are no exercises \"" + Shown.of(context.pathParam("id")) + "\". All of them are at " + SETS));
        }
    }

    private static ExerciseSet.Bench bench(Context context, ExerciseSet set) {
        String number = context.pathParam("bench");
        return set.benches().stream().filter(one -> Integer.toString(one.number()).equals(number)).findFirst().orElseThrow(() -> new BadRequest(Problem.of(404,
                "There is no bench \"" + Shown.of(number) + "\". They go from 1 to " + set.benches().size() + ", and are listed at " + SETS + "/" + set.id())));
    }

    private void done(Context context, Done done) {
        if (done.page() != null) {
            LockerPageRoutes.show(context, done.page());
        } else {
            LockerPageRoutes.leadOn(context, pages.at(context), done.address());
        }
    }
}
