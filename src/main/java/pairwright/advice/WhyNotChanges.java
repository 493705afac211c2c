package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pairwright.model.FromLocker;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Neighbour;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Range;
import pairwright.model.Room;
import pairwright.model.WhyNot;
import pairwright.rules.Figure;
import pairwright.rules.Placed;

/** Tries single changes by really asking: the same question with one thing altered, or the same type somewhere between the usual distances. */
final class WhyNotChanges {
    /** What counts as shown, whatever number of options the question wants. */
    private static final int SHOWN = 3;
    private static final int MOST_OF_A_KIND = 3;
    private static final int MOST = 12;
    /** So many distances of each range are tried, evenly by ratio. */
    private static final int DISTANCES = 9;
    /** As much gain as the best of preamplifiers and boosters give. */
    private static final double MUCH_GAIN_DB = 85;

    private final Knowledge now;
    private final Scene scene;
    private final Question question;
    private final Wanted wanted;
    private final Advisor.Verdict verdict;
    private final Judged best;
    private final WhyNot.Standing standing;
    private final Candidate first;
    private final WhyNotShortCut shortCut;
    private final boolean wasShown;
    private final List<Found> found = new ArrayList<>();
    private int tried;

    /** A change that helped, and how large it is among those of its kind. */
    private record Found(WhyNot.Change change, double sizeRatio) {
    }

    WhyNotChanges(Knowledge now, Scene scene, Wanted wanted, Advisor.Verdict verdict, Judged best, WhyNot.Standing standing) {
        this.now = now;
        this.scene = scene;
        this.question = scene.question();
        this.wanted = wanted;
        this.verdict = verdict;
        this.best = best;
        this.standing = standing;
        this.wasShown = result(verdict, wanted).outcome() != null;
        this.first = verdict.candidates().isEmpty() ? null : verdict.candidates().get(0);
        this.shortCut = WhyNotShortCut.of(wanted, verdict);
    }

    int tried() {
        return tried;
    }

    List<WhyNot.Change> find() {
        if (standing != WhyNot.Standing.LIMITED) {
            places();
            freed();
        }
        limits();
        if (standing != WhyNot.Standing.LIMITED) {
            gain();
            neighbours();
            circumstances();
            characters();
            ways();
            rooms();
        }
        found.sort(Comparator.<Found>comparingInt(one -> one.change().outcome().ordinal())
                .thenComparingInt(one -> one.change().alters().ordinal())
                .thenComparingDouble(Found::sizeRatio));
        Map<WhyNot.Alters, Integer> counts = new HashMap<>();
        return found.stream().map(Found::change)
                .filter(change -> counts.merge(change.alters(), 1, Integer::sum) <= MOST_OF_A_KIND)
                .limit(MOST).toList();
    }

    /** Between the usual distances and at every aim, for each place and pattern that is asked for. */
    private void places() {
        Placements placements = Placements.none(scene);
        List<Placed> placed = new ArrayList<>();
        MicType mic = wanted.mic();
        for (Position position : scene.setting().source().positions()) {
            if (!mic.captures() || position.notAlone() || !Placements.fits(mic, position) || !Placements.sensible(scene, position)
                    || wanted.position() != null && !position.id().equals(wanted.position())) {
                continue;
            }
            for (PatternData pattern : mic.patterns()) {
                if (wanted.pattern() != null && wanted.pattern() != pattern.pattern()) {
                    continue;
                }
                for (double aimDegrees : placements.aimsDegrees(position, pattern, position.distanceM().typical())) {
                    for (double distanceM : distances(position.distanceM())) {
                        placed.add(placements.set(mic, pattern, position, distanceM, aimDegrees));
                    }
                }
            }
        }
        tried += placed.size();
        List<Candidate> shown = Choice.of(verdict.candidates(), SHOWN);
        long least = shown.size() < SHOWN ? Long.MIN_VALUE : shown.get(shown.size() - 1).centipoints();
        boolean stood = best != null && !best.ruledOut();
        for (Judged judged : Advisor.judged(scene, now.rules(), placed)) {
            if (judged.ruledOut() || stood && judged.centipoints() <= least) {
                continue;
            }
            Candidate mine = Candidate.of(judged);
            List<Candidate> all = new ArrayList<>(verdict.candidates());
            all.add(mine);
            all.sort(Candidate.bestFirst());
            WhyNot.Outcome outcome = all.get(0) == mine ? WhyNot.Outcome.FIRST
                    : Choice.of(all, SHOWN).contains(mine) ? WhyNot.Outcome.SHOWN : stood ? null : WhyNot.Outcome.ALLOWED;
            if (outcome != null && !(wasShown && outcome != WhyNot.Outcome.FIRST)) {
                place(judged, outcome);
            }
        }
    }

    private static double[] distances(Range range) {
        if (range.high() <= range.low()) {
            return new double[] {range.typical()};
        }
        double[] distances = new double[DISTANCES];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = i == distances.length - 1 ? range.high() : range.low() * Math.pow(range.high() / range.low(), i / (DISTANCES - 1.0));
        }
        return distances;
    }

    /** Only the smallest step of each kind to each outcome is kept. */
    private void place(Judged judged, WhyNot.Outcome outcome) {
        Placed there = judged.placed();
        Placed here = best == null ? null : best.placed();
        WhyNot.Alters alters = here == null || !here.position().id().equals(there.position().id()) ? WhyNot.Alters.POSITION
                : here.pattern() != there.pattern() ? WhyNot.Alters.PATTERN
                : here.distanceM() == there.distanceM() ? WhyNot.Alters.ANGLE : WhyNot.Alters.DISTANCE;
        if (alters == WhyNot.Alters.DISTANCE && here.aimDegrees() != there.aimDegrees()) {
            return; // two changes at once
        }
        double size = here == null ? 0 : Math.abs(Math.log(there.distanceM() / here.distanceM()))
                + Math.abs(there.aimDegrees() - here.aimDegrees()) / 90;
        String words = "In the place \"" + Naming.small(there.position().name()) + "\", " + there.pattern().id() + ", at "
                + Figure.forPeople(there.distanceM(), "m") + (there.aimDegrees() == there.position().aimDegrees().low() ? ""
                : ", turned " + Figure.forPeople(Math.abs(there.aimDegrees()), "degrees"));
        WhyNot.Change change = change(alters, "/placement/" + (alters == WhyNot.Alters.DISTANCE ? "distanceM"
                        : alters == WhyNot.Alters.ANGLE ? "aimDegrees" : alters == WhyNot.Alters.PATTERN ? "pattern" : "position"),
                alters == WhyNot.Alters.DISTANCE ? Double.toString(there.distanceM()) : alters == WhyNot.Alters.ANGLE
                        ? Double.toString(there.aimDegrees()) : alters == WhyNot.Alters.PATTERN ? there.pattern().id() : there.position().id(),
                outcome, Candidate.of(judged), first, words);
        boolean oneOfEach = alters == WhyNot.Alters.POSITION || alters == WhyNot.Alters.PATTERN;
        Found before = found.stream().filter(one -> one.change().alters() == alters && one.change().outcome() == outcome
                && (!oneOfEach || one.change().to().equals(change.to()))).findFirst().orElse(null);
        if (before == null) {
            found.add(new Found(change, size));
        } else if (size < before.sizeRatio()) {
            found.remove(before);
            found.add(new Found(change, size));
        }
    }

    /** The pattern or the position that was asked for given up. */
    private void freed() {
        if (wanted.pattern() != null) {
            freed(WhyNot.Alters.PATTERN, "/pattern", new Wanted(wanted.mic(), null, wanted.position()), "In any other pattern");
        }
        if (wanted.position() != null) {
            freed(WhyNot.Alters.POSITION, "/position", new Wanted(wanted.mic(), wanted.pattern(), null), "In any other place");
        }
    }

    private void freed(WhyNot.Alters alters, String at, Wanted wider, String words) {
        tried++;
        ifHelps(result(verdict, wider), (outcome, mine) -> {
            Placed there = wider.is(mine.first().placed()) ? mine.first().placed() : mine.second().placed();
            found.add(new Found(change(alters, at, alters == WhyNot.Alters.PATTERN ? there.pattern().id() : there.position().id(), outcome, mine,
                    first == mine ? verdict.candidates().stream().filter(one -> !wider.isIn(one)).findFirst().orElse(null) : first,
                    words + ", such as " + there.pattern().id() + " in the place \"" + Naming.small(there.position().name()) + "\""), 0));
        });
    }

    private void limits() {
        Limits set = question.limits();
        for (Limit limit : Limit.values()) {
            if (limit.isSet(set) && !(limit == Limit.CHANNELS && wanted.mic().channels() > Usual.CHANNELS)) {
                ask(WhyNot.Alters.LIMIT, limit.pointer(set), "", limit.ordinal(), Advisor.question(question, limit.lifted(set)),
                        "Without " + Naming.small(limit.says(set)));
            }
        }
        locker();
        if (wanted.mic().channels() > scene.setting().channels()) {
            channels(wanted.mic().channels());
        }
        for (int channels = 1; channels <= Usual.CHANNELS; channels++) {
            if (channels != scene.setting().channels() && wanted.mic().channels() <= channels) {
                channels(channels);
            }
        }
    }

    /** What is out taken as if it were in, and what the locker has not as if it had. */
    private void locker() {
        Supply supply = scene.supply();
        String type = wanted.mic().id();
        if (!supply.atHand().has(type)) {
            FromLocker other = supply.owned().has(type) ? FromLocker.OWNED : FromLocker.ANY;
            ask(WhyNot.Alters.LIMIT, WaysOut.LOCKER, other.id(), 20, Scene.of(question, now.catalogue(), supply.as(other), scene.remembered().memory()),
                    other == FromLocker.OWNED ? "With all that the locker owns" : "With the whole catalogue");
        }
    }

    private void channels(int channels) {
        Limits set = question.limits();
        ask(WhyNot.Alters.LIMIT, "/limits/mics", Integer.toString(channels), 10 + channels, Advisor.question(question, new Limits(channels,
                set.phantom(), set.preampGainDb(), set.preampNoiseDbu(), set.onlyFamilies(), set.withoutFamilies(), set.onlyMicTypes(),
                set.withoutMicTypes())), "With " + (channels == 1 ? "one channel only" : channels + " channels"));
    }

    private void gain() {
        Limits set = question.limits();
        Double needed = best == null ? null : best.placed().predicted().gainDb();
        if (needed != null && scene.setting().preampGainDb() < MUCH_GAIN_DB) {
            ask(WhyNot.Alters.GAIN, "/limits/preampGainDb", Questions.plain(MUCH_GAIN_DB), 0, Advisor.question(question, new Limits(set.mics(),
                    set.phantom(), MUCH_GAIN_DB, set.preampNoiseDbu(), set.onlyFamilies(), set.withoutFamilies(), set.onlyMicTypes(),
                    set.withoutMicTypes())), "With " + Questions.plain(MUCH_GAIN_DB) + " dB of clean gain");
        }
    }

    private void neighbours() {
        List<Neighbour> all = question.neighbours();
        for (int i = 0; i < all.size(); i++) {
            List<Neighbour> rest = new ArrayList<>(all);
            Neighbour gone = rest.remove(i);
            ask(WhyNot.Alters.NEIGHBOURS, "/neighbours/" + i, "", i, with(question, question.ways(), question.room(), question.character(), rest,
                    question.circumstances()), "Without the " + Naming.small(now.catalogue().sources().get(gone.source()).name()) + " beside it");
        }
        if (all.size() > 1) {
            ask(WhyNot.Alters.NEIGHBOURS, "/neighbours", "", all.size(), with(question, question.ways(), question.room(), question.character(),
                    List.of(), question.circumstances()), "With nobody playing beside it");
        }
    }

    private void circumstances() {
        for (String circumstance : question.circumstances()) {
            ask(WhyNot.Alters.CIRCUMSTANCE, "/circumstances", circumstance, 0, with(question, question.ways(), question.room(),
                    question.character(), question.neighbours(), without(question.circumstances(), circumstance)),
                    "Were it not for \"" + circumstance + "\"");
        }
    }

    private void characters() {
        var known = now.catalogue().characters();
        for (String named : question.character()) {
            ask(WhyNot.Alters.CHARACTER, "/character", "", 0, with(question, question.ways(), question.room(),
                    without(question.character(), named), question.neighbours(), question.circumstances()),
                    "If " + Naming.small(known.get(named).name()) + " were not wanted");
        }
        for (var character : known.values()) {
            boolean contradicts = question.character().stream().anyMatch(named -> named.equals(character.id())
                    || character.against().contains(named) || known.get(named).against().contains(character.id()));
            if (!contradicts) {
                List<String> more = new ArrayList<>(question.character());
                more.add(character.id());
                ask(WhyNot.Alters.CHARACTER, "/character", character.id(), 1, with(question, question.ways(), question.room(), more,
                        question.neighbours(), question.circumstances()), "If " + Naming.small(character.name()) + " were wanted");
            }
        }
    }

    /** A way of playing that opens a place, such as a mute in the bell. */
    private void ways() {
        scene.setting().source().positions().stream()
                .filter(position -> Placements.fits(wanted.mic(), position) && !Placements.sensible(scene, position))
                .flatMap(position -> position.onlyWays().stream()).distinct()
                .forEach(way -> {
                    List<String> more = new ArrayList<>(question.ways());
                    more.add(way);
                    ask(WhyNot.Alters.WAY, "/ways", way, 0, with(question, more, question.room(), question.character(), question.neighbours(),
                            question.circumstances()), "Played " + way);
                });
    }

    /** Rooms nearest in reverberation time first. */
    private void rooms() {
        Room here = scene.setting().room();
        for (Room room : now.catalogue().rooms().values()) {
            if (!room.id().equals(here.id())) {
                double away = room.outdoors() || here.outdoors() ? 10 : Math.abs(Math.log(room.reverbTimeS() / here.reverbTimeS()));
                ask(WhyNot.Alters.ROOM, "/room", room.id(), away, with(question, question.ways(), room.id(), question.character(),
                        question.neighbours(), question.circumstances()), "In another room (" + Naming.small(room.name()) + ")");
            }
        }
    }

    private static List<String> without(List<String> all, String one) {
        return all.stream().filter(other -> !other.equals(one)).toList();
    }

    private static Question with(Question old, List<String> ways, String room, List<String> character, List<Neighbour> neighbours,
            List<String> circumstances) {
        return old.altered(List.copyOf(ways), room, List.copyOf(character), old.limits(), List.copyOf(neighbours), circumstances);
    }

    private void ask(WhyNot.Alters alters, String at, String to, double size, Question changed, String words) {
        ask(alters, at, to, size, Scene.of(changed, now.catalogue(), scene.supply(), scene.remembered().memory()), words);
    }

    private void ask(WhyNot.Alters alters, String at, String to, double size, Scene other, String words) {
        tried++;
        if (shortCut.cannotHelp(other, now.rules(), stood(), wasShown ? 1 : SHOWN)) {
            return;
        }
        Advisor.Verdict then = Advisor.judge(other, now.rules());
        ifHelps(result(then, wanted), (outcome, mine) ->
                found.add(new Found(change(alters, Nested.AT + at, to, outcome, mine, rival(then, mine), words), size)));
    }

    /** The set-up that was first, if it still stands and is not the same; else the best other. */
    private Candidate rival(Advisor.Verdict then, Candidate mine) {
        Function<Candidate, List<String>> places = candidate -> candidate.isSingle() ? List.of(place(candidate.first()))
                : List.of(candidate.technique(), place(candidate.first()), place(candidate.second()));
        return then.candidates().stream().filter(one -> first != null && places.apply(one).equals(places.apply(first))).findFirst()
                .or(() -> then.candidates().stream().filter(one -> one != mine && !wanted.isIn(one)).findFirst()).orElse(null);
    }

    private static String place(Judged judged) {
        return judged.placed().mic().id() + " " + judged.placed().pattern().id() + " " + judged.placed().position().id();
    }

    private interface Helps {
        void with(WhyNot.Outcome outcome, Candidate mine);
    }

    /**
     * How what is wanted does in a verdict.
     *
     * @param outcome first, shown, or neither
     * @param mine the candidate it is in; null where it does not stand at all
     */
    private record Result(WhyNot.Outcome outcome, Candidate mine) {
    }

    /** Only what is better than before: what was shown already has to come first, what stood already has to be shown. */
    private void ifHelps(Result result, Helps helps) {
        WhyNot.Outcome reached = result.outcome() != null ? result.outcome() : stood() || result.mine() == null ? null : WhyNot.Outcome.ALLOWED;
        if (reached != null && !(wasShown && reached != WhyNot.Outcome.FIRST)) {
            helps.with(reached, result.mine());
        }
    }

    private boolean stood() {
        return wasShown || best != null && !best.ruledOut() && standing != WhyNot.Standing.LIMITED;
    }

    private static Result result(Advisor.Verdict verdict, Wanted wanted) {
        List<Candidate> shown = Choice.of(verdict.candidates(), SHOWN);
        for (int i = 0; i < shown.size(); i++) {
            if (wanted.isIn(shown.get(i))) {
                return new Result(i == 0 ? WhyNot.Outcome.FIRST : WhyNot.Outcome.SHOWN, shown.get(i));
            }
        }
        return new Result(null, verdict.candidates().stream().filter(wanted::isIn).findFirst().orElse(null));
    }

    private WhyNot.Change change(WhyNot.Alters alters, String at, String to, WhyNot.Outcome outcome, Candidate mine, Candidate rival, String words) {
        String result = switch (outcome) {
            case FIRST -> ", it comes first";
            case SHOWN -> ", it is among the first three";
            case ALLOWED -> ", it may be used";
        };
        return new WhyNot.Change(alters, at, to, outcome, mine.technique(), mine.centipoints() / 100.0,
                rival == null ? null : rival.centipoints() / 100.0,
                words + result + (mine.isSingle() ? "" : " as a half of " + WhyNotCase.named(mine)) + ": "
                        + WhyNotCase.points(mine.centipoints()) + " points"
                        + (rival == null ? "." : ", against " + WhyNotCase.points(rival.centipoints()) + " for " + WhyNotCase.named(rival) + "."));
    }
}
