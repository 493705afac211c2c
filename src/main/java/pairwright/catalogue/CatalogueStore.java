package pairwright.catalogue;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import pairwright.model.Catalogue;

/** The catalogue in use: what is built in, and the last house folder without a fault laid over it. */
public final class CatalogueStore {
    /** Where the build leaves the catalogue on the class path. */
    static final String PACKED = "META-INF/pairwright/catalogue.bin";
    private static final int READ_AHEAD = 1 << 16;

    private final Catalogue builtIn;
    private volatile Catalogue current;

    /** Reads what is built in. */
    public CatalogueStore() {
        this(packed());
    }

    CatalogueStore(Catalogue builtIn) {
        this.builtIn = builtIn;
        this.current = builtIn;
    }

    /** What ships with the program. */
    public Catalogue builtIn() {
        return builtIn;
    }

    /** What is in use now. */
    public Catalogue current() {
        return current;
    }

    /**
     * Lays a house folder over what is built in, in place of the one before. With a fault in it, nothing changes.
     *
     * @return every fault; empty if the folder is now in use
     */
    public List<FileFault> reload(Path houseFolder) {
        CatalogueReader.Result result = CatalogueReader.readOver(builtIn, houseFolder);
        if (result.faults().isEmpty()) {
            current = result.catalogue();
        }
        return result.faults();
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
