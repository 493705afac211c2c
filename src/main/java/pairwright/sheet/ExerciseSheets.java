package pairwright.sheet;

import java.util.List;
import java.util.stream.IntStream;
import pairwright.lab.Answer;
import pairwright.lab.BenchKey;
import pairwright.lab.Handout;
import pairwright.lab.Key;
import pairwright.locker.ExerciseSet;
import pairwright.sheet.ReadingParts.Link;

/** What is printed of the exercises of a class, a leaf or more for each bench: handouts, keys, and what goes back. */
public final class ExerciseSheets {
    private static final int SHUT = 403;

    private ExerciseSheets() {
    }

    /** The leaf of a bench. */
    public record Leaf(int bench, String title, List<Link> kit, ExerciseView exercise) {
    }

    /** What the handouts show. */
    public record Handouts(String heading, List<Leaf> leaves) {
    }

    /** The key of a bench. */
    public record KeyLeaf(int bench, String title, List<MarkView.Right> right, List<String> lesson) {
    }

    /** What goes back to a bench; the mark is null for one that handed in nothing. */
    public record FeedbackLeaf(int bench, String title, MarkView mark, List<Given> given) {
    }

    /** What was answered to a question, in words. */
    public record Given(int number, String asks, String given) {
    }

    /** What the other two show. */
    public record Keys(String heading, List<KeyLeaf> leaves) {
    }

    /** What goes back to all. */
    public record Back(String heading, List<FeedbackLeaf> leaves) {
    }

    private static String of(AtLab lab, ExerciseSet set) {
        return lab.time(set).isEmpty() ? lab.name(set) : lab.name(set) + ", " + lab.time(set);
    }

    /** One leaf for each bench, without anything that tells an answer. */
    public static Page handouts(AtLab lab, ExerciseSet set) {
        List<Leaf> leaves = set.benches().stream().map(bench -> {
            Handout handout = lab.desk().handout(set, bench.number());
            return new Leaf(bench.number(), handout.title(), ExerciseBenchPage.kit(lab, bench), lab.view(handout, AnswerForm.blank(), "bench-" + bench.number() + "-"));
        }).toList();
        return lab.page(200, "handouts", lab.frame(set, "Handouts", ""), new Handouts(of(lab, set), leaves));
    }

    /** What is right at each bench; for whoever may not see it yet a page that says so. */
    public static Page keys(AtLab lab, ExerciseSet set) {
        if (!lab.sees(set)) {
            return new Page(SHUT, lab.at().html().fault("The keys are shut", List.of(set.opensAt() == null ? "Whoever teaches has them."
                    : "They open " + lab.at().moments().moment(set.opensAt()) + ". Come back then."), lab.at().visit()));
        }
        List<BenchKey> keys = lab.desk().key(set, lab.at().role());
        List<KeyLeaf> leaves = keys.stream().map(one -> {
            Handout handout = lab.desk().handout(set, one.bench());
            return new KeyLeaf(one.bench(), handout.title(), lab.right(handout, one.key(), "bench-" + one.bench() + "-"), one.key().lesson());
        }).toList();
        return lab.page(200, "keys", lab.frame(set, "Keys", ""), new Keys(of(lab, set), leaves));
    }

    /** What each bench answered and earned, and what was right. */
    public static Page feedback(AtLab lab, ExerciseSet set) {
        List<BenchKey> keys = lab.desk().key(set, lab.at().role());
        List<FeedbackLeaf> leaves = lab.desk().marks(set, lab.at().role()).stream().map(marked -> {
            Handout handout = lab.desk().handout(set, marked.bench());
            Key key = keys.stream().filter(one -> one.bench() == marked.bench()).map(BenchKey::key).findFirst().orElseThrow();
            return marked.mark() == null ? new FeedbackLeaf(marked.bench(), handout.title(), null, List.of())
                    : new FeedbackLeaf(marked.bench(), handout.title(), MarkView.of(handout, key, marked.mark(), lab.pictures(marked.answer(), "bench-" + marked.bench() + "-"), lab.links()), given(handout, marked.answer()));
        }).toList();
        return lab.page(200, "feedback", lab.frame(set, "What goes back", ""), new Back(of(lab, set), leaves));
    }

    private static List<Given> given(Handout handout, Answer answer) {
        return IntStream.range(0, handout.items().size())
                .mapToObj(i -> new Given(i + 1, handout.items().get(i).asks(), AnswerWords.said(handout.items().get(i), answer))).toList();
    }
}
