package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import streamwright.report.Demo;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.Walk;
import streamwright.yard.Point;

class RouteTest {
    /** Every wire is drawn as long as it is planned, less its rise: so it is drawn around obstacles, not through them. */
    @Test
    void waysAreAsLongAsTheShortestOnes() {
        // Which wires bend hangs on the plan kept beside a demo yard; that some do is what makes this a test.
        assertThat(Stream.of("home", "trail").mapToInt(RouteTest::bent).sum()).isPositive();
    }

    /** How many wires of a demo plan bend, each of them checked. */
    private static int bent(String demo) {
        Walk walk = Demo.walk(demo);
        Route route = new Route(walk.ground(), walk.yard().obstacles());
        int bent = 0;
        for (var cable : walk.cables()) {
            Point from = cable.controller().at();
            for (var board : cable.boards()) {
                bent += checked(walk, route, from, board.board().at());
                from = board.board().at();
                for (PortStop port : board.ports()) {
                    bent += checked(walk, route, from, port.first().string().feed());
                }
            }
        }
        return bent;
    }

    /** Whether the way bends. */
    private static int checked(Walk walk, Route route, Point from, Point to) {
        List<Point> way = route.points(from, to);
        double length = 0;
        for (int i = 1; i < way.size(); i++) {
            Point a = way.get(i - 1);
            Point b = way.get(i);
            length += Math.hypot(b.x() - a.x(), b.y() - a.y());
        }
        double planar = walk.ground().path(from, to) - Math.abs(from.z() - to.z());
        assertThat(length).isCloseTo(planar, within(1e-6));
        return way.size() > 2 ? 1 : 0;
    }
}
