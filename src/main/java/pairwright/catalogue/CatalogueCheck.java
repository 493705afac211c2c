package pairwright.catalogue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pairwright.model.Catalogue;

/** Finds everything that is wrong in a folder of entries. */
public final class CatalogueCheck {
    private CatalogueCheck() {
    }

    /**
     * Every fault of a folder, file by file. A folder with a {@code schema/} of its own, as the one the program is built from
     * has, stands alone; any other is a house folder, checked as it would be laid over what is built in.
     */
    public static List<FileFault> faults(Path folder) {
        return Files.isDirectory(folder.resolve("schema"))
                ? CatalogueReader.read(folder).faults()
                : houseFaults(new CatalogueStore().builtIn(), folder);
    }

    /** Every fault of a house folder laid over a catalogue. */
    public static List<FileFault> houseFaults(Catalogue under, Path houseFolder) {
        return CatalogueReader.readOver(under, houseFolder).faults();
    }
}
