package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import pairwright.advice.ComplaintGauge;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Complaint;
import pairwright.model.MoveKind;

/** One thing to be put right. */
final class MendExercise implements Exercise {
    private static final String FIRST = "first";
    private static final String HELPS = "helps";
    /** What helps but costs more than another that was there. */
    private static final double DEARER_SHARE = 0.3;

    private final Case drawn;
    private final OneMic one;
    private final Lab lab;
    private final Complaint heard;
    private final ComplaintGauge gauge;
    private final Offer stands;
    private final Map<String, Moved> options = new LinkedHashMap<>();
    private final List<String> right = new ArrayList<>();

    MendExercise(Case drawn, OneMic one, Lab lab) {
        this.drawn = drawn;
        this.one = one;
        this.lab = lab;
        this.heard = lab.complaint(drawn.one("heard"));
        this.gauge = new ComplaintGauge(heard, one.weights());
        this.stands = one.named(drawn.one("stands"));
        List<Moved> moves = Moved.from(stands, one.all());
        List<String> names = drawn.all("options");
        Item.Opt.lettered(names).forEach(option -> options.put(option.id(), moves.stream().filter(move -> OneMic.name(move.to()).equals(option.says())).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The move to \"" + option.says() + "\" of the exercise is not found any more"))));
        drawn.all("right").forEach(name -> right.add(Item.Opt.lettered(names).get(names.indexOf(name)).id()));
    }

    private String says(String letter) {
        return options.get(letter).says(stands, one.setting().neighbours() > 0);
    }

    private String effect(String letter) {
        return Moved.effect(heard, options.get(letter).gainDb(stands, heard, gauge));
    }

    private List<Item.Opt> opts() {
        return options.keySet().stream().map(letter -> new Item.Opt(letter, says(letter))).toList();
    }

    @Override
    public Handout handout() {
        OfferedMic mic = OneMic.mic(stands);
        List<String> situation = new ArrayList<>(one.situation());
        situation.add("There stands: " + OneMic.called(mic.micType(), mic.pattern()) + ", at this place: " + mic.position().name() + ", "
                + ChooseExercise.far(mic.distanceM()) + ".");
        situation.add("What is heard: " + heard.name() + ". " + heard.says());
        return new Handout("Put it right: " + lab.source(drawn.one("source")).name(), List.of(), situation,
                List.of(new Shown.AtSource("As it stands", drawn.one("source"), one.option(stands))),
                List.of(new Item.OneOf(FIRST, "Which do you try first? Of what helps, the one that costs the least.", opts()),
                        new Item.SomeOf(HELPS, "Which " + right.size() + " of them help at all?", opts(), right.size())));
    }

    @Override
    public Key key() {
        List<String> why = right.stream().map(letter -> says(letter) + " " + effect(letter) + ". " + heard.moves().get(options.get(letter).rank(heard)).why()).toList();
        List<String> rests = List.copyOf(restsOn());
        return new Key(Answer.NOTHING.with(FIRST, right.get(0)).with(HELPS, right), List.of(
                new Key.Entry(FIRST, says(right.get(0)), List.of(right.get(0)), List.of(why.get(0)), rests),
                new Key.Entry(HELPS, String.join(" / ", right.stream().map(this::says).toList()), List.of(), why, rests)), List.of());
    }

    @Override
    public Mark mark(Answer answer) {
        Mark.Sum sum = new Mark.Sum();
        String formula = Formulas.of(heard.gauge()).get(0);
        String first = answer.one(FIRST);
        boolean taken = first != null && options.containsKey(first);
        int place = right.indexOf(first);
        sum.add("The first move", place == 0 ? 1 : place > 0 ? DEARER_SHARE : 0, 4, !taken ? "No move was named." : place == 0 ? "The cheapest of what helps: " + effect(first) + "."
                : place > 0 ? "It helps: " + effect(first) + ". Something cheaper does too: " + says(right.get(0)) : "It does not help with this: " + effect(first) + ".", formula);
        Set<String> given = new LinkedHashSet<>(answer.all(HELPS));
        for (String letter : right) {
            boolean named = given.contains(letter) && given.size() <= right.size();
            sum.add(options.get(letter).called(), named ? 1 : 0, 1, (named ? "Yes: " : "It would help: ") + says(letter) + " " + effect(letter) + ".", formula);
        }
        boolean all = given.equals(Set.copyOf(right));
        sum.add("All of them and no other", all ? 1 : 0, right.size(), all ? "Yes." : "These help: " + String.join(", ", right.stream().sorted().toList()) + ".", formula);
        return sum.mark();
    }

    /** Nearer is better, and if not, another microphone is. */
    @Override
    public Answer usual() {
        List<String> sorted = options.keySet().stream().sorted(Comparator.comparingInt(letter -> {
            Moved move = options.get(letter);
            return move.nearer(stands) ? 0 : move.by() == MoveKind.MIC ? 1 : move.by() == MoveKind.PATTERN ? 2 : 3;
        })).toList();
        return Answer.NOTHING.with(FIRST, sorted.get(0)).with(HELPS, sorted.subList(0, right.size()));
    }

    @Override
    public List<Need> kit() {
        return List.of();
    }

    /** The calculations behind the number, and the rules that count otherwise after the moves that help. */
    @Override
    public Set<String> restsOn() {
        Set<String> rests = new LinkedHashSet<>(Formulas.of(heard.gauge()));
        List<Offer> moved = right.stream().map(letter -> options.get(letter).to()).toList();
        one.explain(Stream.concat(Stream.of(stands), moved.stream()).toList());
        moved.forEach(offer -> rests.addAll(Behind.all(one.option(stands), one.option(offer))));
        return rests;
    }
}
