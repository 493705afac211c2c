package pairwright.lab;

import java.math.BigInteger;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;
import pairwright.model.Nearest;

/** What somebody wants, looked through. */
final class WantedCheck {
    private static final int SEED_BITS = 100;

    private final Kinds kinds;
    private final List<Fault> faults = new ArrayList<>();

    WantedCheck(Kinds kinds) {
        this.kinds = kinds;
    }

    /** The same with a seed. @throws LockerFault.Unusable with every fault */
    Wanted sound(Wanted wanted, Instant now) {
        kindAndLevel(wanted.kind(), wanted.level());
        if (wanted.benches() == null) {
            fault("/benches", "it is not said for how many benches. Give 1 to " + Wanted.MOST_BENCHES);
        } else if (wanted.benches() < 1 || wanted.benches() > Wanted.MOST_BENCHES) {
            fault("/benches", "benches must be 1 to " + Wanted.MOST_BENCHES + ", but was " + wanted.benches());
        }
        seed(wanted.seed());
        if ((wanted.from() == null) != (wanted.until() == null)) {
            fault(wanted.from() == null ? "/from" : "/until", "only one end of the time is given. Give from and until, or neither where nothing is to be booked");
        } else if (wanted.from() != null && !wanted.from().isBefore(wanted.until())) {
            fault("/until", "until must be after from, which is " + wanted.from() + ", but was " + wanted.until());
        }
        if (wanted.opensAt() != null && !wanted.opensAt().isAfter(now)) {
            fault("/opensAt", "opensAt is " + wanted.opensAt() + ", which is over: the keys would be open at once. Give a time to come, or leave it out");
        }
        settled();
        String seed = wanted.seed() == null || wanted.seed().isBlank() ? random() : wanted.seed().strip();
        return new Wanted(wanted.kind(), seed, wanted.level(), wanted.benches(), wanted.from(), wanted.until(), wanted.opensAt());
    }

    /** A kind and a level, in whatever else is asked. @throws LockerFault.Unusable with every fault */
    Kind sound(String kind, Integer level, String seed) {
        kindAndLevel(kind, level);
        seed(seed);
        settled();
        return kinds.kind(kind).orElseThrow();
    }

    /** One that nobody guesses. */
    static String random() {
        return new BigInteger(SEED_BITS, new SecureRandom()).toString(36);
    }

    private void kindAndLevel(String kind, Integer level) {
        List<String> ids = kinds.all().stream().map(one -> one.info().id()).toList();
        if (kind == null || kind.isBlank()) {
            fault("/kind", "it is not said which kind. Use one of " + String.join(", ", ids));
        } else if (!ids.contains(kind)) {
            fault("/kind", "there is no kind \"" + pairwright.catalogue.Shown.of(kind) + "\". " + Nearest.remedy(pairwright.catalogue.Shown.of(kind), ids));
        }
        if (level == null) {
            fault("/level", "it is not said how hard. Give a level from 1 to " + KindInfo.LEVELS);
        } else if (level < 1 || level > KindInfo.LEVELS) {
            fault("/level", "level must be 1 to " + KindInfo.LEVELS + ", but was " + level);
        }
    }

    private void seed(String seed) {
        if (seed != null && seed.strip().length() > Wanted.LONGEST_SEED) {
            fault("/seed", "seed is " + seed.strip().length() + " characters. Give at most " + Wanted.LONGEST_SEED);
        } else if (seed != null && seed.codePoints().anyMatch(code -> Character.isISOControl(code) || Character.getType(code) == Character.SURROGATE)) {
            fault("/seed", "seed holds a character that cannot be printed. Take it out");
        }
    }

    private void fault(String at, String says) {
        faults.add(new Fault(at, says));
    }

    private void settled() {
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
    }
}
