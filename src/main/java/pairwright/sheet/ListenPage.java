package pairwright.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pairwright.model.Catalogue;
import pairwright.model.Source;

/** Where recordings are given to be measured, and what was heard. */
public final class ListenPage {
    /** What can be measured, in the order of the page. */
    private static final List<Way> WAYS = List.of(
            new Way("source", "A source", "What one source sounds like, before you choose a microphone for it.",
                    List.of(new Part("file", "A recording of it alone", false, "A plain omni a metre or more away tells most. Loud and soft playing, 20 seconds at least.")), true),
            new Way("pair", "Tracks that belong together", "Whether the microphones of one source fit: delay, polarity, and what their sum does.",
                    List.of(new Part("file", "Two to six tracks, or one stereo file", true, "They begin at the same moment and have the same rate.")), false),
            new Way("change", "Before and after", "What one change did, at equal level.",
                    List.of(new Part("before", "Before", false, "The same music both times."), new Part("after", "After", false, "With one thing changed.")), false),
            new Way("bleed", "Bleed", "How much of a neighbour one microphone hears.",
                    List.of(new Part("own", "While its own source plays", false, "One microphone, at the same gain both times."), new Part("neighbour", "While only the neighbour plays", false, "The own source keeps silent.")), false));

    private ListenPage() {
    }

    /**
     * Something to measure.
     *
     * @param asks whether it is asked what plays and how loud
     */
    public record Way(String id, String name, String says, List<Part> parts, boolean asks) {
    }

    /** A file to choose, or several. */
    public record Part(String name, String label, boolean many, String hint) {
    }

    /** The ids of what can be measured. */
    public static List<String> ways() {
        return WAYS.stream().map(Way::id).toList();
    }

    /**
     * The form.
     *
     * @param faults what was wrong with what was sent; empty at first
     */
    public static String form(Html html, Visit visit, Catalogue catalogue, List<String> faults) {
        String asked = visit.first("what");
        Way way = WAYS.stream().filter(one -> one.id().equals(asked)).findFirst().orElse(WAYS.get(0));
        List<Source> sources = catalogue.sources().values().stream().sorted(Comparator.comparing(Source::name)).toList();
        return html.fill("listen.jte", Map.of("shell", html.shell(faults.isEmpty() ? "Listen" : "This cannot be measured as it is", "listen", visit), "ways", WAYS, "way", way, "sources", sources, "faults", faults));
    }

    /** What was heard. */
    static String heard(Html html, Visit visit, HeardView view) {
        return html.fill("heard.jte", Map.of("shell", html.shell(view.title(), "listen", visit), "view", view));
    }
}
