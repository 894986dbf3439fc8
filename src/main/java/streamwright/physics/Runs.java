package streamwright.physics;

import streamwright.yard.Rules;

/** What a run of wire measures, and how many null pixels it needs. Common practice, no source; the yard sets it. */
public final class Runs {
    /** Lengths come from square roots: a run that is exactly at its limit must not fall over it by the last bits. */
    private static final double ROUNDING = 1e-9;

    private Runs() {}

    /** Length of a hop over a path of this length, slack and a loop at both ends included. */
    public static double hop(Rules rules, double path) {
        return rules.slack() * path + 2 * rules.trunkLoop();
    }

    /** Length of a lead or jumper over a path of this length, slack and loop included. */
    public static double lead(Rules rules, double path) {
        return rules.slack() * path + rules.leadLoop();
    }

    /** Null pixels that a lead of this length needs. */
    public static int leadNulls(Rules rules, double length) {
        return length <= rules.leadData() + ROUNDING ? 0 : steps(length - rules.leadData(), rules.jumperData());
    }

    /** Null pixels that a jumper of this length needs. */
    public static int jumperNulls(Rules rules, double length) {
        return Math.max(0, steps(length, rules.jumperData()) - 1);
    }

    /** Longest lead that {@code nullsMost} allows. */
    public static double leadMost(Rules rules) {
        return rules.leadData() + rules.nullsMost() * rules.jumperData();
    }

    /** Longest jumper that {@code nullsMost} allows. */
    public static double jumperMost(Rules rules) {
        return (rules.nullsMost() + 1) * rules.jumperData();
    }

    private static int steps(double length, double step) {
        double steps = Math.ceil(length / step - ROUNDING);
        return steps < Integer.MAX_VALUE ? (int) steps : Integer.MAX_VALUE;
    }
}
