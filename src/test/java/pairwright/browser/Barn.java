package pairwright.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pairwright.advice.KnowledgeStore;
import pairwright.http.Server;
import pairwright.lab.Answer;
import pairwright.lab.LabDesk;
import pairwright.lab.Wanted;
import pairwright.locker.Act;
import pairwright.locker.BoosterData;
import pairwright.locker.BookingDraft;
import pairwright.locker.BookingKind;
import pairwright.locker.Changes;
import pairwright.locker.ChannelData;
import pairwright.locker.Condition;
import pairwright.locker.DocumentDraft;
import pairwright.locker.ExerciseSet;
import pairwright.locker.Locker;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.Place;
import pairwright.locker.Role;
import pairwright.locker.ResponsePoint;
import pairwright.locker.StandData;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;

/** The locker of an invented barn, in a folder of its own, and a server that has it. */
final class Barn implements AutoCloseable {
    /** A unit of which everything is known: a mate, a response, bookings. */
    static final String RIBBON = "barn-ribbon-1";
    static final String CHANNEL = "rack-a-1";
    /** A line-up of two, of whom the barn can serve one. */
    static final String SESSION = "barn-duo";
    private static final String DUO = """
            {"name": "Barn duo", "room": {"widthM": 8, "depthM": 6, "heightM": 3.5, "reverbTimeS": 0.5}, "plans": 1,
             "lineUp": [{"id": "tenor", "player": "Nora", "source": "tenor-saxophone", "xM": 2, "yM": 2, "facingDegrees": 0, "maxMics": 1},
                        {"id": "bass", "source": "double-bass", "xM": 6, "yM": 3, "facingDegrees": 270, "maxMics": 1, "must": false}]}""";
    private static final int HOUR_S = 3600;

    /** Exercises of a class of three, of whom one handed in. */
    private final String exercises;

    private final Path data;
    private final Locker locker;
    private final Server server;

    private Barn(Path data, Locker locker, Server server, String exercises) {
        this.data = data;
        this.locker = locker;
        this.server = server;
        this.exercises = exercises;
    }

    String exercises() {
        return exercises;
    }

    static Barn open() {
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        try {
            Path data = Files.createTempDirectory("barn");
            Locker locker = Locker.open(Place.in(data), () -> knowledge.current().catalogue(), Clock.systemDefaultZone());
            locker.change(Act.by("Ada of the barn"), Barn::fill);
            LabDesk desk = new LabDesk(locker, knowledge::current);
            ExerciseSet exercises = desk.make(new Wanted("mend", "the tall barn", 2, 3, null, null, null), "Ada of the barn");
            locker.change(Act.by("Cleo"), changes -> Integer.toString(desk.handIn(changes, desk.handing(exercises, 1, Answer.NOTHING.with("first", "b"), Role.READER)).number()));
            return new Barn(data, locker, Server.start(knowledge, locker, "127.0.0.1", 0), exercises.id());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String fill(Changes changes) {
        changes.add(new UnitDraft(RIBBON, UnitKind.MIC, "long-ribbon", "Barn ribbon 1", "0417", "B-17", "barn-ribbon-2", Condition.LIMITED,
                "Hums when the leads cross; keep it away from the lamp over the stairs", "Shelf 2, in its box", null, null, null, null,
                List.of(new ResponsePoint(63, -3), new ResponsePoint(125, 1), new ResponsePoint(250, 0.5), new ResponsePoint(1000, 0), new ResponsePoint(4000, -2.5),
                        new ResponsePoint(8000, -6), new ResponsePoint(16_000, -14))));
        changes.add(UnitDraft.mic("barn-ribbon-2", "long-ribbon", "Barn ribbon 2"));
        changes.add(UnitDraft.mic("loft-pencil-1", "small-condenser-cardioid", "Loft pencil 1").matchedWith("loft-pencil-2"));
        changes.add(UnitDraft.mic("loft-pencil-2", "small-condenser-cardioid", "Loft pencil 2"));
        changes.add(UnitDraft.mic("yard-vocal-1", "handheld-moving-coil", "Yard vocal 1"));
        changes.add(UnitDraft.mic("yard-vocal-2", "handheld-moving-coil", "Yard vocal 2").in(Condition.IN_REPAIR, "No sound since the rain"));
        changes.add(UnitDraft.mic("old-valve", "large-valve-condenser", "The old valve one with the long name that is written all along its box").in(Condition.LOST, null));
        changes.add(unit(CHANNEL, UnitKind.CHANNEL, "Rack A 1", new ChannelData("Rack A", 10.0, 65.0, 2400.0, -128.0, PhantomSwitch.BANK, 40.0), null, null));
        changes.add(unit("tall-stand-1", UnitKind.STAND, "Tall stand 1", null, new StandData(4.2, 0.9, 0.4, 3, 2.1), null));
        changes.add(unit("lift-1", UnitKind.BOOSTER, "Lift 1", null, null, new BoosterData(25.0, 3.0, false)));
        Instant now = Instant.now();
        changes.book(new BookingDraft(List.of(RIBBON, "barn-ribbon-2"), now.plusSeconds(20 * HOUR_S), now.plusSeconds(26 * HOUR_S), BookingKind.SESSION,
                "Folk-jazz sextet, second day", "Ben of the barn", null));
        changes.put(DocumentDraft.lineUp(SESSION, "Barn duo", null, null, DUO), null);
        changes.takeOut("loft-pencil-1", "Cleo", now.plusSeconds(3 * HOUR_S));
        return "";
    }

    private static UnitDraft unit(String id, UnitKind kind, String label, ChannelData channel, StandData stand, BoosterData booster) {
        return new UnitDraft(id, kind, null, label, null, null, null, null, null, "Under the stairs", channel, stand, null, booster, null);
    }

    int port() {
        return server.port();
    }

    @Override
    public void close() {
        server.close();
        locker.close();
        try (Stream<Path> files = Files.walk(data)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        } catch (IOException left) {
            throw new UncheckedIOException(left);
        }
    }
}
