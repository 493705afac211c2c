package pairwright.sheet;

import java.util.function.Supplier;
import pairwright.advice.Knowledge;

/** The catalogue and the rules to read. Everything that names something else links to it. */
public final class Readings {
    private final Html html;
    private final Supplier<Knowledge> known;

    /** @param known asked once for each page */
    public Readings(Html html, Supplier<Knowledge> known) {
        this.html = html;
        this.known = known;
    }

    /** What there is, and what comes nearest to the words of the query. */
    public Page catalogue(Visit visit) {
        return Catalogues.overview(desk(visit));
    }

    /** Every entry of one kind. */
    public Page list(Shelf shelf, Visit visit) {
        return Catalogues.list(desk(visit), shelf);
    }

    /** One entry, or what comes near it. */
    public Page entry(Shelf shelf, String id, Visit visit) {
        Desk desk = desk(visit);
        Page page = Catalogues.entry(desk, shelf, id);
        return page == null ? Catalogues.missing(desk, shelf, id) : page;
    }

    /** The rules in force that hold the words, the concern and the effect of the query. */
    public Page rules(Visit visit) {
        return RulePages.list(desk(visit));
    }

    /** One rule, or what comes near it. */
    public Page rule(String id, Visit visit) {
        Desk desk = desk(visit);
        Page page = RulePages.of(desk, id);
        return page == null ? Catalogues.noRule(desk, id) : page;
    }

    private Desk desk(Visit visit) {
        return new Desk(html, known.get(), visit);
    }
}
