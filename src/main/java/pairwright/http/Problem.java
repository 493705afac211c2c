package pairwright.http;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Fault;

/**
 * What went wrong with a request, as RFC 9457 has it.
 *
 * @param type a relative reference that names the kind of problem
 * @param title the kind in words
 * @param status the HTTP status
 * @param detail what is wrong this time, with the value
 * @param errors every fault, with its place
 */
record Problem(String type, String title, int status, String detail, List<Fault> errors) {
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
            case 404 -> "There is no such thing";
            case 405 -> "This address does not take that method";
            case 406 -> "That form of answer is not offered";
            case 408 -> "The request took too long";
            case 413 -> "The request is too large";
            case 414 -> "The address is too long";
            case 415 -> "The body must be JSON";
            case 431 -> "The headers are too large";
            case 503 -> "Not ready just now";
            case 501, 505 -> "That is not done here";
            default -> status >= 500 ? "Something went wrong here" : "The request cannot be taken";
        };
        return new Problem("/problems/" + status, title, status, detail, errors);
    }
}
