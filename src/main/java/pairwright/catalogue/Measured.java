package pairwright.catalogue;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Basis;
import pairwright.model.MicType;
import pairwright.model.Rests;

/** Mic types with a response that was measured. */
final class Measured {
    private static final String RESPONSE = "responseDb";

    private Measured() {
    }

    /**
     * A type with a measured response, and with what that rests on.
     *
     * @param own whether the house wrote the entry and says itself what the response rests on
     */
    static MicType of(MicType mic, ResponseFile response, boolean own) {
        List<Rests> basis = new ArrayList<>();
        for (Rests rests : mic.basis()) {
            if (!rests.of().contains(RESPONSE)) {
                basis.add(rests);
            } else if (own) {
                String note = rests.note() == null || rests.note().isBlank() ? "" : rests.note() + " ";
                basis.add(new Rests(rests.of(), rests.on(), note + "Response: " + response.note() + "."));
            } else {
                List<String> others = rests.of().stream().filter(field -> !field.equals(RESPONSE)).toList();
                if (!others.isEmpty()) {
                    basis.add(new Rests(others, rests.on(), rests.note()));
                }
            }
        }
        if (!own) {
            basis.add(new Rests(List.of(RESPONSE), Basis.MEASURED, response.note() + "."));
        }
        return new MicType(mic.id(), mic.name(), mic.family(), mic.says(), mic.words(), mic.tier(), mic.patterns(), response.responseDb(),
                mic.sensitivityMvPerPa(), mic.selfNoiseDba(), mic.maxDbSpl(), mic.impedanceOhm(), mic.inputOhm(), mic.maxInputDbu(),
                mic.needsLoadOhm(), mic.power(), mic.currentMa(), mic.padsDb(), mic.highPass(), mic.channels(), mic.captures(), mic.address(),
                mic.speed(), mic.massKg(), mic.ruggedness(), mic.blastTolerance(), mic.humidityTolerance(), mic.handling(), mic.confidence(),
                List.copyOf(basis));
    }
}
