package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** Whatever a plan says, the audit ends with findings and never with an exception. */
class NonsenseTest {
    private static final int PLANS = 150;
    private static final Object[] INTS = {0, 1, -1, 2, 5, 1_000_000, Integer.MAX_VALUE, Integer.MIN_VALUE};
    private static final Object[] LONGS = {0L, 1L, -1L, 600L, 1L << 40, Long.MAX_VALUE, Long.MIN_VALUE};
    private static final Object[] DOUBLES = {
        0.0, 1.0, -1.0, 0.001, 1e6, 1e12, 1e308, -1e308, Double.MIN_VALUE, Double.MAX_VALUE
    };
    private static final Object[] COORDINATES = {0.0, 10.0, 10.001, -1e6, 1e6, 999_999.999};
    private static final Object[] WORDS = {
        "B1",
        "B2",
        "B9",
        "shed",
        "quad",
        "relay",
        "matrix",
        "porch",
        "mast",
        "arch",
        "sign",
        "flood",
        "bush copy",
        "rgb",
        "rgbw",
        "",
        "1000",
        "\uD83D\uDCA1",
        "x".repeat(70)
    };

    private final List<String> paths = new ArrayList<>();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void neverFails(long seed) {
        Random random = new Random(seed);
        int broken = 0;
        for (int i = 0; i < PLANS; i++) {
            Scene start = i % 2 == 0 ? Lane.scene() : Lane.kept();
            Yard yard = i % 3 == 0 ? Edit.set(start.yard(), "spots", List.of()) : start.yard();
            Plan plan = start.plan();
            int edits = 1 + random.nextInt(6);
            for (int edit = 0; edit < edits; edit++) {
                plan = spoil(plan, random);
            }
            Findings findings = Audit.of(yard, plan);
            assertThat(findings.list()).allSatisfy(finding -> {
                assertThat(finding.text()).isNotBlank();
                assertThat(finding.figure()).isNotNaN();
                assertThat(finding.limit()).isNotNaN();
            });
            Audit.of(yard, findings.restated());
            broken += findings.clean() ? 0 : 1;
        }
        assertThat(broken).isGreaterThan(PLANS / 2);
    }

    private Plan spoil(Plan plan, Random random) {
        paths.clear();
        collect(plan, "");
        String path = paths.get(random.nextInt(paths.size()));
        // the reader of plans bounds coordinates, and nothing else
        boolean coordinate = path.matches(".*\\.at\\.[xyz]");
        return Edit.change(plan, path, old -> coordinate ? any(COORDINATES, random) : nonsense(old, random));
    }

    private void collect(Object at, String path) {
        if (!path.isEmpty()) {
            paths.add(path);
        }
        String before = path.isEmpty() ? "" : path + ".";
        if (at instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collect(list.get(i), before + i);
            }
        } else if (at instanceof Record record) {
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                Object value = Edit.part(record, part);
                if (value != null) {
                    collect(value, before + part.getName());
                }
            }
        }
    }

    private static @Nullable Object nonsense(@Nullable Object old, Random random) {
        if (old instanceof Integer) {
            return any(INTS, random);
        } else if (old instanceof Long) {
            return any(LONGS, random);
        } else if (old instanceof Double) {
            return any(DOUBLES, random);
        } else if (old instanceof String) {
            return any(WORDS, random);
        } else if (old instanceof Boolean bool) {
            return !bool;
        } else if (old instanceof List<?> list && !list.isEmpty()) {
            return shuffled(list, random);
        }
        return old;
    }

    /** Emptied, or with an item lost or doubled. */
    private static List<?> shuffled(List<?> list, Random random) {
        List<Object> copy = new ArrayList<>(list);
        int item = random.nextInt(list.size());
        switch (random.nextInt(3)) {
            case 0 -> copy.clear();
            case 1 -> copy.remove(item);
            default -> copy.add(random.nextInt(list.size()), copy.get(item));
        }
        return copy;
    }

    private static Object any(Object[] choices, Random random) {
        return Arrays.asList(choices).get(random.nextInt(choices.length));
    }
}
