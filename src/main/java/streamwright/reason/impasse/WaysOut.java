package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/**
 * Looks for changes with which a yard has a plan: one change alone, as small as one finds; where none alone helps,
 * several together, none of which could be left away.
 */
final class WaysOut {
    private static final double BEST_PLAN = 0.7;

    /** A change and how far it goes. */
    private record Turned(Candidate candidate, double value) {}

    private final Yard yard;
    private final Oracle oracle;

    WaysOut(Yard yard, Oracle oracle) {
        this.yard = yard;
        this.oracle = oracle;
    }

    /**
     * Cheapest plan first.
     *
     * @param alone each tried by itself
     * @param less things left out, each tried by itself: that something else must be given up is no reason to ask for
     *     nothing further
     * @param together tried several at once, where none of the first kind helps
     */
    List<WayOut> of(List<Candidate> alone, List<Candidate> less, List<Candidate> together) {
        List<WayOut> ways = each(alone);
        boolean none = ways.isEmpty();
        ways.addAll(each(less));
        if (none && !oracle.over()) {
            add(ways, several(together));
        }
        ways.sort(Comparator.comparingDouble(WayOut::cost));
        return ways;
    }

    private List<WayOut> each(List<Candidate> candidates) {
        List<WayOut> ways = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Turned turned = oracle.over() ? null : least(yard, candidate);
            if (turned != null) {
                add(ways, List.of(turned));
            }
        }
        return ways;
    }

    private void add(List<WayOut> ways, List<Turned> turned) {
        if (turned.isEmpty()) {
            return;
        }
        Yard changed = changed(turned);
        Plan plan = oracle.bestPlan(changed, BEST_PLAN);
        if (plan == null) {
            plan = oracle.plan(changed, BEST_PLAN);
        }
        if (plan != null) {
            String text =
                    turned.stream().map(each -> each.candidate.text(each.value)).collect(Collectors.joining(", and "))
                            + new Particulars(yard, plan)
                                    .of(turned.stream()
                                            .map(each -> each.candidate.lever().field())
                                            .toList());
            ways.add(new WayOut(
                    turned.stream().map(each -> each.candidate.told(each.value)).toList(),
                    plan.cost(),
                    plan.bound(),
                    text));
        }
    }

    private Yard changed(List<Turned> turned) {
        YardDraft draft = new YardDraft(yard);
        turned.forEach(each -> each.candidate.lever().set().accept(draft, each.value));
        return draft.yard();
    }

    private boolean works(Yard from, Candidate candidate, double value) {
        return oracle.plan(candidate.lever().applied(from, value)) != null;
    }

    /**
     * The least turn of a lever with which a plan is found: twice as far each time until there is one, then halving
     * what is left between; null where there is none even at its end.
     */
    private @Nullable Turned least(Yard from, Candidate candidate) {
        Lever lever = candidate.lever();
        long most = lever.steps();
        if (most < 1 || !works(from, candidate, lever.loosest())) {
            return null;
        }
        long low = 0;
        long high = 1;
        while (high < most && !works(from, candidate, lever.at(high))) {
            low = high;
            high = 2 * high;
        }
        high = Math.min(high, most);
        while (high - low > 1 && !oracle.over()) {
            long middle = (low + high) / 2;
            if (works(from, candidate, lever.at(middle))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return new Turned(candidate, high == most ? lever.loosest() : lever.at(high));
    }

    /** All changes together, then without each that is not needed, then each no farther than needed. */
    private List<Turned> several(List<Candidate> candidates) {
        Map<Candidate, Double> turned = new LinkedHashMap<>();
        candidates.forEach(each -> turned.put(each, each.lever().loosest()));
        if (oracle.plan(changed(list(turned))) == null) {
            return List.of();
        }
        for (Candidate each : candidates) {
            turned.remove(each);
            if (oracle.over() || oracle.plan(changed(list(turned))) == null) {
                turned.put(each, each.lever().loosest());
            }
        }
        for (Candidate each : List.copyOf(turned.keySet())) {
            Map<Candidate, Double> others = new LinkedHashMap<>(turned);
            others.remove(each);
            Turned least = oracle.over() ? null : least(changed(list(others)), each);
            if (least != null) {
                turned.put(each, least.value);
            }
        }
        return list(turned);
    }

    private static List<Turned> list(Map<Candidate, Double> turned) {
        return turned.entrySet().stream()
                .map(each -> new Turned(each.getKey(), each.getValue()))
                .toList();
    }
}
