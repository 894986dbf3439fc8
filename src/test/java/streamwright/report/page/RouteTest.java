package streamwright.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.report.Demo;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.Walk;
import streamwright.yard.Point;

class RouteTest {
    /** Every wire is drawn as long as it is planned, less its rise: so it is drawn around obstacles, not through them. */
    @ParameterizedTest
    @CsvSource({"home, true", "trail, false"})
    void waysAreAsLongAsTheShortestOnes(String demo, boolean bends) {
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
        assertThat(bent > 0).isEqualTo(bends);
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
