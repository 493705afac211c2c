package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pairwright.advice.Knowledge;
import pairwright.locker.PhantomSwitch;
import pairwright.session.allocation.Bank;
import pairwright.session.allocation.Solution;

/** Puts a plan together: what its lines hear, when, what is used up, and what the rules say of it. */
final class PlanJudge {
    private final LineUp lineUp;
    private final Gear gear;
    private final Layout layout;
    private final PlanRules rules;
    private final Knowledge now;

    PlanJudge(LineUp lineUp, Gear gear, Layout layout, PlanRules rules, Knowledge now) {
        this.lineUp = lineUp;
        this.gear = gear;
        this.layout = layout;
        this.rules = rules;
        this.now = now;
    }

    /** @param boundCentipoints no plan can have more */
    Plan plan(int rank, PlanMaker.Draft draft, Solution solution, boolean proven, long boundCentipoints) {
        double score = (solution.centipoints() - solution.keptCentipoints()) / 100.0;
        Plan plan = new Plan(rank, score, proven, proven ? score : boundCentipoints / 100.0, draft.served(), draft.leftOut(), draft.lines(), Hearing.of(lineUp, now.catalogue()).of(draft.lines()), Arrivals.of(lineUp, now.catalogue()).of(draft.served(), draft.lines()),
                supplies(draft.lines(), solution), counts(draft.lines()), layout.work().of(draft.lines()), PatchOrder.of(draft.lines(), line -> now.catalogue().mics().get(line.placement().micType()).power(), this::oneSwitch),
                List.of(), List.of());
        Plan judged = rules.judged(plan, lineUp, gear, now.catalogue());
        long counted = judged.served().stream().mapToLong(served -> Math.round(served.option().score() * 100)).sum()
                + judged.reasons().stream().mapToLong(said -> Math.round(said.points() * 100)).sum();
        if (counted != Math.round(score * 100)) {
            throw new IllegalStateException("The plan was searched for as worth " + score + " and its reasons come to " + counted / 100.0);
        }
        return judged;
    }

    private boolean oneSwitch(Line line) {
        return gear.channels() != null && gear.channels().stream().anyMatch(channel -> channel.id().equals(line.channel()) && channel.phantom() == PhantomSwitch.BANK);
    }

    private List<Plan.Supply> supplies(List<Line> lines, Solution solution) {
        List<Plan.Supply> supplies = new ArrayList<>();
        List<Bank> banks = layout.resources().channels().banks();
        for (int bank = 0; bank < banks.size(); bank++) {
            List<Gear.Channel> of = layout.resources().channels().of(bank);
            if (of.isEmpty()) {
                continue;
            }
            List<Line> on = lines.stream().filter(line -> of.stream().anyMatch(channel -> channel.id().equals(line.channel()))).toList();
            double drawnMa = on.stream().filter(Line::phantomWanted).mapToDouble(Line::currentMa).sum();
            Integer supply = banks.get(bank).supplyTenthMa();
            supplies.add(new Plan.Supply(layout.resources().channels().bankName(bank), on.stream().anyMatch(Line::phantom), drawnMa,
                    supply == null ? null : Double.valueOf(supply / 10.0), on.size(), of.size()));
        }
        return supplies;
    }

    private List<Plan.Count> counts(List<Line> lines) {
        List<Plan.Count> counts = new ArrayList<>();
        Resources resources = layout.resources();
        counts.add(new Plan.Count("channels", lines.size(), resources.channels().counted() ? Integer.valueOf(resources.channels().banks().stream().mapToInt(bank -> bank.channels().size()).sum()) : null));
        Map<StandKind, Integer> stands = new TreeMap<>();
        lines.stream().filter(line -> line.standKind() != null && line.sharesStandWith() == null).forEach(line -> stands.merge(line.standKind(), 1, Integer::sum));
        stands.forEach((kind, used) -> counts.add(new Plan.Count(kind.id() + " stands", used, null)));
        counts.add(new Plan.Count("stands in all", stands.values().stream().mapToInt(one -> one).sum(),
                resources.stands().counted() ? Integer.valueOf(resources.stands().classes().stream().mapToInt(one -> one.stands().size()).sum()) : null));
        int boosters = (int) lines.stream().map(Line::booster).filter(one -> one != null).count();
        if (boosters > 0) {
            counts.add(new Plan.Count("inline boosters", boosters, resources.boosters().size()));
        }
        int boxes = (int) lines.stream().filter(line -> line.between().box() != null).count();
        if (boxes > 0) {
            counts.add(new Plan.Count("line boxes", boxes, resources.boxesThere()));
        }
        int pads = (int) lines.stream().filter(line -> line.between().pad() != null).count();
        int wanted = (int) lines.stream().filter(line -> line.between().overDb() != null && line.between().overDb() > 0).count();
        if (pads + wanted > 0) {
            counts.add(new Plan.Count("pads in a line", pads + wanted, resources.pads().size()));
        }
        return counts;
    }
}
