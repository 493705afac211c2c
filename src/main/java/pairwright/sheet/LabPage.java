package pairwright.sheet;

import java.util.ArrayList;
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
     * The page; where there is a locker, it leads on to the classes that book from it.
     *
     * @param teaches whether the reader may make exercises for a class
     */
    public static String of(Html html, Visit visit, boolean teaches) {
        Addresses at = new Addresses(visit);
        List<Link> more = new ArrayList<>(List.of(at.link("/lab/course", "Course")));
        if (html.locker()) {
            more.add(at.link(AtLab.SETS, "Exercises of classes"));
            if (teaches) {
                more.add(at.link(AtLab.SETS + "/new", "Make exercises for a class"));
            }
        }
        List<KindView> kinds = KINDS.all().stream().map(Kind::info).map(info -> view(info, visit)).toList();
        return html.fill("lab/lab.jte", Map.of("frame", LabFrame.first(html, visit), "content", new Content(kinds, more)));
    }

    private static KindView view(KindInfo info, Visit visit) {
        List<Level> levels = IntStream.rangeClosed(1, KindInfo.LEVELS).mapToObj(level -> new Level(level, info.levels().get(level - 1), info.minutes().get(level - 1),
                visit.to(PracticePage.address(info.id(), level)))).toList();
        return new KindView(info.id(), info.name(), info.aim(), info.notTaught(), info.handsOn() ? "On paper, or with microphones in hand" : "On paper", levels);
    }
}
