package pairwright.sheet;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairwright.drawing.Reader;
import pairwright.model.Fault;

/**
 * Faults of a line-up as its form says them: at its fields, and in its words.
 *
 * @param rows of the form, seat by seat
 * @param goboRows likewise
 * @param reader whose measures
 */
record SessionFault(List<Integer> rows, List<Integer> goboRows, Reader reader) {
    private static final Pattern SEAT = Pattern.compile("/lineUp/(\\d+)(?:/(\\w+)(?:/(\\w+))?.*)?");
    private static final Pattern GOBO = Pattern.compile("/gobos/(\\d+)(/.*)?");
    private static final Pattern RANGE = Pattern.compile("^\\w+ must be (\\S+) to ([^ ,]+)(.*), but was (\\S+)$");
    private static final Map<String, String> FIELDS = Map.of("source", "what", "ways", "how", "dynamics", "how", "circumstances", "how", "toneDb", "typicalDbSpl", "limits", "maxMics");
    /** The fields that hold lengths. */
    private static final Pattern LENGTH = Pattern.compile(".*/(x\\d?M|y\\d?M|widthM|depthM|heightM)");

    Fault told(Fault fault) {
        String says = fault.says();
        Matcher range = RANGE.matcher(says);
        if (range.matches()) {
            String unit = LENGTH.matcher(fault.at()).matches() ? " m" : fault.at().endsWith("Degrees") ? " degrees" : fault.at().endsWith("reverbTimeS") ? " s" : "";
            says = reader.sentence("This must be " + range.group(1) + unit + " to " + range.group(2) + unit + range.group(3) + ", but was " + range.group(4) + unit);
        } else {
            says = reader.sentence(says);
        }
        return new Fault(at(fault.at()), Choices.capital(says));
    }

    private String at(String pointer) {
        Matcher seat = SEAT.matcher(pointer);
        if (seat.matches() && Integer.parseInt(seat.group(1)) < rows.size()) {
            String field = seat.group(2) == null ? "xM" : seat.group(2).equals("heard") && seat.group(3) != null ? seat.group(3) : seat.group(2);
            return "/seat/" + rows.get(Integer.parseInt(seat.group(1))) + "/" + FIELDS.getOrDefault(field, field);
        }
        if (pointer.startsWith("/setUp/")) {
            return "/setUp" + Choices.capital(pointer.substring("/setUp/".length()));
        }
        Matcher gobo = GOBO.matcher(pointer);
        if (gobo.matches() && Integer.parseInt(gobo.group(1)) < goboRows.size()) {
            return "/gobo/" + goboRows.get(Integer.parseInt(gobo.group(1))) + (gobo.group(2) == null ? "/x1M" : gobo.group(2));
        }
        if (pointer.startsWith("/room/patch")) {
            return "/" + (pointer.endsWith("yM") ? SessionNames.PATCH_Y : SessionNames.PATCH_X);
        }
        return pointer.startsWith("/room/") && !pointer.equals("/room/room") ? pointer.substring("/room".length()) : pointer.startsWith("/room") ? "/room" : pointer;
    }
}
