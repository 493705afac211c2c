package pairwright.http;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import pairwright.lab.Fits;
import pairwright.model.Fault;
import pairwright.session.Planned;

/**
 * What went wrong with a request, as RFC 9457 has it.
 *
 * @param type a relative reference that names the kind of problem
 * @param title the kind in words
 * @param status the HTTP status
 * @param detail what is wrong this time, with the value
 * @param errors every fault, with its place
 * @param clashes with 409 from the locker, the bookings in the way; else null
 * @param version with 412, the one that what was to be written has now; else null
 * @param shortOf with 422 from planning, what there is too little of; else null
 * @param waysOut with 422 from planning, what would make it possible; else null
 * @param fits with 422 from making exercises, what can be had instead; else null
 */
record Problem(String type, String title, int status, String detail, List<Fault> errors, List<LockerView.Booked> clashes, Long version,
        @JsonProperty("short") List<Planned.Short> shortOf, List<Planned.WayOut> waysOut, List<Fits> fits) {
    static final String MEDIA_TYPE = "application/problem+json";
    private static final int MOST_FAULTS = 50;

    static Problem of(int status, String detail) {
        return of(status, detail, List.of());
    }

    /** A problem of one or more faults; the detail says the first. */
    static Problem of(int status, List<Fault> errors) {
        return of(status, errors.get(0).says() + (errors.size() == 1 ? "" : " (" + errors.size() + " faults, all under errors)"), errors);
    }

    /** The faults to say: thousands are counted and not all listed. */
    static List<Fault> listed(List<Fault> faults) {
        if (faults.size() <= MOST_FAULTS) {
            return List.copyOf(faults);
        }
        List<Fault> first = new ArrayList<>(faults.subList(0, MOST_FAULTS));
        first.add(new Fault("", (faults.size() - MOST_FAULTS) + " more faults are not listed. Mend these first"));
        return first;
    }

    private static Problem of(int status, String detail, List<Fault> errors) {
        String title = switch (status) {
            case 400 -> "The request cannot be used as it is";
            case 401 -> "Who is asking?";
            case 403 -> "That is not for everybody";
            case 404 -> "There is no such thing";
            case 405 -> "This address does not take that method";
            case 406 -> "That form of answer is not offered";
            case 408 -> "The request took too long";
            case 409 -> "It cannot be had";
            case 412 -> "It was changed meanwhile";
            case 413 -> "The request is too large";
            case 414 -> "The address is too long";
            case 415 -> "The body comes in another form than is read here";
            case 421 -> "This server goes by another name";
            case 422 -> "Understood, but not possible";
            case 429 -> "Too many tries";
            case 431 -> "The headers are too large";
            case 503 -> "Not ready just now";
            case 501, 505 -> "That is not done here";
            default -> status >= 500 ? "Something went wrong here" : "The request cannot be taken";
        };
        return new Problem("/problems/" + status, title, status, detail, errors, null, null, null, null, null);
    }

    /** The same with the bookings in the way. */
    Problem with(List<LockerView.Booked> inTheWay) {
        return new Problem(type, title, status, detail, errors, List.copyOf(inTheWay), version, shortOf, waysOut, fits);
    }

    /** The same with the version that it has now. */
    Problem with(long now) {
        return new Problem(type, title, status, detail, errors, clashes, now, shortOf, waysOut, fits);
    }

    /** The same with what is short, and the ways out. */
    Problem with(List<Planned.Short> scarce, List<Planned.WayOut> ways) {
        return new Problem(type, title, status, detail, errors, clashes, version, List.copyOf(scarce), List.copyOf(ways), fits);
    }

    /** The same with what can be had instead. */
    Problem instead(List<Fits> others) {
        return new Problem(type, title, status, detail, errors, clashes, version, shortOf, waysOut, List.copyOf(others));
    }
}
