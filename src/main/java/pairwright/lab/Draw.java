package pairwright.lab;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A row of draws that depends on its name alone: the same on every machine and in every version, which no generator of the platform promises. Steps of a
 * 64-bit counter, mixed (Steele, Lea and Flood 2014).
 */
public final class Draw {
    private static final long STEP = 0x9E3779B97F4A7C15L;
    private long state;

    private Draw(long state) {
        this.state = state;
    }

    /** The row of that name. */
    public static Draw named(String name) {
        long hash = 0xCBF29CE484222325L; // FNV-1a
        for (int i = 0; i < name.length(); i++) {
            hash = (hash ^ name.charAt(i)) * 0x100000001B3L;
        }
        return new Draw(hash);
    }

    private long next() {
        state += STEP;
        long mixed = (state ^ state >>> 30) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ mixed >>> 27) * 0x94D049BB133111EBL;
        return mixed ^ mixed >>> 31;
    }

    /** At least 0 and less than 1. */
    public double share() {
        return (next() >>> 11) * 0x1.0p-53;
    }

    /** From 0 up to one less than that many. */
    public int below(int many) {
        return (int) (share() * many);
    }

    /** From the least to the most, both possible. */
    public int between(int least, int most) {
        return least + below(most - least + 1);
    }

    /** From the least to the most in whole steps from the least, each as likely. */
    public double between(double least, double most, double step) {
        return least + below((int) Math.floor((most - least) / step + 1e-9) + 1) * step;
    }

    /** Any of them. */
    public <T> T one(List<T> of) {
        return of.get(below(of.size()));
    }

    /** So many of them, or all where there are fewer, in a drawn order. */
    public <T> List<T> some(int many, List<T> of) {
        return List.copyOf(shuffled(of).subList(0, Math.min(many, of.size())));
    }

    /** All of them in a drawn order. */
    public <T> List<T> shuffled(List<T> of) {
        List<T> all = new ArrayList<>(of);
        for (int i = all.size() - 1; i > 0; i--) {
            Collections.swap(all, i, below(i + 1));
        }
        return all;
    }
}
