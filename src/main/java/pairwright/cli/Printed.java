package pairwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.UncheckedIOException;
import java.util.List;
import pairwright.catalogue.Json;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How a command that reads prints what it found: for people, or for programs. */
final class Printed {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--json", description = "Print JSON, as the HTTP interface gives it.")
    private boolean asJson;

    /** Whether programs read it. */
    boolean json() {
        return asJson;
    }

    /**
     * Prints it.
     *
     * @param value for programs
     * @param none what is said where there are no rows
     */
    int table(Object value, List<String> titles, List<List<String>> rows, String none) {
        return print(value, rows.isEmpty() ? none + System.lineSeparator() : Columns.of(titles, rows));
    }

    /** Prints a value for programs, or a text for people. */
    int print(Object value, String text) {
        if (asJson) {
            try {
                spec.commandLine().getOut().println(Json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(value));
            } catch (JsonProcessingException impossible) {
                throw new UncheckedIOException(impossible);
            }
        } else {
            spec.commandLine().getOut().print(text);
        }
        spec.commandLine().getOut().flush();
        return 0;
    }
}
