package streamwright.solve;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import streamwright.plan.Rule;
import streamwright.yard.BoardOffer;
import streamwright.yard.Drives;
import streamwright.yard.Spot;

/** What all things of a yard need together: streams, boards and their ports, channels. */
final class NeedsOfAll {
    private static final double ROUNDING = 1e-9;
    private static final long UNLIMITED = Integer.MAX_VALUE;

    private final Obstructions all;
    private final Site site;

    /** Ports that the pixel strings need, and strings; boards that hold all things. */
    private long ports;

    private long strings;
    private long boards;

    NeedsOfAll(Obstructions all) {
        this.all = all;
        site = all.site;
    }

    /** Boards that every plan has at least, by their ports and outputs. */
    static long boards(Site site) {
        NeedsOfAll needs = new NeedsOfAll(new Obstructions(site));
        needs.count();
        return Math.max(needs.boards, 1);
    }

    void find() {
        streams();
        channels();
        count();
        boardCount();
        cables();
        spots();
        stock();
    }

    /** All pixels against all streams, each kind by its own limit; strings are never split. */
    private void streams() {
        int streams = IntStream.range(0, site.controllers.length)
                .map(c -> site.streams[c] * site.controllers[c].model().jacks())
                .sum();
        double share = 0;
        long whole = 0;
        for (int k = 0; k < site.kinds.length; k++) {
            int most = 1;
            for (int[] limit : site.limit) {
                most = Math.max(most, limit[k]);
            }
            int kind = k;
            int[] sizes = IntStream.range(0, site.strings.length)
                    .filter(i -> site.kind[i] == kind && site.sort[i] == Drives.PIXELS)
                    .map(i -> site.pixelsAtLeast[i])
                    .toArray();
            int limit = most;
            if (IntStream.of(sizes).allMatch(size -> size <= limit)) {
                whole += StreamsAtLeast.quickly(sizes, limit);
            }
            share += IntStream.range(0, site.strings.length)
                            .filter(i -> site.kind[i] == kind)
                            .mapToLong(i -> site.pixelsAtLeast[i])
                            .sum()
                    / (double) limit;
        }
        long need = Math.max(whole, (long) Math.ceil(share - ROUNDING));
        if (need > streams) {
            all.add(
                    Rule.STREAM_LIMIT,
                    "yard",
                    (double) need,
                    streams,
                    "all pixels fill %d streams, but all jacks together have %d",
                    need,
                    streams);
        }
    }

    private void channels() {
        if (site.kept.on) {
            return;
        }
        long need = 0;
        for (int i = 0; i < site.strings.length; i++) {
            boolean copy = site.yard.props().get(site.prop[i]).copyOf() != null;
            need += copy ? 0 : site.kept.length(i);
        }
        long most = 0;
        for (long each : site.channelsMost) {
            most += Math.max(0, each);
        }
        if (need > most) {
            all.add(
                    Rule.CHANNEL_RANGE,
                    "yard",
                    (double) need,
                    (double) most,
                    "all things together take %d channels, but the controllers have %d to give",
                    need,
                    most);
        }
    }

    private void count() {
        for (int g = 0; g < site.groups; g++) {
            int group = g;
            int[] mine = IntStream.range(0, site.strings.length)
                    .filter(i -> site.group[i] == group)
                    .toArray();
            if (mine.length == 0) {
                continue;
            }
            switch (site.sort[mine[0]]) {
                case PIXELS -> {
                    long need = PortNeed.of(site, g);
                    int most = IntStream.range(0, site.offers.length)
                            .filter(m -> site.groupOf[m] == group)
                            .map(site::ports)
                            .max()
                            .orElse(1);
                    strings += mine.length;
                    ports += need;
                    boards += -Math.floorDiv(-need, (long) most);
                }
                case OUTPUTS -> {
                    long need =
                            IntStream.of(mine).mapToLong(i -> site.outputs[i]).sum();
                    int most = IntStream.range(0, site.offers.length)
                            .filter(m -> site.groupOf[m] == group)
                            .map(m -> site.model(m).outputs())
                            .max()
                            .orElse(1);
                    boards += -Math.floorDiv(-need, (long) most);
                }
                case PANEL -> boards += mine.length;
            }
        }
    }

    /** Whether so many boards are too few for the yard. */
    private boolean tooFew(long most) {
        return most < boards || portsOf(most) < ports;
    }

    /** Ports of so many boards of the models with most of them. */
    private long portsOf(long most) {
        int each = offers(Drives.PIXELS).stream()
                .mapToInt(offer -> offer.model().ports().size())
                .max()
                .orElse(0);
        return Math.min(most, UNLIMITED) * each;
    }

    private List<BoardOffer> offers(Drives sort) {
        return site.yard.boards().stream()
                .filter(offer -> offer.model().drives() == sort)
                .toList();
    }

    private void few(Rule rule, long most, String why) {
        if (portsOf(most) < ports) {
            all.add(
                    rule,
                    "yard",
                    (double) ports,
                    (double) portsOf(most),
                    "with %d boards%s: %d strings need %d ports, but these have %d",
                    most,
                    why,
                    strings,
                    ports,
                    portsOf(most));
        } else {
            all.add(
                    rule,
                    "yard",
                    (double) boards,
                    (double) most,
                    "with %d boards%s: what is to hang needs %d",
                    most,
                    why,
                    boards);
        }
    }

    private void boardCount() {
        long most = site.yard.boardCount().most();
        if (tooFew(most)) {
            few(Rule.BOARD_COUNT, most, "");
        }
        int least = site.yard.boardCount().least();
        if (least > site.strings.length) {
            all.add(
                    Rule.BOARD_COUNT,
                    "yard",
                    site.strings.length,
                    least,
                    "at least %d boards are asked for, but there are only %d things to hang on them",
                    least,
                    site.strings.length);
        }
    }

    private void cables() {
        Set<Integer> ids = new HashSet<>();
        boolean addressed = false;
        for (BoardOffer offer : site.offers) {
            addressed |= offer.model().addressed();
            for (int id = Ids.least(offer.model()); offer.model().addressed() && id <= Ids.most(offer.model()); id++) {
                ids.add(id);
            }
        }
        long places = 0;
        Rule rule = Rule.BOARDS_PER_CABLE;
        for (var controller : site.controllers) {
            int most = controller.model().boardsPerCable();
            int told = addressed ? ids.size() : 1;
            if (told < most) {
                rule = addressed ? Rule.ID_UNIQUE : Rule.UNADDRESSED_ALONE;
            }
            places += controller.model().jacks() * (long) Math.min(most, told);
        }
        if (tooFew(places)) {
            few(rule, places, " on all cables");
        }
        int least = site.yard.boardCount().least();
        if (places < least) {
            all.add(
                    Rule.BOARD_COUNT,
                    "yard",
                    (double) places,
                    least,
                    "at most %d boards fit the cables, but at least %d are asked for",
                    places,
                    least);
        }
    }

    private void spots() {
        long most = 0;
        for (Spot spot : site.spots) {
            most += spot.most();
        }
        if (site.spots.length > 0 && tooFew(most)) {
            few(Rule.SPOT_MOST, most, " at all spots");
        }
    }

    /** As many boards as the yard allows, of each model as many as there may be, those with most ports first. */
    private void stock() {
        long left = site.yard.boardCount().most();
        long has = 0;
        long hung = 0;
        for (BoardOffer offer : offers(Drives.PIXELS).stream()
                .sorted(Comparator.comparingInt(offer -> -offer.model().ports().size()))
                .toList()) {
            long some = Math.min(left, offer.most());
            has += some * offer.model().ports().size();
            left -= some;
            hung += some;
        }
        if (has < ports && !tooFew(site.yard.boardCount().most())) {
            String text = "with %d boards: %d strings need %d ports, but these have %d";
            all.add(Rule.BOARD_MOST, "yard", (double) ports, (double) has, text, hung, strings, ports, has);
        }
        long panels = IntStream.range(0, site.strings.length)
                .filter(i -> site.sort[i] == Drives.PANEL)
                .count();
        long most = offers(Drives.PANEL).stream().mapToLong(BoardOffer::most).sum();
        if (panels > most) {
            String text = "%d panels need a board each, but at most %d may be used";
            all.add(Rule.BOARD_MOST, "yard", (double) panels, (double) most, text, panels, most);
        }
        long outputs = IntStream.of(site.outputs).sum();
        long lines = offers(Drives.OUTPUTS).stream()
                .mapToLong(offer -> (long) offer.most() * offer.model().outputs())
                .sum();
        if (outputs > lines) {
            String text = "%d mains outputs are needed, but the boards that may be used have %d";
            all.add(Rule.BOARD_MOST, "yard", (double) outputs, (double) lines, text, outputs, lines);
        }
    }
}
