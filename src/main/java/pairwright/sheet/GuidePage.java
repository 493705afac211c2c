package pairwright.sheet;

import java.util.Map;

/** How to read an answer and a drawing. */
public final class GuidePage {
    private final Html html;

    public GuidePage(Html html) {
        this.html = html;
    }

    /** The page. */
    public String page(Visit visit) {
        return html.fill("guide.jte", Map.of("shell", html.shell("How to read an answer", "guide", visit)));
    }
}
