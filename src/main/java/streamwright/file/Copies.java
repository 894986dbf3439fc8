package streamwright.file;

import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A copy names a prop that is no copy, and has as many strings with the same pixels each. */
record Copies(Map<String, PropDraft> props, Set<String> ids) {
    void check(PropDraft copy, Problems problems) {
        String name = copy.copyOf();
        if (name == null) {
            return;
        }
        Place named = copy.copyOfPlace();
        PropDraft original = props.get(name);
        if (name.equals(copy.id())) {
            problems.add(named.wrong("another prop"));
        } else if (original == null) {
            if (!ids.contains(name)) {
                problems.add(named.wrong("the id of a prop" + Nearest.hint(name, ids, problems)));
            }
        } else if (original.copyOf() != null) {
            problems.add(named.wrong("a prop that is no copy itself, such as " + original.copyOf()));
        } else if (original.runs().isEmpty()) {
            problems.add(named.wrong("a prop of strings"));
        } else if (original.strings() != copy.strings()) {
            String wanted = "must be " + original.strings() + ", as many as " + name + " has";
            problems.add(copy.place(), strings(copy.strings()), wanted);
        } else {
            String different = difference(copy, original);
            if (different != null) {
                problems.add(copy.place(), different, "must be the same pixels as in " + name);
            }
        }
    }

    private static String strings(long count) {
        return count == 1 ? "1 string" : count + " strings";
    }

    private static @Nullable String difference(PropDraft copy, PropDraft original) {
        int[] here = pixels(copy).toArray();
        int[] there = pixels(original).toArray();
        for (int i = 0; i < here.length; i++) {
            if (here[i] != there[i]) {
                return here[i] + " pixels in string " + (i + 1) + " where " + original.id() + " has " + there[i];
            }
        }
        return null;
    }

    private static IntStream pixels(PropDraft prop) {
        return prop.runs().stream()
                .flatMapToInt(run -> IntStream.range(0, run.count()).map(i -> run.pixels()));
    }
}
