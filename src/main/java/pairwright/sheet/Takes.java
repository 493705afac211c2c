package pairwright.sheet;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import pairwright.advice.AtHand;
import pairwright.model.FromLocker;
import pairwright.model.Given;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Question;

/** Which units of the locker to take for an option, in words, and where they are booked. */
final class Takes {
    private final AtQuestion at;
    private final Question question;

    Takes(AtQuestion at, Question question) {
        this.at = at;
        this.question = question;
    }

    /** The unit for one microphone of an option; null without a locker. */
    OptionView.Take of(Option option, int index) {
        Placement mic = option.mics().get(index);
        if (mic.units() == null) {
            return null;
        }
        if (mic.units().isEmpty()) {
            return new OptionView.Take(question.locker() == FromLocker.OWNED ? "The locker has none." : "The locker has none that is free then.", "", null, "", "", false);
        }
        Given unit = mic.units().get(0);
        boolean free = unit.out() == null;
        String place = unit.storedAt() == null ? "" : ", from " + unit.storedAt();
        String after = free ? place + matched(option, unit, "; a matched pair with ") + "; " + count(mic.free()) + "."
                : place + (place.isEmpty() ? " " : ", ") + standing(unit) + "." + matched(option, unit, " A matched pair with ") + (unit.mate() == null ? "" : ".");
        return new OptionView.Take(free ? "Take " : "", unit.label(), at.visit().to("/locker/units/" + unit.id()), after,
                Objects.requireNonNullElse(unit.note(), ""), free);
    }

    private static String matched(Option option, Given unit, String before) {
        return option.mics().stream().flatMap(mic -> mic.units().stream()).filter(other -> other.id().equals(unit.mate())).findFirst()
                .map(other -> before + other.label()).orElse("");
    }

    private static String count(int free) {
        return free == 1 ? "no other of its type is free" : free + " of its type are free";
    }

    /** Why a unit cannot be had, and when it can. */
    String standing(Given unit) {
        return standing(unit.out()) + "; " + again(unit.freeFrom());
    }

    private static String standing(String why) {
        return switch (why) {
            case "loan" -> "is on loan";
            case "repair" -> "is booked for repair";
            case "in-repair" -> "is in repair";
            case "overdue" -> "should be back by now";
            default -> "is booked for a " + why.toLowerCase(Locale.ROOT);
        };
    }

    private String again(OffsetDateTime freeFrom) {
        return freeFrom == null ? "nobody knows when it is free again" : "free again " + at.moments().moment(freeFrom.toInstant());
    }

    /** Where the units of an option are booked for the time of the question; null where one of them cannot be had, or the reader may not. */
    AnswerView.Link book(Option option) {
        List<Given> units = units(option);
        if (!at.mayBook() || units.size() != option.mics().size() || units.stream().anyMatch(unit -> unit.out() != null)) {
            return null;
        }
        List<Param> query = new ArrayList<>();
        OffsetDateTime from = question.from();
        OffsetDateTime until = question.until() == null && from != null ? from.plus(AtHand.USUAL_LENGTH) : question.until();
        if (from != null) {
            query.add(new Param("from", at.moments().field(from.toInstant())));
        }
        if (until != null) {
            query.add(new Param("until", at.moments().field(until.toInstant())));
        }
        units.forEach(unit -> query.add(new Param("unit", unit.id())));
        return new AnswerView.Link(units.size() == 1 ? "Book it" : "Book these", at.visit().to(Param.address("/locker/bookings/new", query)));
    }

    /** The units of an option, in the order of its microphones. */
    static List<Given> units(Option option) {
        return option.mics().stream().filter(mic -> mic.units() != null).flatMap(mic -> mic.units().stream()).toList();
    }
}
