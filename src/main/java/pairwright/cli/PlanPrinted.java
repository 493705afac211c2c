package pairwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.UncheckedIOException;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Json;
import pairwright.http.SessionRequest;
import pairwright.http.SessionView;
import pairwright.session.Plan;
import pairwright.session.Planned;
import pairwright.sheet.InputList;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a plan is printed: for people, for programs, or as the input list in a table. */
final class PlanPrinted {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--json", description = "Print JSON, as the HTTP interface gives it.")
    private boolean asJson;

    @Option(names = "--csv", description = "Print only the input list, as CSV.")
    private boolean asCsv;

    int print(Object value, Plan plan, SessionRequest request, Knowledge known, Supplier<String> text) {
        if (asJson && asCsv) {
            throw new ParameterException(spec.commandLine(), "--json and --csv are two forms. Ask for one of them");
        }
        spec.commandLine().getOut().print(asJson ? json(value) : asCsv ? InputList.of(request.lineUp(), known.catalogue(), plan).csv() : text.get());
        spec.commandLine().getOut().flush();
        return 0;
    }

    /** Ends with 1, as there is nothing to set up. */
    int impossible(Planned planned, SessionRequest request, Knowledge known, PlanText text) {
        if (asJson) {
            spec.commandLine().getOut().print(json(SessionView.Plans.of(planned, request, known.catalogue())));
        } else {
            spec.commandLine().getErr().print(text.impossible(planned));
        }
        spec.commandLine().getOut().flush();
        spec.commandLine().getErr().flush();
        return 1;
    }

    private static String json(Object value) {
        try {
            return Json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(value) + System.lineSeparator();
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
