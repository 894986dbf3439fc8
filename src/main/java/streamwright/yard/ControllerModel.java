package streamwright.yard;

/**
 * A controller as it can be bought.
 *
 * @param streams streams per jack
 * @param boardsPerCable most boards on one cable
 * @param streamMost pixels per stream whatever the frame rate
 * @param channelMost highest channel
 * @param universeSlots channels to a universe
 */
public record ControllerModel(
        String name, int jacks, int streams, int boardsPerCable, int streamMost, int channelMost, int universeSlots) {}
