package pairwright.sheet;

import java.util.List;

/**
 * An answer as its page shows it.
 *
 * @param heading the question in one line, or that it is not certain
 * @param address that asks it again, as short as may be
 * @param says what is told to who cannot see the page change
 * @param notUnderstood words; empty for none
 * @param questions back
 * @param readings other readings, as links
 * @param nearest sources that come near, where none was understood
 * @param assumed sentences
 * @param heard of the player before; null for nothing
 * @param parts the controls
 * @param stock what of a locker it goes by; null without a locker
 * @param kept of the question, what holds for the next one as well
 * @param options best first
 * @param sure how sure; null where nothing was drawn
 * @param sureHref the page that says how sure
 * @param ruledOut by a rule or a limit
 * @param instead where nothing fits
 * @param mics types by family, for why not
 * @param patterns for why not
 * @param positions for why not
 * @param complaints for the moves
 * @param hidden the question, for forms
 */
public record AnswerView(
        String heading,
        String address,
        String says,
        List<String> notUnderstood,
        List<Back> questions,
        List<Link> readings,
        List<Link> nearest,
        List<String> assumed,
        HeardView heard,
        Parts parts,
        StockView stock,
        List<Param> kept,
        List<OptionView> options,
        SureView sure,
        String sureHref,
        List<Out> ruledOut,
        List<Link> instead,
        List<Choice.Group> mics,
        List<Choice> patterns,
        List<Choice> positions,
        List<Choice> complaints,
        List<Param> hidden) {

    /** What was heard of the player, what it changed, and the address that asks without it. */
    public record HeardView(List<String> noted, List<String> changed, String without) {
    }

    /** Something said, and the address that follows it up; null for none. */
    public record Link(String says, String href) {
    }

    /** A question back and what may be meant. */
    public record Back(String says, List<Link> choices) {
    }

    /** Something ruled out: which, why, and by which rule; rule is null for a limit. */
    public record Out(String name, String href, String says, String rule, String ruleHref) {
    }

    /**
     * How sure an answer is.
     *
     * @param says all in a sentence
     * @param turns what would change the order
     * @param options one sentence for each option, in their order
     */
    public record SureView(String says, List<String> turns, List<String> options) {
    }
}
