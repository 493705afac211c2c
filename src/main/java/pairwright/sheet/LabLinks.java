package pairwright.sheet;

import java.util.List;
import java.util.Objects;
import pairwright.lab.Need;
import pairwright.model.Complaint;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Technique;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Numbers;
import pairwright.rules.RuleInfo;
import pairwright.sheet.ReadingParts.Link;

/** Where it can be read what an exercise rests on. */
record LabLinks(Desk desk) {
    private static final Numbers NUMBERS = new Numbers();

    /** A rule, a calculation, a complaint or a technique; null for what has no page. */
    Link rests(String id) {
        if (id == null) {
            return null;
        }
        RuleInfo rule = desk.known().rules().rule(id);
        if (rule != null) {
            return desk.at().rule(rule);
        }
        CalculationInfo calculation = NUMBERS.info(id).orElse(null);
        if (calculation != null) {
            return desk.at().link("/numbers/" + id, calculation.name());
        }
        Complaint complaint = desk.catalogue().complaints().get(id);
        if (complaint != null) {
            return desk.at().complaint(complaint);
        }
        Technique technique = desk.catalogue().techniques().get(id);
        return technique == null ? null : desk.at().technique(technique);
    }

    /** Those that have a page, each once. */
    List<Link> rests(List<String> ids) {
        return ids.stream().distinct().map(this::rests).filter(Objects::nonNull).toList();
    }

    /** "2 × small condenser, cardioid", each with its page. */
    List<Link> kit(List<Need> kit) {
        return kit.stream().map(need -> {
            MicType type = desk.catalogue().mics().get(need.micType());
            return desk.at().link("/mics/" + need.micType(), need.units() + " \u00d7 " + (type == null ? need.micType() : Naming.small(type.name())));
        }).toList();
    }
}
