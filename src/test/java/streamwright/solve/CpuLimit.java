package streamwright.solve;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;

/**
 * True once the threads that ask have worked for so long together; a machine that is busy with other things gives them
 * no less. It does not count what they do before they first ask.
 */
final class CpuLimit implements BooleanSupplier {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** Nanoseconds of work at the first and at the last question. */
    private record Worked(long first, long last) {}

    private final Map<Long, Worked> byThread = new ConcurrentHashMap<>();
    private final long most;

    CpuLimit(double seconds) {
        most = (long) (seconds * 1e9);
    }

    @Override
    public boolean getAsBoolean() {
        long now = THREADS.getCurrentThreadCpuTime();
        byThread.merge(
                Thread.currentThread().getId(), new Worked(now, now), (was, is) -> new Worked(was.first, is.last));
        return reached();
    }

    boolean reached() {
        long sum = 0;
        for (Worked worked : byThread.values()) {
            sum += worked.last - worked.first;
        }
        return sum > most;
    }
}
