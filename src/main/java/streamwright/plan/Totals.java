package streamwright.plan;

/** Sums over a plan; pixels are the lit ones of all strings, copies included; lengths in the yard's units. */
public record Totals(
        int boards, int cables, int strings, long pixels, int nulls, double trunk, double lead, double jumper) {}
