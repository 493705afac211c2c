package pairwright.sheet;

import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.Mount;
import pairwright.session.Line;
import pairwright.session.LineUp;
import pairwright.session.Plan;

/**
 * The channels of a plan as a list: for a page, a table and programs.
 *
 * @param session what it is called
 * @param lines in the order of the channels
 */
public record InputList(String session, List<Row> lines) {
    private static final List<String> COLUMNS = List.of("number", "channel", "bank", "name", "player", "source", "unit", "unitLabel", "storedAt", "micType", "pattern", "position",
            "distanceM", "aimDegrees", "stand", "standKind", "booster", "box", "boxPower", "phantom", "padDb", "highPassHz", "invertPolarity", "gainDb", "peakDbSpl", "outputPeakDbu");

    /**
     * One channel. Null for what is not known or does not apply.
     *
     * @param number from 1
     * @param channel what is written on it
     * @param box the line box: what is written on it, or its type
     * @param padDb at the microphone or in the line; 0 for none
     */
    public record Row(int number, String channel, String bank, String name, String player, String source, String unit, String unitLabel, String storedAt, String micType, String pattern,
            String position, Double distanceM, Double aimDegrees, String stand, String standKind, String booster, String box, String boxPower, boolean phantom, double padDb, Double highPassHz, boolean invertPolarity,
            Double gainDb, Double peakDbSpl, Double outputPeakDbu) {
    }

    /** What a plan says; names of people, types and places, never ids of the catalogue alone. */
    public static InputList of(AtPlan at, Plan plan) {
        return of(at.lineUp(), at.catalogue(), plan);
    }

    /** The same away from a page. */
    public static InputList of(LineUp lineUp, Catalogue catalogue, Plan plan) {
        return new InputList(lineUp.name() == null ? "Session" : lineUp.name(), plan.lines().stream().map(line -> row(lineUp, catalogue, line)).toList());
    }

    private static String source(Catalogue catalogue, String source) {
        return catalogue.sources().containsKey(source) ? catalogue.sources().get(source).name() : source;
    }

    private static Row row(LineUp lineUp, Catalogue catalogue, Line line) {
        String player = lineUp.seat(line.seat()).map(seat -> seat.player() != null ? seat.player() : source(catalogue, seat.source())).orElse(line.seat());
        var mic = line.placement();
        var box = line.between().box();
        boolean air = !SetUpWords.wired(mic) && mic.mount() != Mount.CONTACT;
        return new Row(line.number(), line.channelLabel(), line.bank(), line.name(), player, source(catalogue, line.source()),
                line.unit() == null ? null : line.unit().id(), line.unit() == null ? null : line.unit().label(), line.unit() == null ? null : line.unit().storedAt(), mic.name(),
                air ? mic.pattern().id() : null, mic.positionName(), air ? mic.distanceM() : null, air ? mic.aimDegrees() : null, line.standLabel(),
                line.standKind() == null ? null : line.standKind().id(), line.booster(), box == null ? null : box.called(),
                box == null ? null : box.power().id(), line.phantom(), line.between().allPadsDb(), line.highPassHz(), mic.invertPolarity(), line.gainDb(),
                mic.predicted().peakDbSpl(), mic.predicted().outputPeakDbu());
    }

    /** As a table in SI, whoever reads. */
    public String csv() {
        return Csv.of(COLUMNS, lines.stream().map(row -> List.of(Csv.text(row.number()), Csv.text(row.channel()), Csv.text(row.bank()), Csv.text(row.name()), Csv.text(row.player()),
                Csv.text(row.source()), Csv.text(row.unit()), Csv.text(row.unitLabel()), Csv.text(row.storedAt()), Csv.text(row.micType()), Csv.text(row.pattern()), Csv.text(row.position()),
                Csv.text(row.distanceM()), Csv.text(row.aimDegrees()), Csv.text(row.stand()), Csv.text(row.standKind()), Csv.text(row.booster()), Csv.text(row.box()), Csv.text(row.boxPower()), row.phantom() ? "on" : "off",
                Csv.text(row.padDb()), Csv.text(row.highPassHz()), row.invertPolarity() ? "inverted" : "as it is", Csv.text(row.gainDb()), Csv.text(row.peakDbSpl()),
                Csv.text(row.outputPeakDbu()))).toList());
    }
}
