package pairwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import pairwright.model.Severity;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Input;
import pairwright.numbers.NumberCaution;
import pairwright.numbers.Worked;

/** Worked numbers as a person likes to read them, 80 columns wide. */
final class NumberText {
    private static final int WIDTH = 80;
    private static final int NAMES = 20;

    private final StringBuilder text = new StringBuilder(1024);

    private NumberText() {
    }

    /** What there is. */
    static String list(List<CalculationInfo> all) {
        NumberText page = new NumberText();
        all.forEach(info -> page.wrap(padded(info.id()), padded(""), info.answers()));
        page.wrap("", "", "Say \"pairwright number ID\" to see what one asks for.");
        return page.text.toString();
    }

    /** What one asks for. */
    static String asks(CalculationInfo info) {
        NumberText page = new NumberText();
        page.wrap("", "", info.name() + ". " + info.answers());
        page.wrap("  ", "    ", info.formula());
        for (Input input : info.inputs()) {
            page.wrap("  " + padded(input.name() + " "), "  " + padded(""), input.says() + " " + allowed(input));
        }
        page.wrap("Try: ", "     ", "pairwright number " + info.id() + " " + info.inputs().stream().filter(input -> info.example().containsKey(input.name()))
                .map(input -> input.name() + "=" + said(info.example().get(input.name()))).collect(Collectors.joining(" ")));
        return page.text.toString();
    }

    /** One that is worked. */
    static String worked(CalculationInfo info, Worked worked) {
        NumberText page = new NumberText();
        page.wrap("", "", worked.says());
        for (NumberCaution caution : worked.cautions()) {
            page.wrap(caution.severity() == Severity.NOTE ? "  -  " : "  !  ", "     ", word(caution.severity()) + ": " + caution.says());
        }
        page.wrap("  with  ", "        ", worked.inputs().entrySet().stream().map(input -> input.getKey() + "=" + said(input.getValue()))
                .collect(Collectors.joining(" ")));
        page.wrap("  by    ", "        ", worked.formula());
        for (int i = 0; i < worked.steps().size(); i++) {
            page.wrap(String.format(Locale.ROOT, "  %3d   ", i + 1), "        ", worked.steps().get(i));
        }
        page.wrap("  holds ", "        ", worked.validity());
        return page.text.toString();
    }

    private static String allowed(Input input) {
        String range = input.least() == null ? "" : said(input.least()) + " to " + said(input.most()) + (input.unit().equals("1") ? "" : " " + input.unit());
        String what = String.join(", ", input.choices()) + (input.choices().isEmpty() || range.isEmpty() ? "" : ", or ") + range;
        return "(" + what + (input.required() ? "; required)" : input.usual() == null ? "; may be left out)" : "; usually " + said(input.usual()) + ")");
    }

    private static String said(Object value) {
        return value instanceof List<?> list ? list.stream().map(NumberText::said).collect(Collectors.joining(","))
                : value instanceof Double number && number == Math.rint(number) ? Long.toString(number.longValue()) : value.toString();
    }

    private static String word(Severity severity) {
        return switch (severity) {
            case DANGER -> "DANGER";
            case CARE -> "Care";
            case NOTE -> "Note";
        };
    }

    private static String padded(String name) {
        return name + " ".repeat(Math.max(0, NAMES - name.length()));
    }

    private void wrap(String lead, String indent, String words) {
        AnswerText.wrapped(lead, indent, words, WIDTH).forEach(line -> text.append(line).append('\n'));
    }
}
