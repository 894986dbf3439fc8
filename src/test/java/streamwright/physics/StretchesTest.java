package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.yard.Costs;
import streamwright.yard.PixelKind;
import streamwright.yard.Rules;
import streamwright.yard.Units;

/** The dynamic programme against every set of injections on tiny ports, volts added up wire by wire. */
class StretchesTest {

    /** A tiny port; wires long and thin enough that a few pixels exhaust them. */
    private static final class Port {
        final int[] pixels;
        final double[] jumpers;
        final double[] wires;
        final double lead;
        final double fuse;
        final Rules rules;
        final Costs costs;
        final Units units;
        final PixelKind kind;

        /** Up to ten pixels in up to three strings, or so many times as many pixels. */
        Port(Random random, int times) {
            int strings = 1 + random.nextInt(3);
            pixels = new int[strings];
            jumpers = new double[strings];
            wires = new double[strings];
            int left = 10;
            for (int s = 0; s < strings; s++) {
                pixels[s] = Math.min(6, 1 + random.nextInt(Math.max(1, left - (strings - s - 1))));
                left -= pixels[s];
                pixels[s] *= times;
                jumpers[s] = random.nextDouble() * 9;
                wires[s] = random.nextDouble() * 20;
            }
            lead = random.nextDouble() * 12;
            fuse = 1 + random.nextInt(6);
            costs = new Costs(0.6, 1.9, 1.9, 12, random.nextInt(3) * 3.0, random.nextInt(3) * 0.7);
            double leadMm2 = 0.3 + random.nextDouble();
            double wireMm2 = 0.3 + random.nextDouble();
            rules = new Rules(6, 3, 2, 60, 90, 1.1, 1, 0.3, leadMm2, wireMm2, 1.16, 0.02, 0.8);
            units = random.nextBoolean() ? Units.M : Units.FT;
            double low = 4 + random.nextDouble() * 0.9;
            double pitch = 0.2 + random.nextDouble();
            kind = new PixelKind("tiny", 3, 24, 1.25, 50, 0, 5, low, 0.5 / times, pitch / times, 0.3, "invented");
        }

        Power power() {
            return new Power(rules, costs, units, 1, kind, fuse);
        }

        List<Feed.Place> places() {
            List<Feed.Place> places = new ArrayList<>();
            for (int s = 0; s < pixels.length; s++) {
                for (int p = 1; p <= pixels[s]; p++) {
                    places.add(new Feed.Place(s, p));
                }
            }
            return places;
        }

        double ohms(double mm2, double metres) {
            return 0.017241 / mm2 * rules.wireFactor() * 2 * metres;
        }

        double injectionLength(Feed.Place place) {
            return wires[place.string()] + (place.pixel() - 1) * kind.pitch() / units.metres();
        }

        /** Whether the pixels from one place of the list to before another hold, by walking every wire. */
        boolean holds(List<Feed.Place> places, int from, int to) {
            Feed.Place first = places.get(from);
            double metres = units.metres();
            double feed = from == 0
                    ? ohms(rules.leadWireMm2(), lead * metres)
                    : ohms(rules.injectionWireMm2(), injectionLength(first) * metres);
            double amps = (to - from) * kind.amps();
            if (amps > 0.8 * fuse + 1e-9) {
                return false;
            }
            double volts = kind.volts() - amps * (feed + rules.connector());
            for (int k = from; k < to; k++) {
                if (k > from) {
                    Feed.Place here = places.get(k);
                    double wire = here.pixel() > 1
                            ? ohms(kind.wireMm2(), kind.pitch())
                            : ohms(rules.leadWireMm2(), jumpers[here.string()] * metres) + rules.connector();
                    volts -= wire * (to - k) * kind.amps();
                }
                if (volts < kind.voltsLow() - 1e-9) {
                    return false;
                }
            }
            return true;
        }

        /** Cheapest cost by trying every next start from every start, infinite if none holds. */
        double everyNextStart() {
            List<Feed.Place> places = places();
            int n = places.size();
            double[] cheapest = new double[n + 1];
            for (int from = n - 1; from >= 0; from--) {
                double after = Double.POSITIVE_INFINITY;
                for (int to = from + 1; to <= n; to++) {
                    if (cheapest[to] < after && holds(places, from, to)) {
                        after = cheapest[to];
                    }
                }
                double own =
                        from == 0 ? 0 : costs.injection() + costs.injectionWire() * injectionLength(places.get(from));
                cheapest[from] = own + after;
            }
            return cheapest[0];
        }

        boolean free() {
            return costs.injection() == 0 && costs.injectionWire() == 0;
        }

        /** Fewest injections of all sets that hold. */
        int fewest() {
            List<Feed.Place> places = places();
            int n = places.size();
            int[] stretches = new int[n + 1];
            for (int from = n - 1; from >= 0; from--) {
                stretches[from] = n + 1;
                for (int to = from + 1; to <= n; to++) {
                    if (stretches[to] < stretches[from] && holds(places, from, to)) {
                        stretches[from] = stretches[to] + 1;
                    }
                }
            }
            return stretches[0] - 1;
        }

        /** Cheapest cost over all sets, infinite if none holds. */
        double bruteForce() {
            List<Feed.Place> places = places();
            int n = places.size();
            double best = Double.POSITIVE_INFINITY;
            for (int set = 0; set < 1 << (n - 1); set++) {
                double cost = 0;
                boolean held = true;
                int from = 0;
                for (int k = 1; k <= n && held; k++) {
                    if (k == n || (set >> (k - 1) & 1) == 1) {
                        held = holds(places, from, k);
                        from = k;
                        if (k < n) {
                            cost += costs.injection() + costs.injectionWire() * injectionLength(places.get(k));
                        }
                    }
                }
                if (held) {
                    best = Math.min(best, cost);
                }
            }
            return best;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void matchesEverySetOfInjections(int seed) {
        Random random = new Random(seed);
        int none = 0;
        int some = 0;
        int impossible = 0;
        for (int i = 0; i < 500; i++) {
            Port port = new Port(random, 1);
            double expected = port.bruteForce();
            Optional<Feed> found =
                    port.power().feed(port.lead, port.pixels, port.jumpers, port.wires, port.pixels.length);
            assertThat(found.isPresent()).as("port %s", i).isEqualTo(expected < Double.POSITIVE_INFINITY);
            if (found.isEmpty()) {
                impossible++;
                continue;
            }
            Feed feed = found.get();
            assertThat(feed.cost()).as("port %s", i).isEqualTo(expected, within(1e-9));
            assertHolds(port, feed);
            if (port.free()) {
                assertThat(feed.injections()).as("port %s", i).hasSize(port.fewest());
            }
            boolean fits = port.power().fits(port.lead, port.pixels, port.jumpers, port.pixels.length);
            assertThat(fits)
                    .isEqualTo(port.holds(port.places(), 0, port.places().size()));
            if (fits) {
                none++;
                assertThat(feed.injections()).isEmpty();
            } else {
                some++;
                assertThat(feed.injections()).isNotEmpty();
            }
        }
        // each answer must have been met, or the comparison says nothing
        assertThat(List.of(none, some, impossible)).allMatch(count -> count > 20);
    }

    private static void assertHolds(Port port, Feed feed) {
        List<Feed.Place> places = port.places();
        int from = 0;
        for (Feed.Place place : feed.injections()) {
            int to = places.indexOf(place);
            assertThat(to).isGreaterThan(from);
            assertThat(port.holds(places, from, to)).isTrue();
            if (from == 0) {
                assertThat(feed.amps()).isEqualTo(to * port.kind.amps(), within(1e-9));
            }
            from = to;
        }
        assertThat(port.holds(places, from, places.size())).isTrue();
        assertThat(feed.ampsAll()).isEqualTo(places.size() * port.kind.amps(), within(1e-9));
        assertThat(feed.voltsLeast()).isGreaterThanOrEqualTo(port.kind.voltsLow() - 1e-9);
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 6})
    void matchesEveryNextStartOnLongPorts(int seed) {
        Random random = new Random(seed);
        int several = 0;
        for (int i = 0; i < 60; i++) {
            Port port = new Port(random, 12);
            double expected = port.everyNextStart();
            Optional<Feed> found =
                    port.power().feed(port.lead, port.pixels, port.jumpers, port.wires, port.pixels.length);
            assertThat(found.isPresent()).as("port %s", i).isEqualTo(expected < Double.POSITIVE_INFINITY);
            if (found.isPresent()) {
                assertThat(found.get().cost()).as("port %s", i).isEqualTo(expected, within(1e-9));
                assertHolds(port, found.get());
                several += found.get().injections().size() > 1 ? 1 : 0;
            }
        }
        assertThat(several).as("ports with several injections").isGreaterThan(10);
    }
}
