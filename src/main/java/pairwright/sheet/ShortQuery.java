package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import pairwright.model.FromLocker;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Request;
import pairwright.model.Source;

/** The shortest request that asks the same: what the words say already is left out. */
final class ShortQuery {
    /** What is typed is rounded; so near it is the same place. */
    private static final double SAME_SHARE = 0.01;
    private static final int USUAL_OPTIONS = 3;

    private final Request request;
    private final Question said;

    private ShortQuery(Request request, Question said) {
        this.request = request;
        this.said = said;
    }

    /**
     * @param said what the words alone mean
     * @param source the source that is answered; null for none
     */
    static Request of(Request request, Question said, Source source) {
        return new ShortQuery(request, said).shortest(source);
    }

    private Request shortest(Source source) {
        Limits limits = limits();
        List<String> saidWays = source == null ? said.ways()
                : said.ways().stream().filter(id -> source.ways().stream().anyMatch(way -> way.id().equals(id))).toList();
        return new Request(request.words(), unlike(request.source(), said.source()), unlike(request.ways(), saidWays),
                unlike(request.dynamics(), said.dynamics()), unlike(request.room(), said.room()), unlike(request.character(), said.character()),
                limits, neighbours(), unlike(request.circumstances(), said.circumstances()), unlike(request.techniques(), said.techniques()),
                unlike(request.options(), USUAL_OPTIONS), request.from(), request.until(), unlike(request.locker(), FromLocker.FREE), unlike(request.wishes(), said.wishes()), lifted(),
                request.player(), request.draws(), request.heard());
    }

    private static <T> T unlike(T given, T other) {
        return Objects.equals(given, other) ? null : given;
    }

    private List<Neighbour> neighbours() {
        List<Neighbour> given = request.neighbours();
        if (given == null || given.size() != said.neighbours().size()) {
            return given;
        }
        for (int i = 0; i < given.size(); i++) {
            Neighbour one = given.get(i);
            Neighbour other = said.neighbours().get(i);
            if (!one.source().equals(other.source()) || Math.abs(one.distanceM() - other.distanceM()) > SAME_SHARE * other.distanceM()
                    || Math.abs(one.angleDegrees() - other.angleDegrees()) > 0.1) {
                return given;
            }
        }
        return null;
    }

    private Limits limits() {
        if (request.limits() == null) {
            return null;
        }
        Limits given = request.limits();
        Limits words = said.limits();
        Boolean phantom = given.phantom() != null && given.phantom() == !Boolean.FALSE.equals(words.phantom()) ? null : given.phantom();
        Limits left = new Limits(unlike(given.mics(), words.mics()), phantom, unlike(given.preampGainDb(), words.preampGainDb()),
                unlike(given.preampNoiseDbu(), words.preampNoiseDbu()), unlike(given.onlyFamilies(), words.onlyFamilies()),
                unlike(given.withoutFamilies(), words.withoutFamilies()), unlike(given.onlyMicTypes(), words.onlyMicTypes()),
                unlike(given.withoutMicTypes(), words.withoutMicTypes()));
        return left.equals(Limits.NONE) ? null : left;
    }

    private List<String> lifted() {
        Limits words = said.limits();
        List<String> left = new ArrayList<>(request.lifted());
        left.removeIf(field -> switch (field) {
            case "mics" -> words.mics() == null;
            case "phantom" -> words.phantom() == null;
            case "preampGainDb" -> words.preampGainDb() == null;
            case "preampNoiseDbu" -> words.preampNoiseDbu() == null;
            case "onlyFamilies" -> words.onlyFamilies().isEmpty();
            case "withoutFamilies" -> words.withoutFamilies().isEmpty();
            case "onlyMicTypes" -> words.onlyMicTypes().isEmpty();
            case "withoutMicTypes" -> words.withoutMicTypes().isEmpty();
            default -> true;
        });
        return left;
    }
}
