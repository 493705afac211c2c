package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import pairwright.model.Fault;

/** A thing of the locker as it would be by a patch. */
final class Patched {
    private static final String VERSION = "version";

    private Patched() {
    }

    /**
     * Everything that may be said of it, ready to be read. A version in the patch is the one that is meant, as with If-Match, so that what was read
     * can be altered and sent back as a whole.
     *
     * @param thing as it is
     * @param version that it has
     * @param what it is, for people
     * @param fixed fields that never change; they may be sent as they are
     * @throws pairwright.locker.LockerFault.Changed where another version is meant
     * @throws BadRequest with status 400 where a fixed field is to be altered
     */
    static ObjectNode of(ObjectNode thing, ObjectNode patch, long version, String what, List<String> fixed) {
        JsonNode meant = patch.path(VERSION);
        List<Fault> faults = new ArrayList<>();
        if (!meant.isMissingNode() && !meant.isIntegralNumber()) {
            faults.add(new Fault("/" + VERSION, "version must be a whole number, but was " + JsonReader.kind(meant) + ". Leave it out, or send the one you read"));
        }
        for (String name : fixed) {
            if (patch.has(name) && !patch.get(name).equals(thing.path(name))) {
                faults.add(new Fault("/" + name, name + " cannot be altered. Leave it out"));
            }
        }
        if (!faults.isEmpty()) {
            throw new BadRequest(Problem.of(400, Problem.listed(faults)));
        }
        if (meant.isIntegralNumber() && !meant.bigIntegerValue().equals(BigInteger.valueOf(version))) {
            throw IfMatch.changed(what, version);
        }
        ObjectNode merged = (ObjectNode) LockerJson.merged(thing, patch);
        merged.remove(VERSION);
        return merged;
    }
}
