package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.catalogue.Shown;
import pairwright.drawing.Drawing;
import pairwright.drawing.Reader;
import pairwright.model.Severity;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Input;
import pairwright.numbers.Numbers;
import pairwright.numbers.UnusableInputs;
import pairwright.numbers.Worked;

/** Worked numbers to read and to try: a list of what can be worked, and a form for each. */
public final class NumberPages {
    /** Of a page that holds what was asked for. */
    public static final int OK = 200;
    /** Of a page that says what is wrong with what was typed. */
    public static final int UNUSABLE = 400;
    /** Of a page there is not. */
    public static final int NONE = 404;

    private static final String PART = "worked";
    private static final List<Group> GROUPS = List.of(
            new Group("How near, how far, which way", List.of("level-at-distance", "proximity", "critical-distance", "spacing", "null-angles")),
            new Group("One sound in two microphones", List.of("comb", "delay", "recording-angle", "mid-side")),
            new Group("Between noise and the limit", List.of("noise", "gain", "headroom")),
            new Group("Power and impedance", List.of("phantom-budget", "ribbon-loading")),
            new Group("That nobody comes to harm", List.of("exposure", "stand-stability")));

    private final Html html;
    private final Numbers numbers = new Numbers();
    private final Map<String, CalculationInfo> infos = numbers.all().stream().collect(Collectors.toUnmodifiableMap(CalculationInfo::id, info -> info));
    private final Map<String, String> names = infos.values().stream().collect(Collectors.toUnmodifiableMap(CalculationInfo::id, info -> info.name().toLowerCase(Locale.ROOT)));

    /** A page or a part of one, and its status. */
    public record Page(int status, String html) {
    }

    /** Calculations that belong together. */
    record Group(String name, List<String> ids) {
    }

    /** A group as it is shown. */
    public record Shelf(String name, List<CalculationInfo> calculations) {
    }

    public NumberPages(Html html) {
        this.html = html;
    }

    /** What can be worked. */
    public String list(Visit visit) {
        return html.fill("numbers.jte", Map.of("shell", html.shell("Worked numbers", "numbers", visit), "shelves", shelves()));
    }

    /** One calculation, worked with what the query gives or with its example; only the part that changes where the query asks for that. */
    public Page one(String id, Visit visit) {
        CalculationInfo info = infos.get(id);
        if (info == null) {
            return new Page(NONE, html.fault("No such calculation", List.of(numbers.unknown(Shown.of(id))), visit));
        }
        NumberForm form = NumberForm.read(info, visit);
        WorkedView view = view(info, form, visit);
        int status = view.wrong().isEmpty() ? OK : UNUSABLE;
        if (PART.equals(visit.first("part"))) {
            return new Page(status, html.fill("worked.jte", Map.of("view", view)));
        }
        return new Page(status, html.fill("number.jte", Map.of("shell", html.shell(info.name(), "numbers", visit), "info", info, "fields", form.fields(), "view", view)));
    }

    private List<Shelf> shelves() {
        List<Shelf> shelves = new ArrayList<>();
        GROUPS.forEach(group -> shelves.add(new Shelf(group.name(), group.ids().stream().map(infos::get).toList())));
        List<CalculationInfo> others = numbers.all().stream().filter(info -> GROUPS.stream().noneMatch(group -> group.ids().contains(info.id()))).toList();
        if (!others.isEmpty()) {
            shelves.add(new Shelf("Others", others));
        }
        return shelves;
    }

    private WorkedView view(CalculationInfo info, NumberForm form, Visit visit) {
        if (!form.wrong().isEmpty()) {
            return WorkedView.unusable(form.wrong());
        }
        try {
            return view(info, numbers.work(info.id(), form.given()), visit);
        } catch (UnusableInputs unusable) {
            form.refuse(unusable.faults());
            return WorkedView.unusable(form.wrong());
        }
    }

    private WorkedView view(CalculationInfo info, Worked worked, Visit visit) {
        Reader reader = visit.reader();
        List<Drawing> drawings = new ArrayList<>();
        List<NumberPlot> plots = NumberPlots.of(numbers, worked, reader);
        IntStream.range(0, plots.size()).forEach(i -> drawings.add(plots.get(i).drawn("plot-" + (i + 1), reader)));
        return new WorkedView(List.of(), NumberWords.told(worked.says(), info, reader),
                worked.cautions().stream().map(caution -> new WorkedView.Caution(caution.severity().id(), word(caution.severity()),
                        NumberWords.linked(NumberWords.told(caution.says(), info, reader), names, visit))).toList(),
                worked.result().stream().map(value -> new WorkedView.Row(NumberWords.called(value.name()), NumberWords.shown(value, reader))).toList(),
                info.inputs().stream().filter(input -> worked.inputs().containsKey(input.name())).map(input -> row(input, worked, reader)).toList(),
                drawings, worked.steps().stream().map(reader::figures).toList(), reader.figures(worked.formula()),
                NumberWords.linked(NumberWords.told(worked.validity(), info, reader), names, visit), reader.imperial());
    }

    private static WorkedView.Row row(Input input, Worked worked, Reader reader) {
        Object value = worked.inputs().get(input.name());
        return new WorkedView.Row(NumberWords.called(input.name()), value instanceof String word ? NumberField.read(word) : NumberWords.shown(value, input.unit(), reader));
    }

    private static String word(Severity severity) {
        return switch (severity) {
            case DANGER -> "Danger";
            case CARE -> "Care";
            case NOTE -> "Note";
        };
    }
}
