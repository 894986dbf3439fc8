package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import streamwright.yard.Drives;

/** The columns with which the relaxation begins: each item alone wherever a lead reaches it, and a known plan's chains. */
final class Start {
    private final Site site;
    private final Items items;
    private final Injections injections;

    Start(Site site, Items items) {
        this.site = site;
        this.items = items;
        injections = new Injections(site, items);
    }

    List<Pricing.Found> alone() {
        List<Pricing.Found> all = new ArrayList<>();
        for (int k = 0; k < items.size; k++) {
            for (Site.Wire lead : site.leads[items.sample[k]]) {
                all.add(column(lead.to(), new int[] {k}));
            }
        }
        return all;
    }

    List<Pricing.Found> of(Snapshot plan) {
        List<Pricing.Found> all = new ArrayList<>();
        for (Snapshot.SavedCable cable : plan.cables()) {
            for (Snapshot.SavedBoard board : cable.boards()) {
                for (Chain chain : board.ports()) {
                    if (chain != null && site.sort[chain.head()] == Drives.PIXELS) {
                        all.add(column(
                                board.spot(),
                                Arrays.stream(chain.strings())
                                        .map(string -> items.of[string])
                                        .toArray()));
                    }
                }
            }
        }
        return all;
    }

    private Pricing.Found column(int spot, int[] order) {
        double cost = site.leadCost(spot, items.sample[order[0]]) + injections.of(spot, order, order.length);
        for (int i = 1; i < order.length; i++) {
            int from = items.sample[order[i - 1]];
            int[] twins = items.members[order[i]];
            cost += site.jumperCost(from, twins[0] == from ? twins[1] : twins[0]);
        }
        return new Pricing.Found(spot, order, cost, 0);
    }
}
