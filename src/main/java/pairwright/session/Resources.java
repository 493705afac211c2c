package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Arrangement;
import pairwright.model.Body;
import pairwright.model.Catalogue;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Mount;
import pairwright.model.PowerNeed;
import pairwright.model.Standpoint;
import pairwright.session.allocation.Cap;

/** The gear of a session as the search reckons with it. */
final class Resources {
    static final String BOOSTERS = "boosters";
    private static final String STAND = "stand ";
    private static final String PAD = "pad ";

    private final UnitPool units;
    private final ChannelPool channels;
    private final Stands stands;
    private final List<Gear.Booster> boosters;
    private final Catalogue catalogue;
    private final List<Gear.LinePad> pads;
    private final Sorts sorts;

    /** What sorts of things there are, however many: on this alone it depends what can be put in front of a seat. */
    record Sorts(UnitPool.Sorts units, Others others) {
    }

    /** All but the units. */
    record Others(ChannelPool.Sorts channels, List<Gear.Stand> stands, List<Gear.Booster> boosters, List<Gear.LinePad> pads) {
    }

    /**
     * @param lostChannels ids of channels that cannot be used any more
     * @param own ids of units that are offered by their own response
     * @param catalogue where price classes and customs are
     */
    Resources(Gear gear, Set<String> lostChannels, Set<String> own, Catalogue catalogue) {
        this.units = new UnitPool(gear.stock(), own);
        this.channels = new ChannelPool(gear.channels(), lostChannels);
        this.stands = new Stands(gear.stands(), catalogue.custom("low-stand"));
        this.catalogue = catalogue;
        this.boosters = gear.boosters().stream().filter(booster -> !booster.passesPhantom()).toList();
        this.pads = gear.pads();
        this.sorts = new Sorts(units.sorts(), new Others(channels.sorts(), gear.stands(), boosters, pads));
    }

    Sorts sorts() {
        return sorts;
    }

    UnitPool units() {
        return units;
    }

    ChannelPool channels() {
        return channels;
    }

    Stands stands() {
        return stands;
    }

    /** Those that keep phantom power from what is plugged into them; no others are used. */
    List<Gear.Booster> boosters() {
        return boosters;
    }

    List<Cap> caps() {
        List<Cap> caps = new ArrayList<>(units.caps(type -> catalogue.mics().get(type).tier()));
        if (units.counted()) {
            catalogue.mics().values().stream().filter(type -> !units.has(type.id()) && catalogue.mics().values().stream().anyMatch(type::boxFor)).forEach(type -> caps.add(units.none(type.id(), type.tier())));
        }
        pads.stream().collect(Collectors.groupingBy(Resources::padCap, TreeMap::new, Collectors.counting()))
                .forEach((cap, count) -> caps.add(new Cap(cap, count.intValue(), price("borrowed-pad"))));
        stands.classes().forEach(one -> caps.add(new Cap(name(one), one.stands().size(), price("borrowed-stand"))));
        caps.add(new Cap(BOOSTERS, boosters.size(), price("borrowed-booster")));
        return caps;
    }

    /** What one more channel costs. */
    int channelPrice() {
        return price("borrowed-channel");
    }

    /** What one more pair of hands costs. */
    int handsPrice() {
        return price("more-hands");
    }

    /** What it costs to begin a quarter of an hour earlier. */
    int earlierPrice() {
        return price("earlier-start");
    }

    private int price(String custom) {
        return (int) Math.ceil(catalogue.custom(custom));
    }

    private static String name(Stands.Class one) {
        return STAND + one.index();
    }

    /** The class of stands a cap counts; null for another cap. */
    Stands.Class stand(String cap) {
        return cap.startsWith(STAND) ? stands.classes().get(Integer.parseInt(cap.substring(STAND.length()))) : null;
    }

    /**
     * For each stand an offer takes the caps it may come from; empty where none is taken or they are not counted, null where no stand holds it.
     *
     * @param body of the source; null where nobody noted it
     */
    List<Set<String>> standing(Offer offer, Body body) {
        List<Set<String>> all = new ArrayList<>();
        for (Stands.Need need : stands.counted() ? needs(offer, body) : List.<Stands.Need>of()) {
            Set<String> holding = stands.holding(need).stream().map(Resources::name).collect(Collectors.toCollection(TreeSet::new));
            if (holding.isEmpty()) {
                return null;
            }
            all.add(holding);
        }
        return all;
    }

    /** What an offer needs to stand on: one stand a microphone, but for two that hang on one bar. */
    static List<Stands.Need> needs(Offer offer, Body body) {
        List<Stands.Need> needs = new ArrayList<>();
        for (OfferedMic mic : offer.mics()) {
            if (mic.position().mount().onStand()) {
                Double heightM = body == null ? mic.position().heightM() : Double.valueOf(Standpoint.of(body, mic.position(), mic.distanceM()).place().upM());
                needs.add(new Stands.Need(mic.position().mount(), heightM, massKg(mic.micType())));
            }
        }
        if (needs.size() == 2 && onOneBar(offer)) {
            Stands.Need one = needs.get(0);
            return List.of(new Stands.Need(one.mount(), one.heightM(), one.loadKg() + needs.get(1).loadKg() + Stands.BAR_KG));
        }
        return needs;
    }

    /** Whether one stand carries both microphones. */
    static boolean onOneBar(Offer offer) {
        Arrangement arrangement = offer.pairing() == null ? null : offer.pairing().arrangement();
        return (arrangement == Arrangement.COINCIDENT || arrangement == Arrangement.NEAR_COINCIDENT || arrangement == Arrangement.MID_SIDE)
                && offer.mics().stream().allMatch(mic -> mic.position().mount().onStand());
    }

    private static double massKg(MicType mic) {
        return mic.massKg() == null ? 0 : mic.massKg().typical();
    }

    /** Whether a booster would help: a passive microphone that wants more gain than some channel has. */
    boolean wantsBooster(OfferedMic mic) {
        return !boosters.isEmpty() && channels.counted() && mic.micType().power() == PowerNeed.NONE && mic.position().mount() != Mount.LEAD
                && mic.predicted().gainDb() != null && mic.predicted().gainDb() > channels.leastGainDb();
    }

    /** The booster that is reckoned with: the one that adds least and draws most, so that any of them will do. */
    Gear.Booster usualBooster() {
        return new Gear.Booster(null, null, boosters.stream().mapToDouble(Gear.Booster::gainDb).min().orElse(0),
                boosters.stream().mapToDouble(Gear.Booster::phantomMa).max().orElse(0), false);
    }

    /**
     * The types of line boxes that do for what wants one, the cheapest first: those there are, or any where units are not counted.
     *
     * @param borrowed whether those count of which there are none
     */
    List<MicType> boxes(MicType of, boolean borrowed) {
        List<MicType> fit = catalogue.mics().values().stream().filter(type -> type.boxFor(of)).sorted(Comparator.comparingInt(MicType::tier).thenComparing(MicType::id)).toList();
        List<MicType> there = fit.stream().filter(type -> units.has(type.id())).toList();
        return !there.isEmpty() || borrowed || !units.counted() ? (there.isEmpty() ? fit.stream().limit(1).toList() : there) : List.of();
    }

    /** How many line boxes are free, of any type; null where units are not counted. */
    Integer boxesThere() {
        return units.counted() ? Integer.valueOf(catalogue.mics().values().stream().filter(type -> type.family() == MicFamily.LINE && type.captures()).mapToInt(type -> units.count(type.id())).sum()) : null;
    }

    MicType type(String id) {
        return catalogue.mics().values().stream().filter(type -> type.id().equals(id)).findFirst().orElseThrow();
    }

    /** Pads for a line that are used: all of them, those that pass phantom power and those that do not. */
    List<Gear.LinePad> pads() {
        return pads;
    }

    /** What pads take away, the least first, of those that do for a line. */
    List<Double> padLossesDb(boolean powered) {
        return pads.stream().filter(pad -> pad.passes() || !powered).map(Gear.LinePad::lossDb).distinct().sorted().toList();
    }

    /** The caps that a pad comes from which takes away so much at least. */
    Set<String> padCaps(double lossDb, boolean powered) {
        return pads.stream().filter(pad -> pad.lossDb() >= lossDb && (pad.passes() || !powered)).map(Resources::padCap).collect(Collectors.toCollection(TreeSet::new));
    }

    static String padCap(Gear.LinePad pad) {
        return PAD + pad.lossDb() + (pad.passes() ? " with phantom" : "");
    }

    /** Whether a cap counts pads. */
    static boolean isPad(String cap) {
        return cap.startsWith(PAD);
    }
}
