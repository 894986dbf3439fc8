package streamwright.report.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import streamwright.plan.Plan;
import streamwright.plan.Status;
import streamwright.report.Figures;
import streamwright.report.walk.Walk;
import streamwright.yard.Yard;

/** The page of one plan. */
public final class PlanPage {
    private PlanPage() {}

    /**
     * Makes the page of a plan.
     *
     * @throws streamwright.report.walk.Misfit if the plan is not one of this yard
     */
    public static Page of(Yard yard, Plan plan) {
        return of(Walk.of(yard, plan));
    }

    public static Page of(Walk walk) {
        Overview overview = Overview.of(walk);
        return new Page(walk.yard().name(), "wiring plan", block(walk, overview), parts(walk, overview));
    }

    /** The parts of a plan's page, for pages that show more than a plan. */
    public static List<Part> parts(Walk walk) {
        return parts(walk, Overview.of(walk));
    }

    private static List<Part> parts(Walk walk, Overview overview) {
        Whys whys = new Whys(walk.plan());
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("walk", walk);
        values.put("whys", whys);
        return List.of(
                Part.of("overview", "What it costs and what limits it", "overview", with(values, overview)),
                map(walk),
                Part.of("lids", "Lid cards", "lids", values),
                Part.of("tapes", "Streams as tape measures", "tapes", Map.of("tapes", Tapes.of(walk))),
                Part.of("commissioning", "Commissioning", "commissioning", Map.of("walk", walk)),
                Part.of("swap", "Swap card", "swap", Map.of("walk", walk)));
    }

    /** The map alone. */
    public static Part map(Walk walk) {
        return Part.of("map", "Yard map", "map", Map.of("chart", Surveying.of(walk), "walk", walk));
    }

    private static Map<String, Object> with(Map<String, Object> values, Overview overview) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put("overview", overview);
        return more;
    }

    private static Map<String, String> block(Walk walk, Overview overview) {
        Plan plan = walk.plan();
        Map<String, String> block = new LinkedHashMap<>();
        block.put("cost", Figures.money(plan.cost()));
        block.put("bound", plan.bound() > 0 ? Figures.money(plan.bound()) : "none proved");
        block.put("status", plan.status() == Status.OPTIMAL ? "proved optimal" : "may not be the best");
        block.put("frame rate", Figures.plain(walk.yard().frameRate()) + " a second");
        block.put("brightness", Figures.plain(walk.yard().brightness() * 100) + " %");
        int faults = overview.findings().size();
        block.put("audit", faults == 0 ? "no rule broken" : Figures.count(faults, "broken rule"));
        return block;
    }
}
