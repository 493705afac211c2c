package pairwright.http;

/** A server that needs tokens does not start while there is none: nobody could come in, and nobody should without one. */
public final class NoToken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoToken(Listen listen) {
        super(listen.requireTokens() ? "everybody needs a token, and there is none" : "others can reach " + listen.host() + ", so everybody needs a token, and there is none");
    }
}
