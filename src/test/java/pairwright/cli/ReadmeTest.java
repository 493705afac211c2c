package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ReadmeTest {
    private static final Pattern REGION = Pattern.compile(
            "(<!-- region: answer to \"([^\"]+)\"[^\\n]*-->\\n```text\\n)(.*?)(```\\n<!-- endregion -->)", Pattern.DOTALL);

    @Test
    void theAnswerInTheReadmeIsTheAnswerOfTheProgram() throws Exception {
        Path readme = Path.of("README.md");
        String text = Files.readString(readme);
        Matcher region = REGION.matcher(text);
        assertTrue(region.find(), "README.md has no region with an answer");
        String answer = answerTo(region.group(2));
        if (Boolean.getBoolean("rewrite")) {
            text = text.substring(0, region.start(3)) + answer + text.substring(region.end(3));
            Files.writeString(readme, text);
        }
        assertEquals(answer, Files.readString(readme).substring(region.start(3), region.start(3) + answer.length()),
                "write it anew with: mvn -q test -Dtest=ReadmeTest -Drewrite=true");
        assertTrue(text.startsWith(region.group(4), region.start(3) + answer.length()), "the region holds more than the answer");
    }

    private static String answerTo(String words) {
        StringWriter out = new StringWriter();
        int exit = Main.commandLine().setOut(new PrintWriter(out)).execute("ask", words);
        assertEquals(0, exit);
        return out.toString();
    }
}
