package pairwright.http;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** What comes from a sender, of a size and within a time; remembers what went wrong with it. */
final class Arriving extends FilterInputStream {
    private static final String TOO_SLOW = "The files did not arrive in time. Send them over a faster line, or shorter parts of them";
    private static final String BROKEN = "The form with the files broke off, or is not put together as multipart/form-data has it. Send it again, and in full";

    private final long startNanos = System.nanoTime();
    private final int mostMs;
    private final Uploads.Limits limits;
    private long count;
    private BadRequest bad;

    Arriving(InputStream in, int mostMs, Uploads.Limits limits) {
        super(in);
        this.mostMs = mostMs;
        this.limits = limits;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] to, int offset, int length) throws IOException {
        int more;
        try {
            more = super.read(to, offset, length);
        } catch (IOException broken) {
            bad = broken.getCause() instanceof TimeoutException ? new BadRequest(Problem.of(408, TOO_SLOW)) : new BadRequest(Problem.of(400, BROKEN));
            throw broken;
        }
        count += Math.max(0, more);
        if (count > limits.allBytes()) {
            bad = Uploads.tooLarge(limits);
            throw new IOException("too large");
        }
        long tookMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - startNanos);
        if (tookMs > mostMs + count * 1000 / limits.bytesPerS()) {
            bad = new BadRequest(Problem.of(408, TOO_SLOW));
            throw new IOException("too slow");
        }
        return more;
    }

    /** What to say of a form that could not be taken in. */
    BadRequest why(Throwable broken) {
        if (bad != null) {
            return bad;
        }
        for (Throwable cause = broken; cause != null; cause = cause.getCause()) {
            String says = Objects.requireNonNullElse(cause.getMessage(), "").toLowerCase(Locale.ROOT);
            if (cause instanceof FileSystemException || says.contains("no space")) {
                return Uploads.noRoom();
            }
            if (says.contains("max file size")) {
                return Uploads.tooLarge(limits);
            }
            if (says.contains("too many keys")) {
                return Uploads.tooMany(limits);
            }
        }
        return new BadRequest(Problem.of(400, BROKEN));
    }
}
