package pairwright.sheet;

import java.time.OffsetDateTime;
import java.util.Map;
import pairwright.drawing.Reader;
import pairwright.locker.Unit;
import pairwright.model.Catalogue;
import pairwright.model.Naming;
import pairwright.session.Gear;
import pairwright.session.Line;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.session.PlanDesk;
import pairwright.session.Seat;
import pairwright.sheet.ReadingParts.Link;

/**
 * What a page of a planned session is made with, for one visit.
 *
 * @param at who reads, and from what
 * @param id of the session
 * @param lineUp who plays, and where
 * @param gear what there is to plan with
 * @param taken the plan that was taken; null for none
 * @param booking id of the booking that was made for it; null for none
 * @param desk plans
 */
public record AtPlan(AtLocker at, String id, LineUp lineUp, Gear gear, Picks taken, String booking, PlanDesk desk) {
    /** A tick of the line check: whether it is set, by whom, and when. */
    public record Tick(boolean on, String who, OffsetDateTime at) {
    }

    Visit visit() {
        return at.visit();
    }

    Reader reader() {
        return at.visit().reader();
    }

    Measures measures() {
        return at.measures();
    }

    Catalogue catalogue() {
        return at.known().catalogue();
    }

    /** The address of a page of this session, as "plan"; empty for its line-up. */
    String path(String page) {
        return "/sessions/" + id + (page.isEmpty() ? "" : "/" + page);
    }

    /** The same for this reader. */
    String to(String page) {
        return visit().to(path(page));
    }

    /** What the session is called. */
    String name() {
        return lineUp.name() == null ? "Session" : lineUp.name();
    }

    /** What people call who sits there: the player, else the source. */
    String seatName(String seat) {
        return lineUp.seat(seat).map(this::seatName).orElse(seat);
    }

    String seatName(Seat seat) {
        return seat.player() != null ? player(seat) : sourceName(seat.source()) + lineUp.toldApart(seat);
    }

    /** A player who is named at two seats is told apart by what they play there. */
    private String player(Seat seat) {
        return seat.player() + (lineUp.playsTwice(seat) ? " (" + Naming.small(sourceName(seat.source())) + ")" : "");
    }

    String sourceName(String source) {
        return catalogue().sources().containsKey(source) ? catalogue().sources().get(source).name() : source;
    }

    /** The same within a sentence, where a player's name stays as it is. */
    String inSentence(String seat) {
        return lineUp.seat(seat).map(one -> one.player() != null ? player(one) : "the " + Naming.small(sourceName(one.source())) + lineUp.toldApart(one)).orElse(seat);
    }

    Link mic(Line line) {
        return at.at().link("/mics/" + line.placement().micType(), line.placement().name());
    }

    /** A unit of the locker as it stands there; null for none. */
    Unit unit(String unit) {
        return unit == null || at.locker() == null ? null : at.locker().unit(unit).orElse(null);
    }

    /** A page from a template in the folder of sessions; what it shows is its one parameter beside the frame. */
    Page page(int status, String template, PlanFrame frame, Object content) {
        return new Page(status, at.html().fill("session/" + template + ".jte", Map.of("frame", frame, "content", content)));
    }

    /** Around a page that has all it shows. */
    PlanFrame frame(String title, String page, PlanChosen chosen) {
        return PlanFrame.ready(this, title, page, chosen);
    }
}
