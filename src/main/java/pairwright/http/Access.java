package pairwright.http;

import io.javalin.http.Context;
import pairwright.locker.Role;

/** Who is asking, and whether they may. */
final class Access {
    private static final String WHO = "access.who";
    private static final String ROLE = "access.role";
    /** Whoever sits at the machine itself. */
    static final String HERE = "this machine";

    private Access() {
    }

    /** Who is asking: the name of the token, or whoever sits at this machine. */
    static String who(Context context) {
        String who = context.attribute(WHO);
        return who == null ? HERE : who;
    }

    /** What they may do. */
    static Role role(Context context) {
        Role role = context.attribute(ROLE);
        return role == null ? Role.INSTRUCTOR : role;
    }
}
