package pairwright.cli;

import java.io.Console;

/** Colour on a terminal that shows it, and never the only carrier of a meaning. */
enum Colour {
    NONE("", "", "", ""),
    ANSI("\u001b[1m", "\u001b[1;31m", "\u001b[2m", "\u001b[0m");

    final String strong;
    final String alarm;
    final String faint;
    final String plain;

    Colour(String strong, String alarm, String faint, String plain) {
        this.strong = strong;
        this.alarm = alarm;
        this.faint = faint;
        this.plain = plain;
    }

    /** Colour only on a terminal, and not where NO_COLOR is set or the terminal is dumb. */
    static Colour wanted() {
        String refused = System.getenv("NO_COLOR");
        boolean terminal = isTerminal(System.console()) && !"dumb".equals(System.getenv("TERM"));
        return terminal && (refused == null || refused.isEmpty()) ? ANSI : NONE;
    }

    /** Since Java 22 there may be a console where there is no terminal, and a method to tell; before, a console is a terminal. */
    private static boolean isTerminal(Console console) {
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException before22) {
            return true;
        } catch (ReflectiveOperationException unclear) {
            return false;
        }
    }
}
