package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pairwright.drawing.Reader;
import pairwright.model.Catalogue;

/** The fields of the form of a line-up, filled with what was sent. */
record SessionFields(Sent sent, Reader reader, Catalogue catalogue) {
    /** What is seldom needed, and folded away. */
    static final List<String> MORE = List.of("how", "character", "maxMics", "section", "typicalDbSpl", "peakDbSpl", "lowestHz", "highestHz", "habits");

    static String unit(Reader reader) {
        return reader.imperial() ? "ft" : "m";
    }

    List<FormField> general() {
        List<Choice> rooms = new ArrayList<>(List.of(new Choice("", "None of these", false)));
        catalogue.rooms().values().stream().filter(room -> !room.outdoors()).forEach(room -> rooms.add(new Choice(room.id(), room.name(), false)));
        String unit = ", " + unit(reader);
        return filled(Stream.of(FormField.line("name", "Name").needed(), FormField.moment("from", "From"), FormField.moment("until", "Until"),
                FormField.choice("room", "Room like", rooms).hint("How quiet it is, and its sizes where you leave them empty."),
                FormField.line("widthM", "Wide" + unit), FormField.line("depthM", "Deep" + unit), FormField.line("heightM", "High" + unit),
                FormField.line("reverbTimeS", "Rings for, s").hint("Reverberation time in the middle of the spectrum."),
                FormField.line(SessionNames.PATCH_X, "Leads end, from the left" + unit),
                FormField.line(SessionNames.PATCH_Y, "Leads end, from the front" + unit)
                        .hint("Where the box or the desk of the channels stands. With it the leads are as long as they must be; without, it is taken to be in the middle of a wall."),
                FormField.line("plans", "Plans wanted").hint("1 to 5 different ones."),
                FormField.line("setUpMinutes", "Minutes to set up").hint("No plan takes more. Empty for as long as it takes."), FormField.line("setUpHands", "Pairs of hands that set up").hint("One unless said.")));
    }

    List<FormField> seat(int row) {
        String unit = ", " + unit(reader);
        return filled(Stream.of(
                FormField.line(name(row, "what"), "What is played").needed().hint("As you would ask for it: tenor saxophone; brushed snare, dark."),
                FormField.line(name(row, "player"), "Player"),
                FormField.tick(name(row, "must"), "No session without it"),
                FormField.line(name(row, "xM"), "From the left" + unit), FormField.line(name(row, "yM"), "From the front" + unit),
                FormField.line(name(row, "facingDegrees"), "Facing, degrees").hint("0 is away from the front, 90 to the right."),
                FormField.tick(name(row, "fixed"), "Stays where it is"),
                FormField.line(name(row, "how"), "How it is played").hint("Ways of playing, how loud, circumstances; commas between."),
                FormField.line(name(row, "character"), "Sound wanted").hint("Characters such as warm; commas between."),
                FormField.line(name(row, "maxMics"), "Microphones at most"),
                FormField.line(name(row, "section"), "Section").hint("Seats with the same word shall sound alike, and their lines lie side by side."),
                FormField.line(name(row, "typicalDbSpl"), "Running level at 1 m, dB SPL"), FormField.line(name(row, "peakDbSpl"), "Loudest peak at 1 m, dB SPL"),
                FormField.line(name(row, "lowestHz"), "Lowest note, Hz").hint("Such as by another tuning."), FormField.line(name(row, "highestHz"), "Highest note, Hz"),
                FormField.lines(name(row, "habits"), "Habits").hint("What to mind of how this player plays, a line for each.")));
    }

    List<FormField> gobo(int row) {
        String unit = ", " + unit(reader);
        return filled(Stream.of(FormField.line(gobo(row, "x1M"), "One end from the left" + unit), FormField.line(gobo(row, "y1M"), "One end from the front" + unit),
                FormField.line(gobo(row, "x2M"), "Other end from the left" + unit), FormField.line(gobo(row, "y2M"), "Other end from the front" + unit),
                FormField.line(gobo(row, "heightM"), "High" + unit)));
    }

    List<FormField> contrast(int row, List<Choice> seats) {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "Nobody", false)));
        choices.addAll(seats);
        return filled(Stream.of(FormField.choice(SessionNames.of(SessionNames.CONTRAST, row, "a"), "This one", choices),
                FormField.choice(SessionNames.of(SessionNames.CONTRAST, row, "b"), "Not like this one", choices)));
    }

    private static String name(int row, String field) {
        return SessionNames.of(SessionNames.SEAT, row, field);
    }

    private static String gobo(int row, String field) {
        return SessionNames.of(SessionNames.GOBO, row, field);
    }

    private List<FormField> filled(Stream<FormField> fields) {
        return fields.map(field -> field.value(field.kind() == FormField.Kind.LINES ? sent.lines(field.name()) : sent.first(field.name()))).toList();
    }
}
