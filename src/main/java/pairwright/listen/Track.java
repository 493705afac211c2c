package pairwright.listen;

/**
 * One channel of a recording.
 *
 * @param channel from 0
 */
public record Track(Recording recording, int channel) {
    public Track {
        if (channel < 0 || channel >= recording.channels()) {
            throw new IllegalArgumentException(recording.name() + " has no channel " + (channel + 1));
        }
    }

    /** What people call it. */
    public String name() {
        return recording.channels() == 1 ? recording.name() : recording.name() + (channel == 0 ? ", left" : ", right");
    }
}
