package pairwright.advice;

import java.util.List;

/**
 * How a house folder is.
 *
 * @param state one word for it
 * @param entries how many files of entries and words of the house are in use
 * @param rules how many rules of the house are in use
 * @param faults everything that is wrong, each with its place; empty for nothing
 */
public record HouseState(State state, int entries, int rules, List<String> faults) {
    /** No folder, being read for the first time, in use as it stands, or with faults: then the last good set is in use. */
    public enum State {
        NONE("none"), LOADING("loading"), IN_USE("in use"), FAULTS("faults");

        private final String says;

        State(String says) {
            this.says = says;
        }

        /** In words, as it is told. */
        public String says() {
            return says;
        }
    }
}
