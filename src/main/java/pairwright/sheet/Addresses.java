package pairwright.sheet;

import pairwright.model.Character;
import pairwright.model.Complaint;
import pairwright.model.MicType;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.rules.RuleInfo;
import pairwright.sheet.ReadingParts.Link;

/** Where entries and rules can be read, for one visit, whose measures every address keeps. */
record Addresses(Visit visit) {
    Link link(String address, String text) {
        return new Link(visit.to(address), text);
    }

    /** A place on a page. */
    Link within(String address, String place, String text) {
        return new Link(visit.to(address) + "#" + place, text);
    }

    Link mic(MicType mic) {
        return link("/mics/" + mic.id(), mic.name());
    }

    Link source(Source source) {
        return link("/sources/" + source.id(), source.name());
    }

    Link character(Character character) {
        return link("/characters/" + character.id(), character.name());
    }

    Link room(Room room) {
        return link("/rooms/" + room.id(), room.name());
    }

    Link technique(Technique technique) {
        return link("/techniques/" + technique.id(), technique.name());
    }

    Link complaint(Complaint complaint) {
        return link("/complaints/" + complaint.id(), complaint.name());
    }

    Link rule(RuleInfo rule) {
        return link("/rules/" + rule.id(), rule.id() + " " + rule.title());
    }

    Link ask(String words) {
        return link("/?words=" + Visit.escaped(words), "Ask about it");
    }
}
