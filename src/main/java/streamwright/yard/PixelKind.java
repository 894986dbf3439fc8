package streamwright.yard;

/**
 * A pixel's driver chip and supply.
 *
 * @param channels show channels a pixel
 * @param bits data bits a pixel
 * @param bitTime microseconds a bit
 * @param reset microseconds of quiet that end a frame
 * @param prefix microseconds of settings sent before the pixels of each frame
 * @param volts nominal supply
 * @param voltsLow lowest supply at which a pixel still shows its colour
 * @param amps draw of one pixel with all channels full
 * @param pitch metres of string per pixel, whatever the yard's units
 * @param wireMm2 cross-section of one of the string's own supply wires
 * @param source where these figures come from
 */
public record PixelKind(
        String name,
        int channels,
        int bits,
        double bitTime,
        double reset,
        double prefix,
        double volts,
        double voltsLow,
        double amps,
        double pitch,
        double wireMm2,
        String source) {
    /**
     * Three channels in 24 bits of 1.25 us and a reset of 300 us (Worldsemi WS2811 datasheet, high speed mode; reset of
     * later parts of the family, from memory): what a stream is of that carries nothing but outputs. It feeds nothing.
     */
    public static final PixelKind PLAIN =
            new PixelKind("ws2811", 3, 24, 1.25, 300, 0, 12, 10, 0, 0, 1, "Worldsemi WS2811 datasheet");
}
