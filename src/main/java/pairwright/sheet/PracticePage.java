package pairwright.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;
import pairwright.lab.Exercise;
import pairwright.lab.Handout;
import pairwright.lab.Kind;
import pairwright.lab.KindInfo;
import pairwright.lab.Kinds;
import pairwright.lab.Practice;
import pairwright.sheet.ReadingParts.Link;

/**
 * An exercise for whoever wants one, and what an answer to it earns. It is made of any type of the catalogue, so that its address makes it again wherever the catalogue is
 * the same; no address of it leads to an exercise of a class.
 */
public final class PracticePage {
    /** Of a page that holds what was asked for. */
    private static final int OK = 200;
    private static final int UNUSABLE = 400;
    private static final int NONE = 404;
    private static final String HAND_IN = "mark";
    private static final Pattern SEED = Pattern.compile("[A-Za-z0-9]{1,20}");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,9}");
    private static final Kinds KINDS = new Kinds();

    private PracticePage() {
    }

    /**
     * What the page shows.
     *
     * @param facts level, time and kit, in a few words each
     * @param kit what is handled; empty on paper
     * @param action where the form leads
     * @param imperial whether to say why it is in metres
     * @param faults what is wrong and belongs to no question
     * @param mark null before an answer is marked
     * @param another an exercise of the same kind and level
     * @param fresh the same exercise, nothing filled in
     * @param levels easier and harder ones
     */
    public record Content(List<String> facts, List<Link> kit, ExerciseView exercise, String action, boolean imperial, List<String> faults, MarkView mark, Link another, Link fresh,
            List<Link> levels) {
        /** Whether nothing was marked because something is wrong. */
        public boolean faulty() {
            return !faults.isEmpty() || !exercise.wrong().isEmpty();
        }
    }

    /** Where an exercise of a kind and level is to be had. */
    static String address(String kind, int level) {
        return "/lab/practice/" + kind + "/" + level;
    }

    /** The kind and the level of an address. */
    public record Wanted(Kind kind, int level) {
        /** Where it is, with that seed. */
        public String address(String seed) {
            return PracticePage.address(kind.info().id(), level) + "/" + seed;
        }
    }

    /** What an address names; empty for a kind or a level there is not. */
    public static Optional<Wanted> wanted(String kind, String level) {
        return level.matches("[1-" + KindInfo.LEVELS + "]") ? KINDS.kind(kind).map(found -> new Wanted(found, Integer.parseInt(level))) : Optional.empty();
    }

    /** The page of an address that names what there is not. */
    public static Page none(Html html, Visit visit, String kind, String level) {
        List<String> kinds = KINDS.all().stream().map(one -> one.info().id()).toList();
        String says = KINDS.kind(kind).isEmpty() ? "There is no kind of exercise \"" + Shown.of(kind) + "\". These there are: " + String.join(", ", kinds) + "."
                : "There is no level \"" + Shown.of(level) + "\". Levels go from 1 to " + KindInfo.LEVELS + ".";
        return new Page(NONE, html.fault("No such exercise", List.of(says, "All of them are at /lab."), visit));
    }

    /** The exercise, and what was answered and earned where the query says so. */
    public static Page of(Html html, Knowledge known, Visit visit, Wanted wanted, String seed) {
        KindInfo info = wanted.kind().info();
        if (!SEED.matcher(seed).matches()) {
            return new Page(NONE, html.fault("No such exercise", List.of("\"" + Shown.of(seed) + "\" is no number of an exercise. Take any of up to 20 letters and digits, or one at "
                    + address(info.id(), wanted.level()) + "."), visit));
        }
        return Practice.exercise(wanted.kind(), wanted.level(), seed, known).map(exercise -> of(html, known, visit, wanted, seed, exercise)).orElseGet(() ->
                new Page(NONE, html.fault("No such exercise", List.of("Nothing that can be asked clearly came of number " + seed + ". Take another number."), visit)));
    }

    private static Page of(Html html, Knowledge known, Visit visit, Wanted wanted, String seed, Exercise exercise) {
        Desk desk = new Desk(html, known, visit);
        LabLinks links = new LabLinks(desk);
        Handout handout = exercise.handout();
        boolean sent = visit.first(HAND_IN) != null;
        AnswerForm form = AnswerForm.read(handout.items(), visit::all, new Reader(false, visit.reader().locale()));
        List<String> faults = sent && form.isBlank() ? List.of("Nothing is filled in yet. Answer at least one question; what is left out earns nothing.") : List.of();
        ExerciseView view = ExerciseViews.of(known.catalogue(), visit, "").view(handout, sent ? form : new AnswerForm(form.typed(), form.answer(), Map.of()));
        boolean marked = sent && faults.isEmpty() && view.wrong().isEmpty();
        KindInfo info = wanted.kind().info();
        List<String> facts = List.of(info.name() + ", level " + wanted.level() + ": " + info.levels().get(wanted.level() - 1).toLowerCase(java.util.Locale.ROOT),
                "about " + info.minutes().get(wanted.level() - 1) + " minutes");
        Content content = new Content(facts, links.kit(exercise.kit()), view, visit.to(wanted.address(seed)), visit.reader().imperial(), faults,
                marked ? MarkView.of(handout, exercise.key(), exercise.mark(form.answer()), KeyPictures.of(known.catalogue(), visit, form.answer(), ""), links) : null,
                desk.at().link(next(wanted, seed), "Another one"), desk.at().link(wanted.address(seed), "The same again"), levels(desk, wanted));
        return new Page(sent && !marked ? UNUSABLE : OK, html.fill("lab/practice.jte",
                Map.of("frame", LabFrame.below(html, visit, handout.title(), List.of(), ""), "content", content)));
    }

    /** Of a numbered one the next; of any other whichever comes. */
    private static String next(Wanted wanted, String seed) {
        return NUMBER.matcher(seed).matches() ? wanted.address(Long.toString(Long.parseLong(seed) + 1)) : address(wanted.kind().info().id(), wanted.level());
    }

    private static List<Link> levels(Desk desk, Wanted wanted) {
        return java.util.stream.IntStream.of(wanted.level() - 1, wanted.level() + 1).filter(level -> level >= 1 && level <= KindInfo.LEVELS)
                .mapToObj(level -> desk.at().link(address(wanted.kind().info().id(), level), level < wanted.level() ? "An easier one" : "A harder one")).toList();
    }
}
