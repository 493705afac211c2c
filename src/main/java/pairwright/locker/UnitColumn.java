package pairwright.locker;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The columns of a table of units, in the order they are written. */
enum UnitColumn {
    ID("id", Form.TEXT, UnitDraft::id),
    KIND("kind", Form.KIND, UnitDraft::kind),
    MIC_TYPE("micType", Form.TEXT, UnitDraft::micType),
    LABEL("label", Form.TEXT, UnitDraft::label),
    SERIAL("serial", Form.TEXT, UnitDraft::serial),
    TAG("tag", Form.TEXT, UnitDraft::tag),
    PAIR_MATE("pairMate", Form.TEXT, UnitDraft::pairMate),
    CONDITION("condition", Form.CONDITION, UnitDraft::condition),
    NOTE("note", Form.TEXT, UnitDraft::note),
    STORED_AT("storedAt", Form.TEXT, UnitDraft::storedAt),
    BANK("bank", Form.TEXT, part(UnitDraft::channel, ChannelData::bank)),
    LEAST_GAIN("leastGainDb", Form.NUMBER, part(UnitDraft::channel, ChannelData::leastGainDb)),
    MOST_GAIN("mostGainDb", Form.NUMBER, part(UnitDraft::channel, ChannelData::mostGainDb)),
    INPUT("inputOhm", Form.NUMBER, part(UnitDraft::channel, ChannelData::inputOhm)),
    NOISE("noiseDbu", Form.NUMBER, part(UnitDraft::channel, ChannelData::noiseDbu)),
    PHANTOM("phantom", Form.PHANTOM, part(UnitDraft::channel, ChannelData::phantom)),
    PHANTOM_CURRENT("phantomMa", Form.NUMBER, part(UnitDraft::channel, ChannelData::phantomMa)),
    MASS("massKg", Form.NUMBER, part(UnitDraft::stand, StandData::massKg)),
    REACH("reachM", Form.NUMBER, part(UnitDraft::stand, StandData::reachM)),
    FOOT_RADIUS("footRadiusM", Form.NUMBER, part(UnitDraft::stand, StandData::footRadiusM)),
    LEGS("legs", Form.WHOLE, part(UnitDraft::stand, StandData::legs)),
    HEIGHT("heightM", Form.NUMBER, part(UnitDraft::stand, StandData::heightM)),
    LOSS("lossDb", Form.NUMBER, part(UnitDraft::pad, PadData::lossDb)),
    BOOSTER_GAIN("boosterGainDb", Form.NUMBER, part(UnitDraft::booster, BoosterData::gainDb)),
    BOOSTER_PHANTOM("boosterPhantomMa", Form.NUMBER, part(UnitDraft::booster, BoosterData::phantomMa)),
    PASSES_PHANTOM("passesPhantom", Form.YES_NO, draft -> draft.pad() != null ? draft.pad().passesPhantom() : draft.booster() == null ? null : draft.booster().passesPhantom()),
    RESPONSE("response", Form.RESPONSE, draft -> draft.response().isEmpty() ? null : draft.response());

    /** How a cell is written. */
    enum Form { TEXT, KIND, CONDITION, PHANTOM, NUMBER, WHOLE, YES_NO, RESPONSE }

    private final String title;
    private final Form form;
    private final Function<UnitDraft, Object> of;

    UnitColumn(String title, Form form, Function<UnitDraft, Object> of) {
        this.title = title;
        this.form = form;
        this.of = of;
    }

    /** The name in the first line. */
    String title() {
        return title;
    }

    Form form() {
        return form;
    }

    /** What a unit has there; null for nothing. */
    Object of(UnitDraft draft) {
        return of.apply(draft);
    }

    /** The column of that name, whatever the case. */
    static Optional<UnitColumn> named(String title) {
        return Arrays.stream(values()).filter(column -> column.title.toLowerCase(Locale.ROOT).equals(title.strip().toLowerCase(Locale.ROOT))).findFirst();
    }

    static List<String> titles() {
        return Arrays.stream(values()).map(UnitColumn::title).toList();
    }

    /** The column a fault of a draft is about, by its pointer, such as {@code /channel/bank} or {@code /response/3}; null for the whole row. */
    static UnitColumn at(String pointer, UnitDraft draft) {
        String[] steps = pointer.split("/");
        String first = steps.length > 1 ? steps[1] : "";
        String last = steps.length > 2 ? steps[2] : "";
        return switch (first) {
            case "channel" -> named(last).orElseGet(() -> firstGiven(draft, BANK, PHANTOM_CURRENT));
            case "stand" -> named(last).orElseGet(() -> firstGiven(draft, MASS, HEIGHT));
            case "pad" -> last.equals("passesPhantom") ? PASSES_PHANTOM : LOSS;
            case "booster" -> switch (last) {
                case "gainDb" -> BOOSTER_GAIN;
                case "phantomMa" -> BOOSTER_PHANTOM;
                case "passesPhantom" -> PASSES_PHANTOM;
                default -> firstGiven(draft, BOOSTER_GAIN, PASSES_PHANTOM);
            };
            default -> named(first).orElse(null);
        };
    }

    private static UnitColumn firstGiven(UnitDraft draft, UnitColumn from, UnitColumn to) {
        return Arrays.stream(values()).filter(column -> column.compareTo(from) >= 0 && column.compareTo(to) <= 0 && column.of(draft) != null)
                .findFirst().orElse(from);
    }

    private static <P> Function<UnitDraft, Object> part(Function<UnitDraft, P> whole, Function<P, Object> part) {
        return draft -> whole.apply(draft) == null ? null : part.apply(whole.apply(draft));
    }
}
