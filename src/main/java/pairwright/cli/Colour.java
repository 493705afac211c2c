package pairwright.cli;

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
        boolean terminal = System.console() != null && !"dumb".equals(System.getenv("TERM"));
        return terminal && (refused == null || refused.isEmpty()) ? ANSI : NONE;
    }
}
