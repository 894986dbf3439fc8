package streamwright.report.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import streamwright.report.Figures;

/**
 * What is said of a comparison as a whole: where its curve bends most, and which row is the first that cannot be. Rows
 * that differ in one thing alone make a curve; where two things were asked for, there are several.
 */
public final class WhatIfRemarks {
    /** Along one curve: what the rows differ in, as a figure, and what they share. */
    private record Along(Function<WhatIf, Double> figure, Function<WhatIf, Object> shared) {}

    private final WhatIfWords words;
    private final List<String> remarks = new ArrayList<>();

    private WhatIfRemarks(List<WhatIf> rows) {
        words = new WhatIfWords(rows);
    }

    /** One sentence each; none where there is nothing to say. */
    public static List<String> of(List<WhatIf> rows) {
        WhatIfRemarks made = new WhatIfRemarks(rows);
        Along along = made.along(rows);
        Map<Object, List<WhatIf>> curves = new LinkedHashMap<>();
        rows.forEach(row -> curves.computeIfAbsent(along.shared.apply(row), shared -> new ArrayList<>())
                .add(row));
        for (List<WhatIf> curve : curves.values()) {
            List<WhatIf> sorted =
                    curve.stream().sorted(Comparator.comparing(along.figure)).toList();
            made.knee(sorted.stream().filter(row -> row.cost() != null).toList());
            made.edge(sorted);
        }
        return List.copyOf(made.remarks);
    }

    private Along along(List<WhatIf> rows) {
        if (words.boardsTell()) {
            return new Along(
                    row -> row.boards() == null ? 0.0 : row.boards(),
                    row -> List.of(row.frameRate(), row.spare(), row.models()));
        }
        return rows.stream().map(WhatIf::frameRate).distinct().count() > 1
                ? new Along(WhatIf::frameRate, row -> List.of(row.spare(), row.models()))
                : new Along(WhatIf::spare, row -> List.of(row.frameRate(), row.models()));
    }

    /** Where the curve bends most: the row with the largest saving from the row before less that to the row behind. */
    private void knee(List<WhatIf> found) {
        int knee = -1;
        double bend = WhatIfWords.CENT;
        for (int i = 1; i + 1 < found.size(); i++) {
            double turn = saving(found, i - 1) - saving(found, i);
            if (turn > bend) {
                bend = turn;
                knee = i;
            }
        }
        if (knee > 0) {
            remarks.add("The knee is at %s: from %s to it %s, from it to %s %s."
                    .formatted(
                            words.name(found.get(knee)),
                            words.name(found.get(knee - 1)),
                            changes(saving(found, knee - 1)),
                            words.name(found.get(knee + 1)),
                            changes(saving(found, knee))));
        }
    }

    private static double saving(List<WhatIf> found, int from) {
        return WhatIfWords.cost(found.get(from)) - WhatIfWords.cost(found.get(from + 1));
    }

    private static String changes(double saving) {
        if (Math.abs(saving) < WhatIfWords.CENT) {
            return "nothing changes";
        }
        return saving > 0 ? Figures.money(saving) + " is saved" : Figures.money(-saving) + " is added";
    }

    /** Of each run of rows that cannot be, the one beside a row that may. */
    private void edge(List<WhatIf> curve) {
        boolean any = curve.stream().anyMatch(row -> !impossible(row));
        for (int i = 0; i < curve.size(); i++) {
            boolean beside = (i > 0 && !impossible(curve.get(i - 1)))
                    || (i + 1 < curve.size() && !impossible(curve.get(i + 1)))
                    || (!any && i + 1 == curve.size());
            if (impossible(curve.get(i)) && beside) {
                remarks.add("The first row that cannot be is " + words.name(curve.get(i)) + ": "
                        + curve.get(i).text() + ".");
            }
        }
    }

    private static boolean impossible(WhatIf row) {
        return row.status().equals("impossible");
    }
}
