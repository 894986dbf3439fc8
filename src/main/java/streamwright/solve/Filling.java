package streamwright.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Patterns.Pattern;
import streamwright.solve.Patterns.Room;

/**
 * Fills streams: dives from the programme of {@link Patterns} into whole numbers, taking a pattern and solving again,
 * first always the one that the solution takes most of, then with more and more discrepancies from that (Sadykov et al.
 * 2019, limited discrepancy search by Harvey and Ginsberg 1995).
 */
final class Filling {
    /** A string more than a whole stream, but for rounding. */
    private static final double ROUNDING = 1e-5;

    private static final int DISCREPANCIES_MOST = 12;

    private final Patterns patterns;
    private final int goal;
    private final Deque<Taken> taken = new ArrayDeque<>();

    private record Taken(Pattern pattern, int times) {}

    /** Strings that share a stream of a room, by their place among the sizes. */
    record Filled(int room, List<Integer> strings) {}

    private Filling(Patterns patterns, int goal) {
        this.patterns = patterns;
        this.goal = goal;
    }

    /**
     * Shares strings out over streams.
     *
     * @param sizes pixels of each string
     * @param goal streams that cost something, at most
     * @param programmes to solve at most before it is given up
     * @return null where no such filling was found
     */
    static @Nullable List<Filled> of(int[] sizes, List<Room> rooms, int goal, int programmes, BooleanSupplier stopped) {
        Patterns patterns = new Patterns(sizes, rooms, programmes, stopped);
        try {
            Filling filling = new Filling(patterns, goal);
            for (int most = 0; most <= DISCREPANCIES_MOST; most++) {
                if (filling.dive(0, most)) {
                    return filling.read(sizes);
                }
                if (patterns.stopped() || filling.hopeless) {
                    return null;
                }
            }
            return null;
        } finally {
            patterns.close();
        }
    }

    /** Whether not even parts of streams would do. */
    private boolean hopeless;

    /** Goes on from what is taken until all have a place; takes back what it took where that fails. */
    private boolean dive(int used, int discrepancies) {
        int depth = taken.size();
        if (Arrays.stream(patterns.wanted).allMatch(wanted -> wanted <= 0)) {
            return used <= goal;
        }
        double value = patterns.solve();
        // not a number where it was stopped
        if (!(used + Math.ceil(value - ROUNDING) <= goal)) {
            hopeless |= depth == 0 && value - ROUNDING > goal;
            return false;
        }
        List<Pattern> promising = new ArrayList<>();
        int now = used;
        for (Pattern pattern : List.copyOf(patterns.patterns)) {
            int whole = (int) Math.floor(pattern.value + ROUNDING);
            while (whole > 0 && !patterns.fits(pattern, whole)) {
                whole--;
            }
            if (whole > 0) {
                now += take(pattern, whole);
            }
            if (pattern.value - whole > ROUNDING) {
                promising.add(pattern);
            }
        }
        promising.sort(Comparator.comparingDouble((Pattern each) -> -Patterns.part(each.value)));
        promising.removeIf(each -> !patterns.fits(each, 1));
        boolean done = promising.isEmpty() && taken.size() > depth && dive(now, discrepancies);
        int ruledOut = 0;
        for (int k = 0; k < promising.size() && k <= discrepancies && !done && !patterns.stopped(); k++) {
            Pattern next = promising.get(k);
            done = dive(now + take(next, 1), discrepancies - k);
            if (!done) {
                untake();
                next.ruledOut++;
                ruledOut++;
            }
        }
        for (int k = 0; k < ruledOut; k++) {
            promising.get(k).ruledOut--;
        }
        while (!done && taken.size() > depth) {
            untake();
        }
        return done;
    }

    private int take(Pattern pattern, int times) {
        patterns.take(pattern, times);
        taken.push(new Taken(pattern, times));
        return times * patterns.rooms.get(pattern.room).price();
    }

    private void untake() {
        Taken last = taken.pop();
        patterns.take(last.pattern, -last.times);
    }

    /** Names strings where patterns only count them. */
    private List<Filled> read(int[] sizes) {
        List<Deque<Integer>> ofSize = new ArrayList<>();
        for (int k = 0; k < patterns.size.length; k++) {
            ofSize.add(new ArrayDeque<>());
        }
        for (int i = 0; i < sizes.length; i++) {
            ofSize.get(patterns.indexOf(sizes[i])).add(i);
        }
        List<Filled> filled = new ArrayList<>();
        for (Taken each : taken) {
            for (int time = 0; time < each.times; time++) {
                List<Integer> strings = new ArrayList<>();
                for (int k = 0; k < each.pattern.pieces.length; k++) {
                    for (int piece = 0; piece < each.pattern.pieces[k]; piece++) {
                        strings.add(ofSize.get(k).remove());
                    }
                }
                filled.add(new Filled(each.pattern.room, strings));
            }
        }
        return filled;
    }
}
