package streamwright.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
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
        Map<Kind, byte[]> files = new EnumMap<>(Kind.class);
        if (asked.equals(Set.of(Kind.PAGE))) {
            files.put(Kind.PAGE, page(walk));
        } else {
            // the page takes as long as all the lists
            ForkJoinTask<byte[]> page =
                    asked.contains(Kind.PAGE) ? ForkJoinPool.commonPool().submit(() -> page(walk)) : null;
            List<Sheet> lists = Lists.of(walk);
            asked.stream().filter(kind -> kind != Kind.PAGE).forEach(kind -> files.put(kind, bytes(kind, lists)));
            if (page != null) {
                files.put(Kind.PAGE, page.join());
            }
        }
        Map<String, byte[]> named = new LinkedHashMap<>();
        files.forEach((kind, bytes) -> named.put(kind.file(), bytes));
        return named;
    }

    private static byte[] page(Walk walk) {
        return PlanPage.of(walk).html().getBytes(UTF_8);
    }

    private static byte[] bytes(Kind kind, List<Sheet> lists) {
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
