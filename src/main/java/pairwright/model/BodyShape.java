package pairwright.model;

/** What a source looks like, as far as a set-up drawing needs it. Forward is where its player faces, or where a box faces. */
public enum BodyShape implements Word {
    /** Facing up on a stand or the floor. */
    DRUM("drum"),
    /** Two drums side by side, facing up. */
    DRUM_PAIR("drum-pair"),
    /** Lying, struck from behind: the shell reaches forward from the struck head. */
    KICK_DRUM("kick-drum"),
    /** A head or plate that faces forward, struck on that side. */
    STANDING_DRUM("standing-drum"),
    /** Across the player, a head at either end. */
    BARREL_DRUM("barrel-drum"),
    /** A drum kit. */
    KIT("kit"),
    /** One cymbal or two on a stand. */
    CYMBALS("cymbals"),
    /** Brass with its bell forward. */
    BELL("bell"),
    /** Brass with its bell up. */
    BELL_UP("bell-up"),
    /** A conical body bent up to its bell. */
    SAXOPHONE("saxophone"),
    /** A straight tube from the mouth along the axis. */
    PIPE("pipe"),
    /** A tube held across, to the right of the player. */
    FLUTE("flute"),
    /** A body with a neck, held upright before the player. */
    GUITAR("guitar"),
    /** A body with a neck, held flat, its plate up. */
    VIOLIN("violin"),
    /** A body that stands on the floor, its neck up. */
    UPRIGHT_STRINGS("upright-strings"),
    /** A frame of strings, bells or a plate that stands or hangs upright. */
    HARP("harp"),
    /** Its strings lie, its lid opens to the right of the player. */
    GRAND_PIANO("grand-piano"),
    /** A case with its keyboard forward, where the player sits. */
    UPRIGHT_PIANO("upright-piano"),
    /** Bars or strings that lie flat on legs. */
    TABLE("table"),
    /** Bellows between two ends, held before the player. */
    SQUEEZE_BOX("squeeze-box"),
    /** A box that faces forward, nobody at it. */
    CABINET("cabinet"),
    /** A head: the sound leaves the mouth. */
    HEAD("head"),
    /** A head above a guitar. */
    SINGING_GUITARIST("singing-guitarist"),
    /** People in rows or in an arc. */
    GROUP("group"),
    /** Something small in the hand. */
    HAND_HELD("hand-held"),
    /** A board on the floor, with feet on it. */
    FLOOR_BOARD("floor-board");

    private final String id;

    BodyShape(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
