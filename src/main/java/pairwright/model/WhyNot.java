package pairwright.model;

import java.util.List;

/**
 * Why a type is not the first answer, and what would make it so.
 *
 * @param question what was asked and how it was understood
 * @param micType id of the type
 * @param name of the type
 * @param standing how it stands
 * @param says the same in a sentence or two
 * @param placement the best place for it; null where it fits nowhere
 * @param score of that placement alone; null where it fits nowhere
 * @param reasons the score is made of, strongest first
 * @param cautions gravest first
 * @param rank among everything that stands, alone and in pairs, from 1; null where it does not stand alone
 * @param candidates how many stand, alone and in pairs
 * @param typeRank of the type among all types that stand alone, each by its best place, from 1; null where it does not stand alone
 * @param types how many types stand alone
 * @param first the first answer; null where nothing fits
 * @param losses rule by rule against the first answer, largest first; the differences add up to that of the scores
 * @param ruledOut what rules it out, or would-be better places of it; empty for nothing
 * @param limits which limits leave it out; empty for none
 * @param inPair the best pair it is a part of; null for none
 * @param tried how many single changes were asked
 * @param changes those that bring it first, among those shown, or in at all; the smallest first of each
 * @param rulesVersion of the rules used
 * @param catalogueVersion of the catalogue used
 */
public record WhyNot(
        Answer.Asked question,
        String micType,
        String name,
        Standing standing,
        String says,
        Placement placement,
        Double score,
        List<Reason> reasons,
        List<Caution> cautions,
        Integer rank,
        int candidates,
        Integer typeRank,
        int types,
        Option first,
        List<Loss> losses,
        List<RuledOut> ruledOut,
        List<Answer.Instead> limits,
        InPair inPair,
        int tried,
        List<Change> changes,
        String rulesVersion,
        String catalogueVersion) {

    /** How a type stands in a question. */
    public enum Standing implements Word {
        /** It is the first answer, or a half of it. */
        FIRST("first"),
        /** It may be used, and something else scores better. */
        STANDS("stands"),
        /** It hears only a part of the source there and is never alone. */
        PART("part"),
        /** A rule rules it out. */
        RULED_OUT("ruled-out"),
        /** A limit of the question leaves it out. */
        LIMITED("limited"),
        /** It cannot be set up at any place that is asked for. */
        NOWHERE("nowhere");

        private final String id;

        Standing(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }

    /**
     * What one rule gives to the first answer and to this placement.
     *
     * @param rule id
     * @param title of the rule
     * @param therePoints in the first answer; the halves of a pair count half
     * @param herePoints here
     * @param lossPoints there less here; below zero where this placement is better
     */
    public record Loss(String rule, String title, double therePoints, double herePoints, double lossPoints) {
    }

    /**
     * A pair the type is a part of.
     *
     * @param technique id
     * @param techniqueName its name
     * @param with id of the other type
     * @param rank among everything that stands, from 1
     * @param score of the pair
     * @param says the same in a sentence
     */
    public record InPair(String technique, String techniqueName, String with, int rank, double score, String says) {
    }

    /** What a change alters, cheapest first. */
    public enum Alters implements Word {
        DISTANCE("distance"),
        ANGLE("angle"),
        PATTERN("pattern"),
        POSITION("position"),
        GAIN("gain"),
        LIMIT("limit"),
        NEIGHBOURS("neighbours"),
        CIRCUMSTANCE("circumstance"),
        CHARACTER("character"),
        WAY("way"),
        ROOM("room");

        private final String id;

        Alters(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }

    /** What a change does for a type. */
    public enum Outcome implements Word {
        /** It comes first. */
        FIRST("first"),
        /** It is among the first three that are shown. */
        SHOWN("shown"),
        /** It may be used, which it may not without. */
        ALLOWED("allowed");

        private final String id;

        Outcome(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }

    /**
     * A single change that was asked and helps.
     *
     * @param alters what it alters
     * @param at the field it alters, as a pointer into the request
     * @param to the new value, as text; empty where something is taken away
     * @param outcome what it does
     * @param technique single, or the technique of the pair it then comes in
     * @param score of this type then, in that option
     * @param rivalScore of the set-up that was first, or of the best other where that is gone; null where there is no other
     * @param says the same in a sentence
     */
    public record Change(Alters alters, String at, String to, Outcome outcome, String technique, double score, Double rivalScore, String says) {
    }
}
