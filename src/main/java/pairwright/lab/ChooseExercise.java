package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Caution;
import pairwright.model.HabitRank;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Position;
import pairwright.model.Reason;
import pairwright.model.RuledOut;
import pairwright.model.Source;

/** One choice of a microphone: what is asked, and what is right. */
final class ChooseExercise implements Exercise {
    static final String MIC = "mic";
    static final String PLACE = "place";
    static final String DISTANCE = "distance";
    static final String REASONS = "reasons";
    static final String MIND = "mind";

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
        items.add(new Item.SomeOf(REASONS, "Which two of these speak for it, as you set it up?", options(REASONS), 2));
        if (mindAsked()) {
            items.add(new Item.SomeOf(MIND, "Which of these must be minded with it? There may be none.", options(MIND), null));
        }
        List<String> cautions = HandsOn.cautions(one.setting(), drawn.all("types").stream().map(lab::type).toList(), OneMic.standing(source), one.always());
        return new Handout("One microphone for " + Naming.small(source.name()), cautions, one.situation(), List.of(), items);
    }

    /** Whether it is one of the types that were there. */
    boolean offered(String type) {
        return drawn.all("types").contains(type);
    }

    boolean mindAsked() {
        return !rules(MIND).isEmpty();
    }

    private double farthestM() {
        return OneMic.standing(source).stream().mapToDouble(position -> position.distanceM().high()).max().orElse(1);
    }

    /** Ids of the rules that an item offers, in the order of its letters. */
    List<String> rules(String item) {
        return drawn.all(item.equals(REASONS) ? "reasons" : "cautions");
    }

    String rule(String item, String letter) {
        return rules(item).get(letter.charAt(0) - 'a');
    }

    /** Which options of an item name one of these rules. */
    List<String> letters(String item, List<String> rules) {
        return Item.Opt.lettered(rules(item)).stream().filter(option -> rules.contains(option.says())).map(Item.Opt::id).toList();
    }

    /** What these letters say, one after another. */
    String said(String item, List<String> letters) {
        return letters.stream().map(letter -> one.claim().says(lab.rules().rule(rule(item, letter)))).collect(Collectors.joining(" "));
    }

    private List<Item.Opt> options(String item) {
        return Item.Opt.lettered(rules(item).stream().map(rule -> one.claim().says(lab.rules().rule(rule))).toList());
    }

    @Override
    public Key key() {
        Offer best = one.best();
        OfferedMic mic = OneMic.mic(best);
        Option option = one.option(best);
        List<String> why = OneMic.why(option);
        List<String> rules = option.reasons().stream().map(Reason::rule).distinct().toList();
        List<Key.Entry> entries = new ArrayList<>();
        entries.add(new Key.Entry(MIC, mic.micType().name(), accepted(one.bestOfEach(), offer -> offer.micType().id()), why, rules));
        entries.add(new Key.Entry(PLACE, mic.position().name(), accepted(bestAtEachPlace(), offer -> offer.position().id()), List.of("What it brings: " + mic.position().brings() + "."), rules));
        entries.add(new Key.Entry(DISTANCE, centimetres(mic.distanceM()) + " cm", List.of(), ofDistance(option, mic), rules));
        entries.add(entry(REASONS, letters(REASONS, OneMic.forIt(option))));
        if (mindAsked()) {
            entries.add(entry(MIND, letters(MIND, OneMic.mind(option))));
        }
        Answer answer = Answer.NOTHING.with(MIC, mic.micType().id()).with(PLACE, mic.position().id()).with(DISTANCE, mic.distanceM() * 100)
                .with(REASONS, letters(REASONS, OneMic.forIt(option)));
        return new Key(mindAsked() ? answer.with(MIND, letters(MIND, OneMic.mind(option))) : answer, entries, List.of());
    }

    /** What half and twice the distance would do, since the reasons for the whole are told with the type. */
    private List<String> ofDistance(Option option, OfferedMic mic) {
        List<String> said = new ArrayList<>();
        for (double distanceM : new double[] {mic.distanceM() / 2, mic.distanceM() * 2}) {
            one.judged(new OneMic.Spot(mic.micType().id(), mic.position().id(), distanceM)).ifPresent(judged -> said.add("At " + centimetres(distanceM) + " cm " + instead(option, judged)));
        }
        return said;
    }

    private static String instead(Option best, OneMic.Stood judged) {
        if (!judged.ruledOut().isEmpty()) {
            return "it cannot be used: " + judged.ruledOut().get(0).says();
        }
        double missed = best.score() - judged.option().score();
        return ChooseMarks.noLess(missed) ? "it does as much, and counts as much." : "it is worth " + ChooseMarks.points(missed) + " less. " + Behind.between(best, judged.option()).says();
    }

    private Key.Entry entry(String item, List<String> right) {
        return new Key.Entry(item, right.isEmpty() ? "None of them." : said(item, right), List.of(), right.stream().map(letter -> lab.rules().rule(rule(item, letter)).why()).toList(),
                right.stream().map(letter -> rule(item, letter)).toList());
    }

    private List<Offer> bestAtEachPlace() {
        String type = OneMic.mic(one.best()).micType().id();
        return OneMic.standing(source).stream().flatMap(place -> one.best(type, place.id()).stream()).toList();
    }

    /** Of these offers what comes as near to the best as makes no difference. */
    private List<String> accepted(List<Offer> offers, java.util.function.Function<OfferedMic, String> id) {
        return offers.stream().filter(offer -> ChooseMarks.noLess(one.best(), offer)).map(OneMic::mic).map(id).toList();
    }

    @Override
    public void ready(List<Answer> answers) {
        one.judge(answers.stream().flatMap(answer -> ChooseMarks.spot(answer, one).stream()).toList());
        one.explain(Stream.concat(Stream.of(one.best()), answers.stream().filter(answer -> answer.one(MIC) != null).flatMap(answer -> Stream.concat(one.best(answer.one(MIC)).stream(),
                answer.one(PLACE) == null ? Stream.empty() : one.best(answer.one(MIC), answer.one(PLACE)).stream()))).toList());
    }

    @Override
    public Mark mark(Answer answer) {
        return new ChooseMarks(this, one, lab).mark(answer);
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

    /** The rules that decide on the best, those that rule a type out, and of those that are offered the ones that hold for another type; the rest only fill a list. */
    @Override
    public Map<String, String> claims(String item) {
        return item.equals(REASONS) || item.equals(MIND) ? Item.Opt.behind(rules(item)) : Map.of();
    }

    @Override
    public Set<String> restsOn() {
        List<Offer> each = one.bestOfEach();
        one.explain(each);
        Option best = one.option(one.best());
        Stream<String> offered = Stream.concat(rules(REASONS).stream(), rules(MIND).stream())
                .filter(rule -> each.stream().anyMatch(offer -> one.forIt(offer).contains(rule) || one.mind(offer).contains(rule)));
        return Stream.of(best.reasons().stream().map(Reason::rule), best.cautions().stream().map(Caution::rule), offered,
                drawn.all("types").stream().flatMap(type -> one.out(type).stream()).map(RuledOut::rule)).flatMap(rules -> rules).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** As one says it: in metres from one metre on. */
    static String far(double metres) {
        return metres < 1 ? centimetres(metres) + " cm" : java.math.BigDecimal.valueOf(metres).setScale(2, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString() + " m";
    }

    static String centimetres(double metres) {
        return java.math.BigDecimal.valueOf(metres * 100).setScale(1, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
