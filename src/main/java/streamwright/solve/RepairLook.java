package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Board;
import streamwright.plan.Injection;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.change.Difference;

/** Makes plans of layouts, has them judged, and keeps the one of the least work, of these the cheapest. */
final class RepairLook {
    private final Site site;
    private final Ground ground;
    private final Plan old;
    private final Set<String> dead;
    private final Set<Keep> keep;
    private final boolean keepChannels;
    private final Repaired.Judge judge;
    private @Nullable Plan best;
    private double bestWork = Double.POSITIVE_INFINITY;

    RepairLook(Site site, Ground ground, Plan old, Set<String> dead, Set<Keep> keep, Repaired.Judge judge) {
        this.site = site;
        this.ground = ground;
        this.old = old;
        this.dead = dead;
        this.judge = judge;
        this.keep = keep;
        keepChannels = keep.contains(Keep.CHANNELS);
    }

    /** Null as long as none was found that keeps every rule. */
    @Nullable
    Plan best() {
        return best;
    }

    /** Infinite as long as there is none. */
    double bestWork() {
        return bestWork;
    }

    /**
     * @param work of the best plan of a layout; infinite where it breaks a rule
     * @param least work of any plan of it; infinite where there is none; below zero where nothing is certain
     */
    record Seen(double work, double least) {}

    Seen look(Layout layout) {
        Plan fresh = Assembly.plan(site.yard, ground, layout);
        Numbering.Numbered numbered = Numbering.of(site.yard, fresh, old, keepChannels);
        if (numbered == null) {
            return nothing();
        }
        Plan plan = judged(oldInjections(numbered.plan()));
        plan = plan != null ? plan : judged(numbered.plan());
        if (plan == null) {
            return nothing();
        }
        if (!KeepHolds.of(site.yard, old, plan, keep)) {
            return new Seen(Double.POSITIVE_INFINITY, -1);
        }
        double work = Difference.minutes(site.yard, old, plan, dead);
        boolean better =
                work < bestWork - 1e-9 || (work < bestWork + 1e-9 && best != null && plan.cost() < best.cost() - 1e-9);
        if (better) {
            best = plan;
            bestWork = work;
            judge.mended(plan, work);
        }
        double injections = site.yard.work().injection() * newInjections(plan);
        // copies may come to share pixels that they did not share before, which numbering does not try
        return new Seen(work, numbered.exact() && !site.copies ? work - injections : -1);
    }

    /** That no plan of a layout was found; none may be certain only where places on streams may change freely. */
    private Seen nothing() {
        boolean certain = !(keepChannels || site.copies || site.kept.on);
        return new Seen(Double.POSITIVE_INFINITY, certain ? Double.POSITIVE_INFINITY : -1);
    }

    private @Nullable Plan judged(@Nullable Plan plan) {
        if (plan == null) {
            return null;
        }
        Plan restated = judge.judge(plan).restated();
        return judge.judge(restated).broken().isEmpty() ? restated : null;
    }

    /** Strings to which the old plan brings power. */
    Set<String> injected() {
        Set<String> injected = new HashSet<>();
        for (Board board : old.boards()) {
            board.ports()
                    .forEach(port ->
                            port.injections().forEach(each -> injected.add(Lying.name(each.prop(), each.string()))));
        }
        return injected;
    }

    private long newInjections(Plan plan) {
        Set<Brought> before = brought(old).collect(Collectors.toSet());
        return brought(plan).filter(each -> !before.contains(each)).count();
    }

    /** An injection with the board whose supply it comes from. */
    private record Brought(String board, String model, Injection injection) {}

    private static Stream<Brought> brought(Plan plan) {
        return plan.boards().stream()
                .flatMap(board -> board.ports().stream()
                        .flatMap(port -> port.injections().stream())
                        .map(each -> new Brought(board.id(), board.model(), each)));
    }

    /** The same plan with the old plan's injections on ports that are as they were; null where none differ. */
    private @Nullable Plan oldInjections(Plan plan) {
        Map<String, PortUse> before = new HashMap<>();
        old.boards().forEach(board -> board.ports().forEach(port -> before.put(board.id() + "\n" + port.port(), port)));
        boolean any = false;
        List<Board> boards = new ArrayList<>();
        for (Board board : plan.boards()) {
            List<PortUse> ports = new ArrayList<>();
            for (PortUse port : board.ports()) {
                PortUse was = before.get(board.id() + "\n" + port.port());
                if (was == null
                        || !Lying.names(was).equals(Lying.names(port))
                        || was.injections().equals(port.injections())) {
                    ports.add(port);
                    continue;
                }
                any = true;
                ports.add(new PortUse(
                        port.port(), port.stream(), port.startPixel(), port.amps(), port.strings(), was.injections()));
            }
            boards.add(board.carrying(ports, board.outputs(), board.panels()));
        }
        return any ? RepairPlans.with(plan, plan.cables(), boards) : null;
    }
}
