package pairwright.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Fills templates. Everything is escaped where it stands, unless it is a drawing. */
public final class Html {
    private static final String PACKAGE = "pairwright.sheet.template";
    private static final String VERSION = Optional.ofNullable(Html.class.getPackage().getImplementationVersion()).orElse("development");

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(null, ContentType.Html, Html.class.getClassLoader(), PACKAGE);
    private final Assets assets;
    private final List<Shell.Part> parts;

    /** @param assets the style sheet and script every page names */
    public Html(Assets assets) {
        this(assets, false);
    }

    /** @param locker whether the menu leads to one */
    public Html(Assets assets, boolean locker) {
        this.assets = assets;
        this.parts = locker ? Shell.WITH_LOCKER : Shell.PARTS;
    }

    /**
     * A template, filled.
     *
     * @param template name in src/main/jte, with its ending
     * @param values its parameters
     */
    String fill(String template, Map<String, Object> values) {
        StringOutput out = new StringOutput(16 * 1024);
        templates.render(template, values, out);
        return out.toString();
    }

    /** Whether there is a locker, and so classes that book from it. */
    boolean locker() {
        return parts == Shell.WITH_LOCKER;
    }

    /** What is around the content of a page. */
    Shell shell(String title, String section, Visit visit) {
        return new Shell(title, section, visit, parts, VERSION, assets.mark(), assets.style(), assets.first(), assets.script());
    }

    /**
     * A page that says what is wrong and what to do.
     *
     * @param title what is wrong, in a few words
     * @param says sentences, one to each fault
     */
    public String fault(String title, Iterable<String> says, Visit visit) {
        return fill("fault.jte", Map.of("shell", shell(title, "", visit), "says", says));
    }
}
