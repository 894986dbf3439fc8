package streamwright.report.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import streamwright.report.Figures;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.Walk;
import streamwright.yard.BoardOffer;
import streamwright.yard.Costs;
import streamwright.yard.Spot;

/** All that a plan needs; those with a price add up to its cost. */
final class Purchases {
    private static final String NO_PRICE = "no price in the yard file, not in the cost";

    private final Walk walk;
    private final List<Pull> pulls;
    private final List<Purchase> list = new ArrayList<>();

    private Purchases(Walk walk) {
        this.walk = walk;
        pulls = Pull.of(walk);
    }

    static List<Purchase> of(Walk walk) {
        Purchases purchases = new Purchases(walk);
        purchases.boards();
        purchases.wire();
        purchases.places();
        purchases.smallParts();
        purchases.supplies();
        return purchases.list;
    }

    private void boards() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        walk.boards().forEach(stop -> counts.merge(stop.model().name(), 1, Integer::sum));
        for (BoardOffer offer : walk.yard().boards()) {
            String name = offer.model().name();
            Integer count = counts.get(name);
            if (count != null) {
                list.add(new Purchase("board", name, count, "", offer.have(), offer.price(), ""));
            }
        }
    }

    private void wire() {
        Costs costs = walk.yard().costs();
        int cables = walk.cables().size();
        list.add(Purchase.priced("cable", "cable from a jack", cables, "", costs.cable(), ""));
        length(Pull.Kind.TRUNK, "trunk, four pairs", costs.trunk());
        length(Pull.Kind.LEAD, "lead wire", costs.lead());
        length(Pull.Kind.JUMPER, "jumper wire", costs.jumper());
        int injections = pieces(Pull.Kind.INJECTION).size();
        if (injections > 0) {
            list.add(Purchase.priced("injection", "injection of power", injections, "", costs.injection(), ""));
            length(Pull.Kind.INJECTION, "injection wire", costs.injectionWire());
        }
    }

    private void length(Pull.Kind kind, String item, double price) {
        List<Pull> pieces = pieces(kind);
        if (pieces.isEmpty()) {
            return;
        }
        double planned = pieces.stream().mapToDouble(Pull::length).sum();
        var cut = pieces.stream().map(pull -> Cells.cut(pull.length())).reduce(BigDecimal.ZERO, BigDecimal::add);
        String note = Figures.count(pieces.size(), "piece") + ", " + Figures.plain(cut.doubleValue()) + " "
                + walk.unit() + " as cut";
        list.add(Purchase.priced("wire", item, planned, walk.unit(), price, note));
    }

    private List<Pull> pieces(Pull.Kind kind) {
        return pulls.stream().filter(pull -> pull.kind() == kind).toList();
    }

    private void places() {
        List<String> used = walk.boards().stream().map(BoardStop::where).toList();
        for (Spot spot : walk.yard().spots()) {
            if (spot.price() > 0 && used.contains(spot.id())) {
                list.add(Purchase.priced(Purchase.PLACE, "box and supply at " + spot.id(), 1, "", spot.price(), ""));
            }
        }
    }

    private void smallParts() {
        long plugs = 2L * walk.boards().size();
        list.add(Purchase.unpriced("connector", "plug of the trunk, two a hop", plugs, NO_PRICE));
        long pairs =
                pulls.stream().filter(pull -> pull.kind() != Pull.Kind.TRUNK).count();
        if (pairs > 0) {
            list.add(
                    Purchase.unpriced("connector", "connector pair, one a lead, jumper or injection", pairs, NO_PRICE));
        }
        Map<String, Long> nulls = new TreeMap<>();
        Map<Double, Long> fuses = new TreeMap<>();
        for (PortStop port : walk.ports()) {
            port.strings()
                    .forEach(each ->
                            nulls.merge(each.kind().name(), (long) each.use().nulls(), Long::sum));
            if (Double.isFinite(port.fuse())) {
                fuses.merge(port.fuse(), 1L + port.injections().size(), Long::sum);
            }
        }
        nulls.forEach((kind, count) -> {
            if (count > 0) {
                list.add(Purchase.unpriced("null", "null pixel, " + kind, count, NO_PRICE));
            }
        });
        fuses.forEach((amps, count) -> list.add(Purchase.unpriced(
                "fuse", "fuse " + Figures.plain(amps) + " A, one a port and injection", count, NO_PRICE)));
    }

    private void supplies() {
        Map<String, List<String>> supplies = new LinkedHashMap<>();
        walk.plan()
                .supplies()
                .forEach(supply -> supplies.computeIfAbsent(
                                "supply " + Figures.plain(supply.volts()) + " V, " + supply.watts() + " W or more",
                                watts -> new ArrayList<>())
                        .add(String.join(" and ", supply.boards())));
        supplies.forEach((item, boards) -> list.add(Purchase.unpriced(
                "supply", item, boards.size(), "for " + String.join("; ", boards) + "; " + NO_PRICE)));
    }
}
