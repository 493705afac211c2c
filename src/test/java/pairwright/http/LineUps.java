package pairwright.http;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Catalogue;
import pairwright.model.Attack;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Source;
import pairwright.model.Vocabulary;
import pairwright.model.Way;
import pairwright.session.Floor;
import pairwright.session.Gobo;
import pairwright.session.LineUp;
import pairwright.session.Seat;
import pairwright.session.SetUpTime;

/** Line-ups of which nothing is wrong, the same for the same seed. */
final class LineUps {
    private final Random random;
    private final Catalogue catalogue;

    LineUps(long seed, Catalogue catalogue) {
        this.random = new Random(seed);
        this.catalogue = catalogue;
    }

    LineUp next() {
        int count = 1 + random.nextInt(12);
        Floor floor = new Floor(random.nextBoolean() ? null : one(catalogue.rooms().keySet()), 10 + metres(20), 10 + metres(20), 2 + metres(10), 0.05 + metres(3),
                random.nextBoolean() ? null : new Floor.Patch(metres(10), metres(10)));
        List<Seat> seats = IntStream.range(0, count).mapToObj(i -> seat(i, floor)).toList();
        List<Gobo> gobos = IntStream.range(0, random.nextInt(4)).mapToObj(i -> new Gobo("screen-" + i, metres(5), metres(5), 5 + metres(5), 5 + metres(5), 0.2 + metres(1.8))).toList();
        List<List<String>> contrast = count > 1 && random.nextBoolean() ? List.of(List.of("seat-0", "seat-1")) : List.of();
        List<List<String>> keep = count > 3 && random.nextBoolean() ? List.of(List.of("seat-2", "seat-3")) : List.of();
        OffsetDateTime from = random.nextBoolean() ? null : OffsetDateTime.of(2027, 3, 1, 10, 0, random.nextInt(60), random.nextInt(1_000_000_000), ZoneOffset.ofHours(random.nextInt(20) - 10));
        return new LineUp(random.nextBoolean() ? null : "Day " + random.nextInt() + " \"\u00e9\" \ud83c\udfba", floor, seats, gobos, contrast, keep, from,
                from == null || random.nextBoolean() ? null : from.plusMinutes(1 + random.nextInt(600)), 1 + random.nextInt(5),
                random.nextBoolean() ? null : new SetUpTime(1 + random.nextInt(SetUpTime.MOST_MINUTES), 1 + random.nextInt(SetUpTime.MOST_HANDS)));
    }

    private Seat seat(int number, Floor floor) {
        Source source = catalogue.sources().get(one(catalogue.sources().keySet()));
        // each in a cell of its own, so that no two sit on each other
        double xM = 0.5 + number % 4 * 2 + random.nextDouble();
        double yM = 0.5 + number / 4 * 2 + random.nextDouble();
        Vocabulary words = catalogue.words();
        return new Seat("seat-" + number, random.nextBoolean() ? null : "Player, no. " + number, source.id(), xM, yM, random.nextInt(3) == 0 ? -random.nextDouble() * 360 : random.nextInt(360),
                some(source.ways().stream().map(Way::id).toList()), some(words.dynamics().stream().map(Vocabulary.Dynamic::id).toList()),
                some(List.copyOf(catalogue.characters().keySet())), some(words.circumstances().stream().map(Vocabulary.Circumstance::id).toList()),
                random.nextBoolean() ? null : limits(), random.nextBoolean(), random.nextBoolean() ? null : heard(), random.nextBoolean());
    }

    private Limits limits() {
        return new Limits(random.nextBoolean() ? null : 1 + random.nextInt(32), random.nextBoolean() ? null : random.nextBoolean(), random.nextBoolean() ? null : random.nextDouble() * 100,
                random.nextBoolean() ? null : -130 + random.nextDouble() * 50, some(List.of(MicFamily.values())), some(List.of(MicFamily.values())),
                some(List.copyOf(catalogue.mics().keySet())), some(List.copyOf(catalogue.mics().keySet())));
    }

    private HeardBefore heard() {
        return new HeardBefore(random.nextBoolean() ? null : 60 + random.nextDouble() * 20, random.nextBoolean() ? null : 90 + random.nextDouble() * 20,
                random.nextBoolean() ? null : OctaveCurve.of(random.doubles(9, -20, 20).toArray()), random.nextBoolean() ? null : 20 + random.nextDouble(),
                random.nextBoolean() ? null : 1000 + random.nextDouble(), random.nextBoolean() ? null : random.nextDouble() * 30,
                random.nextBoolean() ? null : Attack.values()[random.nextInt(Attack.values().length)], random.nextBoolean() ? null : List.of("Stamps: keep the stand off the \"boards\"", "\u201cLeans\u201d in"));
    }

    private <T> List<T> some(List<T> of) {
        List<T> some = new ArrayList<>(of);
        java.util.Collections.shuffle(some, random);
        return List.copyOf(some.subList(0, Math.min(some.size(), random.nextInt(3))));
    }

    private String one(java.util.Set<String> ids) {
        List<String> sorted = List.copyOf(new TreeSet<>(ids));
        return sorted.get(random.nextInt(sorted.size()));
    }

    private double metres(double most) {
        return random.nextInt(4) == 0 ? Math.floor(random.nextDouble() * most) : random.nextDouble() * most;
    }
}
