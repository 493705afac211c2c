package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.locker.Act;
import pairwright.locker.LockerFault;
import pairwright.locker.Mark;
import pairwright.locker.MarkDraft;
import pairwright.model.Fault;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Position;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.Seat;
import pairwright.sheet.ReadingParts.Link;

/** What became of a plan: what was kept, what was changed and why. It is filled in afterwards, here or on paper, and the next answer minds it. */
public final class RecallPage {
    private static final String VERSION = "version";
    private static final String KEPT = "kept";
    private static final String CHANGED = "changed";
    private static final String SAME = "";

    private RecallPage() {
    }

    /**
     * What it shows.
     *
     * @param form null where this reader may not fill it in
     * @param lines line by line
     * @param types names of types, offered while one is typed
     * @param noted how many lines are noted, in a sentence; empty for none
     */
    public record Content(SendForm form, List<OfLine> lines, List<String> types, String noted) {
    }

    /**
     * One line: as it was planned, and what became of it.
     *
     * @param key the beginning of the names of its fields
     * @param kept kept, changed, or empty for not said
     * @param type what stood there in the end; empty for the same
     * @param positions where it may have stood, and which was chosen
     */
    public record OfLine(String key, int number, String name, String planned, String kept, String type, List<Choice> positions, String changedTo, String why) {
    }

    /** What the address asks for. */
    public static Page of(AtPlan at) {
        return page(at, 200, Sent.NOTHING, List.of(), "noted".equals(at.visit().first("done")) ? "What became of it is noted." : "");
    }

    private static Page page(AtPlan at, int status, Sent typed, List<Fault> faults, String done) {
        PlanChosen chosen = PlanChosen.of(at);
        List<Link> trail = List.of(at.at().at().link(at.path("sheets") + chosen.query(), "Sheets"));
        PlanFrame frame = PlanFrame.of(at, "Recall sheet", "sheets", trail, chosen, chosen.fault().isEmpty() ? List.of() : List.of(chosen.fault())).done(done);
        return chosen.plan() == null ? PlanSheets.without(at, frame, chosen) : at.page(status, "recall", frame, content(at, chosen, typed, faults));
    }

    private static Content content(AtPlan at, PlanChosen chosen, Sent typed, List<Fault> faults) {
        List<Mark> marks = at.at().locker().marks().of(at.id());
        SendForm form = !at.at().mayWrite() ? null : SendForm.to(at.visit(), at.path("recall") + chosen.query(), "recall", List.of())
                .hiding(VERSION, Long.toString(at.at().locker().marks().version(at.id())));
        for (Fault fault : faults) {
            form = form == null ? null : form.wrong(List.of(fault));
        }
        List<OfLine> lines = chosen.plan().lines().stream().map(line -> line(at, line, marks, typed)).toList();
        String noted = marks.isEmpty() ? "" : marks.size() + " of " + lines.size() + " lines are noted, last by " + marks.get(marks.size() - 1).by() + ".";
        return new Content(form, lines, at.catalogue().mics().values().stream().map(MicType::name).sorted().toList(), noted);
    }

    private static String key(Line line) {
        return line.seat() + "." + line.mic();
    }

    private static OfLine line(AtPlan at, Line line, List<Mark> marks, Sent typed) {
        String key = key(line);
        Mark mark = marks.stream().filter(one -> one.seat().equals(line.seat()) && one.mic() == line.mic()).findFirst().orElse(null);
        boolean sent = typed.has(key + ".kept") || typed.has(key + ".why");
        String kept = sent ? or(typed.first(key + ".kept")) : mark == null ? "" : mark.kept() ? KEPT : CHANGED;
        String type = sent ? or(typed.first(key + ".type")) : mark == null || mark.toMicType() == null ? "" : at.catalogue().mics().containsKey(mark.toMicType())
                ? at.catalogue().mics().get(mark.toMicType()).name() : mark.toMicType();
        String position = sent ? or(typed.first(key + ".position")) : mark == null ? "" : or(mark.toPosition());
        List<Choice> positions = new ArrayList<>(List.of(new Choice(SAME, "the same", position.isEmpty())));
        positions(at, line).forEach(one -> positions.add(new Choice(one.id(), at.reader().sentence(one.name()), one.id().equals(position))));
        String planned = (line.unit() == null ? line.placement().name() : line.unit().label() + ", " + line.placement().name()) + ", "
                + (SetUpWords.wired(line.placement()) ? "" : at.reader().distance(line.placement().distanceM()) + ", ") + Naming.small(at.reader().sentence(line.placement().positionName()));
        return new OfLine(key, line.number(), line.name(), planned, kept, type, positions, sent ? or(typed.first(key + ".to")) : mark == null ? "" : or(mark.changedTo()),
                sent ? or(typed.first(key + ".why")) : mark == null ? "" : or(mark.why()));
    }

    private static String or(String text) {
        return text == null ? "" : text;
    }

    private static List<Position> positions(AtPlan at, Line line) {
        return at.catalogue().sources().containsKey(line.source()) ? at.catalogue().sources().get(line.source()).positions() : List.of();
    }

    /** Notes what a form says. */
    public static UnitWritePages.Done sent(AtPlan at, Sent sent, Act act) {
        PlanChosen chosen = PlanChosen.of(at);
        if (chosen.plan() == null) {
            return new UnitWritePages.Done(null, page(at, 409, sent, List.of(), ""));
        }
        List<Fault> faults = new ArrayList<>();
        List<MarkDraft> drafts = drafts(at, chosen.plan(), sent, faults);
        if (faults.isEmpty()) {
            String version = sent.first(VERSION);
            try {
                at.at().locker().change(act, changes -> {
                    changes.marks(at.id(), drafts, version == null || !version.matches("\\d{1,18}") ? null : Long.valueOf(version));
                    return at.id();
                });
                return new UnitWritePages.Done(at.path("recall") + (chosen.query().isEmpty() ? "?" : chosen.query() + "&") + "done=noted", null);
            } catch (LockerFault.Unusable wrong) {
                faults.addAll(wrong.faults());
            } catch (LockerFault.Changed changed) {
                return new UnitWritePages.Done(null, page(at, 412, sent, List.of(new Fault("", "Somebody noted something since you opened the page, and nothing of yours was"
                        + " saved. Pressing the button again puts yours in place of theirs")), ""));
            } catch (LockerFault.KeyUsedOtherwise other) {
                return new UnitWritePages.Done(null, page(at, 422, sent, List.of(new Fault("", other.getMessage())), ""));
            }
        }
        return new UnitWritePages.Done(null, page(at, 400, sent, faults.stream().map(fault -> new Fault("", fault.says())).toList(), ""));
    }

    /** A line of which nothing is said gets no mark. */
    private static List<MarkDraft> drafts(AtPlan at, Plan plan, Sent sent, List<Fault> faults) {
        Map<String, String> types = at.catalogue().mics().values().stream().collect(Collectors.toMap(mic -> mic.name().toLowerCase(Locale.ROOT), MicType::id, (one, other) -> one));
        List<MarkDraft> drafts = new ArrayList<>();
        for (Line line : plan.lines()) {
            String key = key(line);
            String kept = sent.first(key + ".kept");
            String typed = sent.first(key + ".type");
            String type = typed == null ? null : types.getOrDefault(typed.toLowerCase(Locale.ROOT), at.catalogue().mics().containsKey(typed) ? typed : null);
            String position = sent.first(key + ".position");
            String to = sent.first(key + ".to");
            String why = sent.first(key + ".why");
            String who = "line " + line.number() + ", " + line.name() + ": ";
            if (typed != null && type == null) {
                faults.add(new Fault("", who + "\u201c" + Shown.of(typed) + "\u201d is no type of the catalogue. Choose one that is offered, or say it in words beside it"));
            }
            if (position != null && positions(at, line).stream().noneMatch(one -> one.id().equals(position))) {
                faults.add(new Fault("", who + "\u201c" + Shown.of(position) + "\u201d is no place at this source. Choose one of the list"));
            }
            boolean other = typed != null || position != null || to != null;
            if (kept == null && !other && why == null) {
                continue;
            }
            if (KEPT.equals(kept) && other) {
                faults.add(new Fault("", who + "it was kept, and yet something else is said to have stood there. Choose changed, or empty those fields"));
            } else if (kept == null && !other) {
                faults.add(new Fault("", who + "there is a reason but not what became of it. Choose kept or changed"));
            }
            var mic = line.placement();
            String player = at.lineUp().seat(line.seat()).map(Seat::player).orElse(null);
            drafts.add(new MarkDraft(line.seat(), line.mic(), line.source(), at.lineUp().floor().room(), player, mic.micType(), mic.position(),
                    line.unit() == null ? null : line.unit().id(), KEPT.equals(kept), KEPT.equals(kept) ? null : to, KEPT.equals(kept) ? null : type, KEPT.equals(kept) ? null : position, why));
        }
        return drafts;
    }
}
