package pairwright.http;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.catalogue.Shown;
import pairwright.listen.MeterReading;
import pairwright.listen.Recording;
import pairwright.listen.UnusableRecording;
import pairwright.model.Fault;
import pairwright.model.Nearest;
import pairwright.model.Source;

/** Reads what was sent to be listened to; every fault is found before anything is measured. */
final class ListenForm {
    /** The parts that are files. */
    static final Set<String> FILES = Set.of("file", "before", "after", "own", "neighbour");
    private static final double LARGEST_DB = 200;

    private final Uploads.Taken taken;
    private final List<Fault> faults = new ArrayList<>();

    /**
     * @param known the parts there may be
     */
    ListenForm(Uploads.Taken taken, Set<String> known) {
        this.taken = taken;
        Set<String> names = new TreeSet<>(taken.fields.keySet());
        names.addAll(taken.files.keySet());
        names.forEach(name -> {
            if (!known.contains(name)) {
                fault(name, "there is nothing to be sent as \"" + Shown.of(name) + "\" here. Known: " + String.join(", ", new TreeSet<>(known)));
            } else if (!FILES.contains(name) && taken.files.containsKey(name)) {
                fault(name, name + " is a file or longer than a thousand characters. Send it as a short text");
            } else if (!FILES.contains(name) && taken.fields.get(name).size() > 1) {
                fault(name, name + " is there " + taken.fields.get(name).size() + " times. Send it once");
            }
        });
    }

    /** The files of a name, which have to be so many. */
    List<Uploads.Sent> files(String name, int least, int most) {
        List<Uploads.Sent> files = taken.files.getOrDefault(name, List.of());
        if (files.isEmpty()) {
            fault(name, "there is no file under " + name + ". Send a WAV or AIFF file");
        } else if (files.size() < least || files.size() > most) {
            fault(name, "there " + (files.size() == 1 ? "is 1 file" : "are " + files.size() + " files") + " under " + name + ". Send " + (least == most ? "" : least + " to ") + most);
        }
        return files;
    }

    /** A text; null where there is none. */
    String text(String name) {
        List<String> given = taken.fields.getOrDefault(name, List.of());
        return given.size() != 1 || given.get(0).isBlank() ? null : given.get(0).strip();
    }

    /** The source that was named; null for none. */
    Source source(Map<String, Source> known) {
        String id = text("source");
        Source source = id == null ? null : known.get(id);
        if (id != null && source == null) {
            fault("source", "there is no source \"" + Shown.of(id) + "\". " + Nearest.to(id, known.keySet()).map(near -> "Did you mean " + near + "?").orElse("All are at /api/sources"));
        }
        return source;
    }

    /** What a meter showed; null where nothing was said. */
    MeterReading reading() {
        Double averageDb = number("averageDb");
        Double distanceM = number("distanceM");
        String weighting = text("weighting");
        MeterReading.Weighting weighed = Arrays.stream(MeterReading.Weighting.values()).filter(one -> one.name().equals(weighting)).findFirst().orElse(null);
        if (weighting != null && weighed == null) {
            fault("weighting", "there is no weighting \"" + Shown.of(weighting) + "\". Use A or Z");
        }
        if (text("averageDb") == null) {
            if (distanceM != null) {
                fault("averageDb", "it is said how far away a meter was, and not what it showed. Send averageDb, or leave distanceM out");
            }
            return null;
        }
        if (averageDb == null || distanceM == null && text("distanceM") != null) {
            return null;
        }
        MeterReading reading = new MeterReading(averageDb, distanceM == null ? 1 : distanceM, weighed == null ? MeterReading.Weighting.A : weighed);
        reading.faults().forEach(fault -> fault(fault.at().substring(1), fault.at().substring(1) + " " + fault.says()));
        return reading;
    }

    /** Nine numbers; null for none. */
    OctaveCurve octaves(String name) {
        String text = text(name);
        if (text == null) {
            return null;
        }
        String[] parts = text.replaceAll("^\\[|]$", "").strip().split("\\s*,\\s*|\\s+");
        double[] numbers = Arrays.stream(parts).mapToDouble(ListenForm::parsed).toArray();
        if (numbers.length != Octaves.COUNT || Arrays.stream(numbers).anyMatch(one -> !(Math.abs(one) <= LARGEST_DB))) {
            fault(name, name + " must be nine numbers with commas between them, for 63 Hz to 16 kHz, but was \"" + Shown.of(text) + "\"");
            return null;
        }
        return OctaveCurve.of(numbers);
    }

    private Double number(String name) {
        String text = text(name);
        if (text == null) {
            return null;
        }
        double number = parsed(text.replace(',', '.')); // a page is read where people write a comma
        if (!Double.isFinite(number)) {
            fault(name, name + " must be a number, but was \"" + Shown.of(text) + "\"");
            return null;
        }
        return number;
    }

    /** Not a number where it is none. */
    private static double parsed(String text) {
        return text.matches("[+-]?\\d{1,9}(\\.\\d{1,9})?") ? Double.parseDouble(text) : Double.NaN;
    }

    void fault(String name, String says) {
        faults.add(new Fault("/" + JsonReader.pointer(Shown.of(name)), says));
    }

    /**
     * Ends the request if something was wrong.
     *
     * @throws BadRequest with status 400 and every fault
     */
    void check() {
        if (!faults.isEmpty()) {
            throw new BadRequest(Problem.of(400, Problem.listed(faults)));
        }
    }

    /**
     * Opens what was sent.
     *
     * @throws BadRequest with status 422 and every file that cannot be read
     */
    static List<Recording> recordings(List<Uploads.Sent> files) {
        List<Recording> recordings = new ArrayList<>();
        List<Fault> unusable = new ArrayList<>();
        for (Uploads.Sent file : files) {
            try {
                recordings.add(Recording.of(file.file(), file.name()));
            } catch (UnusableRecording wrong) {
                unusable.add(fault(wrong));
            }
        }
        if (!unusable.isEmpty()) {
            throw new BadRequest(Problem.of(422, unusable));
        }
        return recordings;
    }

    /** What is wrong with a file, by the name its sender gave it. */
    static Fault fault(UnusableRecording wrong) {
        return new Fault("/" + JsonReader.pointer(wrong.recording()), wrong.recording() + ": " + wrong.getMessage());
    }
}
