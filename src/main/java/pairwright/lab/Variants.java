package pairwright.lab;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;

/**
 * The exercises of one seed: a pure function of kind, seed, level and what there is to work with. What is made for a class and what somebody makes to practise are drawn from rows
 * of different names, so that no number typed in on one side leads to an exercise of the other.
 */
public final class Variants {
    /** After so many rows that lead nowhere there is none to be had. */
    private static final int ROWS_EACH = 40;
    /** Where few are wanted, so many are counted with, so that a run of bad draws does not leave somebody without any. */
    private static final int LEAST_WANTED = 8;

    /** What they are drawn for. */
    public enum Purpose {
        /** Marked by an instructor; its key is shut. */
        CLASS,
        /** Marked at once. */
        PRACTICE
    }

    private final Kind kind;
    private final int level;
    private final Lab lab;
    private final String row;

    /** @param level 1 to 5 */
    public Variants(Kind kind, Purpose purpose, String seed, int level, Lab lab) {
        this.kind = kind;
        this.level = level;
        this.lab = lab;
        this.row = Case.FORMAT + "/" + purpose + "/" + kind.info().id() + "/" + level + "/" + (purpose == Purpose.PRACTICE ? mixed(seed) : seed) + "/";
    }

    /**
     * Different exercises, in the order they were drawn.
     *
     * @param wanted how many
     * @return fewer where no more can be made of what there is
     */
    public List<Variant> some(int wanted) {
        List<Variant> found = new ArrayList<>();
        Set<Case> seen = new HashSet<>();
        for (int i = 0; found.size() < wanted && i < Math.max(wanted, LEAST_WANTED) * ROWS_EACH; i++) {
            kind.draw(Draw.named(row + i), level, lab).filter(seen::add).ifPresent(drawn -> found.add(Variant.of(drawn, kind.of(drawn, level, lab))));
        }
        return found;
    }

    /** Of more than are wanted those that are nearest to each other in how hard they are, in the order they were drawn; all where there are no more. */
    public static List<Variant> alike(List<Variant> some, int wanted) {
        if (some.size() <= wanted) {
            return some;
        }
        List<Variant> sorted = some.stream().sorted(Comparator.comparingDouble(Variant::hardnessShare)).toList();
        int first = 0;
        for (int i = 1; i + wanted <= sorted.size(); i++) {
            if (spread(sorted.subList(i, i + wanted)) < spread(sorted.subList(first, first + wanted))) {
                first = i;
            }
        }
        Set<Variant> taken = new HashSet<>(sorted.subList(first, first + wanted));
        return some.stream().filter(taken::contains).toList();
    }

    /** Between the hardest and the easiest, as a share of the mark. */
    public static double spread(List<Variant> variants) {
        return variants.stream().mapToDouble(Variant::hardnessShare).max().orElse(0) - variants.stream().mapToDouble(Variant::hardnessShare).min().orElse(0);
    }

    /** Rows are found by a short sum of their names: from a seed as it is typed one could work out another whose row is that of a class. */
    private static String mixed(String seed) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(seed.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
