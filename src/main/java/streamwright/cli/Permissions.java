package streamwright.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import streamwright.solve.Keep;
import streamwright.solve.Repaired;

/** Which of the things to keep clash where nothing was mended under all of them, and the cheapest permission that would do. */
final class Permissions {
    /** A look that is shorter finds nothing. */
    private static final double SECONDS_LEAST = 0.3;

    private final Set<Keep> keep;
    private final boolean proved;
    private final Trial trial;
    private final DoubleSupplier left;
    private final Map<Set<Keep>, Repaired> tried = new HashMap<>();

    /** A repair that keeps some things, looked for in so many seconds. */
    interface Trial {
        Repaired repair(Set<Keep> keep, double seconds);
    }

    /**
     * @param keep not empty
     * @param proved whether there is no repair under all of it, or only none was found
     * @param left seconds for all of this
     */
    Permissions(Set<Keep> keep, boolean proved, Trial trial, DoubleSupplier left) {
        this.keep = EnumSet.copyOf(keep);
        this.proved = proved;
        this.trial = trial;
        this.left = left;
    }

    /** Two sentences. */
    String text() {
        // the smallest permissions first, but all of them while there is time for it: then it is known whether any
        // helps
        List<Set<Keep>> first = new ArrayList<>(fewer(keep));
        if (keep.size() > 1) {
            first.add(Set.of());
        }
        for (int i = 0; i < first.size(); i++) {
            tried(first.get(i), left.getAsDouble() / (first.size() - i + 1));
        }
        Set<Keep> clash = clash();
        String kept = words(clash) + (clash.size() == 1 ? " are kept" : " are all kept");
        return (proved
                        ? "It cannot be mended while " + kept + "."
                        : "No repair was found while " + kept + "; that there is none is not proved.")
                + "\n" + cheapest();
    }

    private Set<Keep> clash() {
        Set<Keep> clash = keep;
        for (Keep each : keep) {
            Set<Keep> fewer = without(clash, Set.of(each));
            if (!fewer.isEmpty() && still(tried(fewer, left.getAsDouble() / 3))) {
                clash = fewer;
            }
        }
        return clash;
    }

    /** Whether fewer things to keep say the same. */
    private boolean still(Repaired repaired) {
        return proved ? repaired instanceof Repaired.Impossible : !(repaired instanceof Repaired.Mended);
    }

    private String cheapest() {
        for (int size = 1; size <= keep.size(); size++) {
            double best = Double.POSITIVE_INFINITY;
            Set<Keep> permission = Set.of();
            for (Set<Keep> lifted : subsets(size)) {
                if (tried(without(keep, lifted), left.getAsDouble() / 3) instanceof Repaired.Mended mended
                        && mended.work() < best) {
                    best = mended.work();
                    permission = lifted;
                }
            }
            if (!permission.isEmpty()) {
                return "The cheapest permission: let " + words(permission) + " change, for " + WorkTable.minutes(best)
                        + ".";
            }
        }
        return "No repair was found under any permission.";
    }

    private Repaired tried(Set<Keep> kept, double seconds) {
        Repaired known = tried.get(kept);
        if (known != null) {
            return known;
        }
        if (seconds < SECONDS_LEAST) {
            return new Repaired.Stopped();
        }
        Repaired repaired = trial.repair(kept, seconds);
        tried.put(kept, repaired);
        return repaired;
    }

    private static List<Set<Keep>> fewer(Set<Keep> keep) {
        return keep.stream().map(each -> without(keep, Set.of(each))).toList();
    }

    private static Set<Keep> without(Set<Keep> keep, Set<Keep> lifted) {
        return keep.stream().filter(each -> !lifted.contains(each)).collect(Collectors.toUnmodifiableSet());
    }

    private List<Set<Keep>> subsets(int size) {
        List<Keep> all = List.copyOf(keep);
        List<Set<Keep>> subsets = new ArrayList<>();
        for (int bits = 1; bits < 1 << all.size(); bits++) {
            if (Integer.bitCount(bits) == size) {
                Set<Keep> subset = EnumSet.noneOf(Keep.class);
                for (int i = 0; i < all.size(); i++) {
                    if ((bits >> i & 1) == 1) {
                        subset.add(all.get(i));
                    }
                }
                subsets.add(subset);
            }
        }
        return subsets;
    }

    private static String words(Set<Keep> keep) {
        return EnumSet.copyOf(keep).stream().map(Keep::word).collect(Collectors.joining(" and "));
    }
}
