package pairwright.catalogue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairwright.acoustics.MeasuredResponse;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;

/**
 * A measured response beside its mic type: frequency in hertz and level in decibels, one point a line, separated by a comma, a semicolon, a tab
 * or blanks; decimals with a point. Lines that begin with # are remarks, and one line of headings may come first.
 *
 * @param file where it came from
 * @param responseDb nine octaves re 1 kHz, to a tenth of a decibel
 * @param note what the measurement rests on: the first remark, and how far it was extended
 */
record ResponseFile(Path file, OctaveCurve responseDb, String note) {
    static final String ENDING = ".csv";
    private static final long LARGEST_BYTES = 1_000_000;
    private static final int MOST_FAULTS = 10;
    private static final double HIGHEST_HZ = 200_000;
    private static final double MOST_DB = 200;
    /** What octaves can hold, as the schema says. */
    private static final double LEAST_RELATIVE_DB = -80;
    private static final double MOST_RELATIVE_DB = 30;
    /** A point an octave, with room for rounded frequencies. */
    private static final double WIDEST_GAP = 2.1;
    private static final int LONGEST_NOTE = 200;
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final Pattern COMMA_NUMBER = Pattern.compile("[-+]?\\d+,\\d+");
    private static final Pattern FIELD = Pattern.compile("[^,;\\t]+");
    private static final Pattern BLANKS = Pattern.compile("\\S+");

    /** Reads a file; empty, with its faults added, if it cannot be used. */
    static Optional<ResponseFile> read(Path file, List<FileFault> faults) {
        List<FileFault> found = new ArrayList<>();
        Optional<ResponseFile> response = Optional.empty();
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                found.add(new FileFault(file, 1, 1, "the file has " + Files.size(file) + " bytes, more than any response needs. Make it smaller"));
            } else {
                response = new Reader(file, found).read(Files.readString(file));
            }
        } catch (CharacterCodingException notUtf8) {
            found.add(new FileFault(file, 1, 1, "the file is not UTF-8. Save it as plain text in UTF-8"));
        } catch (IOException unreadable) {
            found.add(new FileFault(file, 1, 1, "the file cannot be read. Check that it is there and may be read"));
        }
        faults.addAll(found);
        return found.isEmpty() ? response : Optional.empty();
    }

    private static final class Reader {
        private final Path file;
        private final List<FileFault> faults;
        private final List<Point> points = new ArrayList<>();
        private final StringBuilder remark = new StringBuilder();
        private int wrongLines;

        /** One line of the file. */
        private record Point(int line, double frequencyHz, double levelDb) {
        }

        Reader(Path file, List<FileFault> faults) {
            this.file = file;
            this.faults = faults;
        }

        Optional<ResponseFile> read(String text) {
            String[] lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\\R", -1);
            boolean headingsMayCome = true;
            for (int i = 0; i < lines.length; i++) {
                String line = lines[i].strip();
                if (line.startsWith("#")) {
                    remark(line.substring(1).strip());
                } else if (!line.isEmpty()) {
                    if (!headingsMayCome || !isHeadings(line)) {
                        point(i + 1, lines[i]);
                    }
                    headingsMayCome = false;
                }
            }
            if (wrongLines > MOST_FAULTS) {
                faults.add(new FileFault(file, 1, 1, (wrongLines - MOST_FAULTS) + " more lines cannot be used. Correct the first ones, and check again"));
            }
            if (faults.isEmpty()) {
                coverage();
            }
            return faults.isEmpty() ? response() : Optional.empty();
        }

        private void remark(String says) {
            if (remark.isEmpty() && !says.isEmpty()) {
                remark.append(says, 0, Math.min(says.length(), LONGEST_NOTE));
            }
        }

        /** Words, and no number among them. */
        private static boolean isHeadings(String line) {
            return line.codePoints().anyMatch(Character::isLetter)
                    && FIELD.matcher(line).results().noneMatch(field -> NUMBER.matcher(unquoted(field.group())).matches());
        }

        private static String unquoted(String field) {
            String bare = field.strip();
            return bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"") ? bare.substring(1, bare.length() - 1).strip() : bare;
        }

        private void point(int line, String text) {
            Matcher field = (text.matches(".*[,;\\t].*") ? FIELD : BLANKS).matcher(text);
            List<String> fields = new ArrayList<>();
            List<Integer> columns = new ArrayList<>();
            while (field.find()) {
                if (!field.group().isBlank()) {
                    columns.add(field.start() + 1 + field.group().length() - field.group().stripLeading().length());
                    fields.add(unquoted(field.group()));
                }
            }
            if (text.contains(";") && fields.stream().noneMatch(NUMBER.asMatchPredicate().negate()) && text.matches(".*\\d,\\d.*")
                    || text.contains("\t") && text.matches(".*\\d,\\d.*")
                    || text.chars().filter(sign -> sign == ',').count() > 1 && COMMA_NUMBER.matcher(text).find() && fields.size() > 2) {
                wrong(line, 1, "\"" + Shown.of(text.strip()) + "\" is not two numbers. Write frequency, level, and decimals with a point, such as 63, -2.5");
                return;
            }
            if (fields.size() != 2) {
                wrong(line, 1, "there " + (fields.size() == 1 ? "is 1 value" : "are " + fields.size() + " values")
                        + " in this line. Give two: the frequency in Hz, and the level in dB, such as 63, -2.5");
                return;
            }
            Double frequencyHz = number(line, columns.get(0), fields.get(0), "frequency", "Hz");
            Double levelDb = number(line, columns.get(1), fields.get(1), "level", "dB");
            if (frequencyHz == null || levelDb == null) {
                return;
            }
            if (!(frequencyHz > 0 && frequencyHz <= HIGHEST_HZ)) {
                wrong(line, columns.get(0), "the frequency is " + fields.get(0) + " Hz. Give more than 0 and at most 200000");
            } else if (!points.isEmpty() && frequencyHz <= points.get(points.size() - 1).frequencyHz()) {
                wrong(line, columns.get(0), "the frequency is " + fields.get(0) + " Hz, not above the " + shown(points.get(points.size() - 1).frequencyHz())
                        + " Hz before it. Put each frequency once, in rising order");
            } else if (Math.abs(levelDb) > MOST_DB) {
                wrong(line, columns.get(1), "the level is " + fields.get(1) + " dB. Give -200 to 200");
            } else {
                points.add(new Point(line, frequencyHz, levelDb));
            }
        }

        private Double number(int line, int column, String text, String what, String unit) {
            if (NUMBER.matcher(text).matches()) {
                return Double.valueOf(text);
            }
            wrong(line, column, "the " + what + " is \"" + Shown.of(text) + "\", not a number. Give it in " + unit + ", decimals with a point");
            return null;
        }

        private void wrong(int line, int column, String says) {
            wrongLines++;
            if (wrongLines <= MOST_FAULTS) {
                faults.add(new FileFault(file, line, column, says));
            }
        }

        /** What lies up to an octave outside is taken as the outermost point; more would be made up. */
        private void coverage() {
            if (points.isEmpty()) {
                faults.add(new FileFault(file, 1, 1, "there is no point in this file. Give frequency and level, one point a line, such as 63, -2.5"));
                return;
            }
            Point first = points.get(0);
            Point last = points.get(points.size() - 1);
            double lowestHz = Octaves.centreHz(0);
            double highestHz = Octaves.centreHz(Octaves.COUNT - 1);
            if (first.frequencyHz() > lowestHz * 2) {
                faults.add(new FileFault(file, first.line(), 1, "the response begins at " + shown(first.frequencyHz())
                        + " Hz, more than an octave above 63 Hz. Measure from 126 Hz or lower, better from 40"));
            }
            if (last.frequencyHz() < highestHz / 2) {
                faults.add(new FileFault(file, last.line(), 1, "the response ends at " + shown(last.frequencyHz())
                        + " Hz, more than an octave below 16 kHz. Measure up to 8 kHz or higher, better to 20"));
            }
            for (int i = 1; i < points.size(); i++) {
                double fromHz = points.get(i - 1).frequencyHz();
                double toHz = points.get(i).frequencyHz();
                if (toHz > fromHz * WIDEST_GAP && toHz > lowestHz && fromHz < highestHz) {
                    faults.add(new FileFault(file, points.get(i).line(), 1, "from " + shown(fromHz) + " to " + shown(toHz)
                            + " Hz there is no point. Give at least one an octave, better three"));
                }
            }
        }

        private Optional<ResponseFile> response() {
            OctaveCurve exact = MeasuredResponse.octavesDb(points.stream().mapToDouble(Point::frequencyHz).toArray(),
                    points.stream().mapToDouble(Point::levelDb).toArray());
            OctaveCurve octaves = exact.map(db -> Math.round(db * 10) / 10.0);
            for (int band = 0; band < Octaves.COUNT; band++) {
                if (octaves.at(band) < LEAST_RELATIVE_DB || octaves.at(band) > MOST_RELATIVE_DB) {
                    faults.add(new FileFault(file, 1, 1, "the octave at " + shown(Octaves.centreHz(band)) + " Hz is " + shown(octaves.at(band))
                            + " dB against that at 1 kHz. A microphone stays between -80 and 30: check the levels"));
                    return Optional.empty();
                }
            }
            return Optional.of(new ResponseFile(file, octaves, (remark.isEmpty() ? "Measured by the house" : remark) + extended()));
        }

        private String extended() {
            double fromHz = points.get(0).frequencyHz();
            double toHz = points.get(points.size() - 1).frequencyHz();
            return (fromHz > Octaves.centreHz(0) ? "; below " + shown(fromHz) + " Hz taken as at " + shown(fromHz) + " Hz" : "")
                    + (toHz < Octaves.centreHz(Octaves.COUNT - 1) ? "; above " + shown(toHz) + " Hz taken as at " + shown(toHz) + " Hz" : "");
        }

        private static String shown(double number) {
            return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        }
    }
}
