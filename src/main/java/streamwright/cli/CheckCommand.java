package streamwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import streamwright.check.Audit;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.plan.Plan;
import streamwright.plan.Totals;
import streamwright.report.Cautions;
import streamwright.report.Figures;
import streamwright.yard.Yard;

/** Audits a plan, its own or a hand-made one. */
@Command(
        name = "check",
        description = "Audits a plan against its yard: every figure is computed anew, every broken rule is told.",
        footer = {
            "  streamwright check yard.yaml plan.json          exit status 0 if clean, 1 if a rule is broken",
            "  streamwright check yard.yaml plan.json --json   the findings for another program",
        },
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private YardSource source;

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan file, also one made by hand.")
    private Path planPath;

    @Option(names = "--json", description = "Prints the findings, totals and cost as JSON.")
    private boolean json;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        YardAndPlan read = YardAndPlan.read(source, planPath, console);
        Yard yard = read.yard();
        Plan plan = read.plan();
        Findings findings = Audit.of(yard, plan);
        if (json) {
            console.out().println(Json.text(Report.of(findings)));
        } else {
            if (findings.rules().stream().anyMatch(Cautions::needed)) {
                console.out().println(Cautions.POWER + "\n");
            }
            console.out().println(text(findings, yard.units().symbol()));
        }
        return findings.clean() ? Exit.DONE : Exit.BROKEN;
    }

    /** The findings as {@code --json} prints them. */
    private record Report(boolean clean, List<Row> findings, Totals totals, double cost) {
        static Report of(Findings findings) {
            Plan restated = findings.restated();
            return new Report(
                    findings.clean(),
                    findings.list().stream().map(Row::of).toList(),
                    restated.totals(),
                    restated.cost());
        }
    }

    /** A finding with its rule by name. */
    private record Row(String rule, String about, double figure, double limit, String text) {
        static Row of(Finding finding) {
            return new Row(finding.rule().label(), finding.about(), finding.figure(), finding.limit(), finding.text());
        }
    }

    private static String text(Findings findings, String unit) {
        String list = findings.clean() ? "No rule is broken.\n" : table(findings.list()) + "\n";
        Plan restated = findings.restated();
        Totals totals = restated.totals();
        return list
                + "\nComputed anew: %s, %s, %s, %s, %s,\n"
                        .formatted(
                                Figures.count(totals.boards(), "board"),
                                Figures.count(totals.cables(), "cable"),
                                Figures.count(totals.strings(), "string"),
                                Figures.count(totals.pixels(), "pixel"),
                                Figures.count(totals.nulls(), "null pixel"))
                + "trunk %s, leads %s, jumpers %s; cost %s"
                        .formatted(
                                metres(totals.trunk(), unit),
                                metres(totals.lead(), unit),
                                metres(totals.jumper(), unit),
                                Figures.money(restated.cost()));
    }

    private static String metres(double length, String unit) {
        return Figures.plain(length) + " " + unit;
    }

    private static String table(List<Finding> findings) {
        Table table = new Table("rule", "about", ">figure", ">limit", "what is wrong");
        for (Finding finding : findings) {
            table.row(
                    finding.rule().label(),
                    finding.about(),
                    Figures.plain(finding.figure()),
                    Figures.plain(finding.limit()),
                    finding.text());
        }
        return Figures.plain(findings.size()) + (findings.size() == 1 ? " rule is broken:" : " times a rule is broken:")
                + "\n\n" + table;
    }
}
