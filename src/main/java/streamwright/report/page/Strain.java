package streamwright.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import streamwright.physics.Runs;
import streamwright.plan.StreamUse;
import streamwright.report.Figures;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;
import streamwright.yard.Rules;

/**
 * How near the plan comes to one of its limits, at the place where it comes nearest.
 *
 * @param share of the limit that is taken
 * @param power whether it is about amps or volts
 */
record Strain(String what, String where, String figure, String limit, double share, boolean power) {

    /** Rounded, but never up to a limit that is not met. */
    long percent() {
        return share < 1 ? Math.min(99, Math.round(100 * share)) : Math.round(100 * share);
    }

    /** The nearest first. */
    static List<Strain> of(Walk walk) {
        List<Strain> list = new ArrayList<>();
        Rules rules = walk.yard().rules();
        for (CableWalk cable : walk.cables()) {
            for (StreamUse stream : cable.cable().streams()) {
                add(
                        list,
                        "stream",
                        cable.label() + " stream " + stream.stream(),
                        stream.pixels(),
                        stream.limit(),
                        "pixels",
                        false);
            }
            add(list, "cable length", cable.label(), cable.cable().length(), rules.cableMost(), walk.unit(), false);
            add(
                    list,
                    "boards on a cable",
                    cable.label(),
                    cable.boards().size(),
                    cable.controller().model().boardsPerCable(),
                    "boards",
                    false);
            for (BoardStop board : cable.boards()) {
                add(list, "hop", board.from() + " to " + board.id(), board.hop(), rules.hopMost(), walk.unit(), false);
                add(
                        list,
                        "amps of a board",
                        board.id(),
                        board.ampsShow(),
                        board.mains() ? Double.POSITIVE_INFINITY : board.model().ampsMost(),
                        "A",
                        true);
            }
        }
        for (PortStop port : walk.ports()) {
            add(list, "amps of a port", port.label(), port.ampsShow(), rules.fuseLoad() * port.fuse(), "A", true);
            double fall = port.kind().volts() - port.voltsLeast();
            add(
                    list,
                    "fall of volts",
                    port.label(),
                    fall,
                    port.kind().volts() - port.kind().voltsLow(),
                    "V",
                    true);
        }
        for (StringStop string : walk.strings()) {
            boolean lead = string.byLead();
            add(
                    list,
                    lead ? "lead" : "jumper",
                    string.label(),
                    string.use().length(),
                    lead ? Runs.leadMost(rules) : Runs.jumperMost(rules),
                    walk.unit(),
                    false);
        }
        jacksAndPorts(list, walk);
        return nearest(list);
    }

    private static void jacksAndPorts(List<Strain> list, Walk walk) {
        int jacks = walk.yard().controllers().stream()
                .mapToInt(each -> each.model().jacks())
                .sum();
        add(list, "jacks in use", "the yard", walk.cables().size(), jacks, "jacks", false);
        int ports = walk.boards().stream()
                .mapToInt(each -> each.model().ports().size())
                .sum();
        add(list, "ports in use", "the yard", walk.ports().size(), ports, "ports", false);
        walk.yard().controllers().forEach(controller -> {
            long last = walk.strings().stream()
                    .filter(each -> each.controller().equals(controller))
                    .mapToLong(StringStop::lastChannel)
                    .max()
                    .orElse(0);
            add(
                    list,
                    "channels",
                    controller.id(),
                    (double) last,
                    controller.model().channelMost(),
                    "channels",
                    false);
        });
    }

    private static void add(
            List<Strain> list, String what, String where, double figure, double limit, String unit, boolean power) {
        if (limit > 0 && Double.isFinite(limit) && Double.isFinite(figure) && figure > 0) {
            list.add(new Strain(what, where, text(figure), text(limit) + " " + unit, figure / limit, power));
        }
    }

    private static String text(double figure) {
        return Figures.plain(Math.round(figure * 100) / 100.0);
    }

    private static List<Strain> nearest(List<Strain> all) {
        ToDoubleFunction<Strain> share = Strain::share;
        List<Strain> nearest = new ArrayList<>();
        all.stream().sorted(Comparator.comparingDouble(share).reversed()).forEach(each -> {
            if (nearest.stream().noneMatch(other -> other.what().equals(each.what()))) {
                nearest.add(each);
            }
        });
        return nearest;
    }
}
