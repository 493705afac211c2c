package pairwright.session;

import java.util.List;
import pairwright.advice.Reaching;
import pairwright.model.Heard;

/**
 * A microphone that keeps its aim, and how much of what it hears each of the others has, as powers over its own source. So what one of them
 * has from elsewhere is put in the place of what that one has now, and the sum is the same as if all were heard anew.
 */
final class Shares {
    private final Listening line;
    private final double[] powers;

    Shares(Listening line) {
        this.line = line;
        List<Heard> heard = line.all().each(line.aimDegrees());
        this.powers = heard.stream().mapToDouble(one -> power(one.separationDb())).toArray();
    }

    /** Own level over all others, dB. */
    double separationDb() {
        return separationDb(-1, 0);
    }

    /** The same after somebody was moved or turned. */
    double separationDb(Seat moved) {
        if (line.line().seat().equals(moved.id())) {
            Listening after = line.after(moved);
            return after.all().separationDb(after.aimDegrees());
        }
        List<Reaching> others = line.others();
        for (int i = 0; i < others.size(); i++) {
            if (others.get(i).seat().equals(moved.id())) {
                return separationDb(i, power(line.alone(line.from(moved)).separationDb(line.aimDegrees())));
            }
        }
        return separationDb();
    }

    private double separationDb(int replaced, double byPower) {
        double sum = 0;
        for (int i = 0; i < powers.length; i++) {
            sum += i == replaced ? byPower : powers[i];
        }
        return -10 * Math.log10(sum);
    }

    private static double power(double separationDb) {
        return Math.pow(10, -separationDb / 10);
    }
}
