package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pairwright.drawing.FloorDrawing;
import pairwright.drawing.FloorPlan;
import pairwright.drawing.FloorWords;
import pairwright.drawing.Reader;
import pairwright.lab.Answer;
import pairwright.lab.Handout;
import pairwright.lab.Item;
import pairwright.lab.Key;
import pairwright.lab.Shown;
import pairwright.model.Catalogue;

/**
 * What is right of a place, drawn into the picture of the exercise.
 *
 * @param answer what was answered, to be drawn beside it
 * @param reader for the decimal sign
 * @param key before the ids of everything, unlike that of any other exercise of the page
 */
record KeyPictures(Catalogue catalogue, Answer answer, Reader reader, String key) {
    static KeyPictures of(Catalogue catalogue, Visit visit, Answer answer, String key) {
        return new KeyPictures(catalogue, answer, new Reader(false, visit.reader().locale()), key);
    }

    /** Null where no place in a room is asked for. */
    ExerciseView.Picture of(Handout handout, Key right, Item item) {
        Key.Spots spots = right.spots().stream().filter(one -> one.item().equals(item.id())).findFirst().orElse(null);
        if (spots == null || !(item instanceof Item.Spot spot) || !(handout.shown().get(spot.picture() - 1) instanceof Shown.FromAbove above)) {
            return null;
        }
        List<FloorPlan.MicAt> mics = new ArrayList<>();
        mic(1, right.best(), above, spots, ", the best that was found", mics);
        mic(2, answer, above, spots, ", as it was answered", mics);
        FloorPlan plan = FloorOf.plan(above.lineUp(), catalogue, mics, Set.of()).shaded(spots.asGood().stream().map(at -> new FloorPlan.Good(at.xM(), at.yM(), spots.sideM())).toList());
        String says = "1 is the best spot that was found" + (mics.size() > 1 ? ", 2 what was answered." : ".");
        String id = key + "right-" + item.id();
        return new ExerciseView.Picture(id, mics.size() > 1 ? "What is right, and what was answered" : "What is right", null, null, List.of(FloorDrawing.of(plan, id, reader)),
                List.of(says + " " + FloorWords.key(plan)));
    }

    private static void mic(int number, Answer from, Shown.FromAbove above, Key.Spots spots, String which, List<FloorPlan.MicAt> mics) {
        var x = from.number(spots.item(), 0);
        var y = from.number(spots.item(), 1);
        var looks = from.number(spots.item(), 2);
        if (x.isPresent() && y.isPresent() && above.lineUp().floor().holds(x.getAsDouble(), y.getAsDouble())) {
            mics.add(new FloorPlan.MicAt(number, x.getAsDouble(), y.getAsDouble(), looks.isPresent() ? looks.getAsDouble() : null, spots.family(), spots.pattern(), spots.nullDegrees(),
                    spots.source() + which));
        }
    }
}
