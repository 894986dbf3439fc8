package streamwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import streamwright.reason.impasse.Clash;
import streamwright.reason.impasse.Impasse;
import streamwright.report.Cautions;
import streamwright.report.Figures;

/** What is told of a yard that cannot be laid out. */
final class ImpasseText {
    /** Things told of each rule before the rest is only counted. */
    private static final int TOLD = 6;

    /** With more things of which nothing was found out, a clash tells nothing. */
    private static final int OPEN_MOST = 12;

    private static final String IN_THE_WAY =
            "What stands in the way, as far as was found: with one of these otherwise there is a plan, at this cost:";

    private ImpasseText() {}

    static String of(Impasse impasse) {
        List<String> lines = new ArrayList<>();
        if (impasse.arithmetic().stream().map(Impasse.Figure::rule).anyMatch(Cautions::needed)) {
            lines.add(Cautions.POWER + "\n");
        }
        if (impasse.proved()) {
            lines.add("This yard cannot be laid out" + (impasse.arithmetic().isEmpty() ? "; that is proved." : ":"));
        } else {
            lines.add("Stopped before any plan was found; that none exists is not proved.");
        }
        Map<String, List<String>> byRule = new LinkedHashMap<>();
        for (Impasse.Figure each : impasse.arithmetic()) {
            byRule.computeIfAbsent(each.rule(), rule -> new ArrayList<>()).add(each.text());
        }
        byRule.forEach((rule, texts) -> {
            texts.stream().limit(TOLD).forEach(text -> lines.add("  " + rule + ": " + text));
            if (texts.size() > TOLD) {
                lines.add("  " + rule + ": and likewise " + Figures.count(texts.size() - TOLD, "other"));
            }
        });
        Clash clash = impasse.clash();
        if (clash != null && clash.open().size() > OPEN_MOST) {
            lines.add("Which of its rules and things clash could not be narrowed down in the time.");
        } else if (clash != null) {
            lines.add("These cannot all hold:");
            clash.limits().forEach(limit -> lines.add("  - " + limit));
            if (clash.things().size() > TOLD) {
                lines.add("  - all of: " + String.join(", ", clash.things()));
            } else {
                clash.things().forEach(thing -> lines.add("  - " + thing));
            }
            lines.add("  " + clash.left());
        }
        if (!impasse.waysOut().isEmpty()) {
            lines.add(impasse.proved() ? "What would help, and what the best plan found then costs:" : IN_THE_WAY);
            impasse.waysOut().stream()
                    .limit(TOLD + TOLD)
                    .forEach(way -> lines.add(String.format("  %10s  %s", Figures.money(way.cost()), way.text())));
        }
        if (!impasse.proved()) {
            lines.add("Give it more --time, or loosen a rule of the yard.");
        }
        return String.join("\n", lines);
    }
}
