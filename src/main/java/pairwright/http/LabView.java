package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pairwright.lab.BenchKey;
import pairwright.lab.BenchMark;
import pairwright.lab.Check;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.Key;
import pairwright.lab.LabDesk;
import pairwright.lab.Mark;
import pairwright.lab.Practice;
import pairwright.lab.Shown;
import pairwright.locker.ExerciseSet;
import pairwright.locker.HandedIn;
import pairwright.locker.Role;

/** What programs are told of exercises. What only an instructor may know is left out for everybody else. */
public final class LabView {
    private static final String SPREAD = "How hard an exercise is, is measured: what those lose of the mark, on average, who guess (24 times) and who take what comes to mind first, each "
            + "counting half. The spread lies between the hardest and the easiest bench, as a share of the mark.";

    private LabView() {
    }

    /** A set in a list. */
    public record ExerciseLine(String id, String kind, int level, int benches, OffsetDateTime from, OffsetDateTime until, OffsetDateTime opensAt, boolean open, String booking,
            long version, OffsetDateTime at, String by) {
        public static ExerciseLine of(ExerciseSet set, Instant now) {
            return new ExerciseLine(set.id(), set.kind(), set.level(), set.benches().size(), LockerView.shown(set.from()), LockerView.shown(set.until()), LockerView.shown(set.opensAt()),
                    set.open(now), set.booking(), set.version(), LockerView.shown(set.at()), set.by());
        }
    }

    /** Sets, the newest first; {@code count} also counts those that are not listed. */
    public record ExerciseLines(long count, List<ExerciseLine> exercises) {
    }

    /**
     * A set as it is handed out.
     *
     * @param seed null for whoever may not know
     * @param spreadShare between the hardest bench and the easiest; null for whoever may not know
     * @param spreadSays how that is measured
     */
    public record ExercisesMade(String id, String kind, int level, String seed, OffsetDateTime from, OffsetDateTime until, OffsetDateTime opensAt, boolean open, String booking,
            Double spreadShare, String spreadSays, List<ExerciseBench> benches, long version, OffsetDateTime at, String by) {
        public static ExercisesMade of(ExerciseSet set, LabDesk desk, Role role, Instant now, ObjectMapper json) {
            boolean all = role.covers(Role.INSTRUCTOR);
            double hardest = set.benches().stream().mapToDouble(ExerciseSet.Bench::hardnessShare).max().orElse(0);
            double easiest = set.benches().stream().mapToDouble(ExerciseSet.Bench::hardnessShare).min().orElse(0);
            return new ExercisesMade(set.id(), set.kind(), set.level(), all ? set.seed() : null, LockerView.shown(set.from()), LockerView.shown(set.until()),
                    LockerView.shown(set.opensAt()), set.open(now), set.booking(), all ? hardest - easiest : null, all ? SPREAD : null,
                    set.benches().stream().map(bench -> new ExerciseBench(bench.number(), handoutOf(desk.handout(set, bench.number()), json), bench.kit().stream().map(ExerciseKit::of).toList(),
                            all ? bench.hardnessShare() : null)).toList(), set.version(), LockerView.shown(set.at()), set.by());
        }
    }

    /** One bench. */
    public record ExerciseBench(int bench, JsonNode handout, List<ExerciseKit> kit, Double hardnessShare) {
    }

    /** One microphone of a bench. */
    public record ExerciseKit(String micType, String unit, String label) {
        static ExerciseKit of(ExerciseSet.Kit kit) {
            return new ExerciseKit(kit.micType(), kit.unit(), kit.label());
        }
    }

    /** What is right, bench by bench. */
    public record ExerciseKeys(String id, List<BenchRight> benches) {
        public static ExerciseKeys of(String id, List<BenchKey> keys) {
            return new ExerciseKeys(id, keys.stream().map(key -> new BenchRight(key.bench(), Right.of(key.key()))).toList());
        }
    }

    /** What is right at one bench. */
    public record BenchRight(int bench, Right key) {
    }

    /** What is right, item by item. */
    public record Right(Map<String, List<String>> best, List<Key.Entry> items, List<String> lesson) {
        public static Right of(Key key) {
            return new Right(key.best().given(), key.items(), key.lesson());
        }
    }

    /** What an answer earned. */
    public record AnswerMarked(int bench, double mark, double of, String capped, List<Check> checks, boolean late, OffsetDateTime at, String by) {
        static AnswerMarked of(HandedIn kept, Mark mark) {
            return new AnswerMarked(kept.bench(), mark.mark(), mark.of(), mark.capped(), mark.checks(), kept.late(), LockerView.shown(kept.at()), kept.by());
        }
    }

    /** That an answer came, where what it earned is not to be known yet. */
    public record AnswerReceived(int bench, OffsetDateTime at, String by, OffsetDateTime opensAt, String says) {
        static AnswerReceived of(HandedIn kept, Instant opensAt) {
            return new AnswerReceived(kept.bench(), LockerView.shown(kept.at()), kept.by(), LockerView.shown(opensAt),
                    "Received. It is marked when the keys are open" + (opensAt == null ? "; whoever teaches says when" : ""));
        }
    }

    /** What every bench earned. */
    public record ExerciseMarks(String id, List<BenchMarked> benches) {
        public static ExerciseMarks of(String id, List<BenchMark> marks) {
            return new ExerciseMarks(id, marks.stream().map(BenchMarked::of).toList());
        }
    }

    /** What a bench earned; all but its number is missing where it handed in nothing. */
    public record BenchMarked(int bench, Double mark, Double of, String capped, List<Check> checks, Map<String, List<String>> answer, Boolean late, OffsetDateTime at, String by,
            Double otherPoints) {
        static BenchMarked of(BenchMark bench) {
            if (bench.mark() == null) {
                return new BenchMarked(bench.bench(), null, null, null, List.of(), Map.of(), null, null, null, null);
            }
            return new BenchMarked(bench.bench(), bench.mark().mark(), bench.mark().of(), bench.mark().capped(), bench.mark().checks(), bench.answer().given(),
                    bench.handedIn().late(), LockerView.shown(bench.handedIn().at()), bench.handedIn().by(), bench.otherPoints());
        }
    }

    /** An exercise to practise. */
    public record PracticeTried(String kind, int level, String seed, JsonNode handout) {
        public static PracticeTried of(Practice.Tried tried, ObjectMapper json) {
            return new PracticeTried(tried.kind(), tried.level(), tried.seed(), handoutOf(tried.handout(), json));
        }
    }

    /** What an answer to it earned, and what was right. */
    public record PracticeMarked(double mark, double of, String capped, List<Check> checks, Right key) {
        public static PracticeMarked of(Practice.Told told) {
            return new PracticeMarked(told.mark().mark(), told.mark().of(), told.mark().capped(), told.mark().checks(), Right.of(told.key()));
        }
    }

    /** What a bench gets, as JSON. */
    public static ObjectNode handoutOf(Handout handout, ObjectMapper json) {
        ObjectNode node = json.createObjectNode();
        node.put("title", handout.title());
        node.set("cautions", json.valueToTree(handout.cautions()));
        node.set("situation", json.valueToTree(handout.situation()));
        ArrayNode shown = node.putArray("shown");
        handout.shown().forEach(one -> shown.add(shown(one, json)));
        ArrayNode items = node.putArray("items");
        handout.items().forEach(item -> items.add(item(item, json)));
        return node;
    }

    private static ObjectNode item(Item item, ObjectMapper json) {
        ObjectNode node = json.createObjectNode().put("id", item.id()).put("asks", item.asks());
        if (item instanceof Item.OneOf one) {
            return node.put("answer", "one").set("options", json.valueToTree(one.options()));
        }
        if (item instanceof Item.SomeOf some) {
            node.put("answer", "some").set("options", json.valueToTree(some.options()));
            return some.pick() == null ? node : node.put("pick", some.pick());
        }
        if (item instanceof Item.InOrder order) {
            return node.put("answer", "order").set("options", json.valueToTree(order.options()));
        }
        if (item instanceof Item.Amount amount) {
            return node.put("answer", "number").put("unit", amount.unit());
        }
        Item.Spot spot = (Item.Spot) item;
        return node.put("answer", "spot").put("picture", spot.picture()).put("leftM", spot.leftM()).put("rightM", spot.rightM()).put("lowM", spot.lowM()).put("highM", spot.highM());
    }

    /** How microphones stand and no more: what an option says besides, its points and reasons, may be what is asked. */
    private static ObjectNode shown(Shown shown, ObjectMapper json) {
        ObjectNode node = json.createObjectNode().put("caption", shown.caption());
        if (shown instanceof Shown.Table table) {
            return node.put("shows", "table").<ObjectNode>set("columns", json.valueToTree(table.columns())).set("rows", json.valueToTree(table.rows()));
        }
        if (shown instanceof Shown.Curves curves) {
            return node.put("shows", "curves").set("curves", json.valueToTree(curves.curves()));
        }
        if (shown instanceof Shown.AtSource at) {
            ArrayNode mics = node.put("shows", "at-source").put("source", at.source()).putArray("mics");
            at.option().mics().forEach(mic -> mics.addObject().put("micType", mic.micType()).put("pattern", mic.pattern().id().toLowerCase(Locale.ROOT)).put("position", mic.position())
                    .put("distanceM", mic.distanceM()).put("aimDegrees", mic.aimDegrees()));
            return node;
        }
        return node.put("shows", "from-above").set("lineUp", SessionJson.of(((Shown.FromAbove) shown).lineUp()));
    }
}
