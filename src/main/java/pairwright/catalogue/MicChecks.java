package pairwright.catalogue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.PowerNeed;

/** Whether the figures of a mic type agree with each other. */
final class MicChecks {
    private static final List<String> MORE_THAN_ZERO = List.of("sensitivityMvPerPa", "impedanceOhm", "inputOhm", "massKg");

    private final Around around;

    MicChecks(Around around) {
        this.around = around;
    }

    void check(YamlFile yaml, MicType mic) {
        Set<Pattern> offered = new HashSet<>();
        for (int i = 0; i < mic.patterns().size(); i++) {
            PatternData data = mic.patterns().get(i);
            String at = "/patterns/" + i;
            String pattern = data.pattern().id();
            boolean lobe = data.pattern() == Pattern.LOBAR;
            if (!offered.add(data.pattern())) {
                around.fault(yaml.fault(at, "the pattern " + pattern + " stands here twice. Keep one of the two"));
            }
            if (lobe ? data.directivityIndexDb() == null : data.coefficient() == null) {
                around.fault(yaml.fault(at, "the pattern " + pattern + " has no " + (lobe
                        ? "directivityIndexDb. Give its directivity index"
                        : "coefficient. Give its omni part") + ", one value an octave"));
            }
            if (lobe ? data.coefficient() != null : data.directivityIndexDb() != null) {
                String wrong = lobe ? "coefficient" : "directivityIndexDb";
                around.fault(yaml.faultAtName(at + "/" + wrong, "the pattern " + pattern + " has a " + wrong + ", which only "
                        + (lobe ? "patterns other than lobar have" : "lobar has") + ". Take it out"));
            }
        }
        boolean takesPhantom = mic.power() == PowerNeed.PHANTOM || mic.power() == PowerNeed.PHANTOM_OR_BATTERY;
        if (takesPhantom && mic.currentMa() == null) {
            around.fault(yaml.fault("/power", "power is " + mic.power().id()
                    + ", but currentMa is missing. Give the current a channel takes"));
        }
        if (!takesPhantom && mic.currentMa() != null) {
            around.fault(yaml.faultAtName("/currentMa", "currentMa is given, but power is " + mic.power().id()
                    + ". Take it out or correct power"));
        }
        if (mic.power() != PowerNeed.NONE && mic.sensitivityMvPerPa() != null && mic.selfNoiseDba() == null) {
            around.fault(yaml.fault("/power", "power is " + mic.power().id()
                    + ", so the type is active, but selfNoiseDba is missing."
                    + " Give its equivalent noise"));
        }
        if (mic.power() == PowerNeed.NONE && mic.sensitivityMvPerPa() != null && mic.selfNoiseDba() == null && mic.impedanceOhm() == null) {
            around.fault(yaml.fault("/power", "power is none, so the type is passive, but impedanceOhm is missing."
                    + " Give its source impedance, which its noise is computed from"));
        }
        for (String figure : MORE_THAN_ZERO) {
            around.aboveZero(yaml, "/" + figure);
        }
        for (int i = 1; i < mic.padsDb().size(); i++) {
            if (mic.padsDb().get(i) <= mic.padsDb().get(i - 1)) {
                around.fault(yaml.fault("/padsDb/" + i, "the pad " + EntrySchema.shown(yaml.root().at("/padsDb/" + i))
                        + " does not exceed the one before it. Put the smallest first and each once"));
            }
        }
        if (mic.family() == MicFamily.LINE && mic.captures() && (mic.inputOhm() == null || mic.maxInputDbu() == null)) {
            around.fault(yaml.fault("/family", "a line box needs inputOhm and maxInputDbu, but has "
                    + (mic.inputOhm() == null && mic.maxInputDbu() == null ? "neither" : "only one") + ". Give both"));
        }
    }
}
