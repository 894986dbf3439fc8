package streamwright.yard;

/**
 * Limits of length, slack and wire; lengths in the yard's units. The defaults are common practice, no source, but for
 * {@code wireFactor}, which lifts the ideal resistance of IEC 60028 copper to the IEC 60228 class 5 maxima, and
 * {@code fuseLoad}, the 80 % of a continuous load (NEC 210.20(A)).
 *
 * @param leadData longest lead without a null pixel
 * @param jumperData longest way from pixel to pixel
 * @param nullsMost most null pixels in one lead or jumper
 * @param slack every run is this many times its path length
 * @param trunkLoop plus this at each of the two ends of a hop
 * @param leadLoop plus this for a lead or jumper
 * @param leadWireMm2 of one conductor of leads and jumpers
 * @param connector ohms of a connector
 * @param fuseLoad share of a fuse that a continuous load may take
 */
public record Rules(
        double leadData,
        double jumperData,
        int nullsMost,
        double hopMost,
        double cableMost,
        double slack,
        double trunkLoop,
        double leadLoop,
        double leadWireMm2,
        double injectionWireMm2,
        double wireFactor,
        double connector,
        double fuseLoad) {

    public static Rules defaults(Units units) {
        double u = units.metres();
        return new Rules(6.0 / u, 3.0 / u, 2, 60 / u, 90 / u, 1.10, 1.0 / u, 0.3 / u, 0.82, 1.31, 1.16, 0.02, 0.80);
    }
}
