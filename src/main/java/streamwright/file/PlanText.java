package streamwright.file;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Change;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.yard.Point;

/**
 * A plan as the text of its file, whose fields are the components of the plan's records. Lengths, money and amps have 6
 * decimals; a point stays exactly as it is; what is null is left out.
 */
final class PlanText {
    private static final int DECIMALS = 6;

    /** Lists that only some plans, boards or ports have. */
    private static final Set<String> ONLY_WHERE_FULL = Set.of("changes", "injections", "panels", "supplies");

    private PlanText() {}

    static String of(Plan plan) {
        Map<String, @Nullable Object> file = object(plan);
        file.put("bound", bound(plan));
        return JsonPage.of(file);
    }

    /** A bound must not grow by rounding, except with the cost that it equals. */
    private static double bound(Plan plan) {
        RoundingMode mode = plan.bound() == plan.cost() ? RoundingMode.HALF_EVEN : RoundingMode.FLOOR;
        return rounded(plan.bound(), mode);
    }

    private static double rounded(double value, RoundingMode mode) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a plan has finite figures, not " + value);
        }
        return new BigDecimal(Double.toString(value)).setScale(DECIMALS, mode).doubleValue();
    }

    private static @Nullable Object tree(@Nullable Object value) {
        if (value instanceof Double number) {
            return rounded(number, RoundingMode.HALF_EVEN);
        }
        if (value instanceof Enum<?> word) {
            return Choice.word(word);
        }
        if (value instanceof Point at) {
            return at.z() == 0 ? List.of(at.x(), at.y()) : List.of(at.x(), at.y(), at.z());
        }
        if (value instanceof Record part) {
            return object(part);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(PlanText::tree).toList();
        }
        if (value instanceof Map<?, ?> map) {
            // such a map has no order of its own
            Map<String, @Nullable Object> sorted = new TreeMap<>();
            map.forEach((name, inner) -> sorted.put(String.valueOf(name), tree(inner)));
            return sorted;
        }
        return value;
    }

    private static Map<String, @Nullable Object> object(Record part) {
        // null says of a change that there was, or will be, nothing
        boolean nulls = part instanceof Change;
        // where there is no way at all its length has no end, which JSON cannot say
        boolean figures = part instanceof Reason.Broken || part instanceof Reason.Because;
        Map<String, @Nullable Object> fields = new LinkedHashMap<>();
        for (RecordComponent component : part.getClass().getRecordComponents()) {
            String name = component.getName();
            Object value = value(component, part);
            boolean endless = figures && value instanceof Double figure && !Double.isFinite(figure);
            boolean empty = value instanceof List<?> list && list.isEmpty() && ONLY_WHERE_FULL.contains(name);
            if (!empty && !endless && (value != null || nulls)) {
                fields.put(name, tree(value));
            }
        }
        return fields;
    }

    private static @Nullable Object value(RecordComponent component, Record part) {
        try {
            return component.getAccessor().invoke(part);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the records of a plan are public, but " + component, e);
        }
    }
}
