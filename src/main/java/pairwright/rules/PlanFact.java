package pairwright.rules;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/**
 * A part of a plan, for the rules of {@code rules/plan} to read. Such a rule looks at one part at a time, and every text a part holds may stand in
 * its sentence by its name. Parts are compared by identity: the engine asks often whether two are the same.
 */
public sealed interface PlanFact permits LeftOut, PlannedTwo, PlannedInput, PlannedLine, PlannedHearing, PlannedArrival, PlannedBank, PlannedWhole {
    /** What of a plan carries points: all that the search for a plan weighs. What is told of the rest is a caution. */
    List<Class<?>> WEIGHED = List.of(LeftOut.class, PlannedTwo.class, PlannedInput.class);

    /** Every kind of part. */
    static List<Class<?>> kinds() {
        return List.of(PlanFact.class.getPermittedSubclasses());
    }

    /** Whether a part of this kind holds a text of that name. */
    static boolean hasText(Class<?> kind, String name) {
        return Arrays.stream(kind.getRecordComponents()).anyMatch(one -> one.getName().equals(name) && one.getType() == String.class);
    }

    /** The text of that name; null where there is none. */
    default String text(String name) {
        for (RecordComponent component : getClass().getRecordComponents()) {
            if (component.getName().equals(name) && component.getType() == String.class) {
                try {
                    return (String) component.getAccessor().invoke(this);
                } catch (IllegalAccessException | InvocationTargetException impossible) {
                    throw new IllegalStateException(impossible);
                }
            }
        }
        return null;
    }
}
