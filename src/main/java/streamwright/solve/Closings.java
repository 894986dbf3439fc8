package streamwright.solve;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;

/**
 * Work on cases that goes on beside other work.
 *
 * @param <T> what comes of a case
 */
final class Closings<T> {
    private record Running<T>(double bound, CompletableFuture<T> future) {}

    private final ExecutorService workers;
    private final int most;
    private final List<Running<T>> running = new ArrayList<>();

    /** @param most cases at the same time */
    Closings(ExecutorService workers, int most) {
        this.workers = workers;
        this.most = most;
    }

    boolean isEmpty() {
        return running.isEmpty();
    }

    boolean isFull() {
        return running.size() >= most;
    }

    /** The least bound of the cases in work; infinite where there are none. */
    double least() {
        return running.stream().mapToDouble(Running::bound).min().orElse(Double.POSITIVE_INFINITY);
    }

    void begin(double bound, Callable<T> work) {
        CompletableFuture<T> future = new CompletableFuture<>();
        workers.execute(() -> {
            try {
                future.complete(work.call());
            } catch (Throwable e) {
                future.completeExceptionally(e);
            }
        });
        running.add(new Running<>(bound, future));
    }

    /** What is ready. */
    List<T> done() throws InterruptedException, ExecutionException {
        List<T> done = new ArrayList<>();
        for (Iterator<Running<T>> each = running.iterator(); each.hasNext(); ) {
            CompletableFuture<T> future = each.next().future;
            if (future.isDone()) {
                done.add(future.get());
                each.remove();
            }
        }
        return done;
    }

    /** Waits until something is ready. */
    List<T> some() throws InterruptedException, ExecutionException {
        CompletableFuture.anyOf(running.stream().map(Running::future).toArray(CompletableFuture[]::new))
                .get();
        return done();
    }

    /** Waits for the one that began first. */
    T next() throws InterruptedException, ExecutionException {
        return running.remove(0).future.get();
    }

    /** Waits for all, in the order in which they began. */
    List<T> all() throws InterruptedException, ExecutionException {
        List<T> all = new ArrayList<>();
        while (!running.isEmpty()) {
            all.add(next());
        }
        return all;
    }
}
