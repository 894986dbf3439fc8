package streamwright.yard;

import java.util.List;

/** Ground that no wire may cross; the ring's heights mean nothing, its last point joins its first. */
public record Obstacle(String id, List<Point> ring) {
    public Obstacle {
        ring = List.copyOf(ring);
    }
}
