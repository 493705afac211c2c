package pairwright.lab;

import java.util.ArrayList;
import java.util.List;

/**
 * What an answer earns.
 *
 * @param mark the points of its checks, or less where a danger was missed
 * @param of so many
 * @param capped which danger holds it down, in a sentence; null for none
 * @param checks in the order of the items
 */
public record Mark(double mark, double of, String capped, List<Check> checks) {
    public Mark {
        capped = Signs.minus(capped);
        checks = List.copyOf(checks);
    }

    /** Of what was to be had, 0 to 1. */
    public double share() {
        return of == 0 ? 0 : mark / of;
    }

    /** Adds up checks. */
    public static final class Sum {
        private final List<Check> checks = new ArrayList<>();
        private double mostShare = 1;
        private String capped;

        /**
         * One thing looked at.
         *
         * @param share of its points that it earns, 0 to 1
         * @param of its points
         */
        public Sum add(String name, double share, double of, String says, String rests) {
            checks.add(new Check(name, tenths(Math.max(0, Math.min(1, share)) * of), of, says, rests));
            return this;
        }

        /** A danger was missed: no more than that share of all, whatever else was right. The lowest cap holds. */
        public Sum cap(double share, String says) {
            if (share < mostShare) {
                mostShare = share;
                capped = says;
            }
            return this;
        }

        public Mark mark() {
            double of = checks.stream().mapToDouble(Check::of).sum();
            double earned = tenths(checks.stream().mapToDouble(Check::points).sum());
            double most = tenths(of * mostShare);
            return new Mark(Math.min(earned, most), of, earned > most ? capped : null, checks);
        }

        private static double tenths(double points) {
            return Math.round(points * 10) / 10.0;
        }
    }
}
