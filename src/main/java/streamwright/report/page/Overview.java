package streamwright.report.page;

import java.util.List;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.plan.Plan;
import streamwright.plan.Status;
import streamwright.plan.Totals;
import streamwright.report.Figures;
import streamwright.report.sheet.Ledger;
import streamwright.report.walk.Walk;

/**
 * What stands first on the page of a plan.
 *
 * @param findings rules that the audit found broken
 */
record Overview(String sentence, String proof, List<Ledger> ledger, List<Strain> strains, List<Finding> findings) {
    Overview {
        ledger = List.copyOf(ledger);
        strains = List.copyOf(strains);
        findings = List.copyOf(findings);
    }

    static Overview of(Walk walk) {
        Plan plan = walk.plan();
        return new Overview(
                sentence(walk),
                proof(plan),
                Ledger.of(walk),
                Strain.of(walk),
                Audit.of(walk.yard(), plan).list());
    }

    private static String sentence(Walk walk) {
        Totals totals = walk.plan().totals();
        return Figures.count(totals.strings(), "string") + " with " + Figures.count(totals.pixels(), "pixel")
                + " hang on "
                + Figures.count(totals.boards(), "board") + " and " + Figures.count(totals.cables(), "cable") + ", by "
                + length(totals.trunk(), walk) + " of trunk, " + length(totals.lead(), walk) + " of leads, "
                + length(totals.jumper(), walk) + " of jumpers and " + Figures.count(totals.nulls(), "null pixel")
                + ".";
    }

    private static String length(double length, Walk walk) {
        return Figures.length(length) + " " + walk.unit();
    }

    private static String proof(Plan plan) {
        if (plan.status() == Status.OPTIMAL) {
            return "No plan for this yard under these rules can cost less: that is proved.";
        }
        return plan.bound() > 0
                ? "No plan for this yard under these rules can cost less than " + Figures.money(plan.bound())
                        + ": this one is at most " + Figures.percentUp(plan.cost() / plan.bound() - 1)
                        + " above the best possible."
                : "Nothing is proved of how much better a plan could be.";
    }
}
