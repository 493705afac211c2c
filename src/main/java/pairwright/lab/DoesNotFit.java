package pairwright.lab;

import java.util.List;

/** So many exercises cannot be had with what is free. Nothing was kept and nothing booked. */
public final class DoesNotFit extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Wanted wanted;
    private final transient int benches;
    private final transient List<Short> shortOf;

    DoesNotFit(String says, Wanted wanted, int benches, List<Short> shortOf) {
        super(says, null, false, false);
        this.wanted = wanted;
        this.benches = benches;
        this.shortOf = List.copyOf(shortOf);
    }

    /**
     * What one more bench would need beyond what is free.
     *
     * @param micType id
     * @param name of the type
     * @param needed how many with that bench
     * @param there how many are free
     */
    public record Short(String micType, String name, int needed, int there) {
    }

    /** What was wanted. */
    public Wanted wanted() {
        return wanted;
    }

    /** For so many benches it does fit. */
    public int benches() {
        return benches;
    }

    /** What is short for one more; none where no more exercises can be made of what is free. */
    public List<Short> shortOf() {
        return shortOf;
    }
}
