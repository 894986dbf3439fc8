package streamwright.report;

import java.nio.file.Path;
import streamwright.file.PlanFile;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.plan.Plan;
import streamwright.report.walk.Walk;
import streamwright.yard.Yard;

/** The demo's yards with the plans that are kept beside them. */
public final class Demo {
    private Demo() {}

    public static Yard yard(String name) {
        return ((Read.Good<Yard>) YardFile.read(Path.of("demo", name, "yard.yaml"))).value();
    }

    public static Plan plan(String name) {
        return ((Read.Good<Plan>) PlanFile.read(Path.of("demo", name, "plan.json"))).value();
    }

    public static Walk walk(String name) {
        return Walk.of(yard(name), plan(name));
    }
}
