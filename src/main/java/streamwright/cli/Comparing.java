package streamwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.IntSupplier;
import org.jspecify.annotations.Nullable;
import streamwright.check.Audit;
import streamwright.check.Findings;
import streamwright.file.WholeFile;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.plan.StreamUse;
import streamwright.report.whatif.WhatIf;
import streamwright.report.whatif.WhatIfPage;
import streamwright.report.whatif.WhatIfRemarks;
import streamwright.report.whatif.WhatIfTable;
import streamwright.report.whatif.WhatIfWords;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.solve.Planner;
import streamwright.yard.BoardCount;
import streamwright.yard.Yard;

/** Plans the rows of a comparison, each from the plans of its neighbours, and lets each take over what suits it better. */
final class Comparing {
    /** Plans of so many rows are shown to the next. */
    private static final int STARTS = 3;

    private static final double CENT = 0.005;

    /** Of the time, for planning: what is found in one row is tried in all others, audited and told. */
    private static final double PLANNING_SHARE = 0.97;

    /** Seconds; a row is not begun again for less. */
    private static final double WORTHWHILE = 2;

    private static final class Row {
        private final Wish wish;
        private final Yard yard;
        private @Nullable Layout layout;
        private @Nullable Plan plan;
        private double bound;
        private List<Outcome.Obstruction> because = List.of();

        Row(Wish wish, Yard yard) {
            this.wish = wish;
            this.yard = yard;
        }

        /** Money between the best plan and what is proved; endless where there is no plan. */
        double gap() {
            return plan == null ? Double.POSITIVE_INFINITY : plan.cost() - bound;
        }

        boolean open() {
            return because.isEmpty() && gap() > CENT;
        }
    }

    private final Yard yard;
    private final Ground ground;
    private final List<Row> rows = new ArrayList<>();
    private final Console console;
    private final double seconds;
    private final long seed;
    private final int threads;
    private final Interrupt interrupt = new Interrupt(this::endWithRows);
    private volatile IntSupplier telling = () -> Exit.STOPPED;
    private @Nullable Integer status;
    private final long begin = System.nanoTime();

    Comparing(Yard yard, List<Wish> wishes, Console console, double seconds, long seed, int threads) {
        this.yard = yard;
        this.console = console;
        this.seconds = seconds;
        this.seed = seed;
        this.threads = threads;
        ground = GroundPaths.of(yard);
        for (Wish wish : wishes) {
            BoardCount count = wish.boards() == null ? yard.boardCount() : new BoardCount(wish.boards(), wish.boards());
            rows.add(new Row(wish, Variant.of(yard, wish.frameRate(), wish.spare(), wish.offers(), count)));
        }
    }

    /** Returns the exit status; rows that cannot be are no failure. */
    int run(boolean json, boolean csv, @Nullable Path report) {
        telling = () -> tell(json, csv, report);
        return interrupt.watched(console, () -> {
            planAll();
            return telling.getAsInt();
        });
    }

    /** The planner does not come back in time after an interrupt: the rows as they are. */
    private int endWithRows() {
        try {
            return telling.getAsInt();
        } catch (RuntimeException | Error end) {
            return Complaints.ofEnd(end, console.err());
        }
    }

    /** Once: the planner may still come back while the rows are being written. */
    private synchronized int tell(boolean json, boolean csv, @Nullable Path report) {
        if (status == null) {
            adopt();
            List<WhatIf> told =
                    WhatIfWords.told(WhatIf.marked(rows.stream().map(this::told).toList()));
            if (report != null) {
                write(WhatIfPage.of(yard.name(), yard.units().symbol(), told).html(), report);
            }
            console.out().print(json ? Json.text(told) + "\n" : csv ? WhatIfTable.csv(told) : text(told));
            console.out().flush();
            status = interrupt.asked() ? Exit.INTERRUPTED : Exit.DONE;
        }
        return status;
    }

    /**
     * First the rows with most boards, which as a rule are proved soonest, so that their time is left to the others; what
     * is left in the end goes to rows that are still open.
     */
    private void planAll() {
        List<Row> order = rows.stream()
                .sorted(Comparator.comparingInt(row -> -Objects.requireNonNullElse(row.wish.boards(), 0)))
                .toList();
        for (int i = 0; i < order.size() && !interrupt.asked(); i++) {
            plan(order.get(i), Math.max(0.2, left() / (order.size() - i)));
            console.remark("row %d of %d: %s".formatted(i + 1, rows.size(), brief(order.get(i))));
        }
        List<Row> open = rows.stream()
                .filter(Row::open)
                .sorted(Comparator.comparingDouble(Row::gap))
                .toList();
        for (int i = 0; i < open.size() && left() > WORTHWHILE && !interrupt.asked(); i++) {
            plan(open.get(i), left() / (open.size() - i));
            console.remark("again: " + brief(open.get(i)));
        }
    }

    private double left() {
        return PLANNING_SHARE * seconds - (System.nanoTime() - begin) / 1e9;
    }

    private static String brief(Row row) {
        Plan plan = row.plan;
        return plan == null ? "no plan" : String.format(Locale.ROOT, "%.2f", plan.cost());
    }

    private void plan(Row row, double time) {
        List<Layout> starts = new ArrayList<>();
        rows.stream()
                .filter(other -> other.layout != null)
                .sorted(Comparator.comparingDouble(other -> other.wish.away(row.wish)))
                .limit(STARTS)
                .forEach(other -> {
                    if (other.layout != null) {
                        starts.add(other.layout);
                    }
                });
        Budget budget = new Budget(time, 0, seed, threads, interrupt::asked);
        Outcome outcome = Planner.plan(row.yard, ground, budget, Outcome.SILENT, starts);
        enter(row, outcome);
    }

    private synchronized void enter(Row row, Outcome outcome) {
        if (outcome instanceof Outcome.Found found) {
            row.bound = Math.max(row.bound, found.bound());
            take(row, found.layout());
        } else if (outcome instanceof Outcome.Impossible impossible) {
            row.because = impossible.because();
        }
    }

    /** Takes a layout if it keeps every rule of the row and costs less than what is there. */
    private void take(Row row, Layout layout) {
        Plan plan = Assembly.plan(row.yard, ground, layout);
        Plan before = row.plan;
        if (before != null && plan.cost() >= before.cost() - 1e-9) {
            return;
        }
        Findings findings = Audit.of(row.yard, plan);
        if (findings.clean()) {
            row.plan = plan;
            row.layout = layout;
        }
    }

    /** What is found or proved for one row holds for others as well. */
    private void adopt() {
        for (Row row : rows) {
            for (Row other : rows) {
                Layout layout = other.layout;
                if (other != row && layout != null && row.because.isEmpty()) {
                    take(row, layout);
                }
            }
        }
        for (Row row : rows) {
            for (Row other : rows) {
                if (other != row && other.wish.allows(row.wish)) {
                    row.bound = Math.max(row.bound, other.bound);
                    if (!other.because.isEmpty() && row.because.isEmpty() && row.plan == null) {
                        row.because = other.because;
                    }
                }
            }
        }
    }

    private WhatIf told(Row row) {
        Plan plan = row.plan;
        Wish wish = row.wish;
        if (plan == null) {
            Outcome.Obstruction first = row.because.isEmpty() ? null : row.because.get(0);
            return WhatIf.unplanned(
                    wish.boards(),
                    wish.frameRate(),
                    wish.spare(),
                    wish.models(),
                    first == null ? null : new WhatIf.Breaks(first.rule().label(), first.figure(), first.limit()),
                    first == null
                            ? "no plan was found in the time given, and none is proved impossible"
                            : first.text());
        }
        Plan proved = plan.proved(row.bound, 0, seed);
        return new WhatIf(
                proved.totals().boards(),
                wish.frameRate(),
                wish.spare(),
                wish.models(),
                proved.status().name().toLowerCase(Locale.ROOT),
                proved.cost(),
                proved.bound(),
                proved.gap(),
                proved.totals().trunk(),
                proved.totals().lead(),
                proved.totals().cables(),
                fullest(proved),
                false,
                null,
                "");
    }

    private static double fullest(Plan plan) {
        double fullest = 0;
        for (var cable : plan.cables()) {
            for (StreamUse stream : cable.streams()) {
                fullest = Math.max(fullest, stream.limit() == 0 ? 1 : stream.pixels() / (double) stream.limit());
            }
        }
        return fullest;
    }

    private static String text(List<WhatIf> rows) {
        Table table = new Table(WhatIfTable.HEADINGS.toArray(String[]::new));
        rows.forEach(row -> table.row(WhatIfTable.cells(row).toArray()));
        String remarks = String.join("\n", WhatIfRemarks.of(rows));
        return table + "\n" + (remarks.isEmpty() ? "" : "\n" + remarks + "\n");
    }

    private static void write(String page, Path file) {
        try {
            WholeFile.write(file, page);
        } catch (IOException e) {
            throw new Wrong(file + " could not be written (" + Refusal.of(e) + "); name another after --report.");
        }
    }
}
