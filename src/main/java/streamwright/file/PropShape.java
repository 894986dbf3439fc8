package streamwright.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import streamwright.yard.Follow;
import streamwright.yard.Panel;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;

/** A prop of a yard file: strings, mains outputs or a panel. */
final class PropShape extends Referring<PropDraft> {
    private final Field<String> id = required("id", Words.ID, "its id");
    private final Field<PixelKind> pixel =
            optional("pixel", new Named<>("a pixel kind", around.library().pixels(), around.whole()), "its pixel kind");
    private final Field<Integer> pixels = optional("pixels", StringRun.PIXELS, "pixels of its only string");
    private final Field<Point> feed = optional("feed", PointShape.POINT, "where that string's data goes in");
    private final Field<Point> tail = optional("tail", PointShape.POINT, "that string's far end; default the feed");
    private final Field<List<StringRun>> strings = optional(
            "strings",
            new Either<>(
                    Items.of(StringShape.one(), 1, "strings"),
                    StringShape.equal().map(List::of)),
            "its strings one by one, or as many equal ones");
    private final Field<Follow> follow =
            optional("follow", Choice.of(Follow.class), Follow.PROP, "which other strings may share a string's port");
    private final Field<String> copyOf = optional("copyOf", Words.ID, "the prop whose picture it repeats");
    private final Field<Integer> channel =
            optional("channel", Whole.of(1, Integer.MAX_VALUE), "with kept channels: of its first string");
    private final Field<String> controller =
            optional("controller", Words.ID, "with kept channels: the controller that counts them");
    private final Field<Integer> outputs =
            optional("outputs", Whole.of(1, StringRun.MOST_PIXELS), "number of switched or dimmed mains outputs");
    private final Field<Panel> panel = optional("panel", new PanelShape(), "a flat matrix of pixels");
    private final Field<Point> at = optional("at", PointShape.POINT, "place of outputs or panel");

    private final List<Way> ways = List.of(
            new Way(pixels, List.of(feed), List.of(pixel, tail, copyOf)),
            new Way(strings, List.of(), List.of(pixel, copyOf)),
            new Way(outputs, List.of(at), List.of()),
            new Way(panel, List.of(at), List.of(pixel)));

    PropShape(Around around) {
        super("a prop", around);
    }

    /** One way to say what a prop is made of: the field that says it, what it needs beside it, and what it may have. */
    private record Way(Field<?> says, List<Field<?>> needs, List<Field<?>> may) {
        List<Field<?>> whole() {
            return Stream.concat(Stream.of(says), needs.stream()).toList();
        }
    }

    @Override
    protected void check(Values values, Problems problems) {
        List<Way> chosen = ways.stream().filter(way -> values.given(way.says())).toList();
        if (chosen.size() == 1) {
            check(chosen.get(0), values, problems);
            return;
        }
        String found = chosen.isEmpty() ? "none of them" : names(chosen, " and ");
        problems.add(values.place(), found, "must have exactly one of " + names(ways, ", "));
    }

    private static String names(List<Way> ways, String between) {
        return ways.stream().map(way -> way.says().name()).collect(Collectors.joining(between));
    }

    private void check(Way way, Values values, Problems problems) {
        for (Field<?> needed : way.needs()) {
            if (!values.given(needed)) {
                refuseLack(needed, values.place(), problems);
            }
        }
        for (Field<?> field : List.of(pixel, feed, tail, copyOf, at)) {
            boolean fits = way.needs().contains(field) || way.may().contains(field);
            if (values.given(field) && !fits) {
                Place place = values.place(field);
                String wanted = "must be left out beside " + way.says().name();
                problems.add(place, place.node().described(), wanted);
            }
        }
        if (way.may().contains(pixel) && !values.given(pixel) && !values.given(copyOf)) {
            refuseLack(pixel, values.place(), problems);
        }
    }

    @Override
    protected Map<String, Object> schemaRules() {
        Map<String, Object> rules = new LinkedHashMap<>();
        rules.put("oneOf", given(ways.stream().map(Way::whole).toList()));
        rules.put("anyOf", given(List.of(List.of(pixel), List.of(copyOf), List.of(outputs))));
        return rules;
    }

    @Override
    protected PropDraft build(Values values) {
        List<StringRun> runs = values.given(pixels)
                ? List.of(new StringRun(1, values.get(pixels), values.get(feed), values.find(tail)))
                : values.get(strings, List.of());
        return new PropDraft(
                values.place(),
                values.get(id),
                values.find(pixel),
                values.get(follow),
                values.find(copyOf),
                values.place(copyOf),
                values.find(channel),
                values.place(channel),
                values.find(controller),
                values.place(controller),
                runs,
                values.get(outputs, 0),
                values.find(panel),
                values.find(at));
    }
}
