package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.List;
import streamwright.yard.PixelKind;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** The limits of a yard's pixels, which nobody changes. */
final class PixelLimits {
    private final Yard yard;
    private final List<Claim> all = new ArrayList<>();

    private PixelLimits(Yard yard) {
        this.yard = yard;
    }

    static List<Claim> of(Yard yard) {
        PixelLimits limits = new PixelLimits(yard);
        yard.streamKinds().forEach(limits::pixel);
        return limits.all;
    }

    /** Amps of all pixels of a yard together, at the show's brightness. */
    static double draw(Yard yard) {
        double amps = 0;
        for (Prop prop : yard.props()) {
            PixelKind kind = prop.pixel();
            for (var string : prop.strings()) {
                amps += kind == null ? 0 : kind.amps() * yard.brightness() * string.pixels();
            }
        }
        return amps;
    }

    private void pixel(PixelKind kind) {
        if (kind.voltsLow() > 0 && kind.amps() > 0 && yard.brightness() > 0) {
            String words = "pixel " + kind.name() + ", voltsLow " + Lever.plain(kind.voltsLow()) + " V";
            all.add(Claim.of(
                    words,
                    draft -> draft.props = draft.props.stream()
                            .map(prop -> kind.equals(prop.pixel()) ? with(prop, withoutLow(kind)) : prop)
                            .toList()));
        }
    }

    private static PixelKind withoutLow(PixelKind was) {
        return new PixelKind(
                was.name(),
                was.channels(),
                was.bits(),
                was.bitTime(),
                was.reset(),
                was.prefix(),
                was.volts(),
                -1e9,
                was.amps(),
                was.pitch(),
                was.wireMm2(),
                was.source());
    }

    private static Prop with(Prop prop, PixelKind kind) {
        return new Prop(
                prop.id(),
                kind,
                prop.follow(),
                prop.tailGiven(),
                prop.copyOf(),
                prop.channel(),
                prop.controller(),
                prop.strings(),
                prop.outputs(),
                prop.panel(),
                prop.at());
    }
}
