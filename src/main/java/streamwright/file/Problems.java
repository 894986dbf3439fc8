package streamwright.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects what is wrong and what is doubtful while files are read. */
final class Problems {
    /** More help nobody, and a hostile file could bring millions. */
    private static final int MOST_KEPT = 1000;

    private final List<Problem> wrong = new ArrayList<>();
    private final List<Problem> doubtful = new ArrayList<>();
    private long count;

    void add(Place place, String found, String wanted) {
        add(place.problem(found, wanted));
    }

    void add(Problem problem) {
        count++;
        if (wrong.size() < MOST_KEPT) {
            wrong.add(problem);
        }
    }

    void warn(Place place, String found, String wanted) {
        if (doubtful.size() < MOST_KEPT) {
            doubtful.add(place.problem(found, wanted));
        }
    }

    /** Whether no further problem is kept, so that none need be worded with care. */
    boolean full() {
        return wrong.size() == MOST_KEPT;
    }

    /** How many problems were added so far, kept or not. */
    long count() {
        return count;
    }

    <T> Read<T> outcome(@Nullable T value) {
        if (count == 0 && value != null) {
            return new Read.Good<>(value, inOrder(doubtful));
        }
        List<Problem> told = new ArrayList<>(inOrder(wrong));
        if (count > told.size()) {
            String file = told.get(0).file();
            told.add(new Problem(file, 0, 0, "", count + " problems", "the first " + told.size() + " are told"));
        }
        return new Read.Bad<>(told);
    }

    /** By file as they were opened, then as they stand there. */
    private static List<Problem> inOrder(List<Problem> problems) {
        List<String> files = problems.stream().map(Problem::file).distinct().toList();
        return problems.stream()
                .sorted(Comparator.<Problem>comparingInt(problem -> files.indexOf(problem.file()))
                        .thenComparingInt(Problem::line)
                        .thenComparingInt(Problem::column))
                .toList();
    }
}
