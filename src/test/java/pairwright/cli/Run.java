package pairwright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * A command that was run in this process.
 *
 * @param exit its exit code
 * @param out what it printed
 * @param err what it said to standard error
 */
record Run(int exit, String out, String err) {
    static Run of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Main.commandLine(arguments).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)).execute(arguments);
        return new Run(exit, out.toString(), err.toString());
    }
}
