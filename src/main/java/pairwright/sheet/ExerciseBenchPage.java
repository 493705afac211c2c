package pairwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.drawing.Reader;
import pairwright.lab.Handing;
import pairwright.lab.Handout;
import pairwright.lab.Key;
import pairwright.lab.LabDesk;
import pairwright.locker.Act;
import pairwright.locker.ExerciseSet;
import pairwright.locker.HandedIn;
import pairwright.locker.LockerFault;
import pairwright.sheet.ReadingParts.Link;
import pairwright.sheet.UnitWritePages.Done;

/** The exercise of one bench: what it is asked, and the form in which it hands in. What is right is on it only for whoever may see the key by now. */
public final class ExerciseBenchPage {
    private ExerciseBenchPage() {
    }

    /**
     * What the page shows.
     *
     * @param came when the reader last handed in here; empty for never
     * @param mark what that earned, for whoever may know by now; null otherwise
     * @param right the key, likewise; empty otherwise
     * @param onward the next bench, for an instructor who enters answers; null otherwise
     */
    public record Content(List<String> facts, List<Link> kit, ExerciseView exercise, String action, String key, boolean imperial, List<String> faults, String came, MarkView mark,
            List<MarkView.Right> right, List<String> lesson, Link onward) {
        public boolean faulty() {
            return !faults.isEmpty() || !exercise.wrong().isEmpty();
        }
    }

    /** The page, with what this reader handed in last. */
    public static Page of(AtLab lab, ExerciseSet set, ExerciseSet.Bench bench) {
        Handout handout = lab.desk().handout(set, bench.number());
        HandedIn last = last(lab, set, bench);
        AnswerForm form = last == null ? AnswerForm.blank() : AnswerForm.of(handout.items(), LabDesk.answer(last));
        return page(lab, set, bench, 200, handout, form, List.of(), last, null);
    }

    /** The last this reader handed in; an instructor, who enters it for others, sees the last of all. */
    private static HandedIn last(AtLab lab, ExerciseSet set, ExerciseSet.Bench bench) {
        return lab.at().locker().exercises().handedIn(set.id()).stream().filter(one -> one.bench() == bench.number() && (lab.teaches() || one.by().equals(lab.who())))
                .reduce((one, next) -> next).orElse(null);
    }

    private static Page page(AtLab lab, ExerciseSet set, ExerciseSet.Bench bench, int status, Handout handout, AnswerForm form, List<String> faults, HandedIn last, String sentKey) {
        ExerciseView view = lab.view(handout, form, "");
        boolean sees = lab.sees(set);
        Key key = sees ? lab.desk().key(set, bench.number(), lab.at().role()) : null;
        MarkView mark = key == null || last == null ? null
                : MarkView.of(handout, key, lab.desk().handing(set, bench.number(), LabDesk.answer(last), lab.at().role()).mark(), lab.pictures(LabDesk.answer(last), ""), lab.links());
        String came = last == null ? "" : "Handed in " + lab.at().moments().moment(last.at()) + (lab.teaches() ? " by " + last.by() : "")
                + (last.late() ? ", when the keys were open: what came in before counts" : "") + ". Hand in again to put another answer in its place." + (lab.teaches() ? "" : " Whoever shares your token sees and replaces it, too.");
        List<String> facts = new ArrayList<>(List.of("Bench " + bench.number() + " of " + set.benches().size()));
        if (lab.kind(set) != null) {
            facts.add("about " + lab.kind(set).minutes().get(set.level() - 1) + " minutes");
        }
        SendForm keyed = SendForm.to(lab.at().visit(), AtLab.path(set, "bench/" + bench.number()), "exercise", List.of());
        Content content = new Content(facts, kit(lab, bench), view, keyed.action(), sentKey == null ? keyed.key() : sentKey, lab.at().visit().reader().imperial(), faults, came, mark,
                key == null ? List.of() : mark != null ? mark.right() : lab.right(handout, key, ""), key == null ? List.of() : key.lesson(), onward(lab, set, bench));
        return lab.page(status, "bench", LabFrame.below(lab.at().html(), lab.at().visit(), handout.title(),
                List.of(lab.at().at().link(AtLab.SETS, "Classes"), lab.link(set, "", lab.name(set))),
                "handed-in".equals(lab.at().visit().first("done")) ? "It is handed in." : ""), content);
    }

    private static Link onward(AtLab lab, ExerciseSet set, ExerciseSet.Bench bench) {
        return lab.teaches() && bench.number() < set.benches().size() ? lab.link(set, "bench/" + (bench.number() + 1), "Bench " + (bench.number() + 1)) : null;
    }

    static List<Link> kit(AtLab lab, ExerciseSet.Bench bench) {
        return bench.kit().stream().map(one -> {
            var type = lab.at().known().catalogue().mics().get(one.micType());
            String name = type == null ? one.micType() : pairwright.model.Naming.small(type.name());
            return lab.at().at().link("/mics/" + one.micType(), one.label() == null ? name : one.label() + ", " + name);
        }).toList();
    }

    /** Takes in what a bench answers, or shows the form again with all that is wrong. */
    public static Done handedIn(AtLab lab, ExerciseSet set, ExerciseSet.Bench bench, Sent sent, Act act) {
        Handout handout = lab.desk().handout(set, bench.number());
        AnswerForm form = AnswerForm.read(handout.items(), sent::all, new Reader(false, lab.at().visit().reader().locale()));
        List<String> faults = new ArrayList<>();
        if (form.isBlank()) {
            faults.add("Nothing is filled in yet. Answer at least one question; what is left out earns nothing.");
        }
        if (faults.isEmpty() && form.faults().isEmpty()) {
            try {
                Handing handing = lab.desk().handing(set, bench.number(), form.answer(), lab.at().role());
                lab.at().locker().change(act, changes -> Integer.toString(lab.desk().handIn(changes, handing).number()));
                return new Done(AtLab.path(set, "bench/" + bench.number()) + "?done=handed-in", null);
            } catch (LockerFault.Unusable wrong) {
                form = form.wrong(atItems(wrong, faults));
            } catch (LockerFault.KeyUsedOtherwise other) {
                faults.add("This page was handed in before with other answers, and those were kept. Press the button again if these are to be kept instead.");
                return new Done(null, page(lab, set, bench, 422, handout, form, faults, last(lab, set, bench), null));
            }
        }
        return new Done(null, page(lab, set, bench, 400, handout, form, faults, last(lab, set, bench), sent.first(SendForm.KEY)));
    }

    /** Faults by the item they are of; those of none go into the list. */
    private static Map<String, String> atItems(LockerFault.Unusable wrong, List<String> faults) {
        Map<String, String> items = new LinkedHashMap<>();
        wrong.faults().forEach(fault -> {
            if (fault.at().startsWith("/answer/")) {
                items.put(fault.at().substring("/answer/".length()).replace("~1", "/").replace("~0", "~"), Choices.capital(fault.says()));
            } else {
                faults.add(SendForm.sentence(Choices.capital(fault.says())));
            }
        });
        return items;
    }
}
