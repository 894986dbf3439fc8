package streamwright.check;

import java.util.List;
import streamwright.plan.PortUse;

/** A port in use, with the stretches of pixels that it and its injections feed. */
record SeenPort(String label, PortUse use, List<SeenString> strings, Power.Fed fed) {
    /** Through the port's own fuse. */
    double amps() {
        return fed.stretches().stream()
                .filter(Stretch::own)
                .mapToDouble(Stretch::amps)
                .sum();
    }

    double allAmps() {
        return fed.stretches().stream().mapToDouble(Stretch::amps).sum();
    }
}
