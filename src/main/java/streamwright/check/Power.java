package streamwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Injection;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/**
 * What a port and its injections feed. Amps are those of all channels at the show's brightness; volts fall along the
 * feeding wire under the whole draw of its stretch, then from pixel to pixel under what is left of it.
 */
final class Power {
    /** Of annealed copper at 20 C, in ohm mm2/m (IEC 60028). */
    private static final double COPPER = 0.017241;

    private final Yard yard;
    private final Lengths lengths;

    Power(Yard yard, Lengths lengths) {
        this.yard = yard;
        this.lengths = lengths;
    }

    /**
     * @param stretches in the order of the data; the first is the port's own
     * @param misplaced injections that feed nothing: at a string of another port, at a pixel that is not there, at one
     *     that is fed already, or at the first pixel of the port
     */
    record Fed(List<Stretch> stretches, List<Injection> misplaced) {}

    /** A place in the order of the data: which string of the port, and which of its pixels from 1. */
    private record Spot(int string, int pixel) {}

    Fed fed(String port, Point board, List<SeenString> strings, List<Injection> injections) {
        Map<StringKey, Integer> order = new HashMap<>();
        for (int i = 0; i < strings.size(); i++) {
            if (strings.get(i).string() != null) {
                order.putIfAbsent(strings.get(i).key(), i);
            }
        }
        Set<Spot> starts = new HashSet<>();
        starts.add(new Spot(0, 1));
        List<Injection> misplaced = new ArrayList<>();
        for (Injection injection : injections) {
            int string = order.getOrDefault(new StringKey(injection.prop(), injection.string()), -1);
            boolean there = string >= 0
                    && injection.pixel() >= 1
                    && injection.pixel() <= strings.get(string).pixels();
            if (!there || !starts.add(new Spot(string, injection.pixel()))) {
                misplaced.add(injection);
            }
        }
        List<Spot> sorted = new ArrayList<>(starts);
        sorted.sort(Comparator.comparingInt(Spot::string).thenComparingInt(Spot::pixel));
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Spot end = i + 1 < sorted.size() ? sorted.get(i + 1) : new Spot(strings.size(), 1);
            Stretch stretch = stretch(port, board, strings, sorted.get(i), end, i == 0);
            if (stretch != null) {
                stretches.add(stretch);
            }
        }
        return new Fed(List.copyOf(stretches), List.copyOf(misplaced));
    }

    /** Null where nothing of the stretch is known to the yard. */
    private @Nullable Stretch stretch(
            String port, Point board, List<SeenString> strings, Spot start, Spot end, boolean own) {
        List<Part> parts = parts(strings, start, end);
        if (parts.isEmpty()) {
            return null;
        }
        double amps = parts.stream().mapToDouble(Part::amps).sum();
        Part first = parts.get(0);
        double wire = own ? 0 : injectionWire(board, first.on, start.pixel, first.kind);
        double feeding = own
                ? wireOhms(first.on.length(), yard.rules().leadWireMm2())
                : wireOhms(wire, yard.rules().injectionWireMm2());
        double volts = first.kind.volts() - drop(amps, feeding);
        double left = amps;
        Part worst = first;
        double worstVolts = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (i > 0) {
                volts -= drop(left, wireOhms(part.on.length(), yard.rules().leadWireMm2()));
            }
            volts -= alongString(part, left);
            left -= part.amps;
            if (volts - part.kind.voltsLow() < worstVolts - worst.kind.voltsLow()) {
                worst = part;
                worstVolts = volts;
            }
        }
        String about =
                own ? port : port + " injection at " + strings.get(start.string).label() + " pixel " + start.pixel;
        return new Stretch(about, own, amps, worst.kind, worstVolts, wire);
    }

    /** Pixels of one string that lie in a stretch, and what they draw. */
    private record Part(SeenString on, PixelKind kind, int pixels, double amps) {}

    private List<Part> parts(List<SeenString> strings, Spot start, Spot end) {
        List<Part> parts = new ArrayList<>();
        for (int i = start.string; i <= end.string && i < strings.size(); i++) {
            SeenString on = strings.get(i);
            PixelKind kind = on.kind();
            int pixels = pixels(on, i, start, end);
            if (kind != null && pixels > 0) {
                parts.add(new Part(on, kind, pixels, pixels * draw(kind)));
            }
        }
        return parts;
    }

    /** Pixels of one string of the port that lie in a stretch. */
    private static int pixels(SeenString on, int place, Spot start, Spot end) {
        if (on.string() == null) {
            return 0;
        }
        int first = place == start.string ? start.pixel : 1;
        int behind = place == end.string ? end.pixel : on.pixels() + 1;
        return behind - first;
    }

    private double draw(PixelKind kind) {
        return kind.amps() * yard.brightness();
    }

    private double injectionWire(Point board, SeenString on, int pixel, PixelKind kind) {
        PixelString string = on.string();
        double lead = string == null ? Double.NaN : lengths.lead(board, string.feed());
        return (Double.isNaN(lead) ? 0 : lead)
                + (pixel - 1) * kind.pitch() / yard.units().metres();
    }

    /** Ohms there and back, with the connector. */
    private double wireOhms(double length, double mm2) {
        return loopOhms(length * yard.units().metres(), mm2) + yard.rules().connector();
    }

    private double loopOhms(double metres, double mm2) {
        return 2 * metres * COPPER * yard.rules().wireFactor() / mm2;
    }

    /** From the first pixel of a part to its last, when {@code amps} arrive at the first. */
    private double alongString(Part part, double amps) {
        double steps = part.pixels - 1.0;
        double ampSteps = amps * steps - draw(part.kind) * steps * part.pixels / 2;
        return drop(ampSteps, loopOhms(part.kind.pitch(), part.kind.wireMm2()));
    }

    private static double drop(double amps, double ohms) {
        return amps == 0 ? 0 : amps * ohms;
    }
}
