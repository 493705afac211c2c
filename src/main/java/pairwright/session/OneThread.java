package pairwright.session;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** A thread that does one thing after the other in the background, ends where it has nothing to do, and keeps no program from ending. */
final class OneThread {
    private static final int IDLE_S = 10;

    private OneThread() {
    }

    static ExecutorService named(String name) {
        ThreadPoolExecutor one = new ThreadPoolExecutor(1, 1, IDLE_S, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
            Thread made = new Thread(work, name);
            made.setDaemon(true);
            return made;
        });
        one.allowCoreThreadTimeOut(true);
        return one;
    }
}
