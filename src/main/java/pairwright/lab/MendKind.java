package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pairwright.advice.Offer;
import pairwright.model.Complaint;
import pairwright.model.MoveKind;
import pairwright.model.Moves;
import pairwright.model.Source;

/** Something sounds wrong: what is tried first, and what helps at all. */
final class MendKind implements Kind {
    private static final KindInfo INFO = new KindInfo("mend", "Put it right",
            "Hear what is wrong, and reach for the move that costs least and helps.",
            "To hear it: the sheet says what is heard. Play an example where there is one.",
            List.of("Two of five help", "Two of six help", "Two of six help, in a room", "Two of six help, with a neighbour", "Two of seven help, in a room with a neighbour"),
            List.of(10, 10, 15, 15, 20), false);
    private static final int RIGHT = 2;
    private static final int[] WRONG = {3, 4, 4, 4, 5};
    /** Of so many other complaints the moves are looked through for some that do not help with this one. */
    private static final int OTHERS = 6;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        List<Source> sources = OneMic.sources(lab, 2);
        Case drawn = OneMic.surroundings(Case.empty().with("source", draw.one(sources).id())
                .with("types", draw.some(1, OneMic.types(lab)).stream().map(type -> type.id()).toList()), draw, level == 3 || level == 5, false, level >= 4, lab);
        OneMic one = OneMic.of(drawn, lab);
        if (one.none()) {
            return Optional.empty();
        }
        Offer stands = draw.one(one.all());
        drawn = drawn.with("place", OneMic.mic(stands).position().id()).with("distanceM", OneMic.mic(stands).distanceM()).with("pattern", OneMic.mic(stands).pattern().id())
                .with("aimDegrees", OneMic.mic(stands).aimDegrees());
        List<Complaint> complaints = draw.shuffled(List.copyOf(lab.catalogue().complaints().values()));
        Complaint heard = complaints.get(0);
        StoodMoves moves = new StoodMoves(drawn, one, lab);
        // what no number shows would stand out among what is proven not to help
        List<String> right = moves.of(heard.id()).stream().filter(StoodMoves.Named::measured).map(StoodMoves.Named::name).limit(RIGHT).toList();
        if (right.size() < RIGHT) {
            return Optional.empty();
        }
        List<String> wrong = new ArrayList<>();
        Set<String> says = new LinkedHashSet<>(moves.of(heard.id()).stream().map(StoodMoves.Named::says).toList());
        for (Complaint other : complaints.subList(1, 1 + OTHERS)) {
            moves.of(other.id()).stream().filter(move -> move.doesNotHelp(heard) && says.add(move.says())).forEach(move -> wrong.add(move.name()));
        }
        if (wrong.size() < WRONG[level - 1]) {
            return Optional.empty();
        }
        List<String> all = new ArrayList<>(right);
        all.addAll(draw.some(WRONG[level - 1], wrong));
        return Optional.of(drawn.with("heard", heard.id()).with("right", right).with("options", draw.shuffled(all)));
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new Mend(drawn, OneMic.of(drawn, lab), lab);
    }

    private static final class Mend implements Exercise {
        private static final String FIRST = "first";
        private static final String HELPS = "helps";

        private final Case drawn;
        private final OneMic one;
        private final Lab lab;
        private final Complaint heard;
        private final Moves found;
        private final Map<String, StoodMoves.Named> options = new LinkedHashMap<>();
        private final List<String> right = new ArrayList<>();

        Mend(Case drawn, OneMic one, Lab lab) {
            this.drawn = drawn;
            this.one = one;
            this.lab = lab;
            StoodMoves moves = new StoodMoves(drawn, one, lab);
            this.heard = lab.complaint(drawn.one("heard"));
            this.found = moves.found(heard.id());
            List<String> names = drawn.all("options");
            List<Item.Opt> lettered = Item.Opt.lettered(names);
            lettered.forEach(option -> options.put(option.id(), moves.named(option.says())));
            drawn.all("right").forEach(name -> right.add(lettered.get(names.indexOf(name)).id()));
        }

        private List<Item.Opt> opts() {
            return options.entrySet().stream().map(option -> new Item.Opt(option.getKey(), option.getValue().says())).toList();
        }

        @Override
        public Handout handout() {
            List<String> situation = new ArrayList<>(one.situation());
            situation.add("What is heard: " + heard.name() + ". " + heard.says());
            return new Handout("Put it right: " + lab.source(drawn.one("source")).name(), List.of(), situation,
                    List.of(new Shown.AtSource("As it stands", drawn.one("source"), found.option())),
                    List.of(new Item.OneOf(FIRST, "Which do you try first? Of what helps, the one that costs the least.", opts()),
                            new Item.SomeOf(HELPS, "Which " + right.size() + " of them help at all?", opts(), right.size())));
        }

        @Override
        public Key key() {
            List<String> why = right.stream().map(letter -> options.get(letter)).map(move -> move.says() + " " + move.move().why() + " " + move.move().effect()).toList();
            List<String> rests = List.of(heard.id());
            return new Key(Answer.NOTHING.with(FIRST, right.get(0)).with(HELPS, right), List.of(
                    new Key.Entry(FIRST, options.get(right.get(0)).says(), List.of(right.get(0)), List.of(why.get(0)), rests),
                    new Key.Entry(HELPS, String.join(" / ", right), List.of(), why, rests)), found.notes());
        }

        @Override
        public Mark mark(Answer answer) {
            Mark.Sum sum = new Mark.Sum();
            String first = answer.one(FIRST);
            StoodMoves.Named taken = first == null ? null : options.get(first);
            int place = right.indexOf(first);
            sum.add("The first move", place == 0 ? 1 : place > 0 ? 0.3 : 0, 4, taken == null ? "No move was named." : place == 0 ? "Cheapest of what helps. " + taken.move().effect()
                    : place > 0 ? "It helps, and something cheaper does too: " + options.get(right.get(0)).says() : "It does not help with this. " + taken.move().effect(), heard.id());
            Set<String> given = new LinkedHashSet<>(answer.all(HELPS));
            for (String letter : right) {
                StoodMoves.Named move = options.get(letter);
                boolean named = given.contains(letter) && given.size() <= right.size();
                sum.add(move.by().id(), named ? 1 : 0, 1, (named ? "Yes: " : "It would help: ") + move.says() + " " + move.move().effect(), heard.id());
            }
            boolean all = given.equals(Set.copyOf(right));
            sum.add("All of them and no other", all ? 1 : 0, right.size(), all ? "Yes." : "These: " + String.join(", ", right.stream().sorted().toList()) + ".", heard.id());
            return sum.mark();
        }

        /** Nearer is better, and if not, another microphone is. */
        @Override
        public Answer usual() {
            List<String> sorted = options.keySet().stream().sorted(Comparator.comparingInt(letter -> {
                StoodMoves.Named move = options.get(letter);
                return move.nearer() ? 0 : move.by() == MoveKind.MIC ? 1 : move.by() == MoveKind.PATTERN ? 2 : 3;
            })).toList();
            return Answer.NOTHING.with(FIRST, sorted.get(0)).with(HELPS, sorted.subList(0, right.size()));
        }

        @Override
        public List<Need> kit() {
            return List.of();
        }

        @Override
        public Set<String> restsOn() {
            return Set.of(heard.id());
        }
    }
}
