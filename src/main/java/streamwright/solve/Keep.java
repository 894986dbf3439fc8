package streamwright.solve;

import java.util.Locale;

/** Kinds of change that a repair may be forbidden. */
public enum Keep {
    /** No hop is laid, none between things that stay is taken off. */
    CABLES,
    /** No board is hung, moved or taken down. */
    BOARDS,
    /** Every string that is plugged stays on its port. */
    PORTS,
    /** Every string that is plugged keeps its channel. */
    CHANNELS;

    /** As the command line spells it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
