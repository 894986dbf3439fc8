package streamwright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;

/**
 * Ctrl-C and the polite kill: the work sees that it is asked to stop, writes what it has, and the program ends with its
 * status. The work goes on in its own thread while the hook waits; the virtual machine ends when the hook does.
 */
final class Interrupt {
    /** Work that has not ended by then is left alone, and ended for it: a solver may be deaf for long. */
    private static final long MILLIS_TO_STOP = 1_500;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "interrupt");
    private final IntSupplier instead;
    private volatile boolean asked;
    private volatile int status = Exit.STOPPED;

    /**
     * @param instead ends the work from another thread where it does not stop by itself, or waits where it is being
     *     ended; gives the exit status
     */
    Interrupt(IntSupplier instead) {
        this.instead = instead;
        Runtime.getRuntime().addShutdownHook(hook);
    }

    boolean asked() {
        return asked;
    }

    /** Does all of a command's work under this watch; gives its exit status. */
    int watched(Console console, IntSupplier work) {
        int done = Exit.STOPPED;
        try {
            done = work.getAsInt();
            console.out().flush();
            return done;
        } catch (Wrong wrong) {
            // after an interrupt the program ends right below
            console.err().println(wrong.getMessage());
            done = Exit.WRONG;
            return done;
        } finally {
            end(done);
        }
    }

    /** Ends the watch: everything is written and flushed. */
    void end(int workStatus) {
        status = workStatus;
        ended.countDown();
        if (!asked) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // a signal came in this moment: the hook ends the program, with the status above
            }
        }
    }

    private void stop() {
        asked = true;
        try {
            if (!ended.await(MILLIS_TO_STOP, TimeUnit.MILLISECONDS)) {
                status = instead.getAsInt();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Runtime.getRuntime().halt(status);
    }
}
