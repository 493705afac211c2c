package pairwright.cli;

import pairwright.locker.BoosterData;
import pairwright.locker.ChannelData;
import pairwright.locker.Condition;
import pairwright.locker.PadData;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.StandData;
import pairwright.locker.Unit;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;
import picocli.CommandLine.Option;

/** What can be said of a unit on a command line. What is not said stays as it was. */
final class UnitOptions {
    @Option(names = "--type", paramLabel = "TYPE", description = "For a mic: its mic type, by the id of the catalogue.")
    private String type;

    @Option(names = "--label", paramLabel = "WORDS", description = "What is written on it.")
    private String label;

    @Option(names = "--serial", paramLabel = "NUMBER", description = "The number of its maker.")
    private String serial;

    @Option(names = "--tag", paramLabel = "TAG", description = "What a scanner reads.")
    private String tag;

    @Option(names = "--mate", paramLabel = "ID", description = "The unit it was matched with.")
    private String mate;

    @Option(names = "--condition", paramLabel = "WORD", description = "good, limited, in-repair or lost.")
    private Condition condition;

    @Option(names = "--note", paramLabel = "WORDS", description = "What to know; needed for a limited unit.")
    private String note;

    @Option(names = "--stored", paramLabel = "PLACE", description = "Where it lies when nobody has it.")
    private String stored;

    @Option(names = "--bank", paramLabel = "NAME", description = "For a channel: the box it shares its supply with.")
    private String bank;

    @Option(names = "--least-gain", paramLabel = "DB", description = "For a channel: its least gain.")
    private Double leastGainDb;

    @Option(names = "--most-gain", paramLabel = "DB", description = "For a channel: its most gain.")
    private Double mostGainDb;

    @Option(names = "--input", paramLabel = "OHM", description = "For a channel: its input impedance.")
    private Double inputOhm;

    @Option(names = "--noise", paramLabel = "DBU", description = "For a channel: its equivalent input noise, unweighted, 150 ohm.")
    private Double noiseDbu;

    @Option(names = "--phantom", paramLabel = "WORD", description = "For a channel: channel, bank or none, as its switch reaches.")
    private PhantomSwitch phantom;

    @Option(names = "--phantom-current", paramLabel = "MA", description = "What a channel's supply gives, or a booster draws.")
    private Double phantomMa;

    @Option(names = "--mass", paramLabel = "KG", description = "For a stand, without what it carries.")
    private Double massKg;

    @Option(names = "--reach", paramLabel = "M", description = "For a stand: its boom from the column; 0 for a straight one.")
    private Double reachM;

    @Option(names = "--foot", paramLabel = "M", description = "For a stand: from the column to a foot or the edge of the base.")
    private Double footRadiusM;

    @Option(names = "--legs", paramLabel = "N", description = "For a stand: 3 to 12; 0 for a round base.")
    private Integer legs;

    @Option(names = "--height", paramLabel = "M", description = "For a stand: the most it is good for.")
    private Double heightM;

    @Option(names = "--loss", paramLabel = "DB", description = "For a pad: what it takes away.")
    private Double lossDb;

    @Option(names = "--gain", paramLabel = "DB", description = "For a booster: what it adds.")
    private Double gainDb;

    @Option(names = "--passes-phantom", paramLabel = "true|false", arity = "1", description = "For a pad or booster: whether phantom power goes through it.")
    private Boolean passesPhantom;

    /**
     * What was said.
     *
     * @param before the unit as it was; null for a new one
     */
    UnitDraft draft(String id, UnitKind kind, Unit before) {
        UnitDraft old = before == null ? new UnitDraft(id, kind == null ? UnitKind.MIC : kind, null, null, null, null, null, null, null, null, null, null, null, null, null)
                : before.draft();
        return new UnitDraft(old.id(), old.kind(), or(type, old.micType()), or(label, old.label()), or(serial, old.serial()), or(tag, old.tag()), or(mate, old.pairMate()),
                or(condition, old.condition()), or(note, old.note()), or(stored, old.storedAt()), channel(old), stand(old), pad(old), booster(old), old.response());
    }

    private ChannelData channel(UnitDraft old) {
        ChannelData base = old.channel() == null ? new ChannelData(null, null, null, null, null, null, null) : old.channel();
        ChannelData said = new ChannelData(or(bank, base.bank()), or(leastGainDb, base.leastGainDb()), or(mostGainDb, base.mostGainDb()), or(inputOhm, base.inputOhm()),
                or(noiseDbu, base.noiseDbu()), or(phantom, base.phantom()), or(old.kind() == UnitKind.BOOSTER ? null : phantomMa, base.phantomMa()));
        return said.equals(base) ? old.channel() : said;
    }

    private StandData stand(UnitDraft old) {
        StandData base = old.stand() == null ? new StandData(null, null, null, null, null) : old.stand();
        StandData said = new StandData(or(massKg, base.massKg()), or(reachM, base.reachM()), or(footRadiusM, base.footRadiusM()), or(legs, base.legs()),
                or(heightM, base.heightM()));
        return said.equals(base) ? old.stand() : said;
    }

    private PadData pad(UnitDraft old) {
        PadData base = old.pad() == null ? new PadData(null, null) : old.pad();
        PadData said = new PadData(or(lossDb, base.lossDb()), or(old.kind() == UnitKind.PAD ? passesPhantom : null, base.passesPhantom()));
        return said.equals(base) ? old.pad() : said;
    }

    private BoosterData booster(UnitDraft old) {
        BoosterData base = old.booster() == null ? new BoosterData(null, null, null) : old.booster();
        BoosterData said = new BoosterData(or(gainDb, base.gainDb()), or(old.kind() == UnitKind.BOOSTER ? phantomMa : null, base.phantomMa()),
                or(old.kind() == UnitKind.PAD ? null : passesPhantom, base.passesPhantom()));
        return said.equals(base) ? old.booster() : said;
    }

    /** An empty text takes back what was said before. */
    private static <T> T or(T said, T usual) {
        return said == null ? usual : said;
    }
}
