package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairwright.model.Catalogue;
import pairwright.model.Effect;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Source;
import pairwright.model.SourceFamily;
import pairwright.model.Vocabulary;
import pairwright.model.Way;
import pairwright.rules.Finding;
import pairwright.rules.RuleInfo;

/**
 * What the rules do over the whole catalogue: each source in each way of playing it, with each of its techniques, with one family of
 * microphones after the other, as a limit and as a wish, in each circumstance, and with rooms, characters, neighbours and limits drawn from a fixed seed. A rule
 * that never speaks there is dead, however well its cases pass.
 */
class RulesAtWorkTest {
    private static final Knowledge KNOWLEDGE = Asking.KNOWLEDGE.current();
    private static final Catalogue CATALOGUE = KNOWLEDGE.catalogue();
    private static final List<RuleInfo> RULES = KNOWLEDGE.rules().rules().stream().filter(rule -> !rule.ofAPlan()).toList();
    private static final List<String> ROOMS = List.copyOf(CATALOGUE.rooms().keySet());
    private static final List<String> CHARACTERS = List.copyOf(CATALOGUE.characters().keySet());
    private static final List<String> DYNAMICS = CATALOGUE.words().dynamics().stream().map(Vocabulary.Dynamic::id).toList();
    private static final List<String> NEIGHBOURS = List.of("drum-kit", "driven-guitar-amplifier", "singing-voice", "trumpet", "grand-piano");
    private static final List<List<String>> CIRCUMSTANCES = List.of(List.of(), List.of("stereo"), List.of("live"), List.of("mono"),
            List.of("children"), List.of("one-performer"), List.of("stereo", "live"), List.of("shock"), List.of("hung"));
    private static final List<Limits> LIMITS = List.of(Limits.NONE, limits(1, null, null, null), limits(null, false, null, null),
            limits(2, null, 50.0, -118.0), limits(4, true, null, null));

    /** How often each rule spoke of something that was judged, and together with which other. */
    private static final long[] SPOKEN = new long[RULES.size()];
    private static final long[][] TOGETHER = new long[RULES.size()][RULES.size()];
    /** Rules that an answer shows, as a reason or a caution of an option. */
    private static final Set<String> SHOWN = new TreeSet<>();
    private static int asked;

    private static Limits limits(Integer mics, Boolean phantom, Double gainDb, Double noiseDbu) {
        return new Limits(mics, phantom, gainDb, noiseDbu, null, null, null, null);
    }

    private static Limits only(MicFamily family) {
        return new Limits(null, null, null, null, List.of(family), null, null, null);
    }

    private static <T> T one(Random random, List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private static <T> List<T> oneOrNone(Random random, List<T> list, int outOf) {
        return list.isEmpty() || random.nextInt(outOf) != 0 ? List.of() : List.of(one(random, list));
    }

    @BeforeAll
    static void askAll() {
        Random random = new Random(20);
        Set<SourceFamily> families = EnumSet.noneOf(SourceFamily.class);
        Map<String, Integer> index = new HashMap<>();
        RULES.forEach(rule -> index.put(rule.id(), index.size()));
        for (Source source : CATALOGUE.sources().values()) {
            List<List<String>> ways = new ArrayList<>();
            ways.add(List.of());
            source.ways().stream().map(Way::id).forEach(way -> ways.add(List.of(way)));
            List<String> techniques = source.pairs().stream().map(pair -> pair.technique()).distinct().toList();
            for (List<String> way : ways) {
                ask(plain(source, way, Limits.NONE, List.of()), index);
            }
            for (MicFamily family : MicFamily.values()) {
                ask(plain(source, List.of(), only(family), List.of()), index);
                ask(wishing(source, family), index);
            }
            for (String technique : techniques) {
                ask(plain(source, List.of(), Limits.NONE, List.of(technique)), index);
                ask(drawn(random, source, ways, Limits.NONE, one(random, CIRCUMSTANCES), List.of(technique)), index);
                ask(plain(source, List.of(), Limits.NONE, List.of(technique)), Stocks.twoOfEach(asked % 2 == 0).with(everything(asked % 3 == 0)), index);
            }
            ask(drawn(random, source, ways, one(random, LIMITS), one(random, CIRCUMSTANCES), List.of()), index);
            if (families.add(source.family())) {
                CIRCUMSTANCES.forEach(circumstances -> ask(drawn(random, source, ways, Limits.NONE, circumstances, List.of()), index));
            }
        }
    }

    private static Question plain(Source source, List<String> ways, Limits limits, List<String> techniques) {
        return new Question("", source.id(), ways, List.of(), null, List.of(), limits, List.of(), List.of(), techniques, 3, null, null);
    }

    private static Question wishing(Source source, MicFamily family) {
        return new Question("", source.id(), List.of(), List.of(), null, List.of(), Limits.NONE, List.of(), List.of(), List.of(), 3, null, null,
                List.of(family));
    }

    private static Question drawn(Random random, Source source, List<List<String>> ways, Limits limits, List<String> circumstances,
            List<String> techniques) {
        List<Neighbour> neighbours = random.nextInt(3) != 0 ? List.of()
                : List.of(new Neighbour(one(random, NEIGHBOURS), 0.5 + random.nextInt(4), 45.0 * random.nextInt(5)));
        return new Question("", source.id(), one(random, ways), oneOrNone(random, DYNAMICS, 3), one(random, ROOMS), oneOrNone(random, CHARACTERS, 2),
                limits, neighbours, circumstances, techniques, 3, null, null);
    }

    /** A house in which everything stood once, and was kept or was changed. */
    private static HouseMemory everything(boolean kept) {
        return (source, room, player) -> CATALOGUE.mics().keySet().stream().flatMap(mic -> CATALOGUE.sources().get(source).positions().stream()
                .map(position -> new Kept(mic, position.id(), kept ? 1 : 0, 1, null, null))).toList();
    }

    private static void ask(Question question, Map<String, Integer> index) {
        ask(question, AtHand.EVERYTHING, index);
    }

    private static void ask(Question question, AtHand atHand, Map<String, Integer> index) {
        asked++;
        Scene scene = Scene.of(question, CATALOGUE, Supply.of(atHand, question, CATALOGUE), atHand.memory());
        Advisor.Verdict verdict = Advisor.judge(scene, KNOWLEDGE.rules());
        Map<Object, BitSet> spoken = new java.util.IdentityHashMap<>();
        for (Judged judged : verdict.judged()) {
            judged.findings().forEach(finding -> note(finding, judged.placed(), spoken, index));
        }
        for (Candidate candidate : verdict.candidates()) {
            if (!candidate.isSingle()) {
                candidate.pairFindings().forEach(finding -> note(finding, candidate.pair(), spoken, index));
            }
        }
        List<Candidate> chosen = Choice.of(verdict.candidates(), question.options());
        List<Object> subjects = new ArrayList<>();
        for (Candidate candidate : chosen) {
            subjects.add(candidate.first().placed());
            show(candidate.first().findings());
            if (!candidate.isSingle()) {
                show(candidate.second().findings());
                show(candidate.pairFindings());
                subjects.add(candidate.second().placed());
                subjects.add(candidate.pair());
            }
        }
        Set<Object> distinct = java.util.Collections.newSetFromMap(new java.util.IdentityHashMap<>());
        subjects.removeIf(subject -> !distinct.add(subject));
        for (Finding finding : KNOWLEDGE.rules().warn(scene.setting(), subjects)) {
            note(finding, finding.subject(), spoken, index);
            SHOWN.add(finding.rule().id());
        }
        spoken.values().forEach(RulesAtWorkTest::count);
    }

    /** What moved the score of an option that is shown is a reason of it. */
    private static void show(List<Finding> findings) {
        findings.stream().filter(finding -> finding.centipoints() != 0).forEach(finding -> SHOWN.add(finding.rule().id()));
    }

    private static void note(Finding finding, Object subject, Map<Object, BitSet> spoken, Map<String, Integer> index) {
        spoken.computeIfAbsent(subject, any -> new BitSet()).set(index.get(finding.rule().id()));
    }

    private static void count(BitSet rules) {
        for (int i = rules.nextSetBit(0); i >= 0; i = rules.nextSetBit(i + 1)) {
            SPOKEN[i]++;
            for (int j = rules.nextSetBit(i + 1); j >= 0; j = rules.nextSetBit(j + 1)) {
                TOGETHER[i][j]++;
            }
        }
    }

    @Test
    void everyRuleSpeaksOfSomethingInTheCatalogue() {
        assertTrue(asked > 500, asked + " questions");
        List<String> never = new ArrayList<>();
        for (int i = 0; i < SPOKEN.length; i++) {
            if (SPOKEN[i] == 0) {
                never.add(RULES.get(i).id() + " " + RULES.get(i).title());
            }
        }
        assertEquals(List.of(), never, "these rules never fire in " + asked + " questions over the whole catalogue: rewrite or retire them");
    }

    /** What speaks against may keep out of sight what it speaks of; what speaks for and what warns must be seen somewhere. */
    @Test
    void whatSpeaksForAndWhatWarnsIsReadBySomebody() {
        List<String> unseen = RULES.stream().filter(rule -> rule.effect() == Effect.FOR || rule.effect() == Effect.CAUTION)
                .filter(rule -> !SHOWN.contains(rule.id())).map(rule -> rule.id() + " " + rule.title()).toList();
        assertEquals(List.of(), unseen, "no answer shows these in " + asked + " questions");
    }

    /** A note beside a danger is told apart on purpose: the one may be skipped in a hurry, the other never. */
    private static boolean sameVoice(RuleInfo one, RuleInfo other) {
        return one.effect() == other.effect() && one.severity() == other.severity();
    }

    @Test
    void noTwoRulesAlwaysSpeakTogetherToTheSameEffect() {
        Map<String, String> twins = new TreeMap<>();
        for (int i = 0; i < SPOKEN.length; i++) {
            for (int j = i + 1; j < SPOKEN.length; j++) {
                if (SPOKEN[i] > 0 && TOGETHER[i][j] == SPOKEN[i] && SPOKEN[i] == SPOKEN[j] && sameVoice(RULES.get(i), RULES.get(j))) {
                    twins.put(RULES.get(i).id() + " and " + RULES.get(j).id(), SPOKEN[i] + " times: " + RULES.get(i).title() + "; " + RULES.get(j).title());
                }
            }
        }
        assertEquals(Map.of(), twins, "merge them, or let one say more than the other");
    }
}
