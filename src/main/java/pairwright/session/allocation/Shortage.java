package pairwright.session.allocation;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Why not every seat that must be served can be, and what would help.
 *
 * @param must how many must be served
 * @param canServe how many of them can be at once, with what there is
 * @param proven whether it is proven that no more can
 * @param lacks what would do if there were enough of it alone, the fewest first; empty where no single thing would do
 * @param waysOut the cheapest of each kind, each with a plan that was checked
 */
public record Shortage(int must, int canServe, boolean proven, List<Lack> lacks, List<WayOut> waysOut) {
    public Shortage {
        lacks = List.copyOf(lacks);
        waysOut = List.copyOf(waysOut);
    }

    /** What can be short. */
    public enum Kind {
        /** Of a {@link Cap}. */
        CAP,
        /** Channels of a group. */
        CHANNELS,
        /** What a bank supplies, in tenths of a milliampere. */
        CURRENT
    }

    /**
     * @param kind what is short
     * @param name of the cap, the group of channels, or the bank
     * @param needed how much would be enough
     * @param there how much there is
     */
    public record Lack(Kind kind, String name, long needed, long there) {
    }

    /** What can be done. */
    public enum Means {
        /** More of something comes from elsewhere. */
        BORROW,
        /** Seats that must be served are left out. */
        DROP,
        /** Seats get a choice {@link Choice.Use#FEWER}. */
        SHARE
    }

    /**
     * @param means what is done
     * @param caps what is borrowed, by the name of the cap
     * @param channels what is borrowed, by the group of the channels
     * @param price of all that is borrowed; 0 where nothing is
     * @param seats indexes of the seats that are left out or get fewer
     * @param problem what the plan is a plan of: with what is borrowed, each channel in a bank of its own behind those there are
     * @param plan the best one that way
     */
    public record WayOut(Means means, Map<String, Integer> caps, Map<String, Integer> channels, int price, Set<Integer> seats, Problem problem, Solution plan) {
        public WayOut {
            caps = Map.copyOf(caps);
            channels = Map.copyOf(channels);
            seats = Set.copyOf(seats);
        }
    }
}
