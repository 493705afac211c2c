package pairwright.advice;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import pairwright.catalogue.CatalogueStore;
import pairwright.search.SentenceReader;

/** A step of the build: cuts the phrases of the packed catalogue into words. */
public final class CutMain {
    private CutMain() {
    }

    /** @param arguments the folder the classes go to */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 1) {
            throw new IllegalArgumentException(arguments.length + " arguments. Give the output folder");
        }
        try (OutputStream out = Files.newOutputStream(Path.of(arguments[0]).resolve(SentenceReader.CUTS))) {
            SentenceReader.writeCuts(new CatalogueStore().builtIn(), out);
        }
    }
}
