package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.BodyShape;
import pairwright.model.KeepClear;
import pairwright.model.Mount;
import pairwright.model.Placement;

/** What a picture of a set-up shows, in sentences, with the numbers it is drawn from. */
final class SetUpWords {
    private final SetUp setUp;
    private final View view;
    private final List<View.Seen> mics;
    private final List<Zones.Zone> zones;
    private final Reader reader;
    private final List<String> sentences = new ArrayList<>();

    SetUpWords(SetUp setUp, View view, List<View.Seen> mics, List<Zones.Zone> zones, Reader reader) {
        this.zones = zones;
        this.setUp = setUp;
        this.view = view;
        this.mics = mics;
        this.reader = reader;
    }

    static String type(Placement placement) {
        String pattern = placement.pattern().id();
        return placement.name().endsWith(pattern) ? placement.name() : placement.name() + ", " + pattern;
    }

    static String wired(Stood mic) {
        Placement placement = mic.placement();
        return placement.name() + ", " + (placement.mount() == Mount.CONTACT ? "fixed to it" : "on its lead") + ", "
                + mic.power().switched(placement.phantom());
    }

    String says() {
        String name = setUp.source().name();
        String forward = setUp.body().shape() == BodyShape.CABINET ? "; its front is to the right" : "; where the player faces is to the right";
        sentences.add(view.above() ? name + " from above" + forward : view.fromBehind() ? name + " as one sees it from behind the player" : name + " from the side" + forward);
        if (setUp.body().shape() == BodyShape.KICK_DRUM && BodyFromSide.hasPort(setUp.source())) {
            sentences.add("Its front head has a port");
        }
        for (Stood mic : setUp.mics()) {
            View.Seen seen = mics.stream().filter(one -> one.mic() == mic).findFirst().orElse(null);
            if (seen == null) {
                sentences.add(mic.number() + " is " + wired(mic) + ": " + mic.position().name());
            } else {
                mic(seen);
            }
        }
        if (setUp.asOne() && setUp.stereo()) {
            sentences.add(pair(setUp, reader) + ", 1 to the left as one stands behind them");
        }
        for (SetUp.Beside beside : Surroundings.neighboursShown(setUp, mics, view)) {
            sentences.add(beside.name() + " is " + reader.distance(beside.distanceM()) + " from microphone " + mics.get(0).mic().number() + ", "
                    + degrees(beside.angleDegrees()) + " off its line to the source");
        }
        String elsewhere = Surroundings.neighboursElsewhere(setUp, mics, view);
        if (elsewhere != null) {
            sentences.add(elsewhere);
        }
        String nulls = nullsElsewhere(setUp, view, mics);
        if (nulls != null) {
            sentences.add(nulls);
        }
        for (KeepClear clear : Zones.said(mics)) {
            boolean drawn = zones.stream().anyMatch(zone -> zone.clear().equals(clear));
            sentences.add("Keep clear " + reader.distance(clear.distanceM()) + " for " + clear.of() + (drawn ? "" : ", not drawn"));
        }
        StringBuilder all = new StringBuilder();
        for (String sentence : sentences) {
            all.append(all.isEmpty() ? "" : " ").append(Words.sentence(sentence));
        }
        return all.toString();
    }

    private void mic(View.Seen seen) {
        Stood mic = seen.mic();
        sentences.add("Microphone " + mic.number() + " is " + type(mic.placement()) + ": " + mic.position().name());
        boolean again = setUp.asOne() && mic.number() == 2;
        if (again) {
            if (!setUp.stereo()) {
                sentences.add("It stands beside microphone 1, as far away");
            }
        } else {
            StringBuilder where = new StringBuilder("It is ").append(reader.distance(mic.placement().distanceM())).append(" from the source");
            String called = Dimensions.called(seen, view.above(), reader);
            if (called != null && !called.equals(reader.distance(mic.placement().distanceM()))) {
                where.append(", ").append(called);
            }
            if (Dimensions.showsOffAxis(seen, view)) {
                where.append(", ").append(degrees(mic.standpoint().offAxisDegrees())).append(" off the axis of the source");
            }
            if (!view.above()) {
                where.append(", ").append(reader.distance(Dimensions.rounded(mic.heightM()))).append(" above the floor");
            }
            sentences.add(where.toString());
        }
        if (Surroundings.hasPopScreen(seen)) {
            sentences.add("A pop screen stands half way");
        }
        if (seen.aimDegrees() == null) {
            sentences.add(!view.above() ? "It faces across the picture" : mic.sight().upM() < 0 ? "It looks down" : "It looks up");
        }
        turn(seen);
        if (seen.showsNulls()) {
            double nullDegrees = mic.placement().nullDegrees();
            sentences.add("It hears least " + (nullDegrees > 179 ? "straight behind" : degrees(nullDegrees) + " to either side of where it faces"));
        }
    }

    /** Of which microphones the other view shows where they hear least, and this one does not; null for none. */
    static String nullsElsewhere(SetUp setUp, View view, List<View.Seen> mics) {
        View other = View.of(setUp, !view.above());
        List<String> numbers = mics.stream().filter(mic -> !mic.showsNulls() && other.seen(setUp, mic.mic()).showsNulls())
                .map(mic -> String.valueOf(mic.mic().number())).toList();
        return numbers.isEmpty() ? null : "Null of " + String.join(" and ", numbers) + ": drawn " + (view.above() ? "from the side" : "from above");
    }

    private void turn(View.Seen seen) {
        double turn = setUp.stereo() && setUp.asOne() ? 0 : seen.mic().turnDegrees();
        if (Math.abs(turn) >= 1) {
            String way = seen.mic().steep() ? "" : turn > 0 ? " to the left" : " to the right";
            sentences.add("It is turned " + degrees(Math.abs(turn)) + way + " off the line to the source");
        }
    }

    /** How the two of a stereo pair stand to each other. */
    static String pair(SetUp setUp, Reader reader) {
        Double includedDegrees = setUp.technique().includedDegrees();
        Double spacingM = setUp.technique().spacingM();
        String apart = spacingM == null || spacingM == 0 ? "Both in one point" : reader.distance(spacingM) + " apart";
        return apart + (includedDegrees == null || includedDegrees == 0 ? ", parallel" : ", turned " + reader.number(includedDegrees, 0) + "\u00b0 apart");
    }

    private String degrees(double degrees) {
        return reader.number(degrees, 0) + " degrees";
    }
}
