package pairwright.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pairwright.lab.Answer;
import pairwright.lab.Key;
import pairwright.lab.KindInfo;
import pairwright.lab.LabDesk;
import pairwright.locker.ExerciseSet;
import pairwright.locker.Role;
import pairwright.sheet.ReadingParts.Link;

/**
 * What the pages of a class are made with, for one visit.
 *
 * @param at who reads, and from what
 * @param desk where exercises are made, handed in and marked
 * @param who the reader is
 */
public record AtLab(AtLocker at, LabDesk desk, String who) {
    static final String SETS = "/lab/exercises";

    /** Whether the reader may make exercises, and see every key and mark. */
    boolean teaches() {
        return at.role().covers(Role.INSTRUCTOR);
    }

    /** Whether the reader may see the keys by now. */
    boolean sees(ExerciseSet set) {
        return desk.open(set, at.role());
    }

    LabLinks links() {
        return new LabLinks(new Desk(at.html(), at.known(), at.visit()));
    }

    static String path(ExerciseSet set, String more) {
        return SETS + "/" + set.id() + (more.isEmpty() ? "" : "/" + more);
    }

    Link link(ExerciseSet set, String more, String text) {
        return at.at().link(path(set, more), text);
    }

    KindInfo kind(ExerciseSet set) {
        return desk.kinds().stream().filter(info -> info.id().equals(set.kind())).findFirst().orElse(null);
    }

    /** "Choose and justify, level 2". */
    String name(ExerciseSet set) {
        KindInfo info = kind(set);
        return (info == null ? set.kind() : info.name()) + ", level " + set.level();
    }

    /** When the class is; empty where nobody said. */
    String time(ExerciseSet set) {
        return set.from() == null || set.until() == null ? "" : at.moments().moment(set.from()) + " to " + at.moments().moment(set.until());
    }

    /** Who may see the keys, and from when on. */
    String keys(ExerciseSet set) {
        Instant opens = set.opensAt();
        return opens == null ? "shut" : (set.open(at.now()) ? "open since " : "open from ") + at.moments().moment(opens);
    }

    ExerciseView view(pairwright.lab.Handout handout, AnswerForm form, String key) {
        return ExerciseViews.of(at.known().catalogue(), at.visit(), key).view(handout, form);
    }

    /** What is right, with nobody's answer beside it. */
    List<MarkView.Right> right(pairwright.lab.Handout handout, Key key, String before) {
        return MarkView.right(handout, key, pictures(Answer.NOTHING, before), links());
    }

    KeyPictures pictures(Answer answer, String before) {
        return KeyPictures.of(at.known().catalogue(), at.visit(), answer, before);
    }

    /** What stands around the page of a set, or of something in it. */
    LabFrame frame(ExerciseSet set, String title, String done) {
        List<Link> trail = new ArrayList<>(List.of(at.at().link(SETS, "Classes")));
        if (!title.isEmpty()) {
            trail.add(link(set, "", name(set)));
        }
        return LabFrame.below(at.html(), at.visit(), title.isEmpty() ? name(set) : title, trail, done);
    }

    Page page(int status, String template, LabFrame frame, Object content) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", frame);
        values.put("content", content);
        return new Page(status, at.html().fill("lab/" + template + ".jte", values));
    }
}
