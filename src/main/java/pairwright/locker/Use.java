package pairwright.locker;

import java.time.YearMonth;
import java.util.List;

/**
 * How much of each type was taken on the days of a month.
 *
 * @param month which
 * @param types in the order of their ids
 */
public record Use(YearMonth month, List<OfType> types) {
    public Use {
        types = List.copyOf(types);
    }

    /**
     * @param micType id
     * @param units how many there are, the lost ones left out
     * @param taken for each day of the month, how many were taken for some of it
     */
    public record OfType(String micType, int units, List<Integer> taken) {
        public OfType {
            taken = List.copyOf(taken);
        }
    }
}
