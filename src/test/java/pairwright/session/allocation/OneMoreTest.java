package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.allocation.Small.must;
import static pairwright.session.allocation.Small.taking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pairwright.session.allocation.Shortage.Kind;

class OneMoreTest {
    private final Allocator allocator = new Allocator();

    @Test
    void oneMoreIsWorthWhatThePlanGains() {
        Problem problem = new Problem(List.of(must("sax", taking("r", 900, "ribbon"), taking("d", 500, "dynamic")), must("trumpet", taking("r", 800, "ribbon"), taking("d", 700, "dynamic"))),
                List.of(new Cap("ribbon", 1, 0), new Cap("dynamic", 2, 0)), List.of());
        assertEquals(List.of(new Gain(Kind.CAP, "ribbon", 0, 100, true), new Gain(Kind.CAP, "dynamic", 0, 0, true)), allocator.oneMore(problem, Progress.NONE));
    }

    @Test
    void firstItCountsWhoCanBeServedMore() {
        Problem problem = new Problem(List.of(must("sax", taking("r", 900, "ribbon")), must("kit", taking("d", 300, "dynamic"), taking("r", 100, "ribbon"))),
                List.of(new Cap("ribbon", 1, 0), new Cap("dynamic", 0, 0)), List.of());
        assertEquals(List.of(new Gain(Kind.CAP, "dynamic", 1, 300, true), new Gain(Kind.CAP, "ribbon", 1, 100, true)), allocator.oneMore(problem, Progress.NONE));
    }

    @Test
    void itAgreesWithPlanningAnewWithOneMoreOfEach() {
        Problem problem = Instances.of(Instances.Mood.TIGHT, new Instances.Size(8, 6, 12), 2);
        long now = MixedInteger.optimum(problem).orElseThrow();
        List<Gain> gains = allocator.oneMore(problem, Progress.NONE);
        assertTrue(gains.stream().anyMatch(gain -> gain.centipoints() > 0));
        int asked = 0;
        for (Gain gain : gains) {
            if (gain.centipoints() > 0 || asked++ < 6) {
                Problem more = Extra.with(problem, Map.of(new Extra(gain.kind(), gain.name()), 1));
                assertEquals(MixedInteger.optimum(more).orElseThrow() - now, gain.centipoints(), gain.name());
            }
        }
    }

    @Test
    void itTellsHowFarItIsAndStopsWhenAsked() {
        Problem problem = Instances.of(Instances.Mood.TIGHT, new Instances.Size(8, 6, 12), 2);
        List<String> told = new ArrayList<>();
        List<Gain> gains = allocator.oneMore(problem, new Progress() {
            @Override
            public void known(Gain gain, int done, int of) {
                told.add(gain.name() + " " + done);
                assertTrue(of > 3);
            }

            @Override
            public boolean isStopped() {
                return told.size() == 3;
            }
        });
        assertEquals(3, gains.size());
        assertEquals(List.of(gains.get(0).name() + " 1", gains.get(1).name() + " 2", gains.get(2).name() + " 3"), told);
    }
}
