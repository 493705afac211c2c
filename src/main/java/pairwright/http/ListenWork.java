package pairwright.http;

import io.javalin.http.Context;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.Knowledge;
import pairwright.listen.BleedHeard;
import pairwright.listen.Measured;
import pairwright.listen.MeterReading;
import pairwright.listen.PairHeard;
import pairwright.listen.PairMeter;
import pairwright.listen.Recording;
import pairwright.listen.SourceMeter;
import pairwright.listen.TakesCompared;
import pairwright.listen.Track;
import pairwright.listen.TracksHeard;
import pairwright.listen.Traits;
import pairwright.listen.UnusableRecording;
import pairwright.model.Source;

/** Takes recordings in, measures them a few at a time, and throws them away. For programs and pages alike. Safe to share between threads. */
final class ListenWork implements AutoCloseable {
    private static final int MOST_TRACKS = 6;
    private static final int SENDING_AT_ONCE = 6;
    private static final int MEASURING_AT_ONCE = 2;
    private static final Duration SENDING_PATIENCE = Duration.ofSeconds(5);
    /** Whoever has sent a gigabyte waits rather than sending it again. */
    private static final Duration MEASURING_PATIENCE = Duration.ofSeconds(60);
    private static final Duration BUDGET = Duration.ofMinutes(5);
    private static final SessionTurns.Says SAYS = new SessionTurns.Says("Others are having recordings measured just now, and only a few are at a time. Try again in a moment",
            "Measuring took longer than the " + BUDGET.toSeconds() + " s there are for it. Send fewer or shorter recordings, or measure them where they lie: pairwright listen FILE");

    private final Supplier<Knowledge> knowledge;
    private final Uploads uploads;
    private final int bodyMs;
    private final SessionTurns sending = new SessionTurns(SENDING_AT_ONCE, SENDING_PATIENCE, BUDGET, SAYS);
    private final SessionTurns measuring = new SessionTurns(MEASURING_AT_ONCE, MEASURING_PATIENCE, BUDGET, SAYS);

    /**
     * What was heard of a source.
     *
     * @param traits null where no source was named, or nothing may rest on the recording
     */
    record SourceHeard(Measured measured, Traits traits) {
    }

    /** Two takes and what differs. */
    record ChangeHeard(Measured before, Measured after, TakesCompared change) {
    }

    /** One microphone twice. */
    record NeighbourHeard(Measured own, Measured neighbour, BleedHeard bleed) {
    }

    /** What is measured, once it is known what was sent. */
    private interface Work<T> {
        T of(DoubleConsumer progress);
    }

    ListenWork(Supplier<Knowledge> knowledge, Uploads uploads, int bodyMs) {
        this.knowledge = knowledge;
        this.uploads = uploads;
        this.bodyMs = bodyMs;
    }

    /** Where recordings lie while they are measured. */
    Path folder() {
        return uploads.folder();
    }

    SourceHeard source(Context context) {
        return taken(context, Set.of("file", "source", "averageDb", "distanceM", "weighting"), form -> {
            List<Uploads.Sent> files = form.files("file", 1, 1);
            Source known = form.source(knowledge.get().catalogue().sources());
            MeterReading reading = form.reading();
            form.check();
            Recording recording = ListenForm.recordings(files).get(0);
            double centreOffsetM = known == null || known.level() == null ? 0 : known.level().centreOffsetM();
            return progress -> {
                Measured measured = SourceMeter.measure(recording, reading, centreOffsetM, progress);
                return new SourceHeard(measured, known == null || !measured.usable() ? null : Traits.of(measured, known));
            };
        });
    }

    TracksHeard pairs(Context context) {
        return taken(context, Set.of("file"), form -> {
            List<Uploads.Sent> files = form.files("file", 1, MOST_TRACKS);
            form.check();
            List<Track> tracks = tracks(ListenForm.recordings(files), form);
            return progress -> {
                List<PairHeard> pairs = new ArrayList<>();
                for (int first = 0; first < tracks.size(); first++) {
                    for (int second = first + 1; second < tracks.size(); second++) {
                        pairs.add(PairMeter.measure(tracks.get(first), tracks.get(second), progress));
                    }
                }
                return TracksHeard.of(pairs);
            };
        });
    }

    ChangeHeard change(Context context) {
        return taken(context, Set.of("before", "after"), form -> {
            List<Recording> two = two(form, "before", "after");
            return progress -> {
                Measured before = SourceMeter.measure(two.get(0), null, 0, progress);
                Measured after = SourceMeter.measure(two.get(1), null, 0, progress);
                return new ChangeHeard(before, after, TakesCompared.of(before, after));
            };
        });
    }

    NeighbourHeard bleed(Context context) {
        return taken(context, Set.of("own", "neighbour", "expectedOctavesDb"), form -> {
            OctaveCurve expectedDb = form.octaves("expectedOctavesDb");
            List<Recording> two = two(form, "own", "neighbour");
            return progress -> {
                Measured own = SourceMeter.measure(two.get(0), null, 0, progress);
                Measured neighbour = SourceMeter.measure(two.get(1), null, 0, progress);
                return new NeighbourHeard(own, neighbour, BleedHeard.of(own, neighbour, expectedDb));
            };
        });
    }

    private static List<Recording> two(ListenForm form, String one, String other) {
        List<Uploads.Sent> files = new ArrayList<>(form.files(one, 1, 1));
        files.addAll(form.files(other, 1, 1));
        form.check();
        return ListenForm.recordings(files);
    }

    private static List<Track> tracks(List<Recording> recordings, ListenForm form) {
        if (recordings.size() == 1) {
            if (recordings.get(0).channels() != 2) {
                form.fault("file", recordings.get(0).name() + " has one channel, and nothing to be compared with. Send two to " + MOST_TRACKS + " tracks, or one stereo recording");
            }
        } else {
            recordings.stream().filter(recording -> recording.channels() != 1).forEach(stereo ->
                    form.fault("file", stereo.name() + " is stereo. Send each track as a file of one channel, or that file alone"));
        }
        form.check();
        return recordings.size() == 1 ? List.of(new Track(recordings.get(0), 0), new Track(recordings.get(0), 1)) : recordings.stream().map(recording -> new Track(recording, 0)).toList();
    }

    private <T> T taken(Context context, Set<String> known, Function<ListenForm, Work<T>> read) {
        return sending.inTurn(unused -> {
            try (Uploads.Taken taken = uploads.take(context, bodyMs)) {
                Work<T> work = read.apply(new ListenForm(taken, known));
                return measuring.inTurn(inTime -> work.of(share -> inTime.run()));
            } catch (UnusableRecording unusable) {
                throw new BadRequest(Problem.of(422, List.of(ListenForm.fault(unusable))));
            }
        });
    }

    @Override
    public void close() {
        uploads.close();
    }
}
