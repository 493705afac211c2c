package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MonthPageTest {
    @Test
    void aDayIsShadedByTheShareThatIsTakenAndFramedOnlyWhereAllAre() {
        assertEquals(List.of("none", "some-1", "some-1", "some-2", "some-2", "some-3", "all", "all"),
                IntStream.rangeClosed(0, 7).mapToObj(taken -> MonthPage.shade(taken, 6)).toList());
        assertEquals("some-2", MonthPage.shade(1, 2));
        assertEquals("none", MonthPage.shade(0, 0));
    }
}
