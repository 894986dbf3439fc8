package streamwright.solve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.Drives;

/**
 * What the streams of a draft's cables carry, and whether they take more. Where channels are numbered anew a stream is
 * as long as its chains together, and chains of one picture count once; where they are kept it is a window from its
 * lowest to its highest channel.
 */
@SuppressWarnings("ReferenceEquality") // a chain stands for its socket: an equal one hangs elsewhere
final class Loads {
    private final Site site;

    /** Of each controller: the channels that its streams take; counted only where they are numbered anew. */
    private final long[] channels;

    private final long[] savedChannels;

    // the window of a stream without one chain, see window()
    private long first;
    private long behind;

    Loads(Site site) {
        this.site = site;
        channels = new long[site.controllers.length];
        savedChannels = new long[channels.length];
    }

    void save() {
        System.arraycopy(channels, 0, savedChannels, 0, channels.length);
    }

    void restore() {
        System.arraycopy(savedChannels, 0, channels, 0, channels.length);
    }

    void clear() {
        Arrays.fill(channels, 0);
    }

    /**
     * Whether a chain fits a stream of a cable, on a board of a model.
     *
     * @param now the chain whose place it takes, on the same socket and stream; null where it comes anew
     */
    boolean takes(Cable cable, int stream, int model, @Nullable Chain now, Chain then) {
        if (!site.plain) {
            return site.kept.on
                    ? windowsTake(cable, stream, model, now, then)
                    : sumsTake(cable, stream, model, now, then);
        }
        int kind = then.kind();
        int more = now == null ? then.pixels() : then.pixels() - now.pixels();
        return (cable.kind[stream] == Draft.FREE || cable.kind[stream] == kind)
                && cable.load[stream] + more <= site.limit[cable.controller][kind]
                && (now != null || site.sockets.addressed[model] || cable.chains[stream] == 0)
                && channelsTake(cable.controller, more * (long) site.kept.width[kind]);
    }

    /** Whether a controller has so many channels more to give. */
    boolean channelsTake(int controller, long more) {
        return channels[controller] + more <= site.channelsMost[controller];
    }

    /** Whether every controller has the channels that its streams take. */
    boolean channelsHold() {
        for (int c = 0; c < channels.length; c++) {
            if (!channelsTake(c, 0)) {
                return false;
            }
        }
        return true;
    }

    /** How ill a stream suits a chain that it takes: the emptier it is, or the less it grows, the better. */
    long weight(Cable cable, int stream, int model, Chain then) {
        if (site.plain) {
            return cable.load[stream];
        }
        if (!site.kept.on) {
            return shared(cable, stream, then, null) ? -1 : cable.load[stream];
        }
        long growth = 0;
        for (int part = 0; part < site.sockets.parts(model); part++) {
            int s = site.sockets.part(model, stream, part);
            if (s >= cable.load.length) {
                return Long.MAX_VALUE;
            }
            long low = from(then, model, part);
            long high = low + pixels(then, model, part) * (long) site.kept.width[then.kind()];
            if (cable.chains[s] > 0) {
                growth += Math.max(high, cable.behind[s]) - Math.min(low, cable.first[s]);
                growth -= cable.behind[s] - cable.first[s];
            } else {
                growth += high - low;
            }
        }
        return (growth << 16) + cable.load[stream];
    }

    /** Counts a chain in; its own socket does not hold it yet. */
    void put(Cable cable, int stream, int model, Chain chain) {
        int width = site.kept.width[chain.kind()];
        for (int part = 0; part < site.sockets.parts(model); part++) {
            int s = site.sockets.part(model, stream, part);
            int pixels = pixels(chain, model, part);
            if (site.kept.on) {
                long low = from(chain, model, part);
                boolean alone = cable.chains[s] == 0;
                cable.first[s] = alone ? low : Math.min(low, cable.first[s]);
                cable.behind[s] = Math.max(low + pixels * (long) width, alone ? 0 : cable.behind[s]);
                cable.load[s] = (int) ((cable.behind[s] - cable.first[s]) / width);
            } else if (!shared(cable, s, chain, null)) {
                cable.load[s] += pixels;
                channels[cable.controller] += pixels * (long) width;
            }
            cable.chains[s]++;
            cable.kind[s] = chain.kind();
        }
    }

    /** Counts a chain out; its own socket does not hold it any more. */
    void drop(Cable cable, int stream, int model, Chain chain) {
        int width = site.kept.width[chain.kind()];
        for (int part = 0; part < site.sockets.parts(model); part++) {
            int s = site.sockets.part(model, stream, part);
            if (--cable.chains[s] == 0) {
                cable.kind[s] = Draft.FREE;
            }
            if (site.kept.on) {
                measure(cable, s, null);
                cable.first[s] = first;
                cable.behind[s] = behind;
                cable.load[s] = cable.chains[s] == 0 ? 0 : (int) ((behind - first) / width);
            } else if (!shared(cable, s, chain, null)) {
                int pixels = pixels(chain, model, part);
                cable.load[s] -= pixels;
                channels[cable.controller] -= pixels * (long) width;
            }
        }
    }

    /** Whether every chain of a cable has its place beside all others. */
    boolean holds(Cable cable) {
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            for (int p = 0; p < board.ports.length; p++) {
                Chain chain = board.ports[p];
                if (chain != null && !takes(cable, board.stream[p], board.model, chain, chain)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean sumsTake(Cable cable, int stream, int model, @Nullable Chain now, Chain then) {
        int width = site.kept.width[then.kind()];
        long more = 0;
        for (int part = 0; part < site.sockets.parts(model); part++) {
            int s = site.sockets.part(model, stream, part);
            if (s >= cable.load.length || !kindFits(cable, s, now, then)) {
                return false;
            }
            int less = now == null || shared(cable, s, now, now) ? 0 : pixels(now, model, part);
            int own = shared(cable, s, then, now) ? 0 : pixels(then, model, part);
            boolean behindOthers = own > 0 && cable.chains[s] > (now == null ? 0 : 1);
            if (cable.load[s] - less + own > site.limit[cable.controller][then.kind()]
                    || (behindOthers && !site.sockets.addressed[model])) {
                return false;
            }
            more += own * (long) width - (now == null ? 0 : less * (long) site.kept.width[now.kind()]);
        }
        return channelsTake(cable.controller, more);
    }

    private boolean windowsTake(Cable cable, int stream, int model, @Nullable Chain now, Chain then) {
        int home = site.kept.home[then.head()];
        int width = site.kept.width[then.kind()];
        for (int part = 0; part < site.sockets.parts(model); part++) {
            int s = site.sockets.part(model, stream, part);
            if (home != cable.controller || s >= cable.load.length || !kindFits(cable, s, now, then)) {
                return false;
            }
            long low = from(then, model, part);
            long high = low + pixels(then, model, part) * (long) width;
            window(cable, s, now);
            // every port of a board without an address begins with the stream
            if (behind > 0 && !site.sockets.addressed[model] && low != first) {
                return false;
            }
            long least = Math.min(low, first);
            long most = Math.max(high, behind);
            int begin = site.controllers[cable.controller].firstChannel();
            if ((most - least) / width > site.limit[cable.controller][then.kind()]
                    || least < begin
                    || most > begin + site.channelsMost[cable.controller]
                    || !besideAll(cable, s, now, then, low, high)) {
                return false;
            }
        }
        return true;
    }

    private static boolean kindFits(Cable cable, int stream, @Nullable Chain now, Chain then) {
        return cable.kind[stream] == Draft.FREE
                || cable.kind[stream] == then.kind()
                || (now != null && cable.chains[stream] == 1);
    }

    /** Whether a chain's channels lie in step with those of all others of a stream, and apart but for copies. */
    private boolean besideAll(Cable cable, int stream, @Nullable Chain now, Chain then, long low, long high) {
        int width = site.kept.width[then.kind()];
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            for (int p = 0; p < board.ports.length; p++) {
                Chain other = board.ports[p];
                if (other == null || other == now) {
                    continue;
                }
                for (int part = 0; part < site.sockets.parts(board.model); part++) {
                    if (site.sockets.part(board.model, board.stream[p], part) != stream) {
                        continue;
                    }
                    long from = from(other, board.model, part);
                    long to = from + pixels(other, board.model, part) * (long) width;
                    if ((low - from) % width != 0 || (low < to && from < high && !copies(then, other))) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private boolean copies(Chain one, Chain other) {
        return pixelsOf(one) && pixelsOf(other) && !one.unlike(other);
    }

    private boolean pixelsOf(Chain chain) {
        return site.sort[chain.head()] == Drives.PIXELS && chain.pictures().length > 0;
    }

    /** Finds the window of a stream without one of its chains: it ends at 0 where there are no others. */
    private void window(Cable cable, int stream, @Nullable Chain without) {
        if (without != null) {
            measure(cable, stream, without);
        } else {
            first = cable.chains[stream] > 0 ? cable.first[stream] : Long.MAX_VALUE;
            behind = cable.chains[stream] > 0 ? cable.behind[stream] : 0;
        }
    }

    private void measure(Cable cable, int stream, @Nullable Chain without) {
        first = Long.MAX_VALUE;
        behind = 0;
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            for (int p = 0; p < board.ports.length; p++) {
                Chain chain = board.ports[p];
                if (chain == null || chain == without) {
                    continue;
                }
                for (int part = 0; part < site.sockets.parts(board.model); part++) {
                    if (site.sockets.part(board.model, board.stream[p], part) == stream) {
                        long from = from(chain, board.model, part);
                        first = Math.min(first, from);
                        behind = Math.max(
                                behind, from + pixels(chain, board.model, part) * (long) site.kept.width[chain.kind()]);
                    }
                }
            }
        }
    }

    /** Whether a stream carries the picture of a chain by another one, {@code without} not counted. */
    private boolean shared(Cable cable, int stream, Chain chain, @Nullable Chain without) {
        if (chain.pictures().length == 0 || cable.chains[stream] == 0) {
            return false;
        }
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            for (int p = 0; p < board.ports.length; p++) {
                Chain other = board.ports[p];
                if (other != null && other != without && board.stream[p] == stream && chain.sameAs(other)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A panel is cut in equal parts over the streams of its board. */
    private int pixels(Chain chain, int model, int part) {
        int parts = site.sockets.parts(model);
        return parts == 1 ? chain.pixels() : end(chain, part + 1, parts) - end(chain, part, parts);
    }

    private long from(Chain chain, int model, int part) {
        int parts = site.sockets.parts(model);
        return parts == 1
                ? chain.from()
                : chain.from() + end(chain, part, parts) * (long) site.kept.width[chain.kind()];
    }

    private static int end(Chain chain, int part, int parts) {
        return (int) (chain.pixels() * (long) part / parts);
    }
}
