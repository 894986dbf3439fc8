package streamwright.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Rule;
import streamwright.plan.Supply;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;
import streamwright.yard.Spot;

/** Supplies, where the plan lists them: each board of strings at one, at its place, with its volts, amps and watts. */
final class SupplyRules {
    /** A sum that makes whole watts may be off in its last bits. */
    static final double ROUNDING = 1e-6;

    private final Survey survey;
    private final Faults faults;
    private final Map<String, Integer> suppliesOfBoard = new HashMap<>();
    private final Set<Where> places = new HashSet<>();

    /** Two spots that the yard names are two places, also where both have the same coordinates. */
    private record Where(@Nullable String spot, Point at, double volts) {}

    private SupplyRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        if (survey.plan.supplies().isEmpty()) {
            return;
        }
        SupplyRules rules = new SupplyRules(survey, faults);
        survey.plan.supplies().forEach(rules::supply);
        survey.boards.forEach(rules::supplied);
    }

    private void supply(Supply supply) {
        String about = "supply of " + (supply.boards().isEmpty() ? "no board" : String.join(", ", supply.boards()));
        double amps = 0;
        Where where = new Where(supply.spot(), supply.at(), supply.volts());
        for (String name : supply.boards()) {
            suppliesOfBoard.merge(name, 1, Integer::sum);
            SeenBoard board = survey.board(name);
            if (board == null) {
                faults.add(Rule.SPOT_AMPS, about, 1, 0, "the plan has no board " + name);
                continue;
            }
            amps += board.amps();
            Spot place = board.place();
            where = new Where(place == null ? supply.spot() : place.id(), board.at(), supply.volts());
            if (!isAt(supply, board)) {
                faults.add(Rule.SPOT_AMPS, about, 1, 0, name + " is at another place");
            }
            PixelKind kind = firstKind(board);
            if (kind != null && supply.volts() != kind.volts()) {
                String text = "gives " + Say.other(supply.volts(), kind.volts(), "V") + " for " + name;
                faults.add(Rule.BOARD_VOLTS, about, supply.volts(), kind.volts(), text);
            }
        }
        if (!places.add(where)) {
            faults.add(Rule.SPOT_AMPS, about, 2, 1, "a second supply of the same voltage at its place");
        }
        load(supply, about, amps);
    }

    /**
     * A supply in a plan made by hand may leave its spot out: its coordinates then tell it. That a board is at no spot of
     * the yard is not told a second time.
     */
    private static boolean isAt(Supply supply, SeenBoard board) {
        Spot place = board.place();
        return Places.same(supply.at(), board.at())
                && (supply.spot() == null || place == null || supply.spot().equals(place.id()));
    }

    private void load(Supply supply, String about, double amps) {
        double load = survey.yard.rules().fuseLoad();
        if (!Near.amps(supply.amps(), amps)) {
            faults.add(
                    Rule.SPOT_AMPS, about, supply.amps(), amps, "said to give " + Say.other(supply.amps(), amps, "A"));
            return;
        }
        double least = Math.min(
                watts(supply.volts(), amps, load, -ROUNDING), watts(supply.volts(), supply.amps(), load, -ROUNDING));
        double most = Math.max(
                watts(supply.volts(), amps, load, ROUNDING), watts(supply.volts(), supply.amps(), load, ROUNDING));
        if (supply.watts() < least || supply.watts() > most) {
            double own = watts(supply.volts(), amps, load, -ROUNDING);
            String text = "said to be of " + Say.other(supply.watts(), own, "W") + " at " + Say.number(load * 100)
                    + " % load";
            faults.add(Rule.SPOT_AMPS, about, supply.watts(), own, text);
        }
    }

    /** Whole watts of a supply that gives so many amps at a share of its full load. */
    static double watts(double volts, double amps, double load, double rounding) {
        return amps == 0 ? 0 : Math.min(Integer.MAX_VALUE, Math.ceil(volts * amps / load + rounding));
    }

    private static @Nullable PixelKind firstKind(SeenBoard board) {
        for (SeenPort port : board.ports()) {
            for (SeenString on : port.strings()) {
                if (on.kind() != null) {
                    return on.kind();
                }
            }
        }
        return null;
    }

    private void supplied(SeenBoard board) {
        int supplies = suppliesOfBoard.getOrDefault(board.label(), 0);
        if (firstKind(board) != null && supplies != 1) {
            String text = supplies == 0 ? "has no supply" : "listed at " + supplies + " supplies";
            faults.add(Rule.SPOT_AMPS, board.label(), supplies, 1, text);
        }
    }
}
