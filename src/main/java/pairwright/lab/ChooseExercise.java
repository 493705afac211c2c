package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.advice.SetUpJudge;
import pairwright.model.HabitRank;
import pairwright.model.Option;
import pairwright.model.Position;
import pairwright.model.Severity;
import pairwright.model.Source;

/** One choice of a microphone. What it earns is how near it comes to the best that these types can do, split by what was decided. */
final class ChooseExercise implements Exercise {
    private static final String MIC = "mic";
    private static final String PLACE = "place";
    private static final String DISTANCE = "distance";
    private static final String REASONS = "reasons";
    private static final String MIND = "mind";
    /** A missed danger to people leaves less than half of the mark, one to gear a little more: nobody passes who hurts somebody. */
    private static final double DANGER_SHARE = 0.4;
    private static final double CARE_SHARE = 0.6;
    /** So far behind the best of them a type or a place is no answer; a distance, which is easier moved, less far. */
    private static final double MOST_SHORT_OF_TYPE_POINTS = 4;
    private static final double MOST_SHORT_OF_DISTANCE_POINTS = 2;

    private final Case drawn;
    private final OneMic one;
    private final Lab lab;
    private final Source source;

    ChooseExercise(Case drawn, OneMic one, Lab lab) {
        this.drawn = drawn;
        this.one = one;
        this.lab = lab;
        this.source = lab.source(drawn.one("source"));
    }

    @Override
    public Handout handout() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.OneOf(MIC, "Which of these microphones do you put up?",
                drawn.all("types").stream().map(type -> new Item.Opt(type, lab.type(type).name())).toList()));
        items.add(new Item.OneOf(PLACE, "Where does it stand?", OneMic.standing(source).stream().map(position -> new Item.Opt(position.id(), position.name())).toList()));
        items.add(new Item.Amount(DISTANCE, "How far from what sounds?", "cm", 2, 2 * 100 * farthestM()));
        items.add(new Item.SomeOf(REASONS, "Which two of these speak for it, as you set it up?", options(drawn.all("reasons")), 2));
        if (!drawn.all("cautions").isEmpty()) {
            items.add(new Item.SomeOf(MIND, "Which of these must be minded with it? There may be none.", options(drawn.all("cautions")), null));
        }
        return new Handout("One microphone for " + source.name().toLowerCase(Locale.ROOT), List.of(), one.situation(), List.of(), items);
    }

    private double farthestM() {
        return OneMic.standing(source).stream().mapToDouble(position -> position.distanceM().high()).max().orElse(1);
    }

    private List<Item.Opt> options(List<String> rules) {
        return Item.Opt.lettered(rules.stream().map(rule -> lab.rules().rule(rule).title()).toList());
    }

    @Override
    public Key key() {
        Offer best = one.best();
        OfferedMic mic = OneMic.mic(best);
        Option option = one.option(best);
        List<String> why = option.reasons().stream().map(reason -> reason.says()).toList();
        List<String> rules = option.reasons().stream().map(reason -> reason.rule()).distinct().toList();
        List<Key.Entry> entries = new ArrayList<>();
        entries.add(new Key.Entry(MIC, mic.micType().name(), accepted(), why, rules));
        entries.add(new Key.Entry(PLACE, mic.position().name(), List.of(mic.position().id()), List.of(mic.position().brings()), List.of()));
        entries.add(new Key.Entry(DISTANCE, centimetres(mic.distanceM()) + " cm", List.of(), List.of(), List.of()));
        entries.add(entry(REASONS, letters(REASONS, OneMic.forIt(option)), drawn.all("reasons")));
        if (!drawn.all("cautions").isEmpty()) {
            entries.add(entry(MIND, letters(MIND, OneMic.mind(option)), drawn.all("cautions")));
        }
        Answer answer = Answer.NOTHING.with(MIC, mic.micType().id()).with(PLACE, mic.position().id()).with(DISTANCE, mic.distanceM() * 100)
                .with(REASONS, letters(REASONS, OneMic.forIt(option))).with(MIND, letters(MIND, OneMic.mind(option)));
        return new Key(answer, entries, List.of());
    }

    private Key.Entry entry(String item, List<String> right, List<String> rules) {
        List<String> titles = right.stream().map(letter -> lab.rules().rule(rules.get(letter.charAt(0) - 'a')).title()).toList();
        return new Key.Entry(item, right.isEmpty() ? "none" : String.join("; ", titles), List.of(),
                right.stream().map(letter -> lab.rules().rule(rules.get(letter.charAt(0) - 'a')).why()).toList(),
                right.stream().map(letter -> rules.get(letter.charAt(0) - 'a')).toList());
    }

    /** Types that come as near as makes no difference. */
    private List<String> accepted() {
        return one.bestOfEach().stream().filter(offer -> typeShare(offer) > 0.99).map(offer -> OneMic.mic(offer).micType().id()).toList();
    }

    private double typeShare(Offer bestOfType) {
        return share(OneMic.points(one.best()) - OneMic.points(bestOfType), MOST_SHORT_OF_TYPE_POINTS);
    }

    /** Which options of an item name one of these rules. */
    private List<String> letters(String item, List<String> rules) {
        List<String> offered = drawn.all(item.equals(REASONS) ? "reasons" : "cautions");
        return Item.Opt.lettered(offered).stream().filter(option -> rules.contains(option.says())).map(Item.Opt::id).toList();
    }

    @Override
    public Mark mark(Answer answer) {
        Mark.Sum sum = new Mark.Sum();
        String type = answer.one(MIC);
        Optional<Offer> ofType = type == null ? Optional.empty() : one.best(type);
        Optional<Offer> atPlace = ofType.isEmpty() || answer.one(PLACE) == null ? Optional.empty() : one.best(type, answer.one(PLACE));
        OptionalDouble distance = answer.number(DISTANCE, 0);
        Optional<SetUpJudge.Judgement> stands = atPlace.isEmpty() || distance.isEmpty() || !(distance.getAsDouble() >= 0.5 && distance.getAsDouble() <= 10_000) ? Optional.empty()
                : one.judged(type, answer.one(PLACE), distance.getAsDouble() / 100);
        double typeShare = ofType.map(this::typeShare).orElse(0.0);
        double placeShare = atPlace.map(offer -> share(OneMic.points(ofType.orElseThrow()) - OneMic.points(offer), MOST_SHORT_OF_TYPE_POINTS)).orElse(0.0);
        sum.add("The type", typeShare, 3, typeSays(type, ofType), null);
        // the best place for what should not be there is worth as little as that
        sum.add("The place", typeShare * placeShare, 2, placeSays(ofType, atPlace), null);
        sum.add("The distance", typeShare * placeShare * stands.map(judged -> distanceShare(judged, atPlace.orElseThrow())).orElse(0.0), 2,
                distanceSays(distance, atPlace, stands), null);
        reasons(answer, stands, sum);
        if (!drawn.all("cautions").isEmpty()) {
            minded(answer, stands, sum);
        }
        return sum.mark();
    }

    /** Everything for no point short, nothing from so many on. */
    private static double share(double shortPoints, double mostPoints) {
        return Math.max(0, 1 - Math.max(0, shortPoints) / mostPoints);
    }

    private static double distanceShare(SetUpJudge.Judgement judged, Offer could) {
        return judged.ruledOut().isEmpty() ? share(OneMic.points(could) - judged.option().score(), MOST_SHORT_OF_DISTANCE_POINTS) : 0;
    }

    private String typeSays(String type, Optional<Offer> ofType) {
        if (type == null) {
            return "No type was named.";
        }
        if (ofType.isEmpty()) {
            return lab.catalogue().mics().containsKey(type) ? lab.type(type).name() + " has no place at this source." : "\"" + type + "\" is none of those that were there.";
        }
        double missed = OneMic.points(one.best()) - OneMic.points(ofType.get());
        return missed < 0.05 ? "Nothing here does more." : "At its best it is " + points(missed) + " short of " + OneMic.mic(one.best()).micType().name() + ". " + weakest(ofType.get());
    }

    private String weakest(Offer offer) {
        return one.option(offer).reasons().stream().filter(reason -> reason.points() < 0).min(Comparator.comparingDouble(reason -> reason.points()))
                .map(reason -> reason.says()).orElse(one.option(one.best()).reasons().get(0).says());
    }

    private String placeSays(Optional<Offer> ofType, Optional<Offer> atPlace) {
        if (atPlace.isEmpty()) {
            return ofType.isEmpty() ? "Without a microphone there is no place for it." : "It cannot stand there, or not alone.";
        }
        double missed = OneMic.points(ofType.orElseThrow()) - OneMic.points(atPlace.get());
        Position place = OneMic.mic(ofType.get()).position();
        return missed < 0.05 ? "Where it does most: " + place.brings() + "." : "It would do " + points(missed) + " more at this place: " + place.name() + ".";
    }

    private String distanceSays(OptionalDouble distance, Optional<Offer> atPlace, Optional<SetUpJudge.Judgement> stands) {
        if (stands.isEmpty()) {
            return distance.isEmpty() ? "No distance that can be read." : "A distance counts at a place where the microphone can stand, from 0.5 cm to 100 m.";
        }
        if (!stands.get().ruledOut().isEmpty()) {
            return stands.get().ruledOut().get(0).says();
        }
        double missed = OneMic.points(atPlace.orElseThrow()) - stands.get().option().score();
        return missed < 0.05 ? "No other distance does more there." : points(missed) + " are lost against " + centimetres(OneMic.mic(atPlace.get()).distanceM()) + " cm.";
    }

    private void reasons(Answer answer, Optional<SetUpJudge.Judgement> stands, Mark.Sum sum) {
        List<String> right = stands.map(judged -> letters(REASONS, OneMic.forIt(judged.option()))).orElse(List.of());
        Set<String> given = new LinkedHashSet<>(answer.all(REASONS));
        long hit = given.stream().filter(right::contains).count();
        long missed = given.size() - hit;
        String says = stands.isEmpty() ? "Nothing stands, so nothing speaks for it." : "Of what was offered these speak for it as it stands: " + titles(right, "reasons") + ".";
        sum.add("The reasons", given.size() > 2 ? 0 : (hit - 0.5 * missed) / 2, 2, given.size() > 2 ? "Two were asked for, " + given.size() + " were given." : says, null);
    }

    private void minded(Answer answer, Optional<SetUpJudge.Judgement> stands, Mark.Sum sum) {
        List<String> right = stands.map(judged -> letters(MIND, OneMic.mind(judged.option()))).orElse(List.of());
        Set<String> given = new LinkedHashSet<>(answer.all(MIND));
        Set<String> all = Stream.concat(right.stream(), given.stream()).collect(Collectors.toSet());
        long hit = given.stream().filter(right::contains).count();
        double share = stands.isEmpty() ? 0 : all.isEmpty() ? 1 : 2.0 * hit / all.size() - 1;
        sum.add("What to mind", share, 1, "As it stands: " + (right.isEmpty() ? "none of them" : titles(right, "cautions")) + ".", null);
        stands.ifPresent(judged -> judged.option().cautions().stream().filter(caution -> caution.severity() != Severity.NOTE)
                .filter(caution -> right.stream().anyMatch(letter -> rule(letter, "cautions").equals(caution.rule()) && !given.contains(letter)))
                .forEach(caution -> sum.cap(caution.severity() == Severity.DANGER ? DANGER_SHARE : CARE_SHARE, caution.says())));
    }

    private String rule(String letter, String of) {
        return drawn.all(of).get(letter.charAt(0) - 'a');
    }

    private String titles(List<String> letters, String of) {
        return letters.isEmpty() ? "none" : letters.stream().map(letter -> lab.rules().rule(rule(letter, of)).title()).collect(Collectors.joining("; "));
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.1f points", points);
    }

    private static String centimetres(double metres) {
        return java.math.BigDecimal.valueOf(metres * 100).setScale(1, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    @Override
    public Answer usual() {
        String type = drawn.all("types").stream().max(Comparator.comparingLong(this::habits)).orElseThrow();
        Position nearest = OneMic.standing(source).stream().min(Comparator.comparingDouble(position -> position.distanceM().typical())).orElseThrow();
        return Answer.NOTHING.with(MIC, type).with(PLACE, nearest.id()).with(DISTANCE, nearest.distanceM().typical() * 100).with(REASONS, List.of("a", "b"));
    }

    /** How often the trade reaches for a type in this family. */
    private long habits(String type) {
        return lab.catalogue().sources().values().stream().filter(other -> other.family() == source.family()).flatMap(other -> other.habits().stream())
                .filter(habit -> habit.rank() != HabitRank.AVOID && habit.micType().equals(type)).count();
    }

    @Override
    public List<Need> kit() {
        return drawn.all("types").stream().map(type -> new Need(type, 1)).toList();
    }

    @Override
    public Set<String> restsOn() {
        Option best = one.option(one.best());
        return Stream.of(best.reasons().stream().map(reason -> reason.rule()), best.cautions().stream().map(caution -> caution.rule()),
                drawn.all("reasons").stream(), drawn.all("cautions").stream()).flatMap(rules -> rules).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
