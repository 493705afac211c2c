package pairwright.catalogue;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pairwright.model.Catalogue;

/**
 * The catalogue that ships with the program, alone or with a house folder laid over it. Nothing of a house folder is kept here: whoever
 * asks decides whether it comes into use.
 */
public final class CatalogueStore {
    /** Where the build leaves the catalogue on the class path. */
    static final String PACKED = "META-INF/pairwright/catalogue.bin";
    private static final int READ_AHEAD = 1 << 16;

    private final Catalogue builtIn;

    /** Reads what is built in. */
    public CatalogueStore() {
        this(packed());
    }

    CatalogueStore(Catalogue builtIn) {
        this.builtIn = builtIn;
    }

    /** What ships with the program. */
    public Catalogue builtIn() {
        return builtIn;
    }

    /**
     * What ships with the program with a house folder laid over it.
     *
     * @param house a folder of entries; may be missing
     */
    public CatalogueReader.Result with(Path house) {
        return Files.isDirectory(house) ? CatalogueReader.readOver(builtIn, house) : new CatalogueReader.Result(builtIn, List.of(), 0);
    }

    private static Catalogue packed() {
        try (InputStream in = CatalogueStore.class.getResourceAsStream("/" + PACKED)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without its catalogue: " + PACKED
                        + " is not on the class path. Build it again with mvn package");
            }
            return Packed.read(new BufferedInputStream(in, READ_AHEAD), Catalogue.class);
        } catch (IOException broken) {
            throw new UncheckedIOException("the built-in catalogue cannot be read. Build the program again with mvn package",
                    broken);
        }
    }
}
