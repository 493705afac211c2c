package pairwright.locker;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Stream;
import pairwright.model.Word;

/** Units as rows. */
final class UnitRows {
    private static final List<String> COLUMNS = List.of("kind", "mic_type", "label", "serial", "tag", "tag_key", "pair_mate", "state", "note", "stored_at",
            "channel_bank", "channel_least_gain_db", "channel_most_gain_db", "channel_input_ohm", "channel_noise_dbu", "channel_phantom",
            "channel_phantom_ma", "stand_mass_kg", "stand_reach_m", "stand_foot_radius_m", "stand_legs", "stand_height_m", "pad_loss_db",
            "booster_gain_db", "booster_phantom_ma", "booster_passes_phantom", "response", "version");
    private static final String ALL = "SELECT id, " + String.join(", ", COLUMNS) + " FROM unit";
    private static final String INSERT = "INSERT INTO unit (" + String.join(", ", COLUMNS) + ", id) VALUES (" + "?, ".repeat(COLUMNS.size()) + "?)";
    private static final String UPDATE = "UPDATE unit SET " + String.join(" = ?, ", COLUMNS) + " = ? WHERE id = ?";

    private UnitRows() {
    }

    static List<Unit> all(Sql sql) throws SQLException {
        return sql.all(ALL, UnitRows::unit);
    }

    static Optional<Unit> of(Sql sql, String id) throws SQLException {
        return sql.first(ALL + " WHERE id = ?", UnitRows::unit, id);
    }

    static Optional<Unit> tagged(Sql sql, String tag) throws SQLException {
        return sql.first(ALL + " WHERE tag_key = ?", UnitRows::unit, key(tag));
    }

    static void insert(Sql sql, Unit unit) throws SQLException {
        sql.run(INSERT, values(unit));
    }

    static void update(Sql sql, Unit unit) throws SQLException {
        sql.run(UPDATE, values(unit));
    }

    /** Tags are alike whatever the case. */
    static String key(String tag) {
        return tag.strip().toLowerCase(Locale.ROOT);
    }

    private static Object[] values(Unit unit) {
        List<Object> values = new ArrayList<>();
        add(values, unit.kind().id(), unit.micType(), unit.label(), unit.serial(), unit.tag(), unit.tag() == null ? null : key(unit.tag()), unit.pairMate(),
                unit.condition().id(), unit.note(), unit.storedAt());
        ChannelData channel = unit.channel() == null ? new ChannelData(null, null, null, null, null, null, null) : unit.channel();
        add(values, channel.bank(), channel.leastGainDb(), channel.mostGainDb(), channel.inputOhm(), channel.noiseDbu(),
                channel.phantom() == null ? null : channel.phantom().id(), channel.phantomMa());
        StandData stand = unit.stand() == null ? new StandData(null, null, null, null, null) : unit.stand();
        add(values, stand.massKg(), stand.reachM(), stand.footRadiusM(), stand.legs(), stand.heightM());
        add(values, unit.pad() == null ? null : unit.pad().lossDb());
        BoosterData booster = unit.booster() == null ? new BoosterData(null, null, null) : unit.booster();
        Boolean passesPhantom = unit.pad() == null ? booster.passesPhantom() : unit.pad().passesPhantom(); // one column: a unit is the one or the other
        add(values, booster.gainDb(), booster.phantomMa(), passesPhantom == null ? null : passesPhantom ? 1L : 0L);
        add(values, text(unit.response()), unit.version(), unit.id());
        return values.toArray();
    }

    private static void add(List<Object> values, Object... more) {
        for (Object value : more) {
            values.add(value);
        }
    }

    private static Unit unit(ResultSet row) throws SQLException {
        UnitKind kind = word(UnitKind.values(), row.getString("kind"));
        Long passes = Sql.wholeOrNull(row, "booster_passes_phantom");
        Long legs = Sql.wholeOrNull(row, "stand_legs");
        return new Unit(row.getString("id"), kind, row.getString("mic_type"), row.getString("label"), row.getString("serial"), row.getString("tag"),
                row.getString("pair_mate"), word(Condition.values(), row.getString("state")), row.getString("note"), row.getString("stored_at"),
                kind != UnitKind.CHANNEL ? null : new ChannelData(row.getString("channel_bank"), Sql.numberOrNull(row, "channel_least_gain_db"),
                        Sql.numberOrNull(row, "channel_most_gain_db"), Sql.numberOrNull(row, "channel_input_ohm"), Sql.numberOrNull(row, "channel_noise_dbu"),
                        word(PhantomSwitch.values(), row.getString("channel_phantom")), Sql.numberOrNull(row, "channel_phantom_ma")),
                kind != UnitKind.STAND ? null : new StandData(Sql.numberOrNull(row, "stand_mass_kg"), Sql.numberOrNull(row, "stand_reach_m"),
                        Sql.numberOrNull(row, "stand_foot_radius_m"), legs == null ? null : legs.intValue(), Sql.numberOrNull(row, "stand_height_m")),
                kind != UnitKind.PAD ? null : new PadData(Sql.numberOrNull(row, "pad_loss_db"), passes == null ? null : passes == 1),
                kind != UnitKind.BOOSTER ? null : new BoosterData(Sql.numberOrNull(row, "booster_gain_db"), Sql.numberOrNull(row, "booster_phantom_ma"),
                        passes == null ? null : passes == 1),
                points(row.getString("response")), row.getLong("version"));
    }

    /** The constant of a word; null for null. */
    static <W extends Word> W word(W[] words, String id) {
        return id == null ? null : Stream.of(words).filter(word -> word.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalStateException("the locker holds the word " + id + ", which is unknown"));
    }

    /** Points as text, exactly: "63.0 -1.5;125.0 0.0". */
    private static String text(List<ResponsePoint> points) {
        StringJoiner text = new StringJoiner(";");
        points.forEach(point -> text.add(point.frequencyHz() + " " + point.levelDb()));
        return points.isEmpty() ? null : text.toString();
    }

    private static List<ResponsePoint> points(String text) {
        if (text == null) {
            return List.of();
        }
        return Stream.of(text.split(";")).map(point -> point.split(" "))
                .map(two -> new ResponsePoint(Double.parseDouble(two[0]), Double.parseDouble(two[1]))).toList();
    }
}
