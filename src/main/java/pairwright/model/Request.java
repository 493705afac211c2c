package pairwright.model;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * A question as it comes in: any field may be null; explicit fields win over words. At least words or a source is needed.
 *
 * @param options how many options are wanted, 1 to 6; null for three
 */
public record Request(
        String words,
        String source,
        List<String> ways,
        List<String> dynamics,
        String room,
        List<String> character,
        Limits limits,
        List<Neighbour> neighbours,
        List<String> circumstances,
        List<String> techniques,
        Integer options,
        OffsetDateTime from,
        OffsetDateTime until) {

    /** Only a sentence. */
    public static Request of(String words) {
        return new Request(words, null, null, null, null, null, null, null, null, null, null, null, null);
    }
}
