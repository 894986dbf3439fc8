package streamwright.check;

import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import streamwright.yard.PixelKind;

/**
 * What one string, block of outputs or part of a panel takes of a stream.
 *
 * @param picture equal for two that show the same and so may share their pixels
 * @param kind null for outputs, which take whatever pixels the stream has
 * @param start position of the first null, else of the first lit pixel
 * @param lit position of the first lit pixel
 * @param last position of the last pixel
 * @param channel of the first lit pixel, as the plan says
 * @param kept that channel in a show that keeps its channels
 * @param home the controller that counts that channel, or null for the only one
 */
record Segment(
        String about,
        Object picture,
        @Nullable PixelKind kind,
        long start,
        long lit,
        long last,
        long channel,
        OptionalLong kept,
        @Nullable String home) {}
