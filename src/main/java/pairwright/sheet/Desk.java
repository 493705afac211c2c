package pairwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.model.Catalogue;
import pairwright.model.Confidence;
import pairwright.model.Rests;
import pairwright.sheet.ReadingParts.Frame;
import pairwright.sheet.ReadingParts.Ground;
import pairwright.sheet.ReadingParts.Grounds;
import pairwright.sheet.ReadingParts.Link;

/**
 * What a page is made with, for one visit.
 *
 * @param html fills templates
 * @param known what is known at this moment
 * @param visit who reads what
 * @param at addresses for that visit
 * @param measures figures for that reader
 */
record Desk(Html html, Knowledge known, Visit visit, Addresses at, Measures measures) {
    private static final String CATALOGUE = "catalogue";
    private static final String RULES = "rules";

    Desk(Html html, Knowledge known, Visit visit) {
        this(html, known, visit, new Addresses(visit), new Measures(visit.reader()));
    }

    Catalogue catalogue() {
        return known.catalogue();
    }

    /** Around an entry of the catalogue. */
    Frame entry(Shelf shelf, String name, String kind) {
        return new Frame(html.shell(name, CATALOGUE, visit), List.of(at.link("/catalogue", "Catalogue"), shelf.link(at)), kind);
    }

    Frame inCatalogue(String title) {
        return new Frame(html.shell(title, CATALOGUE, visit), List.of(at.link("/catalogue", "Catalogue")), "");
    }

    Frame catalogueItself() {
        return new Frame(html.shell("Catalogue", CATALOGUE, visit), List.of(), "");
    }

    Frame rulesItself() {
        return new Frame(html.shell("Rules", RULES, visit), List.of(), "");
    }

    Frame rule(String title, String kind, Link concern) {
        List<Link> trail = new ArrayList<>(List.of(at.link("/rules", "Rules")));
        if (concern != null) {
            trail.add(concern);
        }
        return new Frame(html.shell(title, RULES, visit), trail, kind);
    }

    Page page(int status, String template, Frame frame, String name, Object value) {
        Map<String, Object> values = new HashMap<>(Map.of("frame", frame));
        values.put(name, value);
        return new Page(status, html.fill("read/" + template + ".jte", values));
    }

    Page page(String template, Frame frame, String name, Object value) {
        return page(200, template, frame, name, value);
    }

    Grounds grounds(Confidence confidence, List<Rests> basis) {
        return new Grounds(ReadingWords.confidence(confidence), basis.stream().map(rests -> new Ground(
                rests.of().stream().map(ReadingWords::field).distinct().collect(Collectors.joining(", ")), ReadingWords.basis(rests.on()),
                measures.sentence(rests.note()))).toList());
    }
}
