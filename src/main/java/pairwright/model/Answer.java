package pairwright.model;

import java.util.List;

/**
 * The whole answer to a question.
 *
 * @param question what was asked and how it was understood
 * @param options best first, each another idea
 * @param ruledOut what would have been near the top but for a rule or a limit
 * @param instead where nothing fits: which limits stand in the way and what would fit without each; else empty
 * @param rulesVersion of the rules used
 * @param catalogueVersion of the catalogue used
 */
public record Answer(
        Asked question,
        List<Option> options,
        List<RuledOut> ruledOut,
        List<Instead> instead,
        String rulesVersion,
        String catalogueVersion) {

    /**
     * The question as it was understood, with what was taken for granted.
     *
     * @param assumed what was not said and is taken as usual, in sentences
     */
    public record Asked(
            String words,
            Question meant,
            List<Reading> understood,
            List<String> notUnderstood,
            List<Reading> otherReadings,
            List<String> assumed) {
    }

    /**
     * A way out when nothing fits.
     *
     * @param limit which limit stands in the way, as a pointer into the question
     * @param says what would fit without it
     */
    public record Instead(String limit, String says) {
    }
}
