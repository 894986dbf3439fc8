package streamwright.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Point;

/** The power supply of one place with boards; watts at the rule's fuse load, rounded up to whole watts. */
public record Supply(Point at, @Nullable String spot, double volts, double amps, int watts, List<String> boards) {
    public Supply {
        boards = List.copyOf(boards);
    }
}
