package streamwright.check;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Totals;
import streamwright.yard.BoardOffer;
import streamwright.yard.Costs;
import streamwright.yard.Spot;

/** Totals and cost, added up from the audit's own figures. */
record Sums(Totals totals, double cost) {
    static Sums of(Survey survey) {
        double trunk = survey.cables.stream().mapToDouble(SeenCable::length).sum();
        Wires wires = new Wires();
        survey.boards.forEach(board -> board.ports().forEach(wires::add));
        Totals totals = new Totals(
                survey.boards.size(),
                survey.cables.size(),
                wires.strings,
                wires.pixels,
                (int) Math.max(Integer.MIN_VALUE, Math.min(Integer.MAX_VALUE, wires.nulls)),
                trunk,
                wires.lead,
                wires.jumper);
        Costs costs = survey.yard.costs();
        double cost = trunk * costs.trunk()
                + wires.lead * costs.lead()
                + wires.jumper * costs.jumper()
                + survey.cables.size() * costs.cable()
                + wires.injections * costs.injection()
                + wires.injectionWire * costs.injectionWire()
                + boards(survey)
                + spots(survey);
        return new Sums(totals, cost);
    }

    private static final class Wires {
        private int strings;
        private long pixels;
        private long nulls;
        private double lead;
        private double jumper;
        private int injections;
        private double injectionWire;

        void add(SeenPort port) {
            for (SeenString on : port.strings()) {
                strings++;
                pixels += on.pixels();
                nulls += on.use().nulls();
                if (on.lead()) {
                    lead += on.length();
                } else {
                    jumper += on.length();
                }
            }
            injections += port.use().injections().size();
            injectionWire +=
                    port.fed().stretches().stream().mapToDouble(Stretch::wire).sum();
        }
    }

    /** Those owned already cost nothing. */
    private static double boards(Survey survey) {
        Map<String, Integer> used = new HashMap<>();
        survey.boards.forEach(seen -> used.merge(seen.board().model(), 1, Integer::sum));
        double cost = 0;
        for (BoardOffer offer : survey.yard.boards()) {
            int bought = used.getOrDefault(offer.model().name(), 0) - offer.have();
            cost += Math.max(0, bought) * offer.price();
        }
        return cost;
    }

    private static double spots(Survey survey) {
        Set<Spot> used = new LinkedHashSet<>();
        for (SeenBoard board : survey.boards) {
            if (board.place() != null) {
                used.add(board.place());
            }
        }
        return used.stream().mapToDouble(Spot::price).sum();
    }
}
