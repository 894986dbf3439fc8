package streamwright.physics;

import java.util.List;

/**
 * How a port's strings get their power.
 *
 * @param amps of the port: its first stretch
 * @param ampsAll of all stretches, which the board's supply gives
 * @param voltsLeast at the worst pixel
 * @param injections in the order of the data; empty where the port alone suffices
 * @param cost of the injections and their wire
 */
public record Feed(double amps, double ampsAll, double voltsLeast, List<Place> injections, double cost) {
    public Feed {
        injections = List.copyOf(injections);
    }

    /**
     * Where power comes in.
     *
     * @param string 0-based in the order of the port
     * @param pixel 1-based within the string
     */
    public record Place(int string, int pixel) {}
}
