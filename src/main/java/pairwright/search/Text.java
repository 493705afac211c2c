package pairwright.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.miscellaneous.KeywordRepeatFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;
import org.apache.lucene.analysis.util.ElisionFilter;

/** Cuts a text into words, the same way for the catalogue and for a sentence. */
final class Text {

    /** French and Italian articles that lean on the next word. */
    private static final CharArraySet LEANING = CharArraySet.unmodifiableSet(
            new CharArraySet(List.of("l", "d", "j", "c", "m", "t", "s", "n", "qu", "un", "dell", "nell", "all", "sull"), true));

    /** A stroke parts, but for the one of "w/" (with) and "w/o" (without). */
    private static final Pattern STOP = Pattern.compile("[,;:.!?()\\[\\]|\\r\\n\u2013\u2014\u00b7\u2022]|(?<!\\b[Ww])/");

    /** A figure that leans on its unit: "3m", "50dB". */
    private static final Pattern FIGURE_AND_UNIT = Pattern.compile("(\\d+(?:[.,]\\d+)?)(\\p{L}+)");

    /** Every word comes out twice, as it is spelt and as its stem. */
    private static final Analyzer ANALYZER = new Analyzer() {
        @Override
        protected TokenStreamComponents createComponents(String field) {
            var words = new StandardTokenizer();
            var folded = new ASCIIFoldingFilter(new ElisionFilter(new EnglishPossessiveFilter(new LowerCaseFilter(words)),
                    LEANING));
            return new TokenStreamComponents(words, new PorterStemFilter(new KeywordRepeatFilter(folded)));
        }
    };

    private Text() {
    }

    static List<Token> tokens(String text) {
        var tokens = new ArrayList<Token>();
        try (var stream = ANALYZER.tokenStream("words", text)) {
            var term = stream.addAttribute(CharTermAttribute.class);
            var offset = stream.addAttribute(OffsetAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                var spelling = term.toString();
                stream.incrementToken();
                var stem = term.toString();
                int end = tokens.isEmpty() ? 0 : tokens.get(tokens.size() - 1).end();
                addMark(tokens, text, offset.startOffset());
                boolean opens = !tokens.isEmpty() && STOP.matcher(text).region(end, offset.startOffset()).useTransparentBounds(true).find();
                add(tokens, new Token(offset.startOffset(), offset.endOffset(), spelling, stem, opens));
            }
            stream.end();
            addMark(tokens, text, text.length());
        } catch (IOException e) {
            throw new UncheckedIOException("cutting a text in memory cannot fail on input or output", e);
        }
        return tokens;
    }

    /** The mark of feet or inches behind a figure, which the cutting drops; one that ends a quotation is none. */
    private static void addMark(List<Token> tokens, String text, int until) {
        if (tokens.isEmpty() || !tokens.get(tokens.size() - 1).isFigure()) {
            return;
        }
        int at = tokens.get(tokens.size() - 1).end();
        if (at >= until) {
            return;
        }
        String unit = switch (text.charAt(at)) {
            case '\'', '\u2019', '\u2032' -> "ft";
            case '"', '\u201d', '\u2033' -> "inch";
            default -> null;
        };
        if (unit != null && !isQuoted(text, at)) {
            tokens.add(new Token(at, at + 1, unit, unit, false));
        }
    }

    /** Whether a mark of the same kind stands open before a place, at the beginning of a word. */
    private static boolean isQuoted(String text, int at) {
        char mark = text.charAt(at);
        char opening = mark == '\u201d' ? '\u201c' : mark == '\u2019' ? '\u2018' : mark;
        int open = text.lastIndexOf(opening, at - 1);
        return open >= 0 && (open == 0 || !Character.isLetterOrDigit(text.charAt(open - 1)));
    }

    private static void add(List<Token> tokens, Token token) {
        var parts = FIGURE_AND_UNIT.matcher(token.spelling());
        boolean sameLength = token.end() - token.start() == token.spelling().length();
        if (!sameLength || !parts.matches()) {
            tokens.add(token);
            return;
        }
        int cut = token.start() + parts.end(1);
        tokens.add(new Token(token.start(), cut, parts.group(1), parts.group(1), token.opens()));
        tokens.add(new Token(cut, token.end(), parts.group(2), parts.group(2), false));
    }
}
