package streamwright.physics;

import streamwright.yard.Controller;

/** Where a controller's channels lie in universes. */
public final class Channels {
    /** Lowest and highest universe of streaming ACN, both inclusive: ANSI E1.31-2018, 9.1.1. */
    public static final int UNIVERSE_LEAST = 1;

    public static final int UNIVERSE_MOST = 63_999;

    /** Most slots of a universe after its START code: ANSI E1.11 (DMX512-A). */
    public static final int SLOTS_MOST = 512;

    private Channels() {}

    /**
     * Universe of a channel: {@code firstUniverse + (channel - firstChannel) div universeSlots}. May lie outside the
     * range that exists; {@code Integer.MAX_VALUE} at most.
     *
     * @param channel from the controller's first channel on
     */
    public static int universe(Controller controller, long channel) {
        long universe = controller.firstUniverse()
                + Math.floorDiv(channel - controller.firstChannel(), (long)
                        controller.model().universeSlots());
        return (int) Math.min(Integer.MAX_VALUE, universe);
    }

    /** Slot of a channel in its universe, 1-based: {@code 1 + (channel - firstChannel) mod universeSlots}. */
    public static int slot(Controller controller, long channel) {
        return 1
                + Math.floorMod(
                        channel - controller.firstChannel(), controller.model().universeSlots());
    }

    /** The channel at a universe's slot, the inverse of both. */
    public static long channel(Controller controller, int universe, int slot) {
        return controller.firstChannel()
                + (long) (universe - controller.firstUniverse())
                        * controller.model().universeSlots()
                + slot
                - 1;
    }

    /** Whether the universe exists. */
    public static boolean exists(int universe) {
        return UNIVERSE_LEAST <= universe && universe <= UNIVERSE_MOST;
    }
}
