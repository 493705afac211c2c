package pairwright.rules;

import jdk.jfr.Event;
import jdk.jfr.Label;
import jdk.jfr.Name;
import jdk.jfr.StackTrace;

/** One judgement, for whoever records the program with the JDK's recorder: how much it had to look at. Costs nothing while nobody records. */
@Name("pairwright.Judging")
@Label("Rules judge")
@StackTrace(false)
final class Judging extends Event {
    @Label("Facts")
    int facts;
    @Label("Firings")
    int firings;
}
