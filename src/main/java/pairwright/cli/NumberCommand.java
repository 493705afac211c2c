package pairwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import pairwright.catalogue.Json;
import pairwright.catalogue.Shown;
import pairwright.model.Fault;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Given;
import pairwright.numbers.Input;
import pairwright.numbers.InputKind;
import pairwright.numbers.Numbers;
import pairwright.numbers.UnusableInputs;
import pairwright.numbers.Worked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A worked number. */
@Command(
        name = "number",
        description = "Works a number out, step by step. Without ID: lists what can be worked out.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeOnInvalidInput = Main.UNUSABLE,
        footer = {"", "Try: pairwright number proximity pattern=cardioid distanceM=0.1"})
final class NumberCommand implements Callable<Integer> {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d{1,3})?");
    /** One comma before three digits: a decimal comma to some, between thousands to others. */
    private static final Pattern THOUSANDS = Pattern.compile("-?[1-9]\\d{0,2},\\d{3}");

    private final Numbers numbers = new Numbers();

    @Spec
    private CommandSpec spec;

    @Option(names = "--json", description = "Print JSON, as the HTTP interface gives it.")
    private boolean asJson;

    @Parameters(index = "0", arity = "0..1", paramLabel = "ID", description = "What to work out.")
    private String id;

    @Parameters(index = "1..*", paramLabel = "NAME=VALUE", description = {"The inputs. Without any: what the calculation asks for.",
            "Several numbers: 3,4.5 or 3;4,5."})
    private List<String> arguments = new ArrayList<>();

    @Override
    public Integer call() throws JsonProcessingException {
        PrintWriter out = spec.commandLine().getOut();
        if (id == null) {
            print(out, Map.of("entries", numbers.all()), () -> NumberText.list(numbers.all()));
            return 0;
        }
        Optional<CalculationInfo> info = numbers.info(id);
        if (info.isEmpty()) {
            return unusable(List.of(numbers.unknown(Shown.of(id))));
        }
        if (arguments.isEmpty()) {
            print(out, info.get(), () -> NumberText.asks(info.get()));
            return 0;
        }
        List<String> faults = new ArrayList<>();
        Map<String, Given> given = given(info.get(), faults);
        try {
            Worked worked = numbers.work(id, given);
            if (faults.isEmpty()) {
                print(out, worked, () -> NumberText.worked(info.get(), worked));
                return 0;
            }
        } catch (UnusableInputs unusable) {
            faults.addAll(unusable.faults().stream().map(Fault::says).toList());
        }
        return unusable(faults);
    }

    private void print(PrintWriter out, Object value, Supplier<String> text) throws JsonProcessingException {
        out.print(asJson ? Json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(value) + System.lineSeparator() : text.get());
        out.flush();
    }

    private int unusable(List<String> faults) {
        faults.forEach(fault -> spec.commandLine().getErr().println("pairwright: " + AnswerText.harmless(fault)));
        return Main.UNUSABLE;
    }

    private Map<String, Given> given(CalculationInfo info, List<String> faults) {
        Map<String, Given> given = new LinkedHashMap<>();
        for (String argument : arguments) {
            int equals = argument.indexOf('=');
            if (equals < 1) {
                faults.add("\"" + Shown.of(argument) + "\" is not NAME=VALUE. Write it like distanceM=0.3");
                continue;
            }
            String name = argument.substring(0, equals);
            String value = argument.substring(equals + 1).strip();
            if (THOUSANDS.matcher(value).matches() && kind(info, name) != InputKind.NUMBERS) {
                faults.add(Shown.of(name) + "=" + value + " may be " + value.replace(',', '.') + " or " + value.replace(",", "") + ". Write which");
                continue;
            }
            if (given.put(Shown.of(name), given(info, name, value)) != null) {
                faults.add(Shown.of(name) + " is given twice. Give it once; several numbers go in one list, such as 3,4.5");
            }
        }
        return given;
    }

    private static InputKind kind(CalculationInfo info, String name) {
        return info.inputs().stream().filter(input -> input.name().equals(name)).map(Input::kind).findFirst().orElse(InputKind.WORD);
    }

    private static Given given(CalculationInfo info, String name, String value) {
        return switch (kind(info, name)) {
            case WORD -> new Given.Text(Shown.of(value));
            case NUMBER, WHOLE_NUMBER, PATTERN -> number(value);
            case NUMBERS -> numbers(value);
        };
    }

    /** Between numbers stands a comma; where there is a semicolon or a blank, that stands between them and a comma is a decimal one. */
    private static Given numbers(String value) {
        String between = value.matches(".*[; ].*") ? "[; ]+" : ",";
        List<Given> entries = Arrays.stream(value.split(between)).map(NumberCommand::number).toList();
        return entries.size() == 1 ? entries.get(0) : new Given.Many(entries);
    }

    private static Given number(String value) {
        return NUMBER.matcher(value).matches() ? new Given.Number(Double.parseDouble(value.replace(',', '.'))) : new Given.Text(Shown.of(value));
    }
}
