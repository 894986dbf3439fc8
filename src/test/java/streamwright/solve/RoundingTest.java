package streamwright.solve;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * Boards counted whole, mostly of yards of one prop whose strings are alike: the only row of a set of spots and a number
 * D of ports says {@code rest * (n div D + 1) - n} is at most the boards there less the strands led there; n strings, rest
 * what n leaves when divided by D. A board counts the rest for each whole D of its ports, and what ports it has beyond as
 * far as the rest goes. Boards here have four ports and two, so D is four or two.
 */
class RoundingTest {
    private static final int[] PORTS = {4, 2};
    private static final double ROUNDING = 1e-9;

    private static Site site(int strings, int spots) {
        return site(List.of(strings), spots);
    }

    /** @param strings of each prop */
    private static Site site(List<Integer> strings, int spots) {
        Yard garden = TinyGarden.of(1);
        PixelKind kind = requireNonNull(garden.props().get(0).pixel());
        var at = garden.controllers().get(0).at();
        List<Prop> props = new ArrayList<>();
        for (int count : strings) {
            String id = "tree " + props.size();
            List<PixelString> tree = new ArrayList<>();
            for (int s = 1; s <= count; s++) {
                tree.add(new PixelString(id, s, 10, at, at));
            }
            props.add(Prop.ofStrings(id, kind, Follow.PROP, tree));
        }
        List<Spot> places = new ArrayList<>();
        for (int p = 0; p < spots; p++) {
            places.add(new Spot("s" + p, at, 9, 0, Double.POSITIVE_INFINITY));
        }
        Yard yard = Changed.with(Changed.with(garden, "props", props), "spots", places);
        yard = Changed.with(yard, "boards", List.of(offer("four", List.of(1, 2, 3, 4)), offer("two", List.of(1, 2))));
        return new Site(yard, GroundPaths.of(yard));
    }

    private static BoardOffer offer(String name, List<Integer> ports) {
        BoardModel model = BoardModel.ofPorts(name, ports, new Address.Switches(0, 15, 4), 5, 5);
        return new BoardOffer(model, Integer.MAX_VALUE, 0, 5);
    }

    /** A set of spots, and by what its strings are divided. */
    private record Divided(int set, int by) {
        /** By how much the row is broken, per string that the division leaves. */
        double broken(Point point, int strings) {
            int rest = strings % by;
            double sum = low(strings);
            for (int p = 0; p < point.used().length; p++) {
                if ((set >> p & 1) == 1) {
                    sum += point.led()[0][p];
                    // by four: a board of four counts the rest, one of two as far as it goes; by two, each pair of
                    // ports
                    double four = by == 4 ? rest : 2 * rest;
                    double two = by == 4 ? Math.min(2, rest) : rest;
                    sum -= point.board()[p][0] * four + point.board()[p][1] * two;
                }
            }
            return sum / rest;
        }

        double low(int strings) {
            return strings % by * (Math.floorDiv(strings, by) + 1.0) - strings;
        }
    }

    /** Which division a row is of: one by two counts a board of four twice as much as one of two. */
    private static Divided of(Row row, int spots, int strings) {
        int set = set(row, spots);
        int spot = Integer.numberOfTrailingZeros(set);
        boolean pairs = strings % 2 != 0 && row.board(spot, 0) == 2 * row.board(spot, 1) && row.board(spot, 1) == 1;
        return new Divided(set, pairs ? 2 : 4);
    }

    private static int set(Row row, int spots) {
        int set = 0;
        for (int p = 0; p < spots; p++) {
            set |= row.head(0, p) < 0 ? 1 << p : 0;
        }
        return set;
    }

    /** Of three spots every set is looked at; those without a board in none. */
    @Test
    void everyBrokenSetOfThreeSpotsIsFoundTheMostBrokenFirst() {
        SplittableRandom random = new SplittableRandom(1);
        int found = 0;
        int less = 0;
        for (int run = 0; run < 500; run++) {
            int strings = 4 * random.nextInt(1, 4) + random.nextInt(1, 4);
            Site site = site(strings, 3);
            Items items = new Items(site);
            Point point = Point.nowhere(site, items);
            int with = 0;
            for (int p = 0; p < 3; p++) {
                if (random.nextInt(6) > 0) {
                    point.led()[0][p] = random.nextInt(4) == 0 ? 0 : strings * random.nextDouble() / 2;
                    point.board()[p][0] = random.nextDouble(1.2);
                    point.board()[p][1] = random.nextBoolean() ? 0 : random.nextDouble(0.5);
                    with |= 1 << p;
                }
            }
            List<Divided> expected = new ArrayList<>();
            for (int set = 1; set < 8; set++) {
                double led = 0;
                for (int p = 0; p < 3; p++) {
                    led += (set >> p & 1) == 1 ? point.led()[0][p] : 0;
                }
                for (int by : PORTS) {
                    Divided divided = new Divided(set, by);
                    if (strings % by != 0 && (set & ~with) == 0 && led > 0 && divided.broken(point, strings) > 0.02) {
                        expected.add(divided);
                    }
                }
            }
            expected.sort(Comparator.comparingDouble(divided -> -divided.broken(point, strings)));
            Rounding rounding = new Rounding(site, items, false);
            List<Row> rows = rounding.broken(point, 20);
            assertThat(rows.stream().map(row -> of(row, 3, strings)))
                    .as("run %d", run)
                    .containsExactlyElementsOf(expected);
            for (Row row : rows) {
                assertThat(row.low()).isEqualTo(of(row, 3, strings).low(strings));
            }
            if (rows.size() > 1) {
                List<Row> first = rounding.broken(point, 1);
                assertThat(first).hasSize(1);
                assertThat(of(first.get(0), 3, strings)).isEqualTo(expected.get(0));
            }
            found += rows.size();
            less += 14 - rows.size();
        }
        assertThat(found).isGreaterThan(300);
        assertThat(less).isGreaterThan(300);
    }

    private static List<Row> oneEach(int strings) {
        Site site = site(strings, strings);
        Items items = new Items(site);
        Point point = Point.nowhere(site, items);
        for (int p = 0; p < strings; p++) {
            point.led()[0][p] = 1;
            point.board()[p][0] = 0.25;
        }
        return new Rounding(site, items, false).broken(point, 20);
    }

    /**
     * A quarter of a board for each string: seven need two boards and have 1.75, and the fewer of them the less is amiss. Of
     * nine only all together are too much, for 2.25 boards where three are needed; sets of more than seven are not looked at.
     */
    @Test
    void setsGrowToSevenSpots() {
        List<Row> seven = oneEach(7);
        assertThat(set(seven.get(0), 7)).isEqualTo(127);
        assertThat(seven.stream().map(row -> of(row, 7, 7))).doesNotHaveDuplicates();
        assertThat(oneEach(9)).isEmpty();
    }

    /**
     * What is led from a set wholly joins its row before what hardly is: three strings on 0.9 boards, with a tenth of two
     * others. With those, five strings lack nothing: 2 - 5 - 0.9 + 3.2 is below 0.
     */
    @Test
    void whatIsWhollyLedThereJoinsFirst() {
        for (List<Integer> props : List.of(List.of(2, 3), List.of(3, 2))) {
            Site site = site(props, 1);
            Items items = new Items(site);
            Point point = Point.nowhere(site, items);
            int tree = props.indexOf(3);
            point.led()[tree][0] = 3;
            point.led()[1 - tree][0] = 0.2;
            point.board()[0][0] = 0.9;
            List<Row> rows = new Rounding(site, items, false).broken(point, 20);
            // by two, two pairs of ports are needed, where 1.8 are; by four, three ports of the one board that is not
            // whole
            assertThat(rows.stream().map(row -> row.board(0, 0))).containsExactly(2.0, 3.0);
            for (Row row : rows) {
                assertThat(row.head(tree, 0)).isEqualTo(-1);
                assertThat(row.head(1 - tree, 0)).isZero();
            }
        }
    }

    /** Five strings on a board and a quarter, whose row is broken by three quarters; two hundredths do not count. */
    @Test
    void littleIsLetPass() {
        Site site = site(5, 1);
        Items items = new Items(site);
        Point point = Point.nowhere(site, items);
        point.led()[0][0] = 5;
        point.board()[0][0] = 1.25;
        Rounding rounding = new Rounding(site, items, false);
        // three pairs of ports are needed too, and two and a half are there
        assertThat(rounding.broken(point, 20)).hasSize(2);
        point.board()[0][0] = 1.979;
        assertThat(rounding.broken(point, 20)).hasSize(1);
        point.board()[0][0] = 1.981;
        assertThat(rounding.broken(point, 20)).isEmpty();
        assertThat(new Divided(1, 4).broken(point, 5)).isBetween(0.019 - ROUNDING, 0.019 + ROUNDING);
    }
}
