package pairwright.catalogue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A step of the build: checks the catalogue and packs it into one file. */
public final class PackMain {
    private PackMain() {
    }

    /**
     * Packs a catalogue.
     *
     * @param arguments the catalogue folder, and the folder the classes go to
     * @throws IllegalStateException with every fault, which ends the build
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 2) {
            throw new IllegalArgumentException(arguments.length + " arguments. Give the catalogue folder and the output folder");
        }
        CatalogueReader.Result result = CatalogueReader.read(Path.of(arguments[0]));
        if (!result.faults().isEmpty()) {
            StringBuilder says = new StringBuilder();
            result.faults().forEach(fault -> says.append(System.lineSeparator()).append(fault));
            throw new IllegalStateException((result.faults().size() == 1 ? "1 fault" : result.faults().size() + " faults")
                    + " in the catalogue:" + says);
        }
        Path packed = Path.of(arguments[1]).resolve(CatalogueStore.PACKED);
        Files.createDirectories(packed.getParent());
        try (OutputStream out = Files.newOutputStream(packed)) {
            Packed.write(result.catalogue(), out);
        }
    }
}
