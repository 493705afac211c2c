package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.locker.PhantomSwitch;
import pairwright.model.MicType;
import pairwright.session.allocation.Bank;
import pairwright.session.allocation.Channel;
import pairwright.session.allocation.Feed;
import pairwright.session.allocation.PhantomNeed;

/** The channels there are, bank by bank, told apart by how much gain they have, most and least, and by what may be plugged into them. */
final class ChannelPool {
    /** A group nothing is of: where there is no channel at all, none serves anything. */
    private static final String NO_CHANNEL = "none";
    /** A channel of which nobody noted the gain is taken to have enough. */
    private static final double ENOUGH_DB = 100;
    private static final String LOST = "lost";

    private final List<Bank> banks = new ArrayList<>();
    /** The channels behind each of the banks, in their order. */
    private final List<List<Gear.Channel>> channels = new ArrayList<>();
    private final boolean counted;
    private final Set<String> lost;
    private final double mostGainDb;
    private final double leastGainDb;
    private final List<Double> leastGainsDb;
    /** A channel of each group that can be used; those of one do for the same. */
    private final Map<String, Gear.Channel> groups = new TreeMap<>();

    /** The groups there are, and whether any channel has phantom power. */
    record Sorts(boolean counted, Set<String> groups, boolean hasPhantom) {
    }

    /** What shares a supply and is switched alike. */
    private record Shared(String bank, PhantomSwitch phantom) {
    }

    /** @param all null where channels are not counted */
    ChannelPool(List<Gear.Channel> all) {
        this(all, Set.of());
    }

    /** @param lost ids of those that cannot be used any more; they stay where they are, so that the others keep their places */
    ChannelPool(List<Gear.Channel> all, Set<String> lost) {
        this.counted = all != null;
        this.lost = lost;
        Map<Shared, List<Gear.Channel>> shared = new LinkedHashMap<>();
        if (counted) {
            all.forEach(channel -> shared.computeIfAbsent(new Shared(channel.bank() == null ? channel.id() : channel.bank(), channel.phantom()),
                    any -> new ArrayList<>()).add(channel));
        }
        shared.forEach((of, list) -> {
            boolean whole = of.phantom() == PhantomSwitch.BANK;
            Integer supply = list.stream().map(Gear.Channel::supplyMa).filter(Objects::nonNull).min(Comparator.naturalOrder())
                    .map(ma -> (int) Math.floor(ma * 10)).orElse(null);
            banks.add(new Bank(of.bank() + " " + of.phantom().id(), of.phantom(), list.stream().map(channel -> lost.contains(channel.id()) ? LOST : group(channel)).toList(),
                    whole ? supply : null, whole ? null : supply));
            channels.add(List.copyOf(list));
        });
        this.mostGainDb = counted ? usable().mapToDouble(ChannelPool::gainDb).max().orElse(0) : ENOUGH_DB;
        this.leastGainDb = usable().mapToDouble(ChannelPool::gainDb).min().orElse(ENOUGH_DB);
        this.leastGainsDb = usable().map(InputLevel::leastGainDb).distinct().sorted().toList();
        usable().forEach(channel -> groups.putIfAbsent(group(channel), channel));
    }

    Sorts sorts() {
        return new Sorts(counted, Set.copyOf(groups.keySet()), hasPhantom());
    }

    private Stream<Gear.Channel> usable() {
        return channels.stream().flatMap(List::stream).filter(channel -> !lost.contains(channel.id()));
    }

    /** Where a channel is; null where there is none of that id. */
    Channel at(String id) {
        for (int bank = 0; bank < channels.size(); bank++) {
            for (int channel = 0; channel < channels.get(bank).size(); channel++) {
                if (channels.get(bank).get(channel).id().equals(id)) {
                    return new Channel(bank, channel);
                }
            }
        }
        return null;
    }

    private static double gainDb(Gear.Channel channel) {
        return channel.mostGainDb() == null ? ENOUGH_DB : channel.mostGainDb();
    }

    /** Channels of a group do for the same microphones. */
    private static String group(Gear.Channel channel) {
        return "gain " + gainDb(channel) + " from " + InputLevel.leastGainDb(channel) + (instrumentOhm(channel) == 0 ? "" : " instrument " + instrumentOhm(channel));
    }

    /** The input impedance of an instrument input; 0 for any other. */
    private static double instrumentOhm(Gear.Channel channel) {
        return channel.inputOhm() != null && channel.inputOhm() >= MicType.BOX_LOAD_OHM ? channel.inputOhm() : 0;
    }

    /** Whether it takes the lead of an instrument with no line box between. */
    static boolean instrument(Gear.Channel channel) {
        return instrumentOhm(channel) > 0;
    }

    /** The first of those that can be used and fit. */
    Optional<Gear.Channel> first(Predicate<Gear.Channel> fitting) {
        return usable().filter(fitting).findFirst();
    }

    /** The group of a channel as the search knows it. */
    String groupAt(Channel at) {
        return banks.get(at.bank()).channels().get(at.channel());
    }

    /** Which channels a group is, to be put behind their name; nothing where all are alike or none is there. */
    String likeness(String group) {
        Gear.Channel like = groups.get(group);
        return groups.size() < 2 && like != Borrowable.CHANNEL || like == null ? "" : like == Borrowable.CHANNEL
                ? " with " + (int) gainDb(like) + " dB of gain and phantom power of its own" : " like " + like.label();
    }

    /** The lowest gains there are, the lowest first; empty where channels are not counted. */
    List<Double> leastGainsDb() {
        return leastGainsDb;
    }

    boolean counted() {
        return counted;
    }

    List<Bank> banks() {
        return banks;
    }

    /** The channel behind a place in one of the banks. */
    Gear.Channel channel(Channel at) {
        return channels.get(at.bank()).get(at.channel());
    }

    /** What people call a bank: its own name, or the label of the channel that stands alone. */
    String bankName(String name) {
        for (int bank = 0; bank < banks.size(); bank++) {
            if (banks.get(bank).name().equals(name)) {
                return bankName(bank);
            }
        }
        return name;
    }

    String bankName(int bank) {
        Gear.Channel first = channels.get(bank).get(0);
        return first.bank() == null ? first.label() : first.bank();
    }

    /** All channels of a bank that can be used. */
    List<Gear.Channel> of(int bank) {
        return channels.get(bank).stream().filter(channel -> !lost.contains(channel.id())).toList();
    }

    /** The most gain any channel has; null where channels are not counted. */
    Double mostGainDb() {
        return counted ? Double.valueOf(mostGainDb) : null;
    }

    /** Whether there is phantom power at all. */
    boolean hasPhantom() {
        return !counted || banks.stream().anyMatch(bank -> bank.phantom() != PhantomSwitch.NONE);
    }

    /** Equivalent input noise of the channel that has most of it; null where it is not known of any. */
    Double worstNoiseDbu() {
        return usable().map(Gear.Channel::noiseDbu).filter(Objects::nonNull).max(Comparator.naturalOrder()).orElse(null);
    }

    /** The least gain any channel goes up to. */
    double leastGainDb() {
        return leastGainDb;
    }

    /** The groups of those channels that have that much gain; where none has, of those that have most. */
    private Set<String> groups(Predicate<Gear.Channel> fitting, double wantedGainDb) {
        Map<String, Gear.Channel> fit = new TreeMap<>(groups);
        fit.values().removeIf(fitting.negate());
        double leastDb = Math.min(wantedGainDb, fit.values().stream().mapToDouble(ChannelPool::gainDb).max().orElse(0));
        fit.values().removeIf(channel -> gainDb(channel) < leastDb);
        return fit.keySet();
    }

    /** Whether any channel that can be used is such a one. */
    boolean any(Predicate<Gear.Channel> fitting) {
        return usable().anyMatch(fitting);
    }

    /**
     * What a microphone asks of its channel; empty where they are not counted.
     *
     * @param wantedGainDb of the preamplifier
     * @param drawnMa phantom current, counted up
     */
    List<Feed> feed(double wantedGainDb, PhantomNeed phantom, double drawnMa) {
        return feed(channel -> true, wantedGainDb, phantom, drawnMa);
    }

    /** The same of some channels only. */
    List<Feed> feed(Predicate<Gear.Channel> fitting, double wantedGainDb, PhantomNeed phantom, double drawnMa) {
        Set<String> groups = groups(fitting, wantedGainDb);
        return counted ? List.of(new Feed(groups.isEmpty() ? Set.of(NO_CHANNEL) : groups, phantom, phantom == PhantomNeed.NEEDED ? (int) Math.ceil(drawnMa * 10) : 0)) : List.of();
    }
}
