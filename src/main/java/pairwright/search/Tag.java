package pairwright.search;

import java.util.List;

/**
 * A phrase found in a sentence.
 *
 * @param ids what it names, best first; more than one if it is ambiguous
 * @param first its first token
 * @param end the token after its last
 * @param exact whether it is spelt as in the catalogue, endings too
 */
record Tag(Kind kind, List<String> ids, int first, int end, boolean exact) {

    String id() {
        return ids.get(0);
    }

    int length() {
        return end - first;
    }

    boolean covers(int token) {
        return first <= token && token < end;
    }

    boolean covers(Tag other) {
        return first <= other.first && other.end <= end;
    }
}
