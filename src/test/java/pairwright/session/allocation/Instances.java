package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import pairwright.locker.PhantomSwitch;

/** Made-up sessions, the same for the same seed: types of which there are a few units, pairs, seats that prefer some types, banks, stands. */
final class Instances {
    /** What is hard about a session. */
    enum Mood {
        /** Enough of everything. */
        LOOSE,
        /** Fewer units, channels and stands than are wanted. */
        TIGHT,
        /** Many feeds that must not see phantom power, on banks with one switch. */
        RIBBONS,
        /** Many seats that are worth something together. */
        PAIRS,
        /** Supplies that are too small for all. */
        CURRENT,
        /** Everything at once. */
        ALL
    }

    /** @param choices of a seat, about */
    record Size(int seats, int types, int choices) {
        static final Size TINY = new Size(3, 3, 4);
        static final Size SMALL = new Size(6, 14, 12);
        static final Size MIDDLE = new Size(14, 40, 24);
        static final Size MEDIUM = new Size(24, 60, 32);
        static final Size LARGE = new Size(60, 400, 50);
    }

    private record Type(String name, PhantomNeed phantom, int drawTenthMa, Set<String> groups, int units, int pairs) {
    }

    private static final List<String> GROUPS = List.of("40 dB", "60 dB", "75 dB");

    private final Mood mood;
    private final Size size;
    private final Random random;
    private final List<Type> types = new ArrayList<>();

    private Instances(Mood mood, Size size, long seed) {
        this.mood = mood;
        this.size = size;
        this.random = new Random(seed * 1_000_003 + mood.ordinal() * 101L + size.seats());
    }

    static Problem of(Mood mood, Size size, long seed) {
        return new Instances(mood, size, seed).made();
    }

    private Problem made() {
        for (int index = 0; index < size.types(); index++) {
            types.add(type("type " + index));
        }
        List<Seat> seats = new ArrayList<>();
        for (int index = 0; index < size.seats(); index++) {
            seats.add(seat("seat " + index));
        }
        List<Cap> caps = new ArrayList<>();
        for (Type type : types) {
            caps.add(new Cap(type.name(), type.units(), 1 + random.nextInt(9)));
            caps.add(new Cap(type.name() + " pairs", type.pairs(), 1 + random.nextInt(9)));
        }
        int stands = mood == Mood.TIGHT || mood == Mood.ALL ? size.seats() * 2 / 5 : size.seats();
        List.of("tall", "boom", "short").forEach(kind -> caps.add(new Cap(kind, stands, 1)));
        return new Problem(seats, caps, banks(), mood == Mood.PAIRS || mood == Mood.ALL ? pairs(seats) : List.of(), List.of(), Map.of("60 dB", 4, "75 dB", 6));
    }

    private Type type(String name) {
        int kind = random.nextInt(10);
        boolean ribbons = mood == Mood.RIBBONS || mood == Mood.ALL;
        PhantomNeed phantom = kind < 4 ? PhantomNeed.NEEDED : kind < (ribbons ? 8 : 5) ? PhantomNeed.FORBIDDEN : PhantomNeed.ANY;
        Set<String> groups = new HashSet<>(GROUPS.subList(phantom == PhantomNeed.NEEDED ? 0 : 1 + random.nextInt(2), 3));
        int units = 1 + random.nextInt(mood == Mood.LOOSE ? 6 : 3);
        return new Type(name, phantom, phantom == PhantomNeed.NEEDED ? 5 + random.nextInt(96) : 0, groups, units, units > 1 ? random.nextInt(units / 2 + 1) : 0);
    }

    private Seat seat(String id) {
        boolean must = random.nextInt(10) < 6;
        Map<String, Choice> choices = new TreeMap<>();
        for (int tries = 0; tries < size.choices(); tries++) {
            Choice choice = choice(tries);
            choices.putIfAbsent(choice.id(), choice);
        }
        List<Choice> all = new ArrayList<>(choices.values());
        if (random.nextInt(4) == 0) {
            all.add(new Choice("shared", Choice.Use.FEWER, 50, Map.of(), List.of(), List.of()));
        }
        all.add(Choice.out("out", must ? -2000 : -300));
        return new Seat(id, must, all);
    }

    /** One to three microphones, of one or two types. */
    private Choice choice(int tries) {
        Type type = types.get(Math.min(random.nextInt(size.types()), random.nextInt(size.types()))); // what comes first is what many want
        Type second = random.nextInt(4) == 0 ? types.get(random.nextInt(size.types())) : type;
        int count = 1 + Math.min(random.nextInt(3), random.nextInt(3));
        Map<String, Integer> takes = new LinkedHashMap<>();
        List<Feed> feeds = new ArrayList<>();
        List<Set<String>> stands = new ArrayList<>();
        for (int mic = 0; mic < count; mic++) {
            Type of = mic % 2 == 0 ? type : second;
            takes.merge(of.name(), 1, Integer::sum);
            feeds.add(new Feed(of.groups(), of.phantom(), of.drawTenthMa()));
            stands.add(List.of(Set.of("tall"), Set.of("boom"), Set.of("short", "boom"), Set.of("tall", "boom"), Set.of("tall", "boom", "short")).get(random.nextInt(5)));
        }
        boolean pair = count == 2 && second == type && random.nextBoolean();
        if (pair) {
            takes.put(type.name() + " pairs", 1);
        }
        long centipoints = 300 + random.nextInt(1500) + 150L * count + (pair ? 200 : 0) - 5L * tries;
        return new Choice(count + " " + type.name() + " " + second.name() + (pair ? " matched" : ""), Choice.Use.FULL, centipoints, takes, feeds, stands);
    }

    private List<Bank> banks() {
        int channels = size.seats() * (mood == Mood.LOOSE ? 3 : mood == Mood.TIGHT || mood == Mood.ALL ? 1 : 2) + 2;
        boolean oneSwitch = mood == Mood.RIBBONS || mood == Mood.ALL;
        List<Bank> banks = new ArrayList<>();
        while (channels > 0) {
            int of = Math.min(channels, 8);
            int kind = random.nextInt(10);
            PhantomSwitch phantom = kind < (oneSwitch ? 7 : 3) ? PhantomSwitch.BANK : kind < 9 ? PhantomSwitch.CHANNEL : PhantomSwitch.NONE;
            List<String> groups = new ArrayList<>();
            int gain = random.nextInt(3);
            for (int channel = 0; channel < of; channel++) {
                groups.add(GROUPS.get(channel % 4 == 3 ? Math.min(2, gain + 1) : gain));
            }
            boolean small = mood == Mood.CURRENT || mood == Mood.ALL && random.nextBoolean();
            banks.add(new Bank("bank " + banks.size(), phantom, groups, small ? of * 25 : null, small && random.nextInt(3) == 0 ? 70 : null));
            channels -= of;
        }
        return banks;
    }

    /** Neighbours that sound alike lose, some that belong together win. */
    private List<PairTerm> pairs(List<Seat> seats) {
        List<PairTerm> pairs = new ArrayList<>();
        for (int first = 0; first + 1 < seats.size(); first += 4) {
            List<PairTerm.Together> together = new ArrayList<>();
            for (int one = 0; one < seats.get(first).choices().size(); one++) {
                for (int other = 0; other < seats.get(first + 1).choices().size(); other++) {
                    int alike = tone(seats.get(first).choices().get(one)) - tone(seats.get(first + 1).choices().get(other));
                    if (Math.abs(alike) < 2) {
                        together.add(new PairTerm.Together(one, other, first % 8 == 0 ? -400 + 150L * Math.abs(alike) : 250));
                    }
                }
            }
            pairs.add(new PairTerm(first, first + 1, together));
        }
        return pairs;
    }

    private static int tone(Choice choice) {
        return Math.floorMod(choice.id().hashCode(), 16);
    }
}
