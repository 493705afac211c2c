package pairwright.session;

/**
 * How long there is to set up, and for how many. Work is taken to be shared out evenly: so many minutes for each pair of hands.
 *
 * @param minutes of the clock
 * @param hands pairs of hands that set up at once
 */
public record SetUpTime(int minutes, int hands) {
    public static final int MOST_MINUTES = 24 * 60;
    public static final int MOST_HANDS = 50;
    private static final int MINUTE_S = 60;

    /** The work that can be done in it, seconds of one pair of hands. */
    int workS() {
        return minutes * hands * MINUTE_S;
    }

    /** The same with some of its minutes gone; none left where more are. */
    public SetUpTime less(int lostMinutes) {
        return new SetUpTime(Math.max(0, minutes - lostMinutes), hands);
    }

    /** How many minutes of the clock a piece of work takes, in whole ones that suffice. */
    int clockMinutes(double workS) {
        return minutes(workS / hands);
    }

    /** Whole minutes that suffice. */
    static int minutes(double timeS) {
        return (int) Math.ceil(timeS / MINUTE_S);
    }

    /** Such as "60 min with 2 pairs of hands". */
    public String words() {
        return minutes + " min with " + pairs(hands);
    }

    static String pairs(int hands) {
        return hands == 1 ? "one pair of hands" : hands + " pairs of hands";
    }
}
