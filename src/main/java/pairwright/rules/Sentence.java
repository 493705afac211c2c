package pairwright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairwright.model.Naming;
import pairwright.model.Value;

/** Fills the sentence of a rule with the names and numbers of one finding. */
final class Sentence {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");
    private static final Set<String> FOR_ALL = Set.of("source", "room", "wanted");
    private static final Set<String> FOR_PLACED = Set.of("mic", "pattern", "position", "why", "danger", "keepClear", "keptWhere");
    private static final Set<String> FOR_PAIRED = Set.of("first", "second", "firstPosition", "secondPosition", "technique", "why", "care");

    private static final String TURNED = "-";
    private static final char BY_SIGN = '|';

    private Sentence() {
    }

    /** The names in braces, in order, without a minus that turns a sign and without the words that depend on it. */
    static List<String> placeholders(String says) {
        List<String> names = new ArrayList<>();
        Matcher matcher = PLACEHOLDER.matcher(says);
        while (matcher.find()) {
            names.add(bare(matcher.group(1)));
        }
        return names;
    }

    private static String bare(String braced) {
        int bar = braced.indexOf(BY_SIGN);
        String name = bar < 0 ? braced : braced.substring(0, bar);
        return name.startsWith(TURNED) ? name.substring(TURNED.length()) : name;
    }

    /** Whether a name in braces stands for words, not for a number, when a rule speaks of such a subject. */
    static boolean isText(String name, Class<?> subject) {
        return PlanFact.class.isAssignableFrom(subject) ? PlanFact.hasText(subject, name) : FOR_ALL.contains(name) || subject == Placed.class && FOR_PLACED.contains(name)
                || subject == Paired.class && FOR_PAIRED.contains(name);
    }

    /** The sentence of a finding on a part of a plan. */
    static String says(Finding finding) {
        return says(finding, null);
    }

    static String says(Finding finding, Setting setting) {
        return filled(finding.rule().says(), name -> text(name, finding, setting));
    }

    /** A sentence with words for what stands in its braces. */
    static String filled(String says, UnaryOperator<String> words) {
        Matcher matcher = PLACEHOLDER.matcher(says);
        StringBuilder sentence = new StringBuilder();
        while (matcher.find()) {
            matcher.appendReplacement(sentence, "");
            String text = words.apply(matcher.group(1));
            if (endsWithArticle(sentence) && !text.isEmpty() && "aeiouAEIOU".indexOf(text.charAt(0)) >= 0) {
                sentence.insert(sentence.length() - 1, 'n');
            }
            sentence.append(startsSentence(sentence) ? capital(text) : text);
        }
        return matcher.appendTail(sentence).toString();
    }

    /** Whether the last word is an article that a vowel after it turns into "an". */
    private static boolean endsWithArticle(CharSequence before) {
        int end = before.length();
        return end > 1 && before.charAt(end - 1) == ' ' && "aA".indexOf(before.charAt(end - 2)) >= 0
                && (end == 2 || before.charAt(end - 3) == ' ');
    }

    private static boolean startsSentence(CharSequence before) {
        int end = before.length();
        return end == 0 || end > 1 && before.charAt(end - 1) == ' ' && ".:?!".indexOf(before.charAt(end - 2)) >= 0
                && before.charAt(end - 2) != ':';
    }

    private static String text(String name, Finding finding, Setting setting) {
        if (finding.subject() instanceof PlanFact part) {
            String text = part.text(name);
            return text == null ? number(name, finding) : text;
        }
        String words = switch (name) {
            case "source" -> Naming.the(setting.source().name());
            case "room" -> Naming.the(setting.room().name());
            case "wanted" -> setting.wanted() == null ? "natural" : Naming.small(setting.wanted().name());
            default -> null;
        };
        if (words == null && finding.subject() instanceof Placed placed) {
            words = text(name, placed);
        } else if (words == null && finding.subject() instanceof Paired paired) {
            words = text(name, paired);
        }
        return words == null ? number(name, finding) : words;
    }

    private static String text(String name, Placed placed) {
        return switch (name) {
            case "mic" -> mic(placed);
            case "pattern" -> placed.pattern().id();
            case "position" -> Naming.small(placed.position().name());
            case "why" -> placed.habitWhy();
            case "danger" -> placed.dangerSays();
            case "keepClear" -> placed.keepClear();
            case "keptWhere" -> placed.keptWhere();
            default -> null;
        };
    }

    private static String text(String name, Paired paired) {
        return switch (name) {
            case "first" -> mic(paired.first());
            case "second" -> mic(paired.second());
            case "firstPosition" -> Naming.small(paired.first().position().name());
            case "secondPosition" -> Naming.small(paired.second().position().name());
            case "technique" -> Naming.small(paired.technique().name());
            case "why" -> paired.why();
            case "care" -> String.join(" ", paired.technique().care());
            default -> null;
        };
    }

    private static String mic(Placed placed) {
        return Naming.the(Naming.type(placed.mic().name()));
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /**
     * A number by its name; with a minus in front of the name its sign is turned, for "loses 3 dB" rather than "loses -3 dB"; with two
     * words behind bars it stands without its sign before the word that suits it, for "3 dB under" rather than "-3 dB over".
     */
    private static String number(String name, Finding finding) {
        String plain = bare(name);
        for (Value value : finding.values()) {
            if (value.name().equals(plain)) {
                double number = name.startsWith(TURNED) ? -value.value() : value.value();
                int bar = name.indexOf(BY_SIGN);
                if (bar < 0) {
                    return Figure.forPeople(number, value.unit());
                }
                int next = name.indexOf(BY_SIGN, bar + 1);
                return Figure.forPeople(Math.abs(number), value.unit()) + " " + (number < 0 ? name.substring(next + 1) : name.substring(bar + 1, next));
            }
        }
        throw new IllegalStateException("Rule " + finding.rule().id() + " says {" + name + "} but gave no such value");
    }
}
