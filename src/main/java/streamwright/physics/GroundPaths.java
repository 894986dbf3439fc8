package streamwright.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/**
 * Shortest ways around obstacles. Wire may run along an edge, also one that two obstacles share, and through a point
 * where two touch. What a place sees is kept, and the search from it. Safe to ask from several threads; the same from a
 * to b as from b to a, to the last bit.
 */
public final class GroundPaths implements Ground {
    private record Place(double x, double y) {}

    private final List<Obstacle> obstacles;
    private final List<Ring> rings = new ArrayList<>();
    private final Sight sight;
    private final Map<Place, Sight.View> views = new ConcurrentHashMap<>();
    private final Map<Place, Wavefront> searches = new ConcurrentHashMap<>();

    private GroundPaths(List<Obstacle> obstacles) {
        this.obstacles = obstacles;
        obstacles.forEach(obstacle -> rings.add(Ring.of(obstacle.ring())));
        sight = new Sight(rings);
    }

    public static GroundPaths of(Yard yard) {
        return new GroundPaths(yard.obstacles());
    }

    /** The first obstacle whose interior holds this place: no way leads to or from it. */
    public Optional<Obstacle> inside(Point place) {
        for (int o = 0; o < rings.size(); o++) {
            if (rings.get(o).contains(place.x(), place.y())) {
                return Optional.of(obstacles.get(o));
            }
        }
        return Optional.empty();
    }

    @Override
    public double path(Point from, Point to) {
        boolean ordered = from.x() < to.x() || (from.x() == to.x() && from.y() <= to.y());
        return Math.abs(from.z() - to.z()) + (ordered ? planar(from, to) : planar(to, from));
    }

    private double planar(Point from, Point to) {
        if (sight.clear(from.x(), from.y(), to.x(), to.y())) {
            return Math.hypot(to.x() - from.x(), to.y() - from.y());
        }
        Place start = new Place(from.x(), from.y());
        Wavefront search = searches.computeIfAbsent(start, place -> new Wavefront(sight, view(place)));
        return search.to(view(new Place(to.x(), to.y())));
    }

    private Sight.View view(Place place) {
        return views.computeIfAbsent(place, p -> sight.from(p.x, p.y));
    }
}
