package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Sessions.at;
import static pairwright.session.Sessions.channel;
import static pairwright.session.Sessions.own;
import static pairwright.session.Sessions.unit;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Ten players, thirteen units, twelve channels and nine stands of four kinds, two of which are too low for anybody. */
class ShortOfStandsTest {
    private static final Floor FLOOR = new Floor(null, 11, 13, 5, 0.7);

    @Test
    void tenPlayersAndTooFewStandsThatReachAreToldWhichAreShort() {
        Sessions ten = ten("boom", "boom", "boom", "boom", "straight", "straight", "short", "short", "overhead");
        Planned planned = Sextet.planner().plan(together(ten.lineUp()), ten.gear(), step -> { });
        assertEquals(List.of(), planned.plans());
        assertTrue(planned.shortOf().stream().anyMatch(one -> one.resource().endsWith("stand") && one.needed() == one.there() + 2), planned.shortOf().toString());
        assertTrue(planned.waysOut().stream().anyMatch(way -> way.kind().equals("borrow") && way.says().contains("stand")), planned.waysOut().toString());
        assertTrue(planned.waysOut().stream().anyMatch(way -> way.kind().equals("drop")), planned.waysOut().toString());
    }

    private static LineUp together(LineUp plain) {
        return new LineUp(plain.name(), plain.floor(), plain.seats(), null, List.of(List.of("fiddle", "clarinet")), List.of(List.of("trumpet", "alto", "tenor", "trombone")), null, null, 1);
    }

    private static Sessions ten(String... stands) {
        Sessions.Channel[] channels = Stream.of(
                IntStream.rangeClosed(1, 4).mapToObj(number -> channel("a" + number).gain(60).supply(20).onBank("a")),
                IntStream.rangeClosed(1, 4).mapToObj(number -> channel("b" + number).gain(60).supply(20).onBank("b")),
                IntStream.rangeClosed(1, 2).mapToObj(number -> channel("c" + number).gain(70)),
                IntStream.rangeClosed(1, 2).mapToObj(number -> channel("d" + number).gain(72).dead())).flatMap(some -> some).toArray(Sessions.Channel[]::new);
        return Sessions.of(FLOOR, at("singer", "voice-and-guitar", 5.5, 2.5, 0, 1), at("drums", "drum-kit", 2, 10.5, 150, 1), at("bass", "double-bass", 5, 9.5, 180, 1),
                at("piano", "grand-piano", 9, 8, 270, 1), at("trumpet", "trumpet", 8.5, 3.5, 315, 1), at("alto", "alto-saxophone", 9.5, 4.2, 300, 1),
                at("tenor", "tenor-saxophone", 9.9, 5.4, 280, 1), at("trombone", "trombone", 10.2, 2.6, 300, 1), at("fiddle", "violin", 2, 4, 45, 1),
                Sessions.nice(at("clarinet", "clarinet", 2, 6.5, 90, 1)))
                .units(own("lr1", "long-ribbon", null, "lr2"), own("lr2", "long-ribbon", null, "lr1"), own("sdc1", "small-condenser-cardioid", null, "sdc2"),
                        own("sdc2", "small-condenser-cardioid", null, "sdc1"), unit("ldc1", "large-condenser-cardioid"), unit("ldc2", "large-condenser-multi-pattern"),
                        unit("dyn1", "handheld-moving-coil"), unit("dyn2", "handheld-moving-coil"), unit("wide1", "wide-body-moving-coil"),
                        unit("flat1", "flat-front-moving-coil"), unit("low1", "low-source-moving-coil"), unit("omni1", "small-condenser-omni"), unit("bug", "piezo-pickup"))
                .channels(channels)
                .stands(IntStream.range(0, stands.length).mapToObj(number -> stand("s" + number, stands[number])).toArray(Gear.Stand[]::new));
    }

    private static Gear.Stand stand(String id, String kind) {
        return new Gear.Stand(id, id, Stream.of(StandKind.values()).filter(one -> one.id().equals(kind)).findFirst().orElseThrow(), null, null, null, null, null);
    }
}
