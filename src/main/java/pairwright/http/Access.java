package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Function;
import pairwright.locker.Role;
import pairwright.locker.Token;

/**
 * Who is asking, and whether they may. On a server that only its own machine can reach, everybody may do everything; elsewhere a token says who comes.
 * A token that is sent counts everywhere. No cookie is used, and a token is looked for nowhere but in its header.
 */
final class Access {
    private static final String WHO = "access.who";
    private static final String ROLE = "access.role";
    /** Whoever sits at the machine itself. */
    static final String HERE = "this machine";
    /** The server would take one method for another. */
    private static final String OTHER_METHOD = "X-HTTP-Method-Override";
    private static final String NOBODY = "nobody";
    private static final String ENTER = "When your browser asks, enter any name, and your token as the password; a program sends \"Authorization: Bearer\" and the token. "
            + "Whoever runs Pairwright here makes a token with: pairwright token add NAME --role reader";

    private final boolean open;
    private final Hosts hosts;
    private final Function<String, Optional<Token>> tokens;
    private final Tries tries;

    /**
     * @param listen where the server listens
     * @param tokens whose a token is
     * @param clock for how long somebody who tries tokens has to wait
     */
    Access(Listen listen, Function<String, Optional<Token>> tokens, Clock clock) {
        this.open = listen.open();
        this.hosts = new Hosts(listen);
        this.tokens = tokens;
        this.tries = new Tries(clock);
    }

    /** Who is asking: the name of the token, or whoever sits at this machine. */
    static String who(Context context) {
        String who = context.attribute(WHO);
        return who == null ? NOBODY : who;
    }

    /** What they may do. */
    static Role role(Context context) {
        Role role = context.attribute(ROLE);
        return role == null ? Role.READER : role;
    }

    /** Stands before every address. */
    void guard(RoutesConfig routes) {
        routes.before(this::check);
        routes.after(this::keptApart);
    }

    private void check(Context context) {
        hosts.check(context);
        if (context.header(OTHER_METHOD) != null) {
            throw new BadRequest(Problem.of(400, OTHER_METHOD + " is not taken here. Send the request with the method that is meant"));
        }
        Role needed = Needed.role(context.method().name(), context.path());
        if (needed == null) {
            return;
        }
        String authorization = context.header("Authorization");
        if (authorization == null && open) {
            comesIn(context, HERE, Role.INSTRUCTOR);
            return;
        }
        if (authorization == null) {
            throw whoAreYou(context, "This server asks who you are. " + ENTER);
        }
        Token token = known(context, Credentials.token(authorization));
        comesIn(context, token.name(), token.role());
        if (!token.role().covers(needed)) {
            throw new BadRequest(Problem.of(403, "Your token has the role " + token.role().id() + ", and this needs the role " + needed.id()
                    + ". Whoever runs Pairwright here makes one with: pairwright token add NAME --role " + needed.id()));
        }
    }

    private static void comesIn(Context context, String who, Role role) {
        context.attribute(WHO, who);
        context.attribute(ROLE, role);
    }

    private Token known(Context context, String secret) {
        String caller = Caller.of(context);
        long waitS = tries.waitS(caller);
        if (waitS > 0) {
            context.header("Retry-After", Long.toString(waitS));
            throw new BadRequest(Problem.of(429, "Too many wrong tokens came from your address. Wait " + waitS + " s, then try again with the right one"));
        }
        return (secret.isEmpty() ? Optional.<Token>empty() : tokens.apply(secret)).orElseThrow(() -> {
            tries.failed(caller);
            return whoAreYou(context, "That token is not known here: it is mistyped, or was revoked. " + ENTER);
        });
    }

    private static BadRequest whoAreYou(Context context, String says) {
        context.res().addHeader("WWW-Authenticate", "Bearer realm=\"Pairwright\"");
        context.res().addHeader("WWW-Authenticate", "Basic realm=\"Pairwright\", charset=\"UTF-8\"");
        return new BadRequest(Problem.of(401, says));
    }

    /** What somebody was let in for is for nobody else, and a refusal holds only until the next try. */
    private void keptApart(Context context) {
        if (Needed.role(context.method().name(), context.path()) == null || open && context.header("Authorization") == null) {
            return;
        }
        context.res().addHeader("Vary", "Authorization");
        if (context.attribute(WHO) == null) {
            context.header("Cache-Control", "no-store");
        } else if ("no-cache".equals(context.res().getHeader("Cache-Control"))) {
            context.header("Cache-Control", "private, no-cache");
        }
    }
}
