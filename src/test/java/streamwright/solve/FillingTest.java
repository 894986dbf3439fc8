package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import streamwright.solve.Filling.Filled;
import streamwright.solve.Patterns.Room;

class FillingTest {
    private static final int ENOUGH = 10_000;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    /** Held against every packing: streams that pass carry what they can, those that cost something are as few as can be. */
    @Test
    void asFewStreamsAsAnyPacking() {
        SplittableRandom random = new SplittableRandom(8);
        int possible = 0;
        for (int run = 0; run < 400; run++) {
            int limit = 10 + random.nextInt(30);
            int[] sizes = random.ints(1 + random.nextInt(8), 1, limit + 1).toArray();
            List<Room> rooms = List.of(
                    new Room(1 + random.nextInt(limit), 1 + random.nextInt(3), 1, 0),
                    new Room(limit, 1 + random.nextInt(4), 1 + random.nextInt(5), 1));
            int least = fewest(sizes, rooms);
            String all = Arrays.toString(sizes) + rooms;
            if (least < 0) {
                assertThat(Filling.of(sizes, rooms, 9, ENOUGH, () -> false))
                        .as(all)
                        .isNull();
                continue;
            }
            possible++;
            List<Filled> filled = Filling.of(sizes, rooms, least, ENOUGH, () -> false);
            holds(Objects.requireNonNull(filled, all), sizes, rooms, least);
            assertThat(Filling.of(sizes, rooms, least - 1, ENOUGH, () -> false))
                    .as(all)
                    .isNull();
        }
        assertThat(possible).isBetween(200, 399);
    }

    private static void holds(List<Filled> filled, int[] sizes, List<Room> rooms, int goal) {
        List<Integer> strings = new ArrayList<>();
        int[] used = new int[rooms.size()];
        for (Filled stream : filled) {
            Room room = rooms.get(stream.room());
            used[stream.room()]++;
            strings.addAll(stream.strings());
            assertThat(stream.strings().stream().mapToInt(i -> sizes[i]).sum()).isLessThanOrEqualTo(room.pixels());
            assertThat(stream.strings()).hasSizeLessThanOrEqualTo(room.most());
        }
        assertThat(strings)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, sizes.length).boxed().toList());
        assertThat(used[0]).isLessThanOrEqualTo(rooms.get(0).count());
        assertThat(used[1]).isLessThanOrEqualTo(Math.min(goal, rooms.get(1).count()));
    }

    /** Streams of the second room that the best packing uses; below 0 where there is none. */
    private static int fewest(int[] sizes, List<Room> rooms) {
        int[] pixels = new int[1 + rooms.get(1).count()];
        int[] most = new int[pixels.length];
        for (int s = 0; s < pixels.length; s++) {
            pixels[s] = rooms.get(s == 0 ? 0 : 1).pixels();
            most[s] = rooms.get(s == 0 ? 0 : 1).most();
        }
        return fewest(sizes, 0, pixels, most, 0);
    }

    private static int fewest(int[] sizes, int next, int[] pixels, int[] most, int used) {
        if (next == sizes.length) {
            return used;
        }
        List<Integer> counts = new ArrayList<>();
        for (int s = 0; s < Math.min(pixels.length, used + 2); s++) {
            if (pixels[s] >= sizes[next] && most[s] > 0) {
                pixels[s] -= sizes[next];
                most[s]--;
                counts.add(fewest(sizes, next + 1, pixels, most, Math.max(used, s)));
                pixels[s] += sizes[next];
                most[s]++;
            }
        }
        return counts.stream()
                .filter(count -> count >= 0)
                .min(Comparator.naturalOrder())
                .orElse(-1);
    }

    /** Triplets: every stream must be filled without a gap by three strings, which first fit does not find. */
    @Test
    void tripletsFillEveryStream() {
        SplittableRandom random = new SplittableRandom(3);
        int[] sizes = IntStream.range(0, 20)
                .flatMap(stream -> {
                    int first = 380 + random.nextInt(111);
                    int second = 250 + random.nextInt((1000 - first) / 2 - 249);
                    return IntStream.of(first, second, 1000 - first - second);
                })
                .toArray();
        List<Filled> filled = Filling.of(sizes, List.of(new Room(1000, 60, 60, 1)), 20, ENOUGH, () -> false);
        assertThat(filled).hasSize(20).allMatch(stream -> stream.strings().size() == 3);
    }
}
