package pairwright.locker;

import java.security.SecureRandom;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pairwright.model.Fault;

/** Who may come in where the program is not alone on its machine. Safe to share between threads. */
public final class Tokens {
    /** It is said in histories, on pages and in lists, so it is one short line. */
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N}\\p{M} ._'’-]{0,58}[\\p{L}\\p{N}\\p{M}.'’])?");
    /** A page asks for a dozen pieces at once; a token revoked by another program must not work for longer than this. */
    private static final long KNOWN_FOR_NS = TimeUnit.SECONDS.toNanos(1);

    private final Database database;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    /** By hash. Only tokens that were there are kept, so that no flood of wrong ones fills it. */
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    Tokens(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    private record Known(Token token, long asOfNs) {
        boolean stillHolds() {
            return System.nanoTime() - asOfNs < KNOWN_FOR_NS;
        }
    }

    /**
     * Makes a token and returns it; it is never to be seen again.
     *
     * @param name whose it is, up to 60 characters
     * @throws LockerFault.Unusable where the name cannot be used or is somebody's, whatever the case
     */
    public String add(String name, Role role) {
        String whose = name == null ? "" : name.strip();
        if (!NAME.matcher(whose).matches()) {
            throw unusable("\"" + shown(whose) + "\" cannot be the name of a token. Give 1 to 60 letters and digits, with spaces . - _ and ' between them");
        }
        String secret = Secret.random(random);
        String hash = Secret.hash(secret).orElseThrow();
        database.write(sql -> {
            for (String present : sql.all("SELECT name FROM token", row -> row.getString("name"))) {
                if (same(present, whose)) {
                    throw unusable("There is a token named \"" + present + "\" already. Revoke it first, or give another name");
                }
            }
            sql.run("INSERT INTO token (name, role, hash, since_ts) VALUES (?, ?, ?, ?)", whose, role.id(), hash, clock.instant().getEpochSecond());
            return null;
        });
        return secret;
    }

    /** Whose token it is, as of now or up to a second ago; empty where it is nobody's. */
    public Optional<Token> of(String secret) {
        if (secret == null) {
            return Optional.empty();
        }
        return Secret.hash(secret).flatMap(this::ofHash);
    }

    private Optional<Token> ofHash(String hash) {
        Known before = known.get(hash);
        if (before != null && before.stillHolds()) {
            return Optional.of(before.token());
        }
        long asOfNs = System.nanoTime();
        Optional<Token> found = database.read(sql -> sql.first("SELECT name, role, since_ts FROM token WHERE hash = ?", Tokens::token, hash));
        found.ifPresentOrElse(token -> known.put(hash, new Known(token, asOfNs)), () -> known.remove(hash));
        return found;
    }

    /**
     * Makes a token worthless, within a second also where it was used just now, or in another program that shares the locker.
     *
     * @param name whatever its case
     * @throws LockerFault.NotThere where there is none of that name
     */
    public void revoke(String name) {
        String whose = name == null ? "" : name.strip();
        try {
            database.write(sql -> {
                String present = sql.all("SELECT name FROM token", row -> row.getString("name")).stream().filter(one -> same(one, whose)).findFirst()
                        .orElseThrow(() -> new LockerFault.NotThere("There is no token named \"" + shown(whose) + "\". List them to see the names"));
                return sql.run("DELETE FROM token WHERE name = ?", present);
            });
        } finally {
            forget();
        }
    }

    /** All of them, by name. */
    public List<Token> all() {
        return database.read(sql -> sql.all("SELECT name, role, since_ts FROM token", Tokens::token)).stream()
                .sorted((one, other) -> String.CASE_INSENSITIVE_ORDER.compare(one.name(), other.name())).toList();
    }

    /** What was looked up is looked up anew. */
    void forget() {
        known.clear();
    }

    private static Token token(ResultSet row) throws SQLException {
        return new Token(row.getString("name"), role(row.getString("role")), Instant.ofEpochSecond(row.getLong("since_ts")));
    }

    private static Role role(String id) {
        return Stream.of(Role.values()).filter(role -> role.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalStateException("a token has the role " + id + ", which this program does not know"));
    }

    private static boolean same(String one, String other) {
        return one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
    }

    /** What a message can hold of it. */
    private static String shown(String name) {
        String line = name.replaceAll("\\p{Cntrl}", "?");
        return line.length() <= 60 ? line : line.substring(0, 60) + "…";
    }

    private static LockerFault.Unusable unusable(String says) {
        return new LockerFault.Unusable(List.of(new Fault("/name", says)));
    }
}
