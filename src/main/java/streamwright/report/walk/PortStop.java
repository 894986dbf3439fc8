package streamwright.report.walk;

import java.util.List;
import java.util.stream.Collectors;
import streamwright.plan.PortUse;
import streamwright.yard.PixelKind;

/**
 * One port that carries something.
 *
 * @param board the board's id
 * @param kind of its pixels
 * @param fuse amps; infinite where there is none
 * @param pixels of its first stretch, which its fuse feeds
 * @param ampsShow of its first stretch, by the yard's brightness; {@code ampsFull} with every channel full
 * @param voltsLeast at its last pixel by the show's brightness; NaN where injections hold the volts up
 */
public record PortStop(
        String board,
        PortUse use,
        PixelKind kind,
        double fuse,
        int pixels,
        double ampsShow,
        double ampsFull,
        double voltsLeast,
        List<StringStop> strings,
        List<InjectionStop> injections) {
    public PortStop {
        strings = List.copyOf(strings);
        injections = List.copyOf(injections);
    }

    /** Board and port, e.g. {@code B7-3}. */
    public String label() {
        return board + "-" + use.port();
    }

    /** The strings' labels in the order of the data. */
    public String props() {
        return strings.stream().map(StringStop::label).collect(Collectors.joining(", "));
    }

    /** Lit pixels of all its strings. */
    public int lit() {
        return strings.stream().mapToInt(each -> each.use().pixels()).sum();
    }

    public StringStop first() {
        return strings.get(0);
    }

    public StringStop last() {
        return strings.get(strings.size() - 1);
    }

    /** Amps with all its injected stretches. */
    public double ampsShowAll() {
        return ampsShow
                + injections.stream().mapToDouble(InjectionStop::ampsShow).sum();
    }

    public double ampsFullAll() {
        return ampsFull
                + injections.stream().mapToDouble(InjectionStop::ampsFull).sum();
    }
}
