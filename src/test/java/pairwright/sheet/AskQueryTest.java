package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import pairwright.drawing.Reader;
import pairwright.model.FromLocker;
import pairwright.model.Limits;
import pairwright.model.MicFamily;
import pairwright.model.Neighbour;
import pairwright.model.Pattern;
import pairwright.model.Request;
import pairwright.model.Setup;

class AskQueryTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-03-01T12:00:00Z"), ZoneId.of("Europe/Vienna"));

    private static Visit visit(String address, boolean imperial) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        int mark = address.indexOf('?');
        Stream.of(mark < 0 ? new String[0] : address.substring(mark + 1).split("&")).map(part -> part.split("=", 2))
                .forEach(part -> query.computeIfAbsent(part[0], any -> new ArrayList<>()).add(URLDecoder.decode(part[1], StandardCharsets.UTF_8)));
        return new Visit("/", query, new Reader(imperial, java.util.Locale.UK));
    }

    private static <T> Arbitrary<List<T>> some(Arbitrary<T> of) {
        return of.list().uniqueElements().ofMaxSize(3).injectNull(0.4);
    }

    @Provide
    Arbitrary<Request> requests() {
        Arbitrary<String> ids = Arbitraries.of("snare-drum", "airy", "barn", "ph\u00e4ser", "a&b=c", "x y", "50%");
        Arbitrary<String> words = Arbitraries.strings().ofMinLength(1).ofMaxLength(40).filter(text -> text.strip().equals(text) && !text.isBlank()).injectNull(0.2);
        Arbitrary<Neighbour> near = Combinators.combine(ids, Arbitraries.doubles().between(0.05, 200).ofScale(7), Arbitraries.doubles().between(-360, 360)).as(Neighbour::new);
        Arbitrary<MicFamily> family = Arbitraries.of(MicFamily.class);
        Arbitrary<Limits> limits = Combinators.combine(Arbitraries.integers().between(1, 32).injectNull(0.5), Arbitraries.of(true, false).injectNull(0.5),
                        Arbitraries.doubles().between(0, 100).injectNull(0.5), Arbitraries.doubles().between(-130, -80).injectNull(0.5),
                        some(family), some(family), some(ids), some(ids)).as(Limits::new).map(one -> one.equals(Limits.NONE) ? null : one);
        Arbitrary<List<String>> lifted = Arbitraries.of(List.of(), List.of("mics", "onlyFamilies"), List.of("phantom", "preampGainDb", "withoutMicTypes"));
        return Combinators.combine(Combinators.combine(words, ids.injectNull(0.3), some(ids), some(ids)).as((a, b, c, d) -> List.of(
                                java.util.Optional.ofNullable(a), java.util.Optional.ofNullable(b), java.util.Optional.ofNullable(c), java.util.Optional.ofNullable(d))),
                        ids.injectNull(0.3), some(ids), limits, some(near), some(ids), Combinators.combine(some(ids), some(family), lifted).as((a, b, c) -> List.of(
                                java.util.Optional.ofNullable(a), java.util.Optional.ofNullable(b), java.util.Optional.of(c))),
                        Arbitraries.integers().between(1, 6).injectNull(0.5))
                .as((first, room, character, limit, neighbours, circumstances, last, options) -> request(first, room, character, limit, neighbours, circumstances, last,
                        options));
    }

    @SuppressWarnings("unchecked")
    private static Request request(List<? extends java.util.Optional<?>> first, String room, List<String> character, Limits limits, List<Neighbour> neighbours,
            List<String> circumstances, List<? extends java.util.Optional<?>> last, Integer options) {
        List<String> lifted = ((List<String>) last.get(2).get()).stream().filter(field -> limits == null || switch (field) {
            case "mics" -> limits.mics() == null;
            case "phantom" -> limits.phantom() == null;
            case "preampGainDb" -> limits.preampGainDb() == null;
            case "onlyFamilies" -> limits.onlyFamilies().isEmpty();
            default -> limits.withoutMicTypes().isEmpty();
        }).toList();
        return new Request((String) first.get(0).orElse(null), (String) first.get(1).orElse(null), (List<String>) first.get(2).orElse(null),
                (List<String>) first.get(3).orElse(null), room, character, limits, neighbours, circumstances, (List<String>) last.get(0).orElse(null), options,
                null, null, (List<MicFamily>) last.get(1).orElse(null), lifted, null);
    }

    @Provide
    Arbitrary<OffsetDateTime> times() {
        return Combinators.combine(Arbitraries.longs().between(Instant.parse("2027-03-02T00:00:00Z").getEpochSecond(), Instant.parse("9998-12-30T00:00:00Z").getEpochSecond()),
                Arbitraries.integers().between(-14, 14)).as((second, hours) -> Instant.ofEpochSecond(second).atOffset(ZoneOffset.ofHours(hours)));
    }

    @Property
    void whenAndWhatOfTheLockerIsReadAgainFromTheAddress(@ForAll("times") OffsetDateTime from, @ForAll("times") OffsetDateTime until, @ForAll FromLocker use,
            @ForAll boolean start, @ForAll boolean end) {
        Request request = Request.of("snare").at(start ? from : null, end ? until : null, use).by(end ? "Ines & Bram" : null);
        AskQuery read = AskQuery.read(visit(Param.address("/", AskQuery.written(request)), false), CLOCK);
        assertEquals(List.of(), read.faults());
        assertEquals(request, read.request());
    }

    @Property
    void aQuestionIsReadAgainFromItsAddressInAnyMeasures(@ForAll("requests") Request request, @ForAll boolean imperial) {
        AskQuery read = AskQuery.read(visit(Param.address("/", AskQuery.written(request)), imperial), CLOCK);
        assertEquals(List.of(), read.faults());
        assertEquals(request, read.request());
    }

    @Property
    void aSetUpIsReadAgainFromItsAddress(@ForAll("setups") Setup setup) {
        SetUpQuery read = SetUpQuery.read(visit(Param.address("/moves", SetUpQuery.written(setup)), true));
        assertEquals(List.of(), read.faults());
        assertEquals(setup, read.setup());
    }

    @Provide
    Arbitrary<Setup> setups() {
        Arbitrary<Setup.Put> put = Combinators.combine(Arbitraries.of("long-ribbon", "flat"), Arbitraries.of(Pattern.class), Arbitraries.of("over-rim", "bell"),
                Arbitraries.doubles().between(0.005, 100).ofScale(5), Arbitraries.doubles().between(-180, 180).ofScale(3)).as(Setup.Put::new);
        return put.list().ofMinSize(1).ofMaxSize(2).map(mics -> new Setup(mics.size() == 1 ? null : "near-and-far", mics));
    }
}
