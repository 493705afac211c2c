package pairwright.sheet;

import java.time.Clock;
import java.util.function.Supplier;
import pairwright.advice.AtHand;
import pairwright.advice.Knowledge;
import pairwright.locker.Role;
import pairwright.model.Stock;

/**
 * What a page about a question is made with, for one visit.
 *
 * @param html fills templates
 * @param knowledge asked once per question
 * @param atHand what of a locker may be used
 * @param visit who reads what
 * @param role what the reader may do
 * @param clock what time it is, and in which zone
 */
public record AtQuestion(Html html, Supplier<Knowledge> knowledge, AtHand atHand, Visit visit, Role role, Clock clock) {
    /** The question of the address; what cannot be read of it is among its faults. */
    AskQuery query() {
        return AskQuery.read(visit, clock);
    }

    /** Whether the reader may book; where not, nothing leads there. */
    boolean mayBook() {
        return role.covers(Role.ENGINEER);
    }

    /** Whether a locker holds a microphone, or may hold one and does not answer. */
    boolean hasLocker() {
        Stock stock = atHand.at(null, null);
        return stock != null && !(stock.reachable() && stock.units().isEmpty());
    }

    /** How moments are written for this reader. */
    Moments moments() {
        return new Moments(clock.getZone(), visit.reader(), clock.instant());
    }
}
