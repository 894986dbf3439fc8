package streamwright.solve;

import java.util.Arrays;
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
    private static final long UNLIMITED = Integer.MAX_VALUE;

    private final Obstructions all;
    private final Site site;

    /** Ports that the pixel strings need, and strings; boards that hold all things. */
    private long ports;

    private long strings;
    private long boards;

    /** Boards that all cables take, and all spots. */
    private long onCables;

    private long atSpots;

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
        atLeast();
    }

    /** Whether more boards are asked for than there may be. */
    private void atLeast() {
        int things = site.strings.length;
        long offered = site.yard.boards().stream().mapToLong(BoardOffer::most).sum();
        atLeast(things, "there are only %d things to hang on them");
        atLeast(onCables, "the cables take at most %d");
        atLeast(atSpots, "the spots take at most %d");
        atLeast(offered, "of all models together at most %d may be used");
    }

    private void atLeast(long most, String why) {
        int least = site.yard.boardCount().least();
        if (most < least) {
            String text = "at least %d boards are asked for, but " + why;
            all.add(Rule.BOARD_COUNT, "yard", (double) most, least, text, least, most);
        }
    }

    private void streams() {
        int streams = IntStream.range(0, site.controllers.length)
                .map(c -> site.streams[c] * site.controllers[c].model().jacks())
                .sum();
        long need = StreamNeed.of(site);
        if (need > streams) {
            String text = "all pixels fill %d streams, but all jacks together have %d";
            all.add(Rule.STREAM_LIMIT, "yard", (double) need, streams, text, need, streams);
        }
    }

    private void channels() {
        if (site.kept.on) {
            new KeptStreams(all).find();
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

    private static String counted(long boards) {
        return boards + (boards == 1 ? " board" : " boards");
    }

    private void few(Rule rule, long most, String why) {
        if (portsOf(most) < ports) {
            all.add(
                    rule,
                    "yard",
                    (double) ports,
                    (double) portsOf(most),
                    "with %s%s: %d strings need %d ports, but these have %d",
                    counted(most),
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
                    "with %s%s: what is to hang needs %d",
                    counted(most),
                    why,
                    boards);
        }
    }

    private void boardCount() {
        long most = site.yard.boardCount().most();
        if (tooFew(most)) {
            few(Rule.BOARD_COUNT, most, "");
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
        onCables = places;
    }

    private void spots() {
        long most = 0;
        for (Spot spot : site.spots) {
            most += spot.most();
        }
        if (site.spots.length > 0 && tooFew(most)) {
            few(Rule.SPOT_MOST, most, " at all spots");
        }
        atSpots = most;
        double give = Arrays.stream(site.spots).mapToDouble(Spot::ampsMost).sum();
        double draw = Arrays.stream(site.draw).sum();
        if (site.spots.length > 0 && draw > give + site.strings.length * Site.AMPS_ROUNDING) {
            String text = "all strings together draw %.2f A, but all spots together give %.2f A";
            all.add(Rule.SPOT_AMPS, "yard", draw, give, text, draw, give);
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
            String text = "with %s: %d strings need %d ports, but these have %d";
            all.add(Rule.BOARD_MOST, "yard", (double) ports, (double) has, text, counted(hung), strings, ports, has);
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
