package streamwright.solve;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import streamwright.yard.Controller;
import streamwright.yard.Obstacle;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** Values with one thing changed. */
final class Changed {
    private Changed() {}

    /**
     * The same record but for one component.
     *
     * @throws IllegalArgumentException if it has no such component
     */
    static <R extends Record> R with(R record, String component, Object value) {
        RecordComponent[] all = record.getClass().getRecordComponents();
        Object[] values = new Object[all.length];
        Class<?>[] types = new Class<?>[all.length];
        boolean known = false;
        try {
            for (int c = 0; c < all.length; c++) {
                boolean meant = all[c].getName().equals(component);
                known |= meant;
                types[c] = all[c].getType();
                values[c] = meant ? value : all[c].getAccessor().invoke(record);
            }
            if (!known) {
                throw new IllegalArgumentException(component + " is none of " + Arrays.toString(all));
            }
            @SuppressWarnings("unchecked")
            Class<R> type = (Class<R>) record.getClass();
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The same record with these components, all numbers, each times the factor. */
    static <R extends Record> R times(R record, double factor, String... components) {
        R changed = record;
        for (String component : components) {
            changed = with(changed, component, factor * number(record, component));
        }
        return changed;
    }

    private static double number(Record record, String component) {
        try {
            return ((Number) record.getClass().getMethod(component).invoke(record)).doubleValue();
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The same list, each of its things changed. */
    static <T> List<T> each(List<T> things, UnaryOperator<T> change) {
        return things.stream().map(change).toList();
    }

    /** The same yard, each place elsewhere. */
    static Yard moved(Yard yard, UnaryOperator<Point> move) {
        Yard controllers = with(
                yard,
                "controllers",
                each(
                        yard.controllers(),
                        c -> new Controller(
                                c.id(), c.model(), move.apply(c.at()), c.firstChannel(), c.firstUniverse())));
        Yard spots = with(
                controllers,
                "spots",
                each(yard.spots(), s -> new Spot(s.id(), move.apply(s.at()), s.most(), s.price(), s.ampsMost())));
        Yard obstacles =
                with(spots, "obstacles", each(yard.obstacles(), o -> new Obstacle(o.id(), each(o.ring(), move))));
        return with(obstacles, "props", each(yard.props(), prop -> moved(prop, move)));
    }

    private static Prop moved(Prop prop, UnaryOperator<Point> move) {
        Point at = prop.at();
        Prop strings = with(
                prop,
                "strings",
                each(
                        prop.strings(),
                        s -> new PixelString(
                                s.prop(), s.number(), s.pixels(), move.apply(s.feed()), move.apply(s.tail()))));
        return at == null ? strings : with(strings, "at", move.apply(at));
    }
}
