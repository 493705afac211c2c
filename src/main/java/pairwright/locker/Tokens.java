package pairwright.locker;

import java.util.List;
import java.util.Optional;

/** Who may come in where the program is not alone on its machine. */
public final class Tokens {
    Tokens() {
    }

    /** Makes a token and returns it; it is never to be seen again. Another of that name is refused. */
    public String add(String name, Role role) {
        throw new UnsupportedOperationException();
    }

    /** Whose token it is. */
    public Optional<Token> of(String secret) {
        throw new UnsupportedOperationException();
    }

    /** Makes a token worthless at once. */
    public void revoke(String name) {
        throw new UnsupportedOperationException();
    }

    /** All of them, by name. */
    public List<Token> all() {
        throw new UnsupportedOperationException();
    }
}
