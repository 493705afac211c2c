package pairwright.catalogue;

import java.util.List;
import java.util.Map;
import pairwright.model.Catalogue;
import pairwright.model.Character;
import pairwright.model.Complaint;
import pairwright.model.Custom;
import pairwright.model.Gauge;
import pairwright.model.MicType;
import pairwright.model.Source;

/** What no schema can say: whether entries agree with themselves and with each other. */
final class CrossChecks {
    private final Around around;

    CrossChecks(Catalogue under, List<Entry<?>> entries, Map<String, CatalogueReader.WordFile<?>> words, List<FileFault> faults) {
        this.around = new Around(under, entries, words, faults);
    }

    void run() {
        FileChecks files = new FileChecks(around);
        MicChecks mics = new MicChecks(around);
        SourceChecks sources = new SourceChecks(around);
        files.twice();
        for (Entry<?> entry : around.entries()) {
            if (entry.value() == null) {
                continue;
            }
            files.check(entry);
            if (entry.value() instanceof MicType mic) {
                mics.check(entry.yaml(), mic);
            } else if (entry.value() instanceof Source source) {
                sources.check(entry.yaml(), source);
            } else if (entry.value() instanceof Character character) {
                character(entry.yaml(), character);
            } else if (entry.value() instanceof Complaint complaint) {
                complaint(entry.yaml(), complaint);
            } else if (entry.value() instanceof Custom custom) {
                custom(entry.yaml(), custom);
            }
        }
        WordChecks words = new WordChecks(around);
        words.sharedWords();
        words.wordFiles();
    }

    private void character(YamlFile yaml, Character character) {
        for (int i = 0; i < character.against().size(); i++) {
            String at = "/against/" + i;
            String other = character.against().get(i);
            if (other.equals(character.id())) {
                around.fault(yaml.fault(at, character.id() + " contradicts itself. Take it out of against"));
            } else {
                around.known(yaml, at, other, around.ids(Kind.CHARACTERS), "character", "");
            }
        }
    }

    private void custom(YamlFile yaml, Custom custom) {
        Custom before = around.under().customs().get(custom.id());
        if (before != null && !before.unit().equals(custom.unit())) {
            around.fault(yaml.fault("/unit", "unit is " + custom.unit() + ", but " + custom.id() + " is in " + before.unit() + ". Give the value in that"));
        }
    }

    private void complaint(YamlFile yaml, Complaint complaint) {
        boolean tone = complaint.gauge() == Gauge.TONE;
        if (tone && (complaint.fromHz() == null || complaint.toHz() == null)) {
            around.fault(yaml.fault("/gauge", "gauge is tone, but " + (complaint.fromHz() == null ? "fromHz" : "toHz")
                    + " is missing. Say in which octaves it is heard"));
        } else if (tone && complaint.fromHz() > complaint.toHz()) {
            around.fault(yaml.fault("/fromHz", "fromHz is above toHz. Swap them"));
        }
        for (int i = 0; i < complaint.moves().size(); i++) {
            List<String> named = complaint.moves().get(i).sources();
            for (int j = 0; j < named.size(); j++) {
                around.known(yaml, "/moves/" + i + "/sources/" + j, named.get(j), around.ids(Kind.SOURCES), "source", "");
            }
        }
    }
}
