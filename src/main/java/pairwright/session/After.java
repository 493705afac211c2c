package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.locker.LockerFault;
import pairwright.locker.Mark;
import pairwright.locker.MarkDraft;
import pairwright.model.Catalogue;
import pairwright.model.Fault;
import pairwright.model.Nearest;
import pairwright.model.Source;
import pairwright.model.Word;

/**
 * A session as it was planned, and what became of each of its microphones.
 *
 * @param lines in the order of the line-up
 */
public record After(List<Line> lines) {
    public After {
        lines = List.copyOf(lines);
    }

    /** What can become of a microphone. */
    public enum Became implements Word {
        KEPT("kept"),
        /** The same type at another position. */
        MOVED("moved"),
        /** Another type, there or elsewhere. */
        CHANGED("changed"),
        /** It was taken away, or what was done instead is said in words alone. */
        GIVEN_UP("given-up");

        private final String id;

        Became(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }

        static Became of(Mark mark) {
            return mark.kept() ? KEPT : mark.toMicType() != null ? CHANGED : mark.toPosition() != null ? MOVED : GIVEN_UP;
        }
    }

    /**
     * One microphone.
     *
     * @param seat id
     * @param mic which of the seat's, from 1
     * @param source id
     * @param player null for not named
     * @param planned as it was picked
     * @param became null while nobody has said
     * @param mark what was said of it; null while nobody has
     */
    public record Line(String seat, int mic, String source, String player, Picks.Mic planned, Became became, Mark mark) {
    }

    /**
     * What somebody says of a microphone. Of which source, type and position it was follows from the picks.
     *
     * @param seat id
     * @param mic which of the seat's, from 1
     * @param kept whether it stayed as it was planned
     * @param changedTo what was done instead, in words; null for not said
     * @param toMicType id of what stood there in the end; null for the same
     * @param toPosition id of where it stood in the end; null for the same
     * @param why null for not said
     */
    public record Told(String seat, int mic, boolean kept, String changedTo, String toMicType, String toPosition, String why) {
    }

    /** What was planned beside what was said of it. A mark of a microphone that is no longer in the picks is left out. */
    public static After of(LineUp lineUp, Picks picks, List<Mark> marks) {
        Map<String, Mark> said = marks.stream().collect(Collectors.toMap(mark -> mark.seat() + " " + mark.mic(), Function.identity()));
        List<Line> lines = new ArrayList<>();
        for (Seat seat : lineUp.seats()) {
            List<Picks.Mic> mics = mics(picks, seat.id());
            for (int i = 0; i < mics.size(); i++) {
                Mark mark = said.get(seat.id() + " " + (i + 1));
                lines.add(new Line(seat.id(), i + 1, seat.source(), seat.player(), mics.get(i), mark == null ? null : Became.of(mark), mark));
            }
        }
        return new After(lines);
    }

    /**
     * Marks as the locker keeps them.
     *
     * @throws LockerFault.Unusable with every fault, at pointers such as {@code /marks/0/seat}
     */
    public static List<MarkDraft> drafts(LineUp lineUp, Picks picks, List<Told> told, Catalogue catalogue) {
        List<Fault> faults = new ArrayList<>();
        List<MarkDraft> drafts = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            draft(lineUp, picks, told.get(i), catalogue, "/marks/" + i, faults).ifPresent(drafts::add);
        }
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        return drafts;
    }

    private static Optional<MarkDraft> draft(LineUp lineUp, Picks picks, Told told, Catalogue catalogue, String at, List<Fault> faults) {
        Seat seat = lineUp.seat(told.seat()).orElse(null);
        if (seat == null) {
            faults.add(new Fault(at + "/seat", "there is no seat \"" + Shown.of(told.seat()) + "\" in the line-up. "
                    + Nearest.remedy(told.seat(), lineUp.seats().stream().map(Seat::id).toList())));
            return Optional.empty();
        }
        List<Picks.Mic> mics = mics(picks, seat.id());
        if (told.mic() < 1 || told.mic() > mics.size()) {
            faults.add(new Fault(at + "/mic", "the plan has " + (mics.isEmpty() ? "no microphone" : mics.size() == 1 ? "1 microphone" : mics.size() + " microphones")
                    + " at " + seat.id() + ", and this is number " + told.mic() + ". Count from 1"));
            return Optional.empty();
        }
        Picks.Mic planned = mics.get(told.mic() - 1);
        if (told.toMicType() != null && !catalogue.mics().containsKey(told.toMicType())) {
            faults.add(new Fault(at + "/toMicType", "there is no mic type \"" + Shown.of(told.toMicType()) + "\". "
                    + Nearest.to(told.toMicType(), catalogue.mics().keySet()).map(near -> "Did you mean " + near + "?").orElse("All ids are at /api/mics")));
        }
        Source source = catalogue.sources().get(seat.source());
        if (told.toPosition() != null && source != null && source.positions().stream().noneMatch(position -> position.id().equals(told.toPosition()))) {
            faults.add(new Fault(at + "/toPosition", "there is no position \"" + Shown.of(told.toPosition()) + "\" at " + source.name() + ". "
                    + Nearest.remedy(told.toPosition(), source.positions().stream().map(position -> position.id()).toList())));
        }
        return Optional.of(new MarkDraft(seat.id(), told.mic(), seat.source(), lineUp.floor().room(), seat.player(), planned.micType(), planned.position(),
                planned.unit(), told.kept(), told.changedTo(), other(told.toMicType(), planned.micType()), other(told.toPosition(), planned.position()), told.why()));
    }

    /** What differs from what was planned; null for the same. */
    private static String other(String to, String planned) {
        return to == null || to.equals(planned) ? null : to;
    }

    private static List<Picks.Mic> mics(Picks picks, String seat) {
        return picks.seats().stream().filter(at -> at.seat().equals(seat)).findFirst().map(Picks.AtSeat::mics).orElse(List.of());
    }
}
