package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** A site of 10,000 strings on 2,500 boards is audited in a moment, whatever is wrong with it. */
class ManyStringsTest {
    private static final int CABLES = 250;
    private static final int BOARDS = 10;
    private static final int PIXELS = 50;
    private static final ControllerModel BIG = new ControllerModel("big", CABLES, 4, 16, 1024, 1_600_000, 510);

    private static Scene site() {
        List<Prop> props = new ArrayList<>();
        List<Cable> cables = new ArrayList<>();
        List<Board> boards = new ArrayList<>();
        for (int cable = 0; cable < CABLES; cable++) {
            List<String> names = new ArrayList<>();
            for (int place = 0; place < BOARDS; place++) {
                Point at = new Point(2 * place, 0.1 * cable);
                String name = "B" + (cable * BOARDS + place + 1);
                names.add(name);
                List<PortUse> ports = new ArrayList<>();
                for (int port = 1; port <= 4; port++) {
                    String prop = name + "." + port;
                    int first = 1 + place * PIXELS;
                    props.add(Lane.prop(prop, Lane.RGB, PIXELS, at, at, null));
                    ports.add(new PortUse(
                            port, port, first, 0, List.of(new StringUse(prop, 1, 0, first, PIXELS, 0, 0)), List.of()));
                }
                boards.add(new Board(
                        name,
                        "quad",
                        null,
                        at,
                        "shed",
                        cable + 1,
                        place,
                        bits(place),
                        place == BOARDS - 1,
                        ports,
                        null,
                        List.of()));
            }
            List<StreamUse> streams = new ArrayList<>();
            for (int stream = 1; stream <= 4; stream++) {
                long start = 1 + (cable * 4L + stream - 1) * BOARDS * PIXELS * 3;
                streams.add(new StreamUse(stream, "rgb", start, 0, 0, 0, 0));
            }
            cables.add(new Cable("shed", cable + 1, 0, names, List.of(), streams));
        }
        Yard yard = Edit.set(Edit.set(Lane.yard(), "spots", List.of()), "props", props);
        yard = Edit.set(yard, "controllers", List.of(new Controller("shed", BIG, new Point(0, 0), 1, 1)));
        Plan plan = Edit.set(Edit.set(Lane.plan(), "cables", cables), "boards", boards);
        return new Scene(yard, Edit.set(plan, "supplies", List.of())).restated();
    }

    private static String bits(int id) {
        StringBuilder bits = new StringBuilder();
        for (int i = 0; i < 4; i++) {
            bits.append(id >> i & 1);
        }
        return bits.toString();
    }

    /** Time of this thread alone, so that a busy machine does not fail the test. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    @Test
    void isQuick() {
        Scene site = site();
        assertThat(site.audit().list()).isEmpty();
        long start = cpu();
        site.audit();
        assertThat(Duration.ofNanos(cpu() - start)).isLessThan(Duration.ofSeconds(1));
    }

    @Test
    void isQuickWhereEverythingIsWrong() {
        Scene site = site();
        Yard wrong = Edit.set(site.yard(), "rules.hopMost", 0.01);
        wrong = Edit.set(Edit.set(wrong, "rules.fuseLoad", 0.01), "keepChannels", true);
        // all strings on one stream, and all boards on one cable
        List<Board> heaped = site.plan().boards().stream()
                .map(board -> Edit.set(board, "jack", 1))
                .toList();
        Scene scene = new Scene(wrong, Edit.set(site.plan(), "boards", heaped));
        scene.audit();
        long start = cpu();
        assertThat(scene.audit().list()).hasSizeGreaterThan(10_000);
        assertThat(Duration.ofNanos(cpu() - start)).isLessThan(Duration.ofSeconds(3));
    }
}
