package streamwright.report.sheet;

import java.math.BigDecimal;
import java.util.List;
import streamwright.report.walk.Walk;

/** One row a run, with what to write on the flags at its ends. */
final class Pulls {
    private Pulls() {}

    static Sheet of(Walk walk) {
        List<String> columns = List.of(
                "kind",
                "cable",
                "from",
                "to",
                "length to cut " + walk.unit(),
                "label at from",
                "label at to",
                "nulls",
                "planned length " + walk.unit());
        List<Pull> pulls = Pull.of(walk);
        List<List<Object>> rows =
                pulls.stream().map(pull -> row(pull, walk.unit())).toList();
        return new Sheet("pulls", columns, rows)
                .cautioned(pulls.stream().anyMatch(pull -> pull.kind() == Pull.Kind.INJECTION));
    }

    private static List<Object> row(Pull pull, String unit) {
        BigDecimal cut = Cells.cut(pull.length());
        String length = cut.toPlainString() + " " + unit;
        return List.of(
                pull.kind().label(),
                pull.cable(),
                pull.from(),
                pull.to(),
                cut,
                Label.atFrom(pull.from(), pull.to(), length),
                Label.atTo(pull.from(), pull.to(), length),
                pull.nulls(),
                Cells.figure(pull.length(), 3));
    }
}
