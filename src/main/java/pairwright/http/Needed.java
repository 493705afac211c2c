package pairwright.http;

import java.util.List;
import java.util.regex.Pattern;
import pairwright.locker.Role;

/** What somebody has to be to do something. The first line that fits holds. */
enum Needed {
    /** How the server is, and what a page that asks for a token is made of. */
    OPEN("GET|HEAD", "/health/?|/assets/[^/]+", null),
    /** Questions, though some are too long for an address. */
    ASK("POST", "/api/ask(/.*)?|/api/numbers/.*|/api/listen/[^/]+|/listen", Role.READER),
    /** Whoever works at a bench, or tries alone. */
    HAND_IN("POST", "(/api)?/lab/(exercises/[^/]+/(mark|bench/[^/]+)|practice(/mark)?)", Role.READER),
    MARKS("GET|HEAD", "(/api)?/lab/exercises/(new|[^/]+/(marks|marks\\.csv|summary|feedback))", Role.INSTRUCTOR),
    TEACH("POST|PUT|PATCH|DELETE", "(/api)?/lab(/.*)?", Role.INSTRUCTOR),
    READ("GET|HEAD|OPTIONS", ".*", Role.READER),
    /** Whatever else there is, or will be and has no line here yet. */
    ELSE(".*", ".*", Role.ENGINEER);

    private static final List<Needed> ALL = List.of(values());

    private final Pattern method;
    private final Pattern path;
    private final Role role;

    Needed(String method, String path, Role role) {
        this.method = Pattern.compile(method);
        this.path = Pattern.compile(path, Pattern.DOTALL);
        this.role = role;
    }

    /** What is needed; null for nothing at all. */
    static Role role(String method, String path) {
        return ALL.stream().filter(line -> line.method.matcher(method).matches() && line.path.matcher(path).matches()).findFirst().orElse(ELSE).role;
    }
}
