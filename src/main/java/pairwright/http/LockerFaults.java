package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.locker.LockerFault;

/** Says why the locker did not do something: to a program as a problem, to a browser as a page. */
final class LockerFaults {
    private static final String RETRY_AFTER_S = "2";

    private LockerFaults() {
    }

    static void handle(RoutesConfig routes, Faults faults) {
        routes.exception(LockerFault.class, (fault, context) -> {
            context.header("Cache-Control", "no-store"); // it may say who has something
            faults.send(context, problem(fault, context));
        });
    }

    private static Problem problem(LockerFault fault, Context context) {
        if (fault instanceof LockerFault.Unusable unusable && !unusable.faults().isEmpty()) {
            return Problem.of(400, Problem.listed(unusable.faults()));
        }
        if (fault instanceof LockerFault.Taken taken) {
            return Problem.of(409, fault.getMessage()).with(taken.clashes().stream().map(LockerView.Booked::of).toList());
        }
        if (fault instanceof LockerFault.Changed changed) {
            context.header("ETag", IfMatch.tag(changed.version()));
            return Problem.of(412, fault.getMessage()).with(changed.version());
        }
        if (fault instanceof LockerFault.Unreachable) {
            context.header("Retry-After", RETRY_AFTER_S);
            return Problem.of(503, fault.getMessage());
        }
        return Problem.of(fault instanceof LockerFault.NotThere ? 404 : fault instanceof LockerFault.KeyUsedOtherwise ? 422 : 400, fault.getMessage());
    }
}
