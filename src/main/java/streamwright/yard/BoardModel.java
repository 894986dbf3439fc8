package streamwright.yard;

import java.util.List;

/**
 * A receiver board as it can be bought.
 *
 * @param ports for pixels: the stream that each port hears, {@link #ANY} where it can be set to any
 * @param fuse amps of each port's fuse; infinite where there is none
 * @param ampsMost amps of the whole board (for outputs: of each output, at mains); infinite where not given
 * @param portMost pixels a port passes on at most
 * @param outputs for outputs: how many it drives
 * @param hears for outputs: the stream its block lies on, or {@link #ANY}
 * @param streams for panels: the streams over which a panel is cut, in equal parts
 */
public record BoardModel(
        String name,
        Drives drives,
        List<Integer> ports,
        Address address,
        double price,
        double fuse,
        double ampsMost,
        int portMost,
        int outputs,
        int hears,
        List<Integer> streams) {
    /** A port (or block) that can be set to any stream. */
    public static final int ANY = 0;

    public BoardModel {
        ports = List.copyOf(ports);
        streams = List.copyOf(streams);
    }

    /** A model that drives pixel strings. */
    public static BoardModel ofPorts(String name, List<Integer> ports, Address address, double price, double fuse) {
        return new BoardModel(
                name,
                Drives.PIXELS,
                ports,
                address,
                price,
                fuse,
                Double.POSITIVE_INFINITY,
                Integer.MAX_VALUE,
                0,
                ANY,
                List.of());
    }

    public boolean addressed() {
        return !(address instanceof Address.None);
    }
}
