package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pairwright.model.FromLocker;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Request;

/** The same question with one thing altered, where a pointer into the question says what. */
final class Altered {
    private static final String LIMITS = "/limits/";
    private static final String NEIGHBOURS = "/neighbours/";

    private final Request request;
    private final Question meant;

    /**
     * @param request as it came in
     * @param meant how it was understood
     */
    Altered(Request request, Question meant) {
        this.request = request;
        this.meant = meant;
    }

    /**
     * The question with something altered; null where the pointer does not say enough.
     *
     * @param at the field, as a pointer into the question
     * @param to the new value; empty where something is taken away
     */
    Request at(String at, String to) {
        if (at.startsWith(LIMITS)) {
            return limit(at.substring(LIMITS.length()), to);
        }
        if (at.startsWith(NEIGHBOURS) && to.isEmpty()) {
            List<Neighbour> rest = new ArrayList<>(meant.neighbours());
            rest.remove(Integer.parseInt(at.substring(NEIGHBOURS.length())));
            return with(null, null, rest, null, null);
        }
        return switch (at) {
            case "/neighbours" -> with(null, null, List.of(), null, null);
            case "/circumstances" -> with(null, null, null, meant.circumstances().stream().filter(one -> !one.equals(to)).toList(), null);
            case "/ways" -> with(added(meant.ways(), to), null, null, null, null);
            case "/locker" -> Stream.of(FromLocker.values()).filter(use -> use.id().equals(to)).findFirst()
                    .map(use -> request.at(request.from(), request.until(), use)).orElse(null);
            case "/room" -> with(null, to, null, null, null);
            case "/character" -> !to.isEmpty() ? with(null, null, null, null, added(meant.character(), to))
                    : meant.character().size() == 1 ? with(null, null, null, null, List.of()) : null;
            default -> null;
        };
    }

    private static List<String> added(List<String> all, String one) {
        return Stream.concat(all.stream(), Stream.of(one)).toList();
    }

    private Request with(List<String> ways, String room, List<Neighbour> neighbours, List<String> circumstances, List<String> character) {
        return new Request(request.words(), request.source(), ways == null ? request.ways() : ways, request.dynamics(),
                room == null ? request.room() : room, character == null ? request.character() : character, request.limits(),
                neighbours == null ? request.neighbours() : neighbours, circumstances == null ? request.circumstances() : circumstances,
                request.techniques(), request.options(), request.from(), request.until(), request.locker(), request.wishes(), request.lifted(),
                request.player(), request.draws(), request.heard());
    }

    private Request limit(String field, String to) {
        Limits old = request.limits() == null ? Limits.NONE : request.limits();
        List<String> lifted = to.isEmpty() ? Stream.concat(request.lifted().stream(), Stream.of(field)).distinct().toList() : request.lifted();
        Double number = to.isEmpty() ? null : Double.valueOf(to);
        Limits limits = switch (field) {
            case "mics" -> new Limits(number == null ? null : Integer.valueOf(number.intValue()), old.phantom(), old.preampGainDb(), old.preampNoiseDbu(),
                    old.onlyFamilies(), old.withoutFamilies(), old.onlyMicTypes(), old.withoutMicTypes());
            case "phantom" -> new Limits(old.mics(), null, old.preampGainDb(), old.preampNoiseDbu(), old.onlyFamilies(), old.withoutFamilies(),
                    old.onlyMicTypes(), old.withoutMicTypes());
            case "preampGainDb" -> new Limits(old.mics(), old.phantom(), number, old.preampNoiseDbu(), old.onlyFamilies(), old.withoutFamilies(),
                    old.onlyMicTypes(), old.withoutMicTypes());
            case "preampNoiseDbu" -> new Limits(old.mics(), old.phantom(), old.preampGainDb(), number, old.onlyFamilies(), old.withoutFamilies(),
                    old.onlyMicTypes(), old.withoutMicTypes());
            case "onlyFamilies" -> new Limits(old.mics(), old.phantom(), old.preampGainDb(), old.preampNoiseDbu(), null, old.withoutFamilies(),
                    old.onlyMicTypes(), old.withoutMicTypes());
            case "withoutFamilies" -> new Limits(old.mics(), old.phantom(), old.preampGainDb(), old.preampNoiseDbu(), old.onlyFamilies(), null,
                    old.onlyMicTypes(), old.withoutMicTypes());
            case "onlyMicTypes" -> new Limits(old.mics(), old.phantom(), old.preampGainDb(), old.preampNoiseDbu(), old.onlyFamilies(),
                    old.withoutFamilies(), null, old.withoutMicTypes());
            case "withoutMicTypes" -> new Limits(old.mics(), old.phantom(), old.preampGainDb(), old.preampNoiseDbu(), old.onlyFamilies(),
                    old.withoutFamilies(), old.onlyMicTypes(), null);
            default -> null;
        };
        if (limits == null) {
            return null;
        }
        if (field.equals("preampGainDb") && to.isEmpty()) {
            // the preamplifier is one limit: its gain and its noise go together
            return limited(limits(limits), Stream.concat(lifted.stream(), Stream.of("preampNoiseDbu")).distinct().toList());
        }
        return limited(limits, lifted);
    }

    private static Limits limits(Limits old) {
        return new Limits(old.mics(), old.phantom(), null, null, old.onlyFamilies(), old.withoutFamilies(), old.onlyMicTypes(), old.withoutMicTypes());
    }

    private Request limited(Limits limits, List<String> lifted) {
        return new Request(request.words(), request.source(), request.ways(), request.dynamics(), request.room(), request.character(),
                limits.equals(Limits.NONE) ? null : limits, request.neighbours(), request.circumstances(), request.techniques(), request.options(),
                request.from(), request.until(), request.locker(), request.wishes(), lifted, request.player(), request.draws(), request.heard());
    }
}
