package streamwright.reason;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.layout.Unlay;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.plan.Rule;
import streamwright.yard.PixelString;
import streamwright.yard.Yard;

/** A plan's decisions, what the audit says of them, and what it says when one of them is changed. */
final class Base {
    private record Broken(Rule rule, String about, double figure, double limit) {
        static Broken of(Finding finding) {
            return new Broken(finding.rule(), finding.about(), finding.figure(), finding.limit());
        }
    }

    final Yard yard;
    final Layout layout;
    final Measures measures;
    final Settle settle;
    private final Ground ground;
    private final Costing costing;
    private final double cost;
    private final Set<Broken> broken = new HashSet<>();
    private final Map<PixelString, Seat> seats = new HashMap<>();

    /** Alternatives are held against the plan's own decisions, completed in the same way as theirs. */
    Base(Yard yard, Ground ground, Plan plan) {
        this.yard = yard;
        this.ground = ground;
        layout = Unlay.of(yard, plan);
        measures = new Measures(yard, ground);
        settle = new Settle(measures, layout);
        Findings findings = Audit.of(yard, Assembly.plan(yard, ground, layout));
        cost = findings.restated().cost();
        costing = new Costing(yard, ground, layout, cost);
        findings.list().forEach(finding -> broken.add(Broken.of(finding)));
        for (int c = 0; c < layout.cables().size(); c++) {
            seat(c, layout.cables().get(c));
        }
    }

    private void seat(int cable, Layout.Run run) {
        for (int b = 0; b < run.boards().size(); b++) {
            for (Layout.Chain chain : run.boards().get(b).ports()) {
                for (int s = 0; s < chain.strings().size(); s++) {
                    PixelString string = chain.strings().get(s);
                    Layout.Hung hung = run.boards().get(b);
                    seats.putIfAbsent(string, new Seat(string, cable, b, run, hung, chain, s));
                }
            }
        }
    }

    /** Where the plan's strings are, by string. */
    Map<PixelString, Seat> seats() {
        return seats;
    }

    /** An alternative within the yard as it is. */
    Alternative alternative(String what, Layout changed) {
        return costing.alternative(what, changed);
    }

    /** Whether the plan breaks no rule as it is. */
    boolean clean() {
        return broken.isEmpty();
    }

    Outcome judge(Alternative alternative) {
        Findings findings =
                Audit.of(alternative.yard(), Assembly.plan(alternative.yard(), ground, alternative.layout()));
        List<Finding> fresh = new ArrayList<>();
        for (Finding finding : findings.list()) {
            if (!broken.contains(Broken.of(finding))) {
                fresh.add(finding);
            }
        }
        double extra = findings.restated().cost() - cost;
        return new Outcome(alternative, Math.abs(extra) < 1e-9 ? 0 : extra, fresh);
    }
}
