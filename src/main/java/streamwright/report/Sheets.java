package streamwright.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Plan;
import streamwright.report.page.PlanPage;
import streamwright.report.sheet.Csv;
import streamwright.report.sheet.Lists;
import streamwright.report.sheet.Sheet;
import streamwright.report.sheet.Workbook;
import streamwright.report.walk.Walk;
import streamwright.yard.Yard;

/** The files that builders take along. */
public final class Sheets {
    /** One file each. */
    public enum Kind {
        PAGE("plan.html"),
        BOARDS("boards.csv"),
        CHANNELS("channels.csv"),
        PULLS("pulls.csv"),
        SHOPPING("shopping.csv"),
        COMMISSIONING("commissioning.csv"),
        WORKBOOK("plan.xlsx");

        private final String file;

        Kind(String file) {
            this.file = file;
        }

        public String file() {
            return file;
        }

        /** The name by which it is asked for. */
        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private Sheets() {}

    /**
     * The asked files, bytes by name, in the order of {@link Kind}.
     *
     * @throws streamwright.report.walk.Misfit if the plan is not one of this yard
     */
    public static Map<String, byte[]> of(Yard yard, Plan plan, Set<Kind> asked) {
        Walk walk = Walk.of(yard, plan);
        List<Sheet> lists = Lists.of(walk);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Kind kind : asked.isEmpty() ? EnumSet.noneOf(Kind.class) : EnumSet.copyOf(asked)) {
            files.put(kind.file(), bytes(kind, walk, lists));
        }
        return files;
    }

    private static byte[] bytes(Kind kind, Walk walk, List<Sheet> lists) {
        if (kind == Kind.PAGE) {
            return PlanPage.of(walk).html().getBytes(UTF_8);
        }
        if (kind == Kind.WORKBOOK) {
            return Workbook.bytes(lists);
        }
        Sheet sheet = lists.stream()
                .filter(each -> each.name().equals(kind.label()))
                .findFirst()
                .orElseThrow();
        return Csv.text(sheet).getBytes(UTF_8);
    }
}
