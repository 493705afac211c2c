package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import pairwright.catalogue.Json;
import pairwright.model.Answer;
import pairwright.model.Caution;
import pairwright.model.Effect;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Reason;
import pairwright.model.Request;
import pairwright.model.Value;
import pairwright.rules.Finding;
import pairwright.rules.Placed;

/** What must always hold, over questions nobody thought of. */
class InvariantsTest {
    private static final int TRIES = 150;
    private static final ObjectMapper JSON = Json.mapper();

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void aScoreIsExactlyTheSumOfItsReasons(@ForAll("questions") Request request) {
        for (Option option : Asking.ADVISOR.ask(request).options()) {
            long sum = option.reasons().stream().mapToLong(reason -> Math.round(reason.points() * 100)).sum();
            assertEquals(sum, Math.round(option.score() * 100));
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void everyReasonAndCautionNamesItsRuleAndItsNumbersAreInTheAnswer(@ForAll("questions") Request request) throws Exception {
        Answer answer = Asking.ADVISOR.ask(request);
        for (Option option : answer.options()) {
            for (Reason reason : option.reasons()) {
                assertNotNull(Asking.KNOWLEDGE.current().rules().rule(reason.rule()), reason.rule());
                assertEquals(reason.effect() == Effect.FOR, reason.points() > 0, reason.toString());
                recompute(answer, option, reason.mic(), reason.rule(), reason.values());
            }
            for (Caution caution : option.cautions()) {
                assertNotNull(Asking.KNOWLEDGE.current().rules().rule(caution.rule()), caution.rule());
                recompute(answer, option, caution.mic(), caution.rule(), caution.values());
            }
        }
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void theSameQuestionHasTheSameAnswerToTheByte(@ForAll("questions") Request request) throws Exception {
        byte[] first = JSON.writeValueAsBytes(Asking.ADVISOR.ask(request));
        byte[] second = JSON.writeValueAsBytes(new Advisor(KnowledgeStoreTwin.STORE::current).ask(request));
        assertEquals(new String(first), new String(second));
    }

    /** A second, separate set of everything, so that nothing cached in the first can help. */
    private static final class KnowledgeStoreTwin {
        static final KnowledgeStore STORE = KnowledgeStore.builtIn();
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void limitsAreKeptStrictly(@ForAll("questions") Request request) {
        Answer answer = Asking.ADVISOR.ask(request);
        Limits limits = answer.question().meant().limits();
        int channels = limits.mics() == null ? Usual.CHANNELS : limits.mics();
        for (Option option : answer.options()) {
            assertTrue(option.mics().stream().mapToInt(Placement::channels).sum() <= channels);
            for (Placement mic : option.mics()) {
                assertTrue(limits.onlyFamilies().isEmpty() || limits.onlyFamilies().contains(mic.family()), mic.micType());
                assertTrue(!limits.withoutFamilies().contains(mic.family()), mic.micType());
                assertTrue(!Boolean.FALSE.equals(limits.phantom()) || !mic.phantom(), mic.micType());
            }
        }
        if (answer.options().isEmpty()) {
            assertTrue(!answer.instead().isEmpty(), "nothing fits, and no limit is named: " + request);
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void noCautionIsEverDropped(@ForAll("questions") Request request) {
        Answer answer = Asking.ADVISOR.ask(request);
        Scene scene = Asking.scene(answer);
        List<Placed> placed = Placements.of(scene);
        Map<Integer, Set<String>> cautions = new HashMap<>();
        Set<String> general = new TreeSet<>();
        for (Finding finding : Asking.KNOWLEDGE.current().rules().warn(scene.setting(), placed)) {
            if (finding.rule().effect() != Effect.CAUTION) {
                continue;
            }
            if (finding.subject() instanceof Placed subject) {
                cautions.computeIfAbsent(subject.index(), index -> new TreeSet<>()).add(finding.rule().id());
            } else {
                general.add(finding.rule().id());
            }
        }
        for (Option option : answer.options()) {
            Set<String> shown = option.cautions().stream().map(Caution::rule).collect(Collectors.toSet());
            assertTrue(shown.containsAll(general), general + " but shown " + shown);
            for (Placement mic : option.mics()) {
                Placed same = placed.stream().filter(one -> one.mic().id().equals(mic.micType()) && one.pattern() == mic.pattern()
                        && one.position().id().equals(mic.position()) && one.distanceM() == mic.distanceM()
                        && one.aimDegrees() == mic.aimDegrees()).findFirst().orElseThrow();
                assertTrue(shown.containsAll(cautions.getOrDefault(same.index(), Set.of())), mic.micType() + " " + shown);
            }
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void optionsDifferInIdea(@ForAll("questions") Request request) {
        Set<String> setUps = new HashSet<>();
        for (Option option : Asking.ADVISOR.ask(request).options()) {
            String setUp = option.technique() + option.mics().stream().map(Placement::micType).toList();
            assertTrue(setUps.add(setUp), setUp);
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void optionsComeBestFirst(@ForAll("questions") Request request) {
        List<Double> scores = Asking.ADVISOR.ask(request).options().stream().map(Option::score).toList();
        assertEquals(scores.stream().sorted((one, other) -> Double.compare(other, one)).toList(), scores);
    }

    @Provide
    Arbitrary<Request> questions() {
        var catalogue = Asking.KNOWLEDGE.current().catalogue();
        Arbitrary<String> sources = Arbitraries.of(catalogue.sources().keySet());
        Arbitrary<String> rooms = Arbitraries.of(catalogue.rooms().keySet()).injectNull(0.3);
        Arbitrary<List<String>> characters = Arbitraries.of(catalogue.characters().keySet()).list().ofMaxSize(2).uniqueElements();
        Arbitrary<List<MicFamily>> families = Arbitraries.of(MicFamily.class).list().ofMaxSize(3).uniqueElements();
        Arbitrary<Limits> limits = Combinators.combine(
                Arbitraries.integers().between(1, 4).injectNull(0.4),
                Arbitraries.of(true, false).injectNull(0.6),
                Arbitraries.doubles().between(40, 80).injectNull(0.7),
                Arbitraries.doubles().between(-130, -115).injectNull(0.7),
                Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(4, Arbitraries.just(List.<MicFamily>of())), net.jqwik.api.Tuple.of(1, families)),
                Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(3, Arbitraries.just(List.<MicFamily>of())), net.jqwik.api.Tuple.of(1, families)))
                .as((mics, phantom, gain, noise, only, without) -> new Limits(mics, phantom, gain, noise, only, without, null, null));
        Arbitrary<List<Neighbour>> neighbours = Combinators.combine(Arbitraries.of(catalogue.sources().keySet()),
                Arbitraries.doubles().between(0.5, 6), Arbitraries.doubles().between(0, 180)).as(Neighbour::new).list().ofMaxSize(2);
        Arbitrary<List<String>> circumstances = Arbitraries.of("stereo", "mono", "one-performer", "children", "live", "shock").list()
                .ofMaxSize(2).uniqueElements();
        return Combinators.combine(sources, rooms, characters, limits, neighbours, circumstances)
                .as((source, room, character, limit, neighbour, circumstance) -> new Request(null, source, null, null, room, character,
                        limit, neighbour, circumstance, null, null, null, null, null));
    }

    /** Looks each number up where it came from: the placement, the two together, the question, the catalogue entry of the type. */
    private static void recompute(Answer answer, Option option, int mic, String rule, List<Value> values) throws Exception {
        for (Value value : values) {
            List<Double> known = new ArrayList<>();
            collect(JSON.valueToTree(answer.question().numbers()), value.name(), known);
            if (option.together() != null) {
                collect(JSON.valueToTree(option.together()), value.name(), known);
            }
            for (int i = 0; i < option.mics().size(); i++) {
                if (mic == 0 || mic == i + 1) {
                    Placement placement = option.mics().get(i);
                    collect(JSON.valueToTree(placement), value.name(), known);
                    collect(JSON.valueToTree(placement.predicted()), value.name(), known);
                    collect(JSON.valueToTree(Asking.KNOWLEDGE.current().catalogue().mics().get(placement.micType())), value.name(), known);
                }
            }
            assertTrue(known.stream().anyMatch(number -> Math.abs(number - value.value()) < 1e-3),
                    rule + " says " + value.name() + " = " + value.value() + ", the answer has " + known);
        }
    }

    private static void collect(JsonNode node, String name, List<Double> known) {
        JsonNode found = node.path(name);
        if (found.isNumber()) {
            known.add(found.doubleValue());
        } else if (found.isObject()) { // a range: any of its three
            found.forEach(number -> known.add(number.doubleValue()));
        }
    }
}
