package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.advice.Knowledge;
import pairwright.catalogue.FileFault;
import pairwright.catalogue.Json;
import pairwright.catalogue.YamlFile;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Fault;
import pairwright.model.FromLocker;
import pairwright.model.Pattern;
import pairwright.session.Gear;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.session.Seat;
import pairwright.session.SetUpTime;
import pairwright.session.StandKind;

/** What a line-up is read as, and every fault that can be in one. */
class SessionBodyTest {
    private static final ObjectMapper JSON = Json.mapper();
    private static final Knowledge KNOWN = Serving.KNOWLEDGE.current();
    private static final String ROOM = "'room': {'widthM': 8, 'depthM': 6, 'heightM': 3, 'reverbTimeS': 0.5}";
    private static final String TWO = ROOM + ", 'lineUp': [{'id': 'tp', 'source': 'trumpet', 'xM': 2, 'yM': 2, 'facingDegrees': 90}, {'id': 'db', 'source': 'double-bass', 'xM': 6, 'yM': 2, 'facingDegrees': 270}]";

    private static JsonNode tree(String json) {
        try {
            return JSON.readTree(json.replace('\'', '"'));
        } catch (JsonProcessingException broken) {
            throw new AssertionError(json, broken);
        }
    }

    private static SessionRequest read(String json) {
        SessionBody.Read read = SessionBody.plan(tree(json), KNOWN);
        assertEquals(List.of(), read.faults());
        return read.request();
    }

    @Test
    void onePlayerMayPlayTwoThingsAtOnePlace() {
        String two = "{" + ROOM + ", 'lineUp': [{'id': 'v', 'player': 'Al', 'source': 'singing-voice', 'xM': 2, 'yM': 2}, {'id': 'g', 'player': '%s', 'source': 'nylon-guitar', 'xM': 2.1, 'yM': 2}]}";
        assertEquals(2, read(two.formatted("Al")).lineUp().seats().size());
        assertEquals(1, faults(two.formatted("Bo"), false).size());
    }

    private static List<String> faults(String json, boolean again) {
        SessionBody.Read read = again ? SessionBody.again(tree(json), KNOWN) : SessionBody.plan(tree(json), KNOWN);
        assertEquals(read.faults().isEmpty(), read.request() != null);
        return read.faults().stream().map(fault -> fault.at() + ": " + fault.says()).toList();
    }

    @Property(tries = 300)
    void aLineUpComesBackAsItWasWritten(@ForAll long seed) throws JsonProcessingException {
        LineUp lineUp = new LineUps(seed, KNOWN.catalogue()).next();
        String text = JSON.writeValueAsString(SessionJson.of(lineUp));
        SessionBody.Read read = SessionBody.plan(JSON.readTree(text), KNOWN);
        assertEquals(List.of(), read.faults(), text);
        assertEquals(lineUp, read.request().lineUp());
        assertEquals(List.of(), read.request().assumed());
        assertEquals(text, JSON.writeValueAsString(SessionJson.of(read.request().lineUp())));
    }

    @Property(tries = 40)
    void soItDoesFromAFileOfEitherKind(@ForAll long seed, @ForAll boolean tabs) throws Exception {
        LineUp lineUp = new LineUps(seed, KNOWN.catalogue()).next();
        Path file = Files.createTempFile("line-up", tabs ? ".json" : ".yaml");
        try {
            String text = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(SessionJson.of(lineUp));
            Files.writeString(file, tabs ? text.replace("  ", "\t") : text);
            List<FileFault> faults = new ArrayList<>();
            YamlFile yaml = YamlFile.read(file, faults).orElseThrow(() -> new AssertionError(faults.toString()));
            assertEquals(lineUp, SessionBody.plan(yaml.root(), KNOWN).request().lineUp());
        } finally {
            Files.delete(file);
        }
    }

    @Test
    void whatWasPickedComesBackAsItWasWritten() throws JsonProcessingException {
        Picks picks = new Picks(List.of(
                new Picks.AtSeat("tp", "single", List.of(new Picks.Mic("long-ribbon", Pattern.FIGURE_8, "bell", 0.612345, -12.5, "long-ribbon-1", "rack-1", "boom-1", "booster-1", "line-box-1", "pad-20-1"))),
                new Picks.AtSeat("gone", "spaced", List.of(new Picks.Mic("passive-di", null, "output", null, null, null, null, null, null, null, null),
                        new Picks.Mic("passive-di", null, "output", 0.0, 0.0, null, null, null, null, null, null)))));
        JsonNode body = tree("{" + TWO + "}");
        ((com.fasterxml.jackson.databind.node.ObjectNode) body).set("plan", JSON.readTree(JSON.writeValueAsString(SessionJson.of(picks))));
        assertEquals(picks, SessionBody.again(body, KNOWN).request().before());
    }

    @Test
    void aBareListOfNamesIsALineUp() {
        SessionRequest request = read("{'lineUp': ['trumpet', 'double-bass', 'trumpet', {'source': 'drum-kit', 'maxMics': 4}]}");
        LineUp lineUp = request.lineUp();
        assertEquals(List.of("trumpet", "double-bass", "trumpet-2", "drum-kit"), lineUp.seats().stream().map(Seat::id).toList());
        assertEquals(4, lineUp.seats().get(3).limits().mics());
        assertTrue(lineUp.seats().stream().allMatch(Seat::must));
        assertEquals(LineUp.USUAL_PLANS, lineUp.plans());
        assertEquals(List.of(6.0, 8.0, 3.2, 0.5), List.of(lineUp.floor().widthM(), lineUp.floor().depthM(), lineUp.floor().heightM(), lineUp.floor().reverbTimeS()));
        assertEquals(List.of("Nobody said widthM, depthM, heightM, reverbTimeS of the room: taken as of a usual medium live room, which is 6 by 8 m, 3.2 m high, and rings for 0.5 s.",
                "Nobody said where trumpet, double bass, trumpet 2 and drum kit are: put on an arc, the loudest at its ends, looking at its middle. Say xM and yM where you know better."),
                request.assumed());
        assertNull(request.gear());
        assertNull(request.use());
    }

    @Test
    void aRoomMayBeAnIdAndAGivenSizeWins() {
        assertEquals(18, read("{'room': 'barn', 'lineUp': ['flute']}").lineUp().floor().depthM());
        LineUp lineUp = read("{'room': {'room': 'barn', 'depthM': 9}, 'lineUp': ['flute']}").lineUp();
        assertEquals("barn", lineUp.floor().room());
        assertEquals(List.of(10.0, 9.0, 7.0, 1.2), List.of(lineUp.floor().widthM(), lineUp.floor().depthM(), lineUp.floor().heightM(), lineUp.floor().reverbTimeS()));
    }

    @Test
    void theLockerOfARequestIsReadAndWhatIsLeftOutIsNotCounted() {
        Gear gear = read("{" + TWO + ", 'locker': {'units': [{'id': 'a', 'micType': 'long-ribbon', 'pairMate': 'b'}, {'id': 'b', 'micType': 'long-ribbon'}, {'id': 'c', 'micType': 'lo-fi', 'pairMate': 'a'}],"
                + " 'channels': [{'id': '1', 'bank': 'Rack', 'phantom': 'bank', 'minGainDb': 8, 'maxGainDb': 66, 'noiseDbu': -127, 'supplyMa': 40, 'inputOhm': 2400}, {'id': '2'}],"
                + " 'boosters': [{'id': 'x', 'gainDb': 25}, {'id': 'y', 'gainDb': 20, 'phantomMa': 3, 'passesPhantom': false}], 'pads': [{'id': 'p', 'lossDb': 10}, {'id': 'q', 'lossDb': 20, 'passesPhantom': true}]}}").gear();
        assertEquals(List.of("b", "a"), gear.stock().units().subList(0, 2).stream().map(unit -> unit.pairMate()).toList());
        assertNull(gear.stock().units().get(2).pairMate(), "another type is no mate");
        assertTrue(gear.stock().units().stream().allMatch(unit -> unit.free()));
        assertEquals(new Gear.Channel("1", "1", "Rack", PhantomSwitch.BANK, 8.0, 66.0, 2400.0, -127.0, 40.0), gear.channels().get(0));
        assertEquals(PhantomSwitch.CHANNEL, gear.channels().get(1).phantom());
        assertNull(gear.stands());
        assertEquals(List.of(true, false), gear.boosters().stream().map(Gear.Booster::passesPhantom).toList(), "unless it is said, one may pass phantom power on");
        assertEquals(List.of(new Gear.LinePad("p", "p", 10, null), new Gear.LinePad("q", "q", 20, true)), gear.pads());
        Gear stands = read("{" + TWO + ", 'locker': {'stands': [{'id': 's', 'kind': 'overhead'}, {'id': 't'}, {'id': 'u', 'reachM': 0.8, 'massKg': 3, 'heightM': 1.6}]}}").gear();
        assertEquals(List.of(StandKind.OVERHEAD, StandKind.STRAIGHT, StandKind.BOOM), stands.stands().stream().map(Gear.Stand::kind).toList());
        assertNull(stands.stock());
        assertNull(stands.channels());
        assertEquals(FromLocker.OWNED, read("{" + TWO + ", 'locker': 'owned'}").use());
    }

    @Test
    void theLinesOfAPlanSufficeToPlanAgain() {
        SessionRequest request = SessionBody.again(tree("{" + TWO + ", 'plan': {'score': 3, 'lines': [{'channel': '1', 'source': 'double-bass', 'micType': 'lo-fi', 'position': 'bridge', 'mic': 2, 'gainDb': 30},"
                + " {'source': 'double-bass', 'micType': 'long-ribbon', 'position': 'f-hole', 'mic': 1}], 'served': [{'seat': 'db', 'option': {'technique': 'blend'}}]},"
                + " 'lost': {'units': ['a'], 'channels': ['1'], 'seats': ['tp']}, 'pricePoints': 2.5}"), KNOWN).request();
        assertEquals(1, request.before().seats().size());
        Picks.AtSeat seat = request.before().seats().get(0);
        assertEquals("db", seat.seat());
        assertEquals("blend", seat.technique());
        assertEquals(List.of("long-ribbon", "lo-fi"), seat.mics().stream().map(Picks.Mic::micType).toList());
        assertEquals(List.of("a"), request.lost().units());
        assertEquals(List.of("tp"), request.lost().seats());
        assertEquals(2.5, request.pricePoints());
    }

    @Test
    void theTimeToSetUpIsForOnePairOfHandsUnlessSaid() {
        assertEquals(new SetUpTime(45, 1), read("{" + TWO + ", 'setUp': {'minutes': 45}}").lineUp().setUp());
        assertEquals(new SetUpTime(45, 3), read("{" + TWO + ", 'setUp': {'minutes': 45, 'hands': 3}}").lineUp().setUp());
        assertNull(read("{" + TWO + "}").lineUp().setUp());
        assertEquals(20, SessionBody.again(tree("{" + TWO + ", 'setUp': {'minutes': 45}, 'plan': {'lines': []}, 'lost': {'minutes': 20}}"), KNOWN).request().lost().minutes());
    }

    static Stream<Arguments> unusable() {
        return Stream.of(
                Arguments.of("{}", List.of("/lineUp: there is no lineUp.")),
                Arguments.of("{" + TWO + ", 'setUp': 60}", List.of("/setUp: setUp must be an object with minutes and hands")),
                Arguments.of("{" + TWO + ", 'setUp': {'hands': 2}}", List.of("/setUp/minutes: setUp has no minutes.")),
                Arguments.of("{" + TWO + ", 'setUp': {'minutes': 0, 'hands': -1}}", List.of("/setUp/minutes: minutes must be 1 to 1440, but was 0", "/setUp/hands: hands must be 1 to 50, but was -1")),
                Arguments.of("{" + TWO + ", 'setUp': {'minutes': 1000000000, 'hands': 51, 'hours': 1}}", List.of("/setUp/hours: ", "/setUp/minutes: minutes must be 1 to 1440, but was 1000000000",
                        "/setUp/hands: hands must be 1 to 50, but was 51")),
                Arguments.of("{" + TWO + ", 'setUp': {'minutes': 'NaN', 'hands': 1.5}}", List.of("/setUp/minutes: minutes must be a whole number", "/setUp/hands: hands must be a whole number")),
                Arguments.of("{'lineUp': []}", List.of("/lineUp: nobody is in the line-up.")),
                Arguments.of("{'lineUp': 'trumpet'}", List.of("/lineUp: lineUp must be a list")),
                Arguments.of("{'lineUp': [1, null, 'trumpt']}", List.of("/lineUp/0: entry 1 of lineUp must be an object with a source, or the id of one, but was 1",
                        "/lineUp/1: entry 2 of lineUp must be a value",
                        "/lineUp/2/source: there is no source \"trumpt\". Maybe trumpet")),
                Arguments.of("{" + ROOM + ", 'lineUp': [7, {'source': 'flute', 'xM': 9, 'yM': 1, 'tune': 440}, {'source': 'oboe', 'xM': 2, 'yM': 2}, {'source': 'cello', 'xM': 2, 'yM': 2.1, 'tune': 441}],"
                        + " 'gobos': [null, {'x1M': 1, 'y1M': 1, 'x2M': 1, 'y2M': 1, 'colour': 'red'}, {'x1M': 1, 'y1M': 1, 'x2M': 12, 'y2M': 1}], 'plans': 'many'}", List.of(
                        "/lineUp/0: entry 1 of lineUp must be an object", "/lineUp/1/tune: there is no field", "/lineUp/3/tune: there is no field", "/gobos/0: entry 1 of gobos must be a value",
                        "/gobos/1/colour: there is no field", "/plans: plans must be a whole number", "/lineUp/1/xM: xM must be 0 to 8, as the room is that wide, but was 9",
                        "/lineUp/3: the seats oboe and cello are 0.1 m apart. Put 0.3 m or more between them. One who sings and plays is one seat of the source voice-and-guitar with maxMics 2",
                        "/gobos/1: the gobo gobo-2 is shorter than 0.2 m.", "/gobos/2/x2M: x2M must be 0 to 8, as the room is that wide, but was 12")),
                Arguments.of("{'room': {'widthM': 8, 'depthM': 0.1, 'heightM': 3, 'reverbTimeS': 99}, 'lineUp': [{'source': 'flute', 'xM': 9, 'yM': 1}], 'gobos': [{'x1M': 1, 'y1M': 1, 'x2M': 1, 'y2M': 1}]}", List.of(
                        "/room/depthM: depthM must be", "/room/reverbTimeS: reverbTimeS must be", "/lineUp/0/xM: xM must be 0 to 8", "/gobos/0: the gobo gobo-1 is shorter than 0.2 m.")),
                Arguments.of("{'lineUp': ['trumpt'], 'colour': 1}", List.of("/colour: there is no field \"colour\" here. Known: bookings, contrast,",
                        "/lineUp/0/source: there is no source \"trumpt\". Maybe trumpet")),
                Arguments.of("{'lineUp': [{'player': 'Ada'}]}", List.of("/lineUp/0/source: a seat has no source.")),
                Arguments.of("{'lineUp': [{'source': 'flute', 'xM': 1}]}", List.of("/lineUp/0/yM: only half of the place is said, and yM is missing.")),
                Arguments.of("{'lineUp': [{'source': 'flute', 'xM': 'left', 'yM': 1, 'must': 1, 'tune': 440}]}", List.of(
                        "/lineUp/0/tune: there is no field \"tune\" here.", "/lineUp/0/xM: xM must be a number, but was the text \"left\"", "/lineUp/0/must: must must be true or false")),
                Arguments.of("{" + ROOM + ", 'lineUp': [{'source': 'flute', 'xM': 8.01, 'yM': -1}]}", List.of(
                        "/lineUp/0/xM: xM must be 0 to 8, as the room is that wide, but was 8.01", "/lineUp/0/yM: yM must be 0 to 6, as the room is that deep, but was -1")),
                Arguments.of("{" + ROOM + ", 'lineUp': [{'id': 'a', 'source': 'flute', 'xM': 2, 'yM': 2}, {'id': 'a', 'source': 'oboe', 'xM': 2.2, 'yM': 2.1}]}", List.of(
                        "/lineUp/1/id: the id a is given twice, first to entry 1.", "/lineUp/1: the seats a and a are 0.22 m apart. Put 0.3 m or more between them")),
                Arguments.of("{'lineUp': [{'id': 'A b', 'source': 'flute'}]}", List.of("/lineUp/0/id: \"A b\" is no id. Use small letters")),
                Arguments.of("{'room': {'widthM': 0.5, 'colour': 'red'}, 'lineUp': ['flute']}", List.of("/room/colour: there is no field", "/room/widthM: widthM must be 1 to 100, but was 0.5")),
                Arguments.of("{'room': {'widthM': 8, 'depthM': 6, 'patch': {'xM': 8.5, 'yM': -1}}, 'lineUp': ['flute']}", List.of("/room/patch/xM: xM must be 0 to 8, as the room is that wide, but was 8.5",
                        "/room/patch/yM: yM must be 0 to 6, as the room is that deep, but was -1")),
                Arguments.of("{'room': {'patch': {'xM': 1, 'zM': 1}}, 'lineUp': ['flute']}", List.of("/room/patch/zM: there is no field", "/room/patch/yM: it is not said where the leads end along y.")),
                Arguments.of("{'room': {'patch': 'left'}, 'lineUp': ['flute']}", List.of("/room/patch: patch must be an object with xM and yM, where the leads end, but was")),
                Arguments.of("{'room': 'bran', 'lineUp': ['flute']}", List.of("/room/room: there is no room \"bran\". Maybe barn")),
                Arguments.of("{'room': [], 'lineUp': ['flute']}", List.of("/room: room must be an object with widthM, depthM, heightM and reverbTimeS, or the id of a room, but was a list")),
                Arguments.of("{'room': {'widthM': 1, 'depthM': 1}, 'lineUp': ['flute', 'oboe', 'tuba']}", List.of("/lineUp: a room of 1 by 1 m has no place for all 3 seats")),
                Arguments.of("{'lineUp': [{'source': 'double-bass', 'ways': ['bowd'], 'dynamics': 'loudest', 'character': ['sad'], 'circumstances': ['lively']}]}", List.of(
                        "/lineUp/0/ways/0: there is no way of playing of double-bass \"bowd\".", "/lineUp/0/dynamics/0: there is no dynamic \"loudest\".",
                        "/lineUp/0/character/0: there is no character \"sad\".", "/lineUp/0/circumstances/0: there is no circumstance \"lively\". ")),
                Arguments.of("{'lineUp': [{'source': 'flute', 'maxMics': 2, 'limits': {'mics': 3, 'onlyFamilies': ['riband'], 'preampGainDb': 200, 'onlyMicTypes': 'long-ribon'}}]}", List.of(
                        "/lineUp/0/limits/onlyFamilies/0: there is no family \"riband\".", "/lineUp/0/limits/mics: maxMics is 2 and mics is 3.",
                        "/lineUp/0/limits/preampGainDb: preampGainDb must be 0 to 100, but was 200", "/lineUp/0/limits/onlyMicTypes/0: there is no mic type \"long-ribon\". Maybe long-ribbon")),
                Arguments.of("{'lineUp': [{'source': 'flute', 'maxMics': 0}]}", List.of("/lineUp/0/maxMics: maxMics must be 1 to 32, but was 0")),
                Arguments.of("{'lineUp': [{'source': 'flute', 'heard': {'typicalDbSpl': 100, 'peakDbSpl': 90, 'toneDb': [1, 2], 'lowestHz': 100, 'highestHz': 50, 'habits': ['']}}]}", List.of(
                        "/lineUp/0/heard/toneDb: toneDb has 2 values, but it needs nine", "/lineUp/0/heard/peakDbSpl: the peak, 90 dB, is below the running level, 100 dB.",
                        "/lineUp/0/heard/highestHz: the highest note, 50 Hz, is not above the lowest, 100 Hz.", "/lineUp/0/heard/habits/0: a habit is empty.")),
                Arguments.of("{" + TWO + ", 'gobos': [{'x1M': 1, 'y1M': 1, 'x2M': 1, 'y2M': 1.1}, {'id': 'g', 'x1M': 1, 'y1M': 1, 'x2M': 9, 'y2M': 1, 'heightM': 4}, {'x1M': 1}]}", List.of(
                        "/gobos/2/y1M: a gobo has no y1M.", "/gobos/2/x2M: a gobo has no x2M.", "/gobos/2/y2M: a gobo has no y2M.",
                        "/gobos/0: the gobo gobo-1 is shorter than 0.2 m.", "/gobos/1/x2M: x2M must be 0 to 8, as the room is that wide, but was 9",
                        "/gobos/1/heightM: heightM must be 0.2 to 3, as the room is that high, but was 4")),
                Arguments.of("{" + TWO + ", 'contrast': [['tp'], ['tp', 'tp'], ['tp', 'bd']], 'keep': [['db']]}", List.of("/contrast/0: an entry of contrast names 1 seat.",
                        "/contrast/1: the seat tp shall not sound like itself.", "/contrast/2/1: there is no seat \"bd\" in the line-up. Did you mean db?", "/keep/0: an entry of keep names 1 seat.")),
                Arguments.of("{" + TWO + ", 'contrast': [['tp', 'db']], 'keep': [['tp', 'db'], ['db', 'tp']]}", List.of("/contrast/0: the seats tp and db shall not sound alike, and shall be kept together",
                        "/keep/1/0: the seat db is kept together twice.", "/keep/1/1: the seat tp is kept together twice.")),
                Arguments.of("{" + TWO + ", 'from': '2027-03-01T10:00:00Z', 'until': '2027-03-01T09:00:00Z', 'plans': 6}", List.of("/until: until (2027-03-01T09:00Z) is not after from",
                        "/plans: plans must be 1 to 5, but was 6")),
                Arguments.of("{" + TWO + ", 'plans': 'all', 'from': 'noon', 'locker': 'mine'}", List.of("/from: \"noon\" is not a time", "/plans: plans must be a whole number", "/locker: there is no way to use the locker \"mine\".")),
                Arguments.of("{" + TWO + ", 'locker': {'units': [{'id': 'a', 'micType': 'long-ribon'}, {'id': 'a'}, 7], 'channels': [{'phantom': 'some', 'maxGainDb': 900}], 'stands': [{'id': 's', 'kind': 'tall', 'legs': 2}],"
                        + " 'boosters': [{'id': 'b'}], 'pads': [{'id': 'p', 'lossDb': 0, 'gainDb': 1}], 'cases': []}}", List.of("/locker/cases: there is no field", "/locker/units/0/micType: there is no mic type \"long-ribon\". Did you mean long-ribbon?",
                        "/locker/units/1/id: the id a is given twice", "/locker/units/1/micType: a unit has no micType.", "/locker/units/2: entry 3 of units must be an object with an id",
                        "/locker/channels/0/id: something in the locker has no id.", "/locker/channels/0/phantom: there is no reach of a phantom switch \"some\".", "/locker/channels/0/maxGainDb: maxGainDb must be -20 to 120, but was 900",
                        "/locker/stands/0/kind: there is no kind of stand \"tall\".", "/locker/stands/0/legs: a stand with 2 legs does not stand.", "/locker/boosters/0/gainDb: gainDb is missing.",
                        "/locker/pads/0/gainDb: there is no field", "/locker/pads/0/lossDb: lossDb must be 1 to 80, but was 0")),
                Arguments.of("{" + TWO + ", 'plan': {'lines': []}}", List.of("/plan: there is no field \"plan\" here.")),
                Arguments.of("{'lineUp': ['trumpet'], 'name': 'a\\nb'}", List.of("/name: name holds a character that cannot be printed on one line.")));
    }

    @ParameterizedTest
    @MethodSource("unusable")
    void everyFaultIsFoundAtOnceAndSaidWithItsPlace(String json, List<String> starts) {
        begins(starts, faults(json, false));
    }

    static Stream<Arguments> unusableAgain() {
        return Stream.of(
                Arguments.of("{" + TWO + "}", List.of("/plan: there is no plan.")),
                Arguments.of("{" + TWO + ", 'plan': {'lines': []}, 'lost': {'minutes': 10}}", List.of("/lost/minutes: 10 minutes are lost, and the line-up does not say how long there was to set up.")),
                Arguments.of("{" + TWO + ", 'setUp': {'minutes': 60}, 'plan': {'lines': []}, 'lost': {'minutes': 61}}", List.of("/lost/minutes: 61 minutes are lost of 60 that there were to set up.")),
                Arguments.of("{" + TWO + ", 'setUp': {'minutes': 60}, 'plan': {'lines': []}, 'lost': {'minutes': -5}}", List.of("/lost/minutes: no fewer than 0 minutes can be lost, but it was -5.")),
                Arguments.of("{" + TWO + ", 'plan': 3, 'lost': [], 'pricePoints': -1}", List.of("/plan: plan must be an object with lines, but was 3", "/lost: lost must be an object", "/pricePoints: pricePoints must be 0 to 1000, but was -1")),
                Arguments.of("{" + TWO + ", 'plan': {}, 'lost': {'unit': 'a'}}", List.of("/plan/lines: the plan has no lines.", "/lost/unit: there is no field \"unit\" here. Known: channels, minutes, seats, units")),
                Arguments.of("{" + TWO + ", 'plan': {'lines': [{}, {'source': 'flute', 'micType': 1, 'position': 'a', 'distanceM': -1}, 5]}}", List.of("/plan/lines/0/seat: a line of the plan has no seat.",
                        "/plan/lines/0/micType: a line of the plan has no micType.", "/plan/lines/0/position: a line of the plan has no position.", "/plan/lines/1/seat: a line of the plan has no seat, and nobody in the line-up has the source \"flute\".",
                        "/plan/lines/1/micType: micType must be text", "/plan/lines/1/distanceM: distanceM must be 0 to 100", "/plan/lines/2: entry 3 of lines must be an object")));
    }

    @ParameterizedTest
    @MethodSource("unusableAgain")
    void soIsEveryFaultOfPlanningAgain(String json, List<String> starts) {
        begins(starts, faults(json, true));
    }

    private static void begins(List<String> starts, List<String> faults) {
        assertEquals(starts.size(), faults.size(), String.join("\n", faults));
        for (int i = 0; i < starts.size(); i++) {
            assertTrue(faults.get(i).startsWith(starts.get(i)), faults.get(i) + "\nshould begin with\n" + starts.get(i));
        }
    }

    @Test
    void aFaultOfAFileHasItsLineAndColumn(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("band.yaml");
        Files.writeString(file, "room: barn\nlineUp:\n  - trumpet\n  - {source: double-bass, xM: 99, yM: 1}\n");
        List<FileFault> broken = new ArrayList<>();
        YamlFile yaml = YamlFile.read(file, broken).orElseThrow();
        List<Fault> faults = SessionBody.plan(yaml.root(), KNOWN).faults();
        assertEquals(file + ":4:31: xM must be 0 to 10, as the room is that wide, but was 99", yaml.fault(faults.get(0).at(), faults.get(0).says()).toString());
    }
}
