package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import pairwright.catalogue.Shown;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.StandData;
import pairwright.model.Catalogue;
import pairwright.model.Nearest;
import pairwright.model.Stock;
import pairwright.session.Gear;
import pairwright.session.GearOf;
import pairwright.session.StandKind;

/** Reads what there is to plan with where it is named in the request itself. A kind of thing that is left out is not counted. */
final class GearBody {
    private static final Set<String> FIELDS = Set.of("units", "channels", "stands", "boosters", "pads");
    private static final Set<String> UNIT = Set.of("id", "micType", "pairMate", "label");
    private static final Set<String> CHANNEL = Set.of("id", "label", "bank", "phantom", "minGainDb", "maxGainDb", "inputOhm", "noiseDbu", "supplyMa");
    private static final Set<String> STAND = Set.of("id", "label", "kind", "massKg", "reachM", "footRadiusM", "legs", "heightM");
    private static final Set<String> BOOSTER = Set.of("id", "label", "gainDb", "phantomMa", "passesPhantom");
    private static final Set<String> PAD = Set.of("id", "label", "lossDb", "passesPhantom");
    private static final int LONGEST = 120;

    private final JsonReader in;
    private final Catalogue catalogue;
    private final Set<String> ids = new HashSet<>();

    GearBody(JsonReader in, Catalogue catalogue) {
        this.in = in;
        this.catalogue = catalogue;
    }

    /** What is named; null where nothing is. */
    Gear read(JsonNode root, String at) {
        JsonNode node = root.at(at);
        if (JsonReader.absent(node)) {
            return null;
        }
        if (!node.isObject()) {
            in.wrong(at, node, "an object with units, channels and stands, or one of free, owned and any");
            return null;
        }
        in.onlyKnown(node, at, FIELDS);
        List<Stock.Held> units = in.list(root, at + "/units", named(UNIT, this::unit));
        return new Gear(units == null ? null : new Stock(true, matched(units)),
                in.list(root, at + "/channels", named(CHANNEL, this::channel)),
                in.list(root, at + "/stands", named(STAND, this::stand)),
                in.list(root, at + "/boosters", named(BOOSTER, this::booster)),
                in.list(root, at + "/pads", named(PAD, this::pad)));
    }

    /** Reads what has an id of its own and no fields but these. */
    private <T> BiFunction<JsonNode, String, T> named(Set<String> fields, BiFunction<JsonNode, String, T> read) {
        return (root, at) -> {
            JsonNode node = root.at(at);
            if (!node.isObject()) {
                in.wrong(at, node, "an object with an id");
                return null;
            }
            in.onlyKnown(node, at, fields);
            String id = line(root, at + "/id");
            if (JsonReader.absent(node.path("id"))) {
                in.fault(at + "/id", "something in the locker has no id. Give it one");
            } else if (id != null && !ids.add(id)) {
                in.fault(at + "/id", "the id " + Shown.of(id) + " is given twice in the locker. Give each its own");
            }
            return read.apply(root, at);
        };
    }

    private Stock.Held unit(JsonNode root, String at) {
        String micType = in.text(root, at + "/micType");
        if (JsonReader.absent(root.at(at).path("micType"))) {
            in.fault(at + "/micType", "a unit has no micType. Name one of the catalogue");
        } else if (micType != null && !catalogue.mics().containsKey(micType)) {
            in.fault(at + "/micType", "there is no mic type \"" + Shown.of(micType) + "\". " + Nearest.to(Shown.of(micType), new TreeSet<>(catalogue.mics().keySet()))
                    .map(near -> "Did you mean " + near + "?").orElse("All ids are at /api/mics"));
        }
        return new Stock.Held(in.text(root, at + "/id"), micType, label(root, at), null, null, null, in.text(root, at + "/pairMate"), null, null);
    }

    /** Two are a pair where one names the other, both are there and of one type; each is of one pair at most. */
    private static List<Stock.Held> matched(List<Stock.Held> units) {
        Map<String, Stock.Held> byId = new HashMap<>();
        units.forEach(unit -> byId.putIfAbsent(unit.id(), unit));
        Map<String, String> mates = new HashMap<>();
        for (Stock.Held unit : units) {
            Stock.Held other = unit.pairMate() == null ? null : byId.get(unit.pairMate());
            boolean pair = other != null && other != unit && unit.micType() != null && unit.micType().equals(other.micType());
            if (pair && !mates.containsKey(unit.id()) && !mates.containsKey(other.id())) {
                mates.put(unit.id(), other.id());
                mates.put(other.id(), unit.id());
            }
        }
        return units.stream().map(unit -> new Stock.Held(unit.id(), unit.micType(), unit.label(), null, null, null, mates.get(unit.id()), null, null)).toList();
    }

    private Gear.Channel channel(JsonNode root, String at) {
        PhantomSwitch phantom = in.constant(root, at + "/phantom", PhantomSwitch.values(), "reach of a phantom switch");
        Double leastGainDb = number(root, at + "/minGainDb", -60, 80);
        Double mostGainDb = number(root, at + "/maxGainDb", -20, 120);
        if (leastGainDb != null && mostGainDb != null && leastGainDb > mostGainDb) {
            in.fault(at + "/minGainDb", "minGainDb is " + SessionBody.plain(leastGainDb) + ", over maxGainDb. Give the lowest gain there, and the highest as maxGainDb");
        }
        return new Gear.Channel(in.text(root, at + "/id"), label(root, at), line(root, at + "/bank"), phantom == null ? PhantomSwitch.CHANNEL : phantom,
                leastGainDb, mostGainDb, number(root, at + "/inputOhm", 50, 1e8), number(root, at + "/noiseDbu", -140, -60),
                number(root, at + "/supplyMa", 0, 2000));
    }

    private Gear.Stand stand(JsonNode root, String at) {
        StandKind kind = in.constant(root, at + "/kind", StandKind.values(), "kind of stand");
        Integer legs = in.whole(root, at + "/legs");
        if (legs != null && legs != 0 && (legs < 3 || legs > 12)) {
            in.fault(at + "/legs", "a stand with " + legs + " legs does not stand. Give 3 to 12, or 0 for a round base");
        }
        StandData data = new StandData(number(root, at + "/massKg", 0.05, 200), number(root, at + "/reachM", 0, 6), number(root, at + "/footRadiusM", 0.02, 3),
                legs, number(root, at + "/heightM", 0.02, 10));
        return new Gear.Stand(in.text(root, at + "/id"), label(root, at), kind == null ? GearOf.kind(data) : kind, data.massKg(), data.reachM(), data.footRadiusM(),
                legs, data.heightM());
    }

    private Gear.Booster booster(JsonNode root, String at) {
        Double gainDb = needed(root, at, "gainDb", 1, 60);
        Double phantomMa = number(root, at + "/phantomMa", 0, 30);
        return new Gear.Booster(in.text(root, at + "/id"), label(root, at), gainDb == null ? 1 : gainDb, phantomMa == null ? 0 : phantomMa,
                !Boolean.FALSE.equals(in.yesOrNo(root, at + "/passesPhantom")));
    }

    private Gear.LinePad pad(JsonNode root, String at) {
        Double lossDb = needed(root, at, "lossDb", 1, 80);
        return new Gear.LinePad(in.text(root, at + "/id"), label(root, at), lossDb == null ? 1 : lossDb, in.yesOrNo(root, at + "/passesPhantom"));
    }

    private Double needed(JsonNode root, String at, String name, double least, double most) {
        if (JsonReader.absent(root.at(at).path(name))) {
            in.fault(at + "/" + name, name + " is missing. Give it in dB");
        }
        return number(root, at + "/" + name, least, most);
    }

    private Double number(JsonNode root, String at, double least, double most) {
        Double given = in.number(root, at);
        if (given != null && !(given >= least && given <= most)) {
            in.fault(at, at.substring(at.lastIndexOf('/') + 1) + " must be " + SessionBody.plain(least) + " to " + SessionBody.plain(most) + ", but was "
                    + SessionBody.plain(given));
        }
        return given;
    }

    private String label(JsonNode root, String at) {
        String label = line(root, at + "/label");
        return label == null ? in.text(root, at + "/id") : label;
    }

    /** A short text of one line. */
    private String line(JsonNode root, String at) {
        String text = in.text(root, at);
        if (text != null && (text.isBlank() || text.length() > LONGEST || text.codePoints().anyMatch(Character::isISOControl))) {
            in.fault(at, at.substring(at.lastIndexOf('/') + 1) + " must be 1 to " + LONGEST + " characters on one line, but was \"" + Shown.of(text) + "\"");
        }
        return text;
    }
}
