package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.locker.PhantomSwitch;

/** Counts a plan through, from the problem and the plan alone. It shares nothing with the search. */
final class PlanCheck {
    private final Problem problem;
    private final Solution plan;
    private final List<String> faults = new ArrayList<>();

    private PlanCheck(Problem problem, Solution plan) {
        this.problem = problem;
        this.plan = plan;
    }

    /**
     * @param mayLeaveOut seats that may be left out though they must be served
     * @param mayGetFewer whether choices that are a way out may be chosen
     * @return the same plan
     * @throws IllegalStateException where it is not a plan of the problem; names all that is wrong
     */
    static Solution passed(Problem problem, Solution plan, Set<Integer> mayLeaveOut, boolean mayGetFewer) {
        PlanCheck check = new PlanCheck(problem, plan);
        if (check.checkSeats(mayLeaveOut, mayGetFewer)) {
            check.checkCaps();
            check.checkChannels();
            check.checkWorth();
        }
        if (!check.faults.isEmpty()) {
            throw new IllegalStateException("A plan was found that is none: " + String.join("; ", check.faults));
        }
        return plan;
    }

    private Choice choice(int seat) {
        return problem.seats().get(seat).choices().get(plan.choices().get(seat));
    }

    private boolean checkSeats(Set<Integer> mayLeaveOut, boolean mayGetFewer) {
        int seats = problem.seats().size();
        if (plan.choices().size() != seats || plan.channels().size() != seats || plan.served().size() != seats) {
            faults.add("it is not for " + seats + " seats");
            return false;
        }
        for (int seat = 0; seat < seats; seat++) {
            Seat of = problem.seats().get(seat);
            int chosen = plan.choices().get(seat);
            if (chosen < 0 || chosen >= of.choices().size()) {
                faults.add("seat " + of.id() + " has no choice " + chosen);
                return false;
            }
            if (choice(seat).use() == Choice.Use.OUT && of.must() && !mayLeaveOut.contains(seat)) {
                faults.add("seat " + of.id() + " must be served and is left out");
            }
            if (choice(seat).use() == Choice.Use.FEWER && !mayGetFewer) {
                faults.add("seat " + of.id() + " gets less than was asked for");
            }
            if (plan.channels().get(seat).size() != choice(seat).feeds().size() || plan.served().get(seat).size() != choice(seat).anyOf().size()) {
                faults.add("seat " + of.id() + " has not a channel for each feed and a cap for each thing");
                return false;
            }
        }
        return true;
    }

    private void checkCaps() {
        Map<String, Integer> taken = new HashMap<>();
        for (int seat = 0; seat < plan.choices().size(); seat++) {
            choice(seat).takes().forEach((cap, count) -> taken.merge(cap, count, Integer::sum));
            for (int entry = 0; entry < choice(seat).anyOf().size(); entry++) {
                String cap = plan.served().get(seat).get(entry);
                if (!choice(seat).anyOf().get(entry).contains(cap)) {
                    faults.add("seat " + problem.seats().get(seat).id() + " cannot be served by " + cap);
                }
                taken.merge(cap, 1, Integer::sum);
            }
        }
        for (Cap cap : problem.caps()) {
            if (taken.getOrDefault(cap.name(), 0) > cap.there()) {
                faults.add("of " + cap.name() + " it takes " + taken.get(cap.name()) + " where there are " + cap.there());
            }
        }
    }

    private void checkChannels() {
        Set<Channel> used = new HashSet<>();
        Map<Integer, Long> drawnTenthMa = new HashMap<>();
        for (int seat = 0; seat < plan.choices().size(); seat++) {
            for (int entry = 0; entry < choice(seat).feeds().size(); entry++) {
                Channel channel = plan.channels().get(seat).get(entry);
                if (channel.bank() < 0 || channel.bank() >= problem.banks().size() || channel.channel() < 0
                        || channel.channel() >= problem.banks().get(channel.bank()).channels().size()) {
                    faults.add("there is no " + channel);
                } else {
                    if (!used.add(channel)) {
                        faults.add("two feeds are on " + channel);
                    }
                    checkFeed(choice(seat).feeds().get(entry), problem.banks().get(channel.bank()), channel);
                    drawnTenthMa.merge(channel.bank(), (long) choice(seat).feeds().get(entry).drawTenthMa(), Long::sum);
                }
            }
        }
        drawnTenthMa.forEach((index, tenthMa) -> {
            Bank bank = problem.banks().get(index);
            if (bank.supplyTenthMa() != null && tenthMa > bank.supplyTenthMa()) {
                faults.add("bank " + bank.name() + " gives " + tenthMa + " tenths of a mA where it has " + bank.supplyTenthMa());
            }
        });
        if (plan.liveBanks().stream().anyMatch(index -> index < 0 || index >= problem.banks().size() || problem.banks().get(index).phantom() != PhantomSwitch.BANK)) {
            faults.add("a bank is live that has not one switch");
        }
    }

    private void checkFeed(Feed feed, Bank bank, Channel channel) {
        boolean oneSwitch = bank.phantom() == PhantomSwitch.BANK;
        boolean live = plan.liveBanks().contains(channel.bank());
        if (!feed.groups().contains(bank.channels().get(channel.channel()))) {
            faults.add(channel + " cannot serve a feed of " + feed.groups());
        }
        if (feed.phantom() == PhantomNeed.NEEDED && (bank.phantom() == PhantomSwitch.NONE || oneSwitch && !live)) {
            faults.add(channel + " has no phantom power for a feed that needs it");
        }
        if (feed.phantom() == PhantomNeed.FORBIDDEN && oneSwitch && live) {
            faults.add(channel + " is live with a feed that must not see phantom power");
        }
        if (bank.channelTenthMa() != null && feed.drawTenthMa() > bank.channelTenthMa()) {
            faults.add(channel + " gives " + feed.drawTenthMa() + " tenths of a mA where it has " + bank.channelTenthMa());
        }
    }

    private void checkWorth() {
        long kept = problem.kept().stream().filter(one -> plan.choices().get(one.seat()) == one.choice()).mapToLong(Kept::centipoints).sum();
        long worth = kept;
        for (int seat = 0; seat < plan.choices().size(); seat++) {
            worth += choice(seat).centipoints();
        }
        for (PairTerm pair : problem.pairs()) {
            worth += pair.together().stream().filter(one -> plan.choices().get(pair.first()) == one.first() && plan.choices().get(pair.second()) == one.second())
                    .mapToLong(PairTerm.Together::centipoints).sum();
        }
        if (worth != plan.centipoints() || kept != plan.keptCentipoints()) {
            faults.add("it is worth " + worth + " hundredths, " + kept + " of them for what is kept, and says " + plan.centipoints() + " and " + plan.keptCentipoints());
        }
        if (plan.boundCentipoints() < plan.centipoints() || plan.proven() && plan.boundCentipoints() != plan.centipoints()) {
            faults.add("it is worth " + plan.centipoints() + " hundredths with a bound of " + plan.boundCentipoints());
        }
    }
}
