package pairwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.DoubleConsumer;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.advice.KnowledgeStore;
import pairwright.catalogue.Shown;
import pairwright.http.ListenView;
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
import pairwright.model.Fault;
import pairwright.model.Nearest;
import pairwright.model.Source;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What recordings show. */
@Command(
        name = "listen",
        description = "Measures recordings, WAV or AIFF. One: what its source sounds like. Two or more tracks of one performance: how each two fit together. Nothing is kept.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright listen rehearsal.wav --source violin --level 82 --at 1", "     pairwright listen inside.wav outside.wav", "     pairwright listen --change before.wav after.wav"})
final class ListenCommand implements Callable<Integer> {
    private static final int MOST_TRACKS = 6;
    private static final double USUAL_M = 1;

    /** What to make of several. */
    static final class As {
        @Option(names = "--pair", description = "The two channels of one stereo recording are a pair.")
        private boolean pair;

        @Option(names = "--change", description = "Two takes: what changed from the first to the second, made equally loud.")
        private boolean change;

        @Option(names = "--bleed", description = "One microphone twice at the same gain: while its own source plays, and while only a neighbour does.")
        private boolean bleed;
    }

    private static final double LARGEST_DB = 200;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Recordings.")
    private List<Path> files;

    @ArgGroup
    private As as = new As();

    @Option(names = "--expected", paramLabel = "DB", description = "With --bleed: own source over neighbour as a plan reckons with it, nine numbers with commas between them, 63 Hz to 16 kHz, such as octavesDb of plan --json.")
    private String expected;

    @Option(names = "--source", paramLabel = "ID", description = "What plays: it is held against its kind.")
    private String source;

    @Option(names = "--level", paramLabel = "DB", description = "What a sound level meter showed on average meanwhile.")
    private Double levelDb;

    @Option(names = "--at", paramLabel = "M", description = "How far the meter was from what sounds. Usually 1.")
    private Double atM;

    @Option(names = "--weighting", paramLabel = "A|Z", description = "How the meter weighed frequencies: ${COMPLETION-CANDIDATES}. Usually A.")
    private MeterReading.Weighting weighting;

    @Mixin
    private Printed printed;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Source known = source == null ? null : known();
        MeterReading reading = reading();
        counted();
        OctaveCurve reckoned = reckoned();
        try {
            return listen(known, reading, reckoned);
        } catch (UnusableRecording unusable) {
            spec.commandLine().getErr().println("pairwright: " + AnswerText.harmless(unusable.recording() + ": " + unusable.getMessage()));
            return Main.UNUSABLE;
        }
    }

    /** What was reckoned of a neighbour; null where nothing was given. */
    private OctaveCurve reckoned() {
        if (expected == null) {
            return null;
        }
        if (!as.bleed) {
            throw new ParameterException(spec.commandLine(), "--expected goes with --bleed. Add it, or leave this out");
        }
        try {
            double[] octaves = Arrays.stream(expected.strip().split("\\s*,\\s*|\\s+")).mapToDouble(Double::parseDouble).toArray();
            if (octaves.length == Octaves.COUNT && Arrays.stream(octaves).allMatch(db -> Math.abs(db) <= LARGEST_DB)) {
                return OctaveCurve.of(octaves);
            }
        } catch (NumberFormatException none) {
            // said below
        }
        throw new ParameterException(spec.commandLine(), "--expected must be nine numbers with commas between them, for 63 Hz to 16 kHz, but was \"" + Shown.of(expected) + "\"");
    }

    private int listen(Source known, MeterReading reading, OctaveCurve reckoned) {
        List<Recording> recordings = recordings();
        if (as.change || as.bleed) {
            Measured one = measured(recordings.get(0), null, null);
            Measured other = measured(recordings.get(1), null, null);
            if (as.change) {
                TakesCompared compared = TakesCompared.of(one, other);
                return printed.print(ListenView.of(one, other, compared), ListenText.change(one, other, compared));
            }
            BleedHeard bleed = BleedHeard.of(one, other, reckoned);
            return printed.print(ListenView.of(one, other, bleed), ListenText.bleed(one, other, bleed));
        }
        if (recordings.size() == 1 && !as.pair) {
            Measured measured = measured(recordings.get(0), reading, known);
            Traits traits = known == null || !measured.usable() ? null : Traits.of(measured, known);
            return printed.print(ListenView.of(measured, traits), ListenText.source(measured, traits));
        }
        TracksHeard pairs = TracksHeard.of(pairs(tracks(recordings)));
        return printed.print(ListenView.of(pairs), ListenText.pairs(pairs));
    }

    private Source known() {
        KnowledgeStore knowledge = KnowledgeStore.builtIn();
        Source found = knowledge.current().catalogue().sources().get(source);
        if (found == null) {
            throw new ParameterException(spec.commandLine(), "--source: there is no source " + Shown.of(source) + ". "
                    + Nearest.to(source, knowledge.current().catalogue().sources().keySet()).map(near -> "Did you mean " + near + "?").orElse("Ask for one: pairwright ask \"" + Shown.of(source) + "\""));
        }
        return found;
    }

    private MeterReading reading() {
        if (levelDb == null) {
            if (atM != null || weighting != null) {
                throw new ParameterException(spec.commandLine(), (atM != null ? "--at" : "--weighting") + " is of a meter, but there is no --level that it showed. Give it, or leave this out");
            }
            return null;
        }
        MeterReading reading = new MeterReading(levelDb, atM == null ? USUAL_M : atM, weighting == null ? MeterReading.Weighting.A : weighting);
        List<String> faults = reading.faults().stream().map(fault -> option(fault) + " " + fault.says()).toList();
        if (!faults.isEmpty()) {
            throw new ParameterException(spec.commandLine(), String.join(". ", faults));
        }
        return reading;
    }

    private static String option(Fault fault) {
        return fault.at().equals("/averageDb") ? "--level" : "--at";
    }

    private void counted() {
        if ((as.change || as.bleed) && files.size() != 2) {
            throw new ParameterException(spec.commandLine(), (as.change ? "--change" : "--bleed") + " takes two recordings, but there " + (files.size() == 1 ? "is 1" : "are " + files.size()));
        }
        if (as.pair && files.size() != 1) {
            throw new ParameterException(spec.commandLine(), "--pair takes one stereo recording, but there are " + files.size() + ". Leave it out to compare several");
        }
        if ((source != null || levelDb != null) && (files.size() > 1 || as.pair)) {
            throw new ParameterException(spec.commandLine(), (source != null ? "--source" : "--level") + " is for one recording of a source. Leave it out, or measure one recording by itself");
        }
        if (files.size() > MOST_TRACKS) {
            throw new ParameterException(spec.commandLine(), "At most " + MOST_TRACKS + " tracks are compared, but there are " + files.size());
        }
    }

    private List<Recording> recordings() {
        return files.stream().map(file -> Recording.of(file, file.getFileName() == null ? file.toString() : file.getFileName().toString())).toList();
    }

    private Measured measured(Recording recording, MeterReading reading, Source known) {
        return SourceMeter.measure(recording, reading, known == null || known.level() == null ? 0 : known.level().centreOffsetM(), progress(recording.name()));
    }

    private List<Track> tracks(List<Recording> recordings) {
        if (as.pair) {
            if (recordings.get(0).channels() != 2) {
                throw new ParameterException(spec.commandLine(), "--pair takes a stereo recording, but " + AnswerText.harmless(recordings.get(0).name()) + " has one channel");
            }
            return List.of(new Track(recordings.get(0), 0), new Track(recordings.get(0), 1));
        }
        recordings.stream().filter(recording -> recording.channels() != 1).findFirst().ifPresent(stereo -> {
            throw new ParameterException(spec.commandLine(), AnswerText.harmless(stereo.name()) + " is stereo. Give each track as a file of one channel, or that file alone with --pair");
        });
        return recordings.stream().map(recording -> new Track(recording, 0)).toList();
    }

    private List<PairHeard> pairs(List<Track> tracks) {
        List<PairHeard> pairs = new ArrayList<>();
        for (int first = 0; first < tracks.size(); first++) {
            for (int second = first + 1; second < tracks.size(); second++) {
                pairs.add(PairMeter.measure(tracks.get(first), tracks.get(second), progress(tracks.get(first).name() + " and " + tracks.get(second).name())));
            }
        }
        return pairs;
    }

    private DoubleConsumer progress(String name) {
        Meanwhile meanwhile = new Meanwhile(spec.commandLine().getErr());
        return share -> meanwhile.tell(String.format(Locale.ROOT, "Listening to %s, %.0f %%", AnswerText.harmless(name), 100 * share));
    }
}
