package pairwright.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleToLongFunction;
import java.util.function.Predicate;
import pairwright.advice.OfferedMic;
import pairwright.model.MicType;
import pairwright.model.PowerNeed;
import pairwright.session.allocation.Feed;
import pairwright.session.allocation.PhantomNeed;

/** The ways from a microphone to its channels: straight, by a booster, by a line box, by an instrument input, by a pad, or too strong for the input. */
final class Courses {
    private final Resources resources;
    private final DoubleToLongFunction tooStrong;

    /** @param tooStrong what it costs that peaks are so many decibels over what an input takes, in hundredths of a point */
    Courses(Resources resources, DoubleToLongFunction tooStrong) {
        this.resources = resources;
        this.tooStrong = tooStrong;
    }

    /**
     * All of them.
     *
     * @param phantom whether its seat may have phantom power
     * @param borrowed whether line boxes count of which there are none, to say what is short
     */
    List<Course> of(OfferedMic mic, boolean phantom, boolean borrowed) {
        if (mic.micType().wantsBox()) {
            return boxed(mic, phantom, borrowed);
        }
        List<Course> courses = new ArrayList<>(levelled(mic));
        if (resources.wantsBooster(mic)) {
            Gear.Booster booster = resources.usualBooster();
            courses.add(new Course(true, null, null, false, false, Map.of(Resources.BOOSTERS, 1), List.of(),
                    feeds(mic, any -> true, -booster.gainDb(), PhantomNeed.NEEDED, booster.phantomMa()), 0));
        }
        return courses;
    }

    private List<Course> boxed(OfferedMic mic, boolean phantom, boolean borrowed) {
        List<Course> courses = new ArrayList<>();
        Predicate<Gear.Channel> instrument = channel -> channel.inputOhm() != null && channel.inputOhm() >= mic.micType().needsLoadOhm();
        if (resources.channels().counted() && resources.channels().any(instrument)) {
            courses.add(new Course(false, null, null, true, false, Map.of(), List.of(), feeds(mic, instrument, 0, PhantomNeed.ANY, 0), 0));
        }
        for (MicType box : resources.boxes(mic.micType(), borrowed)) {
            boolean fed = box.power() == PowerNeed.PHANTOM || box.power() == PowerNeed.PHANTOM_OR_BATTERY && phantom && resources.channels().hasPhantom();
            Between.BoxPower power = fed ? Between.BoxPower.PHANTOM : box.power() == PowerNeed.PHANTOM_OR_BATTERY ? Between.BoxPower.BATTERY : Between.BoxPower.NONE;
            if (box.power() == PowerNeed.PHANTOM && !phantom) {
                continue;
            }
            double drawnMa = fed && box.currentMa() != null ? box.currentMa().typical() : 0;
            courses.add(new Course(false, box, power, false, false, resources.units().box(box.id(), mic.micType().channels()), List.of(),
                    feeds(mic, any -> true, 0, fed ? PhantomNeed.NEEDED : PhantomNeed.ANY, drawnMa), 0));
        }
        return courses;
    }

    /** Where some channel does not take its peaks: with no pad on those that do, with a pad on more of them, or too strong. */
    private List<Course> levelled(OfferedMic mic) {
        List<Double> leastGainsDb = resources.channels().leastGainsDb();
        if (leastGainsDb.stream().noneMatch(leastDb -> InputLevel.leftOverDb(mic, leastDb) > 0)) {
            return List.of(plain(mic, any -> true, 0));
        }
        List<Course> courses = new ArrayList<>();
        if (leastGainsDb.stream().anyMatch(leastDb -> InputLevel.leftOverDb(mic, leastDb) == 0)) {
            courses.add(plain(mic, channel -> overDb(mic, channel) == 0, 0));
        }
        double before = 0;
        for (double lossDb : resources.padLossesDb(mic.phantom())) {
            double reachedDb = leastGainsDb.stream().mapToDouble(leastDb -> InputLevel.leftOverDb(mic, leastDb)).filter(overDb -> overDb <= lossDb).max().orElse(0);
            if (reachedDb > before) { // it does for channels that no smaller one does for
                before = reachedDb;
                courses.add(new Course(false, null, null, false, true, Map.of(), Collections.nCopies(mic.micType().channels(), resources.padCaps(lossDb, mic.phantom())),
                        feeds(mic, channel -> overDb(mic, channel) <= lossDb, lossDb, need(mic), mic.currentMa()), 0));
            }
        }
        leastGainsDb.stream().filter(leastDb -> InputLevel.leftOverDb(mic, leastDb) > 0).forEach(leastDb -> courses.add(plain(mic,
                channel -> InputLevel.leastGainDb(channel) == leastDb, mic.micType().channels() * tooStrong.applyAsLong(InputLevel.leftOverDb(mic, leastDb)))));
        return courses;
    }

    private static double overDb(OfferedMic mic, Gear.Channel channel) {
        return InputLevel.leftOverDb(mic, InputLevel.leastGainDb(channel));
    }

    private Course plain(OfferedMic mic, Predicate<Gear.Channel> fitting, long centipoints) {
        return new Course(false, null, null, false, false, Map.of(), List.of(), feeds(mic, fitting, 0, need(mic), mic.currentMa()), centipoints);
    }

    private static PhantomNeed need(OfferedMic mic) {
        return SeatChoices.phantom(mic.micType(), mic.phantom());
    }

    /** One for each of its channels; empty where they are not counted. */
    private List<Feed> feeds(OfferedMic mic, Predicate<Gear.Channel> fitting, double moreGainDb, PhantomNeed phantom, double drawnMa) {
        double gainDb = mic.predicted().gainDb() == null ? 0 : mic.predicted().gainDb() + moreGainDb;
        List<Feed> feed = resources.channels().feed(fitting, gainDb, phantom, drawnMa);
        return feed.isEmpty() ? feed : Collections.nCopies(mic.micType().channels(), feed.get(0));
    }
}
