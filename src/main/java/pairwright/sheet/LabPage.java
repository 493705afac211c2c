package pairwright.sheet;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pairwright.lab.Kind;
import pairwright.lab.KindInfo;
import pairwright.lab.Kinds;
import pairwright.sheet.ReadingParts.Link;

/** Where the lab begins: what can be practised, for whom, and how long it takes. */
public final class LabPage {
    private static final Kinds KINDS = new Kinds();

    private LabPage() {
    }

    /**
     * A kind of exercise.
     *
     * @param levels the easiest first
     */
    public record KindView(String id, String name, String aim, String notTaught, String where, List<Level> levels) {
    }

    /** What a level asks, how long it takes, and where one is to be had. */
    public record Level(int number, String asks, int minutes, String practise) {
    }

    /** What the page shows. */
    public record Content(List<KindView> kinds, List<Link> more) {
    }

    /**
     * The page.
     *
     * @param more what else there is of the lab here
     */
    static String of(Html html, Visit visit, List<Link> more) {
        List<KindView> kinds = KINDS.all().stream().map(Kind::info).map(info -> view(info, visit)).toList();
        return html.fill("lab/lab.jte", Map.of("frame", LabFrame.first(html, visit), "content", new Content(kinds, more)));
    }

    /** Without a locker there is no class to make anything for. */
    public static String of(Html html, Visit visit) {
        return of(html, visit, List.of());
    }

    private static KindView view(KindInfo info, Visit visit) {
        List<Level> levels = IntStream.rangeClosed(1, KindInfo.LEVELS).mapToObj(level -> new Level(level, info.levels().get(level - 1), info.minutes().get(level - 1),
                visit.to(PracticePage.address(info.id(), level)))).toList();
        return new KindView(info.id(), info.name(), info.aim(), info.notTaught(), info.handsOn() ? "On paper, or with microphones in hand" : "On paper", levels);
    }
}
