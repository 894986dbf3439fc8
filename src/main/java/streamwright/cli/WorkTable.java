package streamwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import streamwright.check.Finding;
import streamwright.check.Findings;
import streamwright.plan.Change;
import streamwright.plan.change.Difference;
import streamwright.report.Figures;

/** A work order on one screen. */
final class WorkTable {
    private WorkTable() {}

    static String of(List<Change> changes) {
        Table table = new Table(">step", "work", ">min", "what to do");
        for (int i = 0; i < changes.size(); i++) {
            Change change = changes.get(i);
            table.row(i + 1, change.kind(), Figures.plain(change.minutes()), change.text());
        }
        return table.toString();
    }

    /** The minutes in all, and how many there are of each kind that takes time. */
    static String sum(List<Change> changes) {
        Map<String, Long> counts = changes.stream()
                .filter(change -> change.minutes() > 0)
                .collect(Collectors.groupingBy(Change::kind, LinkedHashMap::new, Collectors.counting()));
        String kinds = counts.entrySet().stream()
                .map(each -> Figures.count(each.getValue(), each.getKey()))
                .collect(Collectors.joining(", "));
        String minutes = minutes(Difference.minutes(changes));
        return kinds.isEmpty() ? minutes : minutes + " (" + kinds + ")";
    }

    static String minutes(double minutes) {
        return Figures.plain(minutes) + (minutes == 1 ? " minute" : " minutes") + " of work";
    }

    /** Of each thing what is first said to be wrong with it. */
    static Map<String, String> broken(Findings findings) {
        Map<String, String> broken = new LinkedHashMap<>();
        // what a plan says wrongly of itself explains no work
        findings.list().stream()
                .filter(finding -> !paper(finding))
                .forEach(finding -> broken.putIfAbsent(finding.about(), finding.text()));
        return broken;
    }

    /** How many rules are broken, other than in the plan's own figures. */
    static int count(Findings findings) {
        return (int) findings.list().stream().filter(each -> !paper(each)).count();
    }

    /** Whether only the plan's own figures are wrong, which no crew has to mend. */
    static boolean paper(Finding finding) {
        return finding.text().contains("said to be");
    }
}
