package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.model.Caution;
import pairwright.model.PairRecipe;
import pairwright.model.Question;
import pairwright.model.Reason;
import pairwright.model.Severity;

/** One choice among set-ups of one microphone and of two. */
final class TwoExercise implements Exercise {
    private static final String SET_UP = "set-up";
    private static final String REASONS = "reasons";
    private static final String MIND = "mind";
    private static final String AGAINST = "against";
    /** So far behind the best of them a set-up is no answer. */
    private static final double MOST_SHORT_POINTS = 4;
    private static final double DANGER_SHARE = 0.4;
    private static final double CARE_SHARE = 0.6;

    private final Case drawn;
    private final Question question;
    private final TwoMics shown;
    private final Lab lab;
    private final int best;

    TwoExercise(Case drawn, Question question, TwoMics shown, Lab lab) {
        this.drawn = drawn;
        this.question = question;
        this.shown = shown;
        this.lab = lab;
        this.best = shown.best();
    }

    private List<Item.Opt> setUps() {
        return Item.Opt.lettered(IntStream.range(0, shown.size()).mapToObj(shown::says).toList());
    }

    private List<String> rules(String item) {
        return drawn.all(item.equals(REASONS) ? "reasons" : item.equals(AGAINST) ? AGAINST : "cautions");
    }

    private List<Item.Opt> said(String item) {
        return Item.Opt.lettered(rules(item).stream().map(rule -> Claims.of(question, lab).says(lab.rules().rule(rule))).toList());
    }

    private List<String> letters(String item, List<String> rules) {
        return Item.Opt.lettered(rules(item)).stream().filter(option -> rules.contains(option.says())).map(Item.Opt::id).toList();
    }

    private String titled(String item, List<String> letters) {
        return letters.isEmpty() ? "None of them." : said(item).stream().filter(option -> letters.contains(option.id())).map(Item.Opt::says).collect(Collectors.joining(" "));
    }

    private boolean mindAsked() {
        return !rules(MIND).isEmpty();
    }

    private boolean againstAsked() {
        return !rules(AGAINST).isEmpty();
    }

    /** Which set-up is asked for what speaks against it. */
    private int againstOf() {
        return drawn.all("setUps").indexOf(drawn.one("againstOf"));
    }

    /** What speaks against it, of what is offered. */
    private Reason against() {
        return shown.against(againstOf()).stream().filter(reason -> rules(AGAINST).contains(reason.rule())).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Nothing of what the exercise offers speaks against set-up " + setUps().get(againstOf()).id() + " any more"));
    }

    @Override
    public Handout handout() {
        List<String> said = new ArrayList<>(OneMic.situation(question, lab));
        if (question.circumstances().contains("stereo")) {
            said.add("Wanted: in stereo.");
        }
        if (question.circumstances().contains("live")) {
            said.add("It is played on a stage, over loudspeakers.");
        }
        List<Item> items = new ArrayList<>(List.of(new Item.OneOf(SET_UP, "Which of these do you set up?", setUps()),
                new Item.SomeOf(REASONS, "Which two of these speak for it?", said(REASONS), 2)));
        if (mindAsked()) {
            items.add(new Item.SomeOf(MIND, "Which of these must be minded with it? There may be none.", said(MIND), null));
        }
        if (againstAsked()) {
            items.add(new Item.OneOf(AGAINST, "Which of these speaks against set-up " + setUps().get(againstOf()).id() + "?", said(AGAINST)));
        }
        return new Handout("One or two: " + lab.source(question.source()).name(), List.of(), said, List.of(), items);
    }

    @Override
    public Key key() {
        List<String> why = OneMic.why(shown.option(best));
        List<String> rules = shown.option(best).reasons().stream().map(Reason::rule).distinct().toList();
        List<String> speak = letters(REASONS, shown.forIt(best));
        List<String> mind = letters(MIND, shown.mind(best));
        Answer answer = Answer.NOTHING.with(SET_UP, setUps().get(best).id()).with(REASONS, speak);
        List<Key.Entry> entries = new ArrayList<>(List.of(new Key.Entry(SET_UP, shown.says(best), List.of(setUps().get(best).id()), why, rules), entry(REASONS, speak)));
        if (mindAsked()) {
            answer = answer.with(MIND, mind);
            entries.add(entry(MIND, mind));
        }
        if (againstAsked()) {
            Reason against = against();
            String right = letters(AGAINST, List.of(against.rule())).get(0);
            answer = answer.with(AGAINST, right);
            entries.add(new Key.Entry(AGAINST, titled(AGAINST, List.of(right)), List.of(right), List.of(against.says()), List.of(against.rule())));
        }
        return new Key(answer, entries, List.of());
    }

    private Key.Entry entry(String item, List<String> right) {
        List<String> rules = right.stream().map(letter -> rules(item).get(letter.charAt(0) - 'a')).toList();
        return new Key.Entry(item, titled(item, right), List.of(), rules.stream().map(rule -> lab.rules().rule(rule).why()).toList(), rules);
    }

    @Override
    public Mark mark(Answer answer) {
        Mark.Sum sum = new Mark.Sum();
        int taken = setUps().stream().map(Item.Opt::id).toList().indexOf(answer.one(SET_UP));
        if (taken < 0) {
            sum.add("The set-up", 0, 4, "None of those that were there was named.", null).add("The reasons", 0, 2, "Nothing stands, so nothing speaks for it.", null);
            if (mindAsked()) {
                sum.add("What to mind", 0, 2, "Nothing stands, so nothing is to be minded.", null);
            }
            return against(sum, answer).mark();
        }
        double missed = shown.points(best) - shown.points(taken);
        Behind behind = taken == best ? Behind.of(shown.option(best)) : Behind.between(shown.option(best), shown.option(taken));
        sum.add("The set-up", 1 - missed / MOST_SHORT_POINTS, 4, (taken == best ? "None of these does more. " : String.format(Locale.ROOT, "It is worth %.1f points less than the best of these. ", missed))
                + behind.says(), behind.rule());
        some(sum, "The reasons", REASONS, letters(REASONS, shown.forIt(taken)), answer, 2);
        if (mindAsked()) {
            some(sum, "What to mind", MIND, letters(MIND, shown.mind(taken)), answer, null);
            Set<String> known = new LinkedHashSet<>(answer.all(MIND));
            Set<String> forgotten = letters(MIND, shown.mind(taken)).stream().filter(letter -> !known.contains(letter)).map(letter -> rules(MIND).get(letter.charAt(0) - 'a')).collect(Collectors.toSet());
            shown.option(taken).cautions().stream().filter(caution -> forgotten.contains(caution.rule()) && caution.severity() != Severity.NOTE)
                    .forEach(caution -> sum.cap(caution.severity() == Severity.DANGER ? DANGER_SHARE : CARE_SHARE, caution.says()));
        }
        return against(sum, answer).mark();
    }

    private Mark.Sum against(Mark.Sum sum, Answer answer) {
        if (!againstAsked()) {
            return sum;
        }
        Reason against = against();
        boolean right = letters(AGAINST, List.of(against.rule())).get(0).equals(answer.one(AGAINST));
        return sum.add("What speaks against set-up " + setUps().get(againstOf()).id(), right ? 1 : 0, 1, (right ? "Yes: " : "It is this: ") + against.says(), against.rule());
    }

    /** Half a point off for each that does not belong there. */
    private void some(Mark.Sum sum, String name, String item, List<String> right, Answer answer, Integer pick) {
        Set<String> given = new LinkedHashSet<>(answer.all(item));
        long hit = given.stream().filter(right::contains).count();
        long all = Stream.concat(given.stream(), right.stream()).distinct().count();
        double share = pick == null ? all == 0 ? 1 : 2.0 * hit / all - 1 : given.size() > pick ? 0 : (hit - 0.5 * (given.size() - hit)) / pick;
        String rule = Stream.concat(right.stream().filter(letter -> !given.contains(letter)), right.stream()).findFirst().map(letter -> rules(item).get(letter.charAt(0) - 'a')).orElse(null);
        sum.add(name, share, 2, pick != null && given.size() > pick ? "Two were asked for, " + given.size() + " were given." : "Of what was offered, as it is set up: " + (right.isEmpty() ? "none of them." : titled(item, right)), rule);
    }

    /** Two are better than one, of two what the entry of the source names first, and for reasons what is usual and what comes first. */
    @Override
    public Answer usual() {
        List<String> named = lab.source(question.source()).pairs().stream().map(PairRecipe::technique).toList();
        int two = IntStream.range(0, shown.size()).filter(which -> shown.offer(which).mics().size() == 2).boxed()
                .min(Comparator.comparingInt(which -> named.indexOf(shown.offer(which).technique()))).orElse(0);
        Answer usual = Answer.NOTHING.with(SET_UP, setUps().get(two).id()).with(REASONS, Item.Opt.lettered(rules(REASONS)).stream()
                .sorted(Comparator.comparing((Item.Opt option) -> !lab.rules().rule(option.says()).topic().equals("custom"))).limit(2).map(Item.Opt::id).toList());
        return againstAsked() ? usual.with(AGAINST, said(AGAINST).get(0).id()) : usual;
    }

    @Override
    public List<Need> kit() {
        return List.of();
    }

    /** What speaks for the best and is to be minded with it, what is offered, and what makes most of what each other set-up falls short by. */
    @Override
    public Map<String, String> claims(String item) {
        return List.of(REASONS, MIND, AGAINST).contains(item) ? Item.Opt.behind(rules(item)) : Map.of();
    }

    @Override
    public Set<String> restsOn() {
        Stream<String> between = IntStream.range(0, shown.size()).filter(which -> which != best).mapToObj(which -> Behind.between(shown.option(best), shown.option(which)).rule()).filter(Objects::nonNull);
        return Stream.of(between, shown.option(best).reasons().stream().map(Reason::rule), shown.option(best).cautions().stream().map(Caution::rule), rules(REASONS).stream(), rules(MIND).stream(), rules(AGAINST).stream())
                .flatMap(rules -> rules).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
