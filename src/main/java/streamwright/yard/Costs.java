package streamwright.yard;

/** Prices: money a unit of length for trunk, lead, jumper and injection wire; money each for cable and injection. */
public record Costs(double trunk, double lead, double jumper, double cable, double injection, double injectionWire) {

    public static Costs defaults(Units units) {
        double u = units.metres();
        return new Costs(0.60 * u, 1.90 * u, 1.90 * u, 12.00, 6.00, 1.90 * u);
    }
}
