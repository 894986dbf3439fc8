package streamwright.check;

import streamwright.plan.Plan;
import streamwright.plan.Rule;
import streamwright.plan.Status;
import streamwright.plan.Totals;

/** Totals and cost as the plan says them; a bound that its own cost does not disprove, and that proves what is claimed. */
final class SumRules {
    private static final double CENT = 0.01;

    private final Faults faults;
    private final String unit;

    private SumRules(Survey survey, Faults faults) {
        this.faults = faults;
        unit = survey.yard.units().symbol();
    }

    static void audit(Survey survey, Faults faults) {
        Sums own = Sums.of(survey);
        SumRules rules = new SumRules(survey, faults);
        rules.totals(survey.plan.totals(), own.totals());
        rules.cost(survey.plan.cost(), survey.plan.bound(), own.cost());
        rules.proof(survey.plan);
    }

    private void totals(Totals stated, Totals own) {
        count("boards", stated.boards(), own.boards());
        count("cables", stated.cables(), own.cables());
        count("strings", stated.strings(), own.strings());
        count("pixels", stated.pixels(), own.pixels());
        count("nulls", stated.nulls(), own.nulls());
        length("trunk", stated.trunk(), own.trunk());
        length("lead", stated.lead(), own.lead());
        length("jumper", stated.jumper(), own.jumper());
    }

    private void count(String what, long stated, long own) {
        if (stated != own) {
            faults.add(Rule.TOTALS, what, stated, own, inAll(Say.other(stated, own, "")));
        }
    }

    private void length(String what, double stated, double own) {
        if (!Near.lengths(stated, own)) {
            faults.add(Rule.TOTALS, what, stated, own, inAll(Say.other(stated, own, unit)));
        }
    }

    private static String inAll(String figures) {
        return "said to be " + figures + " in all";
    }

    private void cost(double stated, double bound, double own) {
        if (!Near.money(stated, own)) {
            String text = "said to be " + Say.other(stated, own, "");
            faults.add(Rule.COST, "cost", stated, own, text);
        }
        if (bound > own && !Near.money(bound, own)) {
            String text = "no plan is said to cost less than " + Say.number(bound) + ", but this one costs "
                    + Say.number(own);
            faults.add(Rule.COST, "bound", bound, own, text);
        }
    }

    /** Figures that are the same to the cent differ by less than one. */
    private void proof(Plan plan) {
        if (plan.status() == Status.OPTIMAL && plan.cost() - plan.bound() >= CENT) {
            String text = "said to be proved optimal at " + Say.number(plan.cost()) + ", but plans are ruled out below "
                    + Say.number(plan.bound()) + " only";
            faults.add(Rule.COST, "status", plan.cost(), plan.bound(), text);
        }
    }
}
