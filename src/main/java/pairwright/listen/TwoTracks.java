package pairwright.listen;

import java.util.function.DoubleConsumer;

/** Two tracks read side by side, the second from earlier or later on, block by block. */
final class TwoTracks {
    private final Track first;
    private final Track second;

    interface Reader {
        void block(double[] first, double[] second, int frames);
    }

    TwoTracks(Track first, Track second) {
        this.first = first;
        this.second = second;
    }

    /**
     * Reads them as far as both go.
     *
     * @param secondLater so many samples of the second are skipped; of the first where below 0
     * @param every which block is read: each for 1, every other for 2
     * @return how many samples were read
     */
    long read(int secondLater, int blockFrames, long every, Reader reader, DoubleConsumer progress) {
        try (Frames one = first.recording().frames(); Frames two = second.recording().frames()) {
            double[][] firstBlock = new double[first.recording().channels()][blockFrames];
            double[][] secondBlock = new double[second.recording().channels()][blockFrames];
            one.skip(Math.max(0, -secondLater));
            two.skip(Math.max(0, secondLater));
            long promised = Math.min(first.recording().promisedFrames(), second.recording().promisedFrames());
            long done = 0;
            for (int read = blockFrames; read == blockFrames;) {
                read = Math.min(one.read(firstBlock), two.read(secondBlock));
                reader.block(firstBlock[first.channel()], secondBlock[second.channel()], read);
                done += read;
                one.skip((every - 1) * blockFrames);
                two.skip((every - 1) * blockFrames);
                progress.accept(promised > 0 ? Math.min(1, (double) done * every / promised) : 0);
            }
            return done;
        }
    }
}
