package pairwright.bench;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import pairwright.advice.Advisor;
import pairwright.advice.AtHand;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.http.LockerAtHand;
import pairwright.locker.Act;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.Locker;
import pairwright.locker.Place;
import pairwright.locker.UnitDraft;
import pairwright.model.Catalogue;
import pairwright.model.MicType;
import pairwright.model.Request;
import pairwright.model.Source;
import pairwright.rules.RulesBenchmark;
import pairwright.search.SentenceReader;
import pairwright.search.Suggester;
import pairwright.session.SessionBenchmark;

/** How time grows where there is 1, 3, 10 and 30 times as much of something. */
final class Growth {
    static final int[] TIMES = {1, 3, 10, 30};
    private static final int UNITS = 40;
    private static final int BOOKINGS = 200;
    private static final int SEATS = 2;

    private final Knowledge now = KnowledgeStore.builtIn().current();
    private final int asked;

    /** What grew, the milliseconds at each size, and the power of the size they grow with. */
    record Grown(String what, boolean ofAnAsk, double[] ms) {
        /** By least squares through the logarithms. */
        double exponent() {
            return slope(TIMES, ms);
        }

        /** From the last size but one to the last, where what is the same at every size counts least. */
        double lastExponent() {
            int last = TIMES.length - 1;
            return Math.log(ms[last] / ms[last - 1]) / Math.log((double) TIMES[last] / TIMES[last - 1]);
        }
    }

    Growth(boolean full) {
        asked = full ? 190 : 57;
    }

    List<Grown> measured() {
        return List.of(
                grown("mic types in the catalogue, and with them placements judged", true, times -> askMs(micTypes(times), AtHand.EVERYTHING)),
                grown("sources in the catalogue", true, times -> askMs(sources(times), AtHand.EVERYTHING)),
                grown("rules that score, judging alone", true, times -> RulesBenchmark.judgedUs(times) / 1e3),
                grown("units in the locker, " + UNITS + " and more", true, times -> lockerMs(UNITS * times, BOOKINGS)),
                grown("bookings in the locker, " + BOOKINGS + " and more", true, times -> lockerMs(UNITS, BOOKINGS * times)),
                grown("sources in a session, " + SEATS + " and more: a plan", false, times -> SessionBenchmark.planMs(SEATS * times, Math.max(3, times / 3), 3)));
    }

    private static Grown grown(String what, boolean ofAnAsk, IntToDoubleFunction ms) {
        Grown grown = new Grown(what, ofAnAsk, IntStream.of(TIMES).mapToDouble(times -> ms.applyAsDouble(times)).toArray());
        System.out.println(grown.what() + ": " + Arrays.toString(grown.ms()) + " ms");
        return grown;
    }

    static double slope(int[] sizes, double[] values) {
        double[] x = IntStream.of(sizes).mapToDouble(Math::log).toArray();
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(values).map(Math::log).average().orElseThrow();
        double up = 0;
        double down = 0;
        for (int i = 0; i < x.length; i++) {
            up += (x[i] - meanX) * (Math.log(values[i]) - meanY);
            down += (x[i] - meanX) * (x[i] - meanX);
        }
        return up / down;
    }

    private double askMs(Catalogue catalogue, AtHand atHand) {
        SentenceReader reader = new SentenceReader(catalogue);
        Knowledge other = new Knowledge(catalogue, reader, new Suggester(catalogue, reader), now.rules());
        Advisor advisor = new Advisor(() -> other, atHand);
        for (int i = 0; i < asked; i++) {
            advisor.ask(Request.of(DifferentQuestions.of(i)));
        }
        double[] ms = new double[asked];
        for (int i = 0; i < asked; i++) {
            long start = System.nanoTime();
            advisor.ask(Request.of(DifferentQuestions.of(i)));
            ms[i] = (System.nanoTime() - start) / 1e6;
        }
        return Arrays.stream(ms).average().orElseThrow();
    }

    private Catalogue micTypes(int times) {
        Map<String, MicType> mics = new LinkedHashMap<>(now.catalogue().mics());
        now.catalogue().mics().values().forEach(one -> IntStream.range(1, times).forEach(i -> mics.put(one.id() + "-x" + i, with(one, Map.of("id", one.id() + "-x" + i, "words", List.of(), "name", one.name() + " x" + i)))));
        return with(now.catalogue(), Map.of("mics", mics));
    }

    private Catalogue sources(int times) {
        Map<String, Source> sources = new LinkedHashMap<>(now.catalogue().sources());
        now.catalogue().sources().values().forEach(one -> IntStream.range(1, times).forEach(i -> sources.put(one.id() + "-x" + i, with(one, Map.of("id", one.id() + "-x" + i, "words", List.of(), "name", one.name() + " x" + i)))));
        return with(now.catalogue(), Map.of("sources", sources));
    }

    /** A record with some of its parts another. */
    @SuppressWarnings("unchecked")
    private static <R extends Record> R with(R record, Map<String, ?> others) {
        try {
            RecordComponent[] parts = record.getClass().getRecordComponents();
            Object[] values = new Object[parts.length];
            for (int i = 0; i < parts.length; i++) {
                values[i] = others.containsKey(parts[i].getName()) ? others.get(parts[i].getName()) : parts[i].getAccessor().invoke(record);
            }
            return (R) record.getClass().getDeclaredConstructor(Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new)).newInstance(values);
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private double lockerMs(int units, int bookings) {
        try {
            Path folder = Files.createTempDirectory("growth");
            try (Locker locker = Locker.open(Place.in(folder), now::catalogue, Clock.systemUTC())) {
                List<String> types = List.copyOf(now.catalogue().mics().keySet());
                Instant begin = Instant.now().plus(Duration.ofDays(1));
                locker.change(Act.by("Wren"), changes -> {
                    for (int i = 0; i < units; i++) {
                        changes.add(UnitDraft.mic("unit-" + i, types.get(i % types.size()), "Unit " + i));
                    }
                    for (int i = 0; i < bookings; i++) {
                        Instant from = begin.plus(Duration.ofHours(4L * (i / units)));
                        changes.book(new BookingDraft(new ArrayList<>(List.of("unit-" + i % units)), from, from.plus(Duration.ofHours(3)), BookingKind.SESSION, "Barn", "Wren", null));
                    }
                    return "";
                });
                return askMs(now.catalogue(), new LockerAtHand(locker, Clock.systemUTC()));
            }
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
