package streamwright.report.locate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a pixel of a stream comes out.
 *
 * @param boardId set on the board's switches; null for a board without an address
 * @param port number of the port, output or panel on the board
 * @param portPixel 1-based from the start pixel of the port
 * @param as one of the words "pixel" (of a string), "null" (in the wire before it), "output" and "panel"
 * @param string number of the string, output or panel within its prop
 * @param label what the string, output or panel is called
 * @param pixel 1-based within the string or panel; for a null pixel which of the wire's; for outputs the output
 * @param ifSetTo what would be seen at the string if the board's switches stood otherwise; only for strings
 */
public record Shown(
        String board,
        @Nullable Integer boardId,
        int port,
        int portPixel,
        String as,
        String prop,
        int string,
        String label,
        int pixel,
        List<Symptom> ifSetTo) {
    public Shown {
        ifSetTo = List.copyOf(ifSetTo);
    }
}
