package pairwright.catalogue;

import java.util.List;
import java.util.Map;
import pairwright.model.Catalogue;
import pairwright.model.Character;
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
}
