package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import pairwright.drawing.Drawing;
import pairwright.drawing.FloorDrawing;
import pairwright.drawing.FloorPlan;
import pairwright.drawing.FloorWords;
import pairwright.drawing.Look;
import pairwright.drawing.OctaveDrawing;
import pairwright.drawing.Reader;
import pairwright.drawing.SetUpDrawing;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.Shown;
import pairwright.model.Catalogue;
import pairwright.model.Limits;
import pairwright.model.Question;
import pairwright.sheet.ExerciseView.Asked;
import pairwright.sheet.ExerciseView.Blank;
import pairwright.sheet.ExerciseView.Pick;
import pairwright.sheet.ExerciseView.Picture;
import pairwright.sheet.ExerciseView.Way;

/**
 * Handouts as pages show them. They are in metres for every reader: a whole class has the same sheet, and what is marked is a number in the unit that was asked for.
 *
 * @param reader for the decimal sign
 * @param key before the ids of everything, unlike that of any other exercise of the page
 */
record ExerciseViews(Catalogue catalogue, Reader reader, String key) {
    /** Told apart by dash and marker as well; in the order of the curves. */
    private static final List<Look> LOOKS = List.of(Look.ONE, Look.TWO, Look.SUM, Look.WANTED, Look.NEIGHBOUR, Look.SOURCE);

    static ExerciseViews of(Catalogue catalogue, Visit visit, String key) {
        return new ExerciseViews(catalogue, new Reader(false, visit.reader().locale()), key);
    }

    /** With what was typed so far, and what is wrong with it. */
    ExerciseView view(Handout handout, AnswerForm form) {
        List<Picture> pictures = IntStream.range(0, handout.shown().size()).mapToObj(i -> picture(handout.shown().get(i), key + "picture-" + (i + 1))).toList();
        List<Asked> asked = IntStream.range(0, handout.items().size()).mapToObj(i -> asked(handout.items().get(i), i + 1, handout, form)).toList();
        return new ExerciseView(handout.cautions(), handout.situation(), pictures, asked);
    }

    private Picture picture(Shown shown, String id) {
        if (shown instanceof Shown.Table table) {
            return new Picture(id, table.caption(), new ExerciseView.Table(table.columns(), table.rows()), null, List.of(), List.of());
        }
        if (shown instanceof Shown.Curves curves) {
            return new Picture(id, curves.caption(), null, plot(curves, id), List.of(), List.of());
        }
        if (shown instanceof Shown.AtSource at) {
            return stood(at, id);
        }
        Shown.FromAbove above = (Shown.FromAbove) shown;
        FloorPlan plan = FloorOf.plan(above.lineUp(), catalogue, List.of(), Set.of());
        return new Picture(id, above.caption(), null, null, List.of(FloorDrawing.of(plan, id, reader)), List.of(FloorWords.key(plan)));
    }

    private ReadingParts.Plot plot(Shown.Curves curves, String id) {
        Measures measures = new Measures(reader);
        List<OctaveDrawing.Series> series = IntStream.range(0, curves.curves().size())
                .mapToObj(i -> new OctaveDrawing.Series(curves.curves().get(i).name(), curves.curves().get(i).db(), LOOKS.get(i % LOOKS.size()))).toList();
        return new ReadingParts.Plot(id + "-plot", curves.caption(), OctaveDrawing.of(curves.caption(), "dB", series, null, id + "-drawing", reader),
                curves.curves().stream().map(curve -> new ReadingParts.Curve(curve.name() + ", dB", measures.nine(curve.db()))).toList());
    }

    private Picture stood(Shown.AtSource at, String id) {
        Question question = new Question("", at.source(), List.of(), List.of(), null, List.of(), Limits.NONE, List.of(), List.of(), List.of(), 1, null, null);
        Drawing above = SetUpDrawing.fromAbove(catalogue, question, at.option(), id + "-above", reader);
        Drawing side = SetUpDrawing.fromSide(catalogue, question, at.option(), id + "-side", reader);
        SetUpWords words = new SetUpWords(catalogue, question, reader);
        List<String> says = IntStream.range(0, at.option().mics().size())
                .mapToObj(i -> SendForm.sentence(at.option().mics().get(i).name() + ", " + words.line(at.option(), i))).toList();
        return new Picture(id, at.caption(), null, null, side.says().equals(above.says()) ? List.of(above) : List.of(above, side), says);
    }

    private Asked asked(Item item, int number, Handout handout, AnswerForm form) {
        String id = key + "ask-" + number;
        String fault = form.faults().containsKey(item.id()) ? SendForm.sentence(form.faults().get(item.id())) : null;
        if (item instanceof Item.OneOf one) {
            return new Asked(id, number, item.asks(), "", Way.ONE, picks(item, one.options(), id, form), List.of(), null, fault);
        }
        if (item instanceof Item.SomeOf some) {
            return new Asked(id, number, item.asks(), some.pick() == null ? "Tick as many as hold." : "Tick " + some.pick() + ".", Way.SOME,
                    picks(item, some.options(), id, form), List.of(), null, fault);
        }
        if (item instanceof Item.InOrder order) {
            return new Asked(id, number, item.asks(), "Give each its place, 1 for the first.", Way.ORDER, places(order, id, form), List.of(), null, fault);
        }
        if (item instanceof Item.Amount amount) {
            String unit = amount.unit().equals("1") ? "" : amount.unit();
            return new Asked(id, number, item.asks(), "", Way.BLANKS, List.of(), List.of(new Blank(id + "-number", AnswerForm.field(item),
                    "Your number", unit, form.text(AnswerForm.field(item)), null, false)), null, fault);
        }
        return spot((Item.Spot) item, number, id, handout, form, fault);
    }

    private static List<Pick> picks(Item item, List<Item.Opt> options, String id, AnswerForm form) {
        String field = AnswerForm.field(item);
        return IntStream.range(0, options.size()).mapToObj(i -> new Pick(id + "-" + (i + 1), field, options.get(i).id(), mark(options.get(i)),
                options.get(i).says(), form.chosen(field, options.get(i).id()), "")).toList();
    }

    private static List<Pick> places(Item.InOrder order, String id, AnswerForm form) {
        List<Item.Opt> options = order.options();
        return IntStream.range(0, options.size()).mapToObj(i -> {
            String field = AnswerForm.field(order, options.get(i).id());
            return new Pick(id + "-" + (i + 1), field, options.get(i).id(), mark(options.get(i)), options.get(i).says(), false, form.text(field));
        }).toList();
    }

    /** What is written down for an option where that is a letter it does not name itself; the id of a type or a place is nothing to write down. */
    private static String mark(Item.Opt option) {
        return option.id().matches("[a-z]") && !option.says().toLowerCase(Locale.ROOT).endsWith(" " + option.id()) ? option.id() : "";
    }

    private Asked spot(Item.Spot spot, int number, String id, Handout handout, AnswerForm form, String fault) {
        boolean room = spot.picture() >= 1 && spot.picture() <= handout.shown().size() && handout.shown().get(spot.picture() - 1) instanceof Shown.FromAbove;
        List<Blank> blanks = new ArrayList<>();
        blanks.add(blank(spot, AnswerForm.X, room ? "x, from the left wall" : "x, to the right", "m", id, form));
        blanks.add(blank(spot, AnswerForm.Y, room ? "y, from the lower wall" : "y, up the picture", "m", id, form));
        blanks.add(blank(spot, AnswerForm.AIM, "Looks to", "degrees", id, form));
        return new Asked(id, number, spot.asks(), "0 degrees are up the picture, 90 to the right, \u221290 to the left.", Way.BLANKS, List.of(), blanks,
                key + "picture-" + spot.picture(), fault);
    }

    private static Blank blank(Item.Spot spot, String part, String label, String unit, String id, AnswerForm form) {
        Double fixedM = AnswerForm.fixedM(spot, part);
        String field = AnswerForm.field(spot, part);
        return new Blank(id + "-" + part, field, label, unit, fixedM == null ? form.text(field) : Double.toString(fixedM), part, fixedM != null);
    }
}
