package streamwright.check;

import java.util.List;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** Holds a plan, its own or a hand-made one, against the yard. */
public final class Audit {
    private static final List<RuleGroup> GROUPS = List.of(
            PlacedOnce::audit,
            Positions::audit,
            PortRules::audit,
            StreamRules::audit,
            ChannelRules::audit,
            KeptChannelRules::audit,
            IdRules::audit,
            CableRules::audit,
            NullRules::audit,
            LengthRules::audit,
            PlaceRules::audit,
            PowerRules::audit,
            SupplyRules::audit,
            SumRules::audit);

    private Audit() {}

    /** Rules that hang together. */
    private interface RuleGroup {
        void audit(Survey survey, Faults faults);
    }

    /**
     * All broken rules, each once for each thing that breaks it.
     *
     * @param plan any plan, however wrong: nothing in it makes the audit fail
     */
    public static Findings of(Yard yard, Plan plan) {
        Survey survey = Survey.of(yard, plan);
        Faults faults = new Faults();
        GROUPS.forEach(group -> group.audit(survey, faults));
        return new Findings(faults.list(), Restated.of(survey));
    }
}
