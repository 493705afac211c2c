package pairwright.sheet;

import java.util.List;
import java.util.Map;

/** How to ask, and how to read an answer and a drawing. */
public final class GuidePage {
    /** What a sentence may say, each with one that says it; a test reads them all. */
    static final List<Example> EXAMPLES = List.of(
            new Example("the source, in English, German, French, Spanish, Italian or Portuguese", "contrabass"),
            new Example("how it is played", "snare drum with brushes"),
            new Example("how loud", "very soft nylon guitar"),
            new Example("the sound that is wanted, or what there is too much of", "trumpet, too bright"),
            new Example("the room", "cello in a small untreated room"),
            new Example("who plays beside it, and how far off", "tenor sax 3 m from the drum kit"),
            new Example("what you lack", "accordion, no phantom power, two channels"),
            new Example("which microphones you have or want", "kick drum, no condensers"),
            new Example("stereo, one player who does both, a stage", "voice and guitar, one performer, live"),
            new Example("all of it in one go", "brushed snare, dark, small room, next to a double bass, only dynamics"));

    private final Html html;

    /** What may be said, and words that say it. */
    public record Example(String says, String words) {
        /** The address that asks it. */
        public String address() {
            return "/?words=" + Visit.escaped(words);
        }
    }

    public GuidePage(Html html) {
        this.html = html;
    }

    /** The page. */
    public String page(Visit visit) {
        return html.fill("guide.jte", Map.of("shell", html.shell("How to ask, and how to read an answer", "guide", visit), "examples", EXAMPLES));
    }
}
