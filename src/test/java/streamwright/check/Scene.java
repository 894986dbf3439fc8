package streamwright.check;

import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Plan;
import streamwright.yard.Yard;

/** A yard and a plan for it, to be spoilt on purpose. */
record Scene(Yard yard, Plan plan) {
    Scene yard(String path, @Nullable Object value) {
        return new Scene(Edit.set(yard, path, value), plan);
    }

    Scene plan(String path, @Nullable Object value) {
        return new Scene(yard, Edit.set(plan, path, value));
    }

    Scene yardList(String path, UnaryOperator<List<Object>> edit) {
        return new Scene(Edit.list(yard, path, edit), plan);
    }

    Scene planList(String path, UnaryOperator<List<Object>> edit) {
        return new Scene(yard, Edit.list(plan, path, edit));
    }

    /** With a thing of the yard put for another wherever it stands. */
    Scene swap(Object old, Object value) {
        return new Scene(Edit.replace(yard, old, value), plan);
    }

    /** With lengths, amps, channels, sums and cost set right for what was changed, so that only the change is wrong. */
    Scene restated() {
        return new Scene(yard, Audit.of(yard, plan).restated());
    }

    Findings audit() {
        return Audit.of(yard, plan);
    }

    static UnaryOperator<List<Object>> with(Object more) {
        return list -> {
            list.add(more);
            return list;
        };
    }

    static UnaryOperator<List<Object>> without(int index) {
        return list -> {
            list.remove(index);
            return list;
        };
    }
}
