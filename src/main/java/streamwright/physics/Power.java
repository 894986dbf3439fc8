package streamwright.physics;

import java.util.List;
import java.util.Optional;
import streamwright.yard.Costs;
import streamwright.yard.PixelKind;
import streamwright.yard.Rules;
import streamwright.yard.Units;
import streamwright.yard.Yard;

/**
 * Amps and volts along a port's strings, and the cheapest injections that keep both within their limits.
 *
 * <p>A port or an injection feeds one stretch of pixels, up to the next injection or the end of the port's strings. A
 * pixel draws {@code amps * brightness}, whatever its voltage. With {@code n} pixels in the stretch, the last of them
 * gets
 *
 * <pre>volts - draw * (n * R(feed) + sum over each wire between neighbours of R(wire) * pixels behind it)</pre>
 *
 * and no pixel gets less. {@code R} is {@link Wire#ohms}; a lead, a jumper and an injection wire have the ohms of a
 * connector on top. Inside a string of {@code k} pixels with {@code m} behind it the sum is an arithmetic series,
 * {@code R(pitch) * ((k - 1) * m + k * (k - 1) / 2)}. A stretch draws at most {@code fuseLoad * fuse}: 80 % of the
 * fuse for a continuous load (NEC 210.20(A)). Figures are datasheet-typical, not measured.
 */
public final class Power {
    /** Ports with more pixels count as impossible: at 30 microseconds a pixel one frame would last eight minutes. */
    public static final int PIXELS_MOST = 1 << 24;

    /** A sum that is exactly at its limit must not fall over it by the last bits. */
    private static final double ROUNDING = 1e-9;

    final double draw;
    final double pitchOhms;
    private final double ampsMost;
    private final double volts;
    private final double voltsLow;
    private final double leadOhms;
    private final double wireOhms;
    private final double connector;
    private final double pitch;
    private final double injectionPrice;
    private final double wirePrice;

    /**
     * @param brightness highest of the show, 0..1
     * @param fuse amps of the port's fuse; infinite where there is none
     */
    public Power(Rules rules, Costs costs, Units units, double brightness, PixelKind kind, double fuse) {
        double metres = units.metres();
        draw = kind.amps() * brightness;
        ampsMost = rules.fuseLoad() * fuse;
        volts = kind.volts();
        voltsLow = kind.voltsLow();
        leadOhms = Wire.ohms(rules, rules.leadWireMm2(), metres);
        wireOhms = Wire.ohms(rules, rules.injectionWireMm2(), metres);
        pitchOhms = Wire.ohms(rules, kind.wireMm2(), kind.pitch());
        connector = rules.connector();
        pitch = kind.pitch() / metres;
        injectionPrice = costs.injection();
        wirePrice = costs.injectionWire();
    }

    public static Power of(Yard yard, PixelKind kind, double fuse) {
        return new Power(yard.rules(), yard.costs(), yard.units(), yard.brightness(), kind, fuse);
    }

    /** Amps of so many pixels at the show's brightness. */
    public double amps(long pixels) {
        return pixels * draw;
    }

    /** Amps that a stretch may draw. */
    public double ampsMost() {
        return ampsMost;
    }

    /** Whether one string behind a lead needs no injection. */
    public boolean fits(double lead, int pixels) {
        return holds(pixels, pixels * leadOhms(lead) + pitchOhms * series(pixels, 0));
    }

    /**
     * Whether a port needs no injection. Linear in the strings; allocates nothing.
     *
     * @param lead its length, in the yard's units
     * @param pixels of each string in the order of the data, each at least 1
     * @param jumpers length of the jumper before each string; that before the first is not read
     * @param count strings, at least 1; the arrays may be longer
     */
    public boolean fits(double lead, int[] pixels, double[] jumpers, int count) {
        return holds(pixels(pixels, count), load(lead, pixels, jumpers, count));
    }

    /** Volts at the last pixel of a port without injections; parameters as for {@code fits}. */
    public double voltsLeast(double lead, int[] pixels, double[] jumpers, int count) {
        return volts(load(lead, pixels, jumpers, count));
    }

    /**
     * The least volts of a string's pixels when each has a wire of its own from the board, the first the lead and each
     * other one an injection's: no set of injections gives every pixel more.
     *
     * @param lead from the board to the string's feed, in the yard's units
     */
    public double voltsFarthest(double lead, int pixels) {
        return volts(Math.max(leadOhms(lead), pixels > 1 ? injectionOhms(lead, pixels) : 0));
    }

    /**
     * The cheapest power for a port; among equally cheap ways one with the fewest injections. Exact.
     *
     * @param wires length of a lead from the board to the feed of each string, where its injection wire runs; other
     *     parameters as for {@code fits}
     * @return empty where no set of injections holds fuse and voltage
     */
    public Optional<Feed> feed(double lead, int[] pixels, double[] jumpers, double[] wires, int count) {
        long all = pixels(pixels, count);
        double load = load(lead, pixels, jumpers, count);
        if (holds(all, load)) {
            return Optional.of(new Feed(amps(all), amps(all), volts(load), List.of(), 0));
        }
        return all > PIXELS_MOST
                ? Optional.empty()
                : new Stretches(this, pixels, jumpers, wires, count, (int) all).cheapest(lead);
    }

    /** Whether a stretch of so many pixels holds; {@code load} in ohms times pixels behind them. */
    boolean holds(long pixels, double load) {
        return amps(pixels) <= ampsMost + ROUNDING && volts(load) >= voltsLow - ROUNDING;
    }

    double volts(double load) {
        return volts - draw * load;
    }

    /** Ohms of a lead or jumper, connector included. */
    double leadOhms(double length) {
        return leadOhms * length + connector;
    }

    /** Ohms of the wire to the 1-based pixel of a string whose feed is so far away. */
    double injectionOhms(double wire, int pixel) {
        return wireOhms * (wire + (pixel - 1) * pitch) + connector;
    }

    /** Price of an injection there. */
    double injectionCost(double wire, int pixel) {
        return injectionPrice + wirePrice * (wire + (pixel - 1) * pitch);
    }

    private double load(double lead, int[] pixels, double[] jumpers, int count) {
        double load = 0;
        long behind = 0;
        for (int s = count - 1; s >= 0; s--) {
            load += pitchOhms * series(pixels[s], (double) behind);
            behind += pixels[s];
            load += behind * leadOhms(s == 0 ? lead : jumpers[s]);
        }
        return load;
    }

    /** Sum over a string's own wires of the pixels behind each. */
    private static double series(double pixels, double behind) {
        return (pixels - 1) * behind + pixels * (pixels - 1) / 2;
    }

    private static long pixels(int[] pixels, int count) {
        long all = 0;
        for (int s = 0; s < count; s++) {
            all += pixels[s];
        }
        return all;
    }
}
