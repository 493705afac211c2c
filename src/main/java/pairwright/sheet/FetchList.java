package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pairwright.drawing.Reader;
import pairwright.model.Catalogue;
import pairwright.model.Given;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.PowerNeed;

/** What has to be carried into the room for an option, and what to switch there. */
final class FetchList {
    private final Catalogue catalogue;
    private final Option option;
    private final Takes takes;
    private final AtQuestion at;
    private final Reader reader;

    FetchList(Catalogue catalogue, Option option, Takes takes, AtQuestion at) {
        this.catalogue = catalogue;
        this.option = option;
        this.takes = takes;
        this.at = at;
        this.reader = at.visit().reader();
    }

    private boolean hasUnits() {
        return option.mics().stream().allMatch(mic -> mic.units() != null);
    }

    /** Unit by unit with where it lies, its tag, and what goes with it; empty without a locker. */
    List<SetUpView.Thing> carry() {
        List<SetUpView.Thing> things = new ArrayList<>();
        for (int i = 0; hasUnits() && i < option.mics().size(); i++) {
            things.add(unit(i));
            carried(option.mics().get(i)).forEach(one -> things.add(new SetUpView.Thing("", null, one)));
        }
        return things;
    }

    private SetUpView.Thing unit(int index) {
        Placement mic = option.mics().get(index);
        if (mic.units().isEmpty()) {
            return new SetUpView.Thing("", null, mic.name() + ": " + Naming.small(takes.of(option, index).before()));
        }
        Given unit = mic.units().get(0);
        OptionView.Take take = takes.of(option, index);
        return new SetUpView.Thing(unit.label(), at.visit().to("/locker/units/" + unit.id()), " (" + Naming.small(mic.name()) + ")"
                + (unit.tag() == null ? "" : ", tag " + unit.tag()) + (unit.storedAt() == null ? ", its place is not noted" : ", from " + unit.storedAt())
                + (unit.out() == null ? "" : ": " + takes.standing(unit)) + "." + (take.mind().isEmpty() ? "" : " Mind: " + take.mind() + "."));
    }

    /** With a locker what to switch; without one also what to carry in, as no unit is named. */
    List<String> rest() {
        return option.mics().stream().flatMap(mic -> hasUnits() ? switched(mic).stream()
                : Stream.of(Stream.of(mic.name()), carried(mic).stream(), switched(mic).stream()).flatMap(one -> one)).toList();
    }

    private List<String> carried(Placement mic) {
        List<String> things = new ArrayList<>();
        switch (mic.mount()) {
            case STAND -> things.add("Straight stand" + height(mic));
            case BOOM -> things.add("Boom stand" + height(mic) + ", weight over a leg");
            case OVERHEAD -> things.add("Tall stand" + height(mic) + ", sandbag");
            case CLIP -> things.add("Clip for the instrument");
            case FLOOR -> things.add("Nothing to hold it: it lies on the floor or a plate");
            case INSIDE -> things.add("Short stand, pillow or holder for the inside");
            case CONTACT -> things.add("What fixes the pickup");
            default -> {
            }
        }
        things.add(mic.channels() == 1 ? "1 microphone lead" : mic.channels() + " microphone leads");
        if (SetUpWords.wired(mic)) {
            things.add("Lead from the instrument");
        }
        if (catalogue.mics().get(mic.micType()).power() == PowerNeed.OWN_SUPPLY) {
            things.add("Its own power supply with the cable that belongs to it");
        }
        return things;
    }

    private List<String> switched(Placement mic) {
        List<String> things = new ArrayList<>();
        MicType type = catalogue.mics().get(mic.micType());
        boolean cell = type.power() == PowerNeed.PHANTOM_OR_BATTERY;
        things.add(mic.phantom() ? "Phantom power on for the " + Naming.small(mic.name()) + ", with the channel down" + (cell ? ", or a fresh cell in it" : "")
                : "Phantom power off for the " + Naming.small(mic.name()) + (cell ? ", a fresh cell in it and one to spare" : ""));
        if (mic.pad()) {
            things.add("Pad of " + Math.round(mic.padDb()) + " dB in");
        }
        if (mic.invertPolarity()) {
            things.add("Polarity inverted on its channel");
        }
        if (mic.predicted().gainDb() != null) {
            things.add("Gain about " + Math.round(mic.predicted().gainDb()) + " dB to begin with");
        }
        return things;
    }

    private String height(Placement mic) {
        return mic.heightM() == null ? "" : ", microphone " + reader.distance(mic.heightM()) + " above the floor";
    }
}
