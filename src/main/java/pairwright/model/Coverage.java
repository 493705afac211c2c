package pairwright.model;

import java.util.List;

/**
 * How well a locker serves each source of the catalogue.
 *
 * @param sources all of them, by family and then by name
 * @param helps what would raise most of them, the most helpful first
 * @param rulesVersion by which rules it was judged
 * @param catalogueVersion of the catalogue
 */
public record Coverage(List<Served> sources, List<Help> helps, String rulesVersion, String catalogueVersion) {
    public Coverage {
        sources = List.copyOf(sources);
        helps = List.copyOf(helps);
    }

    /** Whether any source is served better than by the whole catalogue, of whose units nothing is known. */
    public boolean ahead() {
        return sources.stream().anyMatch(one -> one.score() != null && one.bestScore() != null && Math.round(one.score() * 100) > Math.round(one.bestScore() * 100));
    }

    /** How a source is served, best first. */
    public enum Verdict implements Word {
        WELL("well"),
        POORLY("poorly"),
        NOT_AT_ALL("not-at-all");

        private final String id;

        Verdict(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }

        /** Whether it says more for the locker than another. */
        public boolean above(Verdict other) {
            return compareTo(other) < 0;
        }
    }

    /**
     * One source.
     *
     * @param score of what an answer puts first with the units at hand; null where nothing can be used
     * @param bestScore of what it puts first with the whole catalogue; null where nothing can be used
     * @param with what is put first with the units at hand; null where nothing can be used
     * @param bestWith what is put first with the whole catalogue; null where nothing can be used
     * @param against what decides against what is put first, in sentences; empty for nothing
     * @param missing what, brought in alone, would help it most; null where nothing does
     */
    public record Served(String source, String name, SourceFamily family, Verdict verdict, Double score, Double bestScore, Used with, Used bestWith,
            List<String> against, Missing missing) {
        public Served {
            against = List.copyOf(against);
        }

        /** How far behind the whole catalogue; null where one of the two has nothing. */
        public Double behindPoints() {
            return score == null || bestScore == null ? null : Math.max(0, Math.round(bestScore * 100) - Math.round(score * 100)) / 100.0;
        }
    }

    /**
     * Microphones as they are put up.
     *
     * @param technique single, or the id of a technique
     * @param techniqueName its name
     * @param mics one type or two
     */
    public record Used(String technique, String techniqueName, List<Needed> mics) {
        public Used {
            mics = List.copyOf(mics);
        }
    }

    /** A type, and how many of it. */
    public record Needed(String micType, String name, int count) {
    }

    /**
     * What one source is short of.
     *
     * @param units 1, or 2 for a matched pair
     * @param score with it
     * @param gainPoints how much more that is; all of it where there was nothing
     * @param verdict with it
     * @param says the same in a sentence, and how many there are
     */
    public record Missing(String micType, String name, int units, double score, double gainPoints, Verdict verdict, String says) {
    }

    /**
     * A type that would help.
     *
     * @param units 1, or 2 for a matched pair
     * @param raises the sources that would be served better by a grade or more
     * @param gainPoints how many points all sources gain together
     */
    public record Help(String micType, String name, int units, List<Raised> raises, double gainPoints) {
        public Help {
            raises = List.copyOf(raises);
        }
    }

    /** A source that would be served better. */
    public record Raised(String source, String name, Verdict from, Verdict to, double gainPoints) {
    }
}
