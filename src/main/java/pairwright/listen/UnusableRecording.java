package pairwright.listen;

/** A file that cannot be measured; the message says why and what to do. */
public final class UnusableRecording extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String recording;

    UnusableRecording(String recording, String says) {
        super(says);
        this.recording = recording;
    }

    /** What the file is called. */
    public String recording() {
        return recording;
    }
}
