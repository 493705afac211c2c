package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", " =1+1", "\t@x", "\n+1", "-1"})
    void noTextIsAFormulaBlanksBeforeItOrNot(String text) {
        assertEquals("'" + text, Csv.text(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Boom 1", "", "  ", "1=2"})
    void otherTextsStayAsTheyAre(String text) {
        assertEquals(text, Csv.text(text));
    }
}
