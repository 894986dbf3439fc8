package streamwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import streamwright.file.ModelLibrary;
import streamwright.physics.Refresh;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.StreamUse;
import streamwright.report.Figures;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Drives;
import streamwright.yard.PixelKind;
import streamwright.yard.Yard;

/** What would take less work than the repair, were the yard's owner to allow what the yard file does not. */
final class Remedies {
    /** Frame rates and shares are offered to so many parts of one. */
    private static final double RATES = 2;

    private static final double SHARES = 100;

    private final Yard yard;
    private final Plan old;
    private final double work;
    private final Function<Yard, Trial> tried;

    /**
     * What a repair of another yard takes.
     *
     * @param work infinite where none was found
     * @param cost of the repaired plan
     * @param models of the boards in the repaired plan
     */
    record Trial(double work, double cost, Set<String> models) {
        static final Trial NONE = new Trial(Double.POSITIVE_INFINITY, 0, Set.of());

        Trial {
            models = Set.copyOf(models);
        }
    }

    /** @param tried what a yard's repair takes */
    Remedies(Yard yard, Plan old, double work, Function<Yard, Trial> tried) {
        this.yard = yard;
        this.old = old;
        this.work = work;
        this.tried = tried;
    }

    /** One line each; none where nothing takes less. */
    List<String> list() {
        List<String> lines = new ArrayList<>();
        if (work == 0) {
            return lines;
        }
        if (!holds(yard.frameRate(), yard.spare())) {
            double rate = rate();
            if (rate >= 1) {
                offer(
                        lines,
                        Variant.of(yard, rate, yard.spare(), yard.boards()),
                        "%s frames a second instead of %s"
                                .formatted(Figures.plain(rate), Figures.plain(yard.frameRate())));
            }
            double spare = spare();
            if (spare >= 0) {
                offer(
                        lines,
                        Variant.of(yard, yard.frameRate(), spare, yard.boards()),
                        "%s %% of every stream kept spare instead of %s %%"
                                .formatted(Figures.plain(100 * spare), Figures.plain(100 * yard.spare())));
            }
        }
        Map<String, BoardOffer> others = others();
        if (!others.isEmpty()) {
            List<BoardOffer> boards = new ArrayList<>(yard.boards());
            boards.addAll(others.values());
            Trial trial = tried.apply(Variant.of(yard, yard.frameRate(), yard.spare(), boards));
            String names = others.values().stream()
                    .filter(offer -> trial.models().contains(offer.model().name()))
                    .map(offer -> offer.model().name() + " (" + Figures.money(offer.price()) + ")")
                    .collect(Collectors.joining(", "));
            if (!names.isEmpty()) {
                add(lines, trial, "boards mixed in: " + names);
            }
        }
        return lines;
    }

    private void offer(List<String> lines, Yard other, String what) {
        add(lines, tried.apply(other), what);
    }

    private void add(List<String> lines, Trial trial, String what) {
        if (trial.work() < work - 1e-9) {
            lines.add("  %s: %s, and the plan costs %s"
                    .formatted(what, WorkTable.minutes(trial.work()), Figures.money(trial.cost())));
        }
    }

    private double rate() {
        for (double rate = Math.floor(yard.frameRate() * RATES) / RATES; rate >= 1; rate -= 1 / RATES) {
            if (holds(rate, yard.spare())) {
                return rate;
            }
        }
        return 0;
    }

    private double spare() {
        for (double spare = Math.floor(yard.spare() * SHARES) / SHARES; spare >= 0; spare -= 1 / SHARES) {
            double rounded = Math.round(spare * SHARES) / SHARES;
            if (holds(yard.frameRate(), rounded)) {
                return rounded;
            }
        }
        return -1;
    }

    /** Whether what is installed refreshes in time. */
    private boolean holds(double rate, double spare) {
        Map<String, PixelKind> kinds = new TreeMap<>();
        yard.props().forEach(prop -> {
            if (prop.pixel() != null) {
                kinds.put(prop.pixel().name(), prop.pixel());
            }
        });
        Map<String, Controller> controllers =
                yard.controllers().stream().collect(Collectors.toMap(Controller::id, each -> each));
        for (Cable cable : old.cables()) {
            Controller controller = controllers.get(cable.controller());
            for (StreamUse stream : cable.streams()) {
                PixelKind kind = kinds.get(stream.pixel());
                if (controller != null
                        && kind != null
                        && stream.pixels()
                                > Refresh.limit(kind, rate, controller.model().streamMost(), spare)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Boards of the library that the yard does not list, of the kinds that it could use. */
    private Map<String, BoardOffer> others() {
        Map<String, BoardOffer> others = new TreeMap<>();
        for (BoardModel model : ModelLibrary.builtIn().boards().values()) {
            boolean known = yard.boards().stream()
                    .anyMatch(offer -> offer.model().name().equals(model.name()));
            boolean used = old.boards().stream().map(Board::model).anyMatch(model.name()::equals);
            if (model.drives() == Drives.PIXELS && model.addressed() && !known && !used) {
                others.put(model.name(), new BoardOffer(model, Integer.MAX_VALUE, 0, model.price()));
            }
        }
        return others;
    }
}
