package pairwright.session;

import java.util.Set;
import pairwright.advice.OfferedMic;
import pairwright.locker.PhantomSwitch;
import pairwright.session.allocation.Bank;
import pairwright.session.allocation.Channel;
import pairwright.session.allocation.Feed;
import pairwright.session.allocation.PhantomNeed;

/** How well a channel suits a microphone that needs no phantom power: of two the one with the lower rank is the better, and those of one rank are as good. */
final class ChannelRank {
    static final long FORBIDDEN = 1L << 57;

    /** A load so many times the source impedance is as good as any more. */
    private static final double MOST_RATIO = 100;
    private static final int LOAD_STEPS = 20;
    /** So much gain in hand, in decibels, is enough. */
    private static final double SPARE_DB = 6;
    /** Noise in steps of a decibel over this, in dBu. */
    private static final double LEAST_NOISE_DBU = -135;
    private static final int MOST_STEPS = 31;

    private final ChannelPool pool;
    private final Set<Integer> liveBanks;

    ChannelRank(ChannelPool pool, Set<Integer> liveBanks) {
        this.pool = pool;
        this.liveBanks = liveBanks;
    }

    /** @return {@link #FORBIDDEN} where it must not be plugged in */
    long of(OfferedMic mic, Feed feed, Channel to) {
        Bank bank = pool.banks().get(to.bank());
        boolean ribbon = feed.phantom() == PhantomNeed.FORBIDDEN;
        if (!feed.groups().contains(pool.groupAt(to)) || ribbon && liveBanks.contains(to.bank())) {
            return FORBIDDEN;
        }
        if (!ribbon) {
            return 0;
        }
        Gear.Channel channel = pool.channel(to);
        long rank = bank.phantom() != PhantomSwitch.NONE ? 1 : channel.noted() ? 0 : 2;
        rank = rank << 11 | LOAD_STEPS - loadSteps(mic, channel);
        rank = rank << 11 | gainShort(mic, channel);
        rank = rank << 11 | (channel.noiseDbu() == null ? MOST_STEPS : steps(channel.noiseDbu() - LEAST_NOISE_DBU));
        return rank << 7 | (bank.phantom() == PhantomSwitch.BANK ? 1 : 0);
    }

    /** Ten to a tenfold ratio of input over source impedance. */
    private static int loadSteps(OfferedMic mic, Gear.Channel channel) {
        if (mic.micType().impedanceOhm() == null || channel.inputOhm() == null) {
            return 0;
        }
        double ratio = Math.min(MOST_RATIO, channel.inputOhm() / mic.micType().impedanceOhm().typical());
        return (int) Math.max(0, Math.round(10 * Math.log10(ratio)));
    }

    private static int gainShort(OfferedMic mic, Gear.Channel channel) {
        return mic.predicted().gainDb() == null || channel.mostGainDb() == null ? 0 : steps(Math.ceil(SPARE_DB + mic.predicted().gainDb() - channel.mostGainDb()));
    }

    private static int steps(double decibels) {
        return (int) Math.max(0, Math.min(MOST_STEPS, Math.round(decibels)));
    }
}
