package streamwright.file;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/** A file of a board model. */
final class BoardShape extends Struct<BoardModel> {
    private final Field<String> board = required("board", Words.ID, "name of the model");
    private final Field<Drives> drives =
            optional("drives", Choice.of(Drives.class), Drives.PIXELS, "what hangs on the board");
    private final Field<List<Integer>> ports =
            optional("ports", Items.of(new Stream(true), 1, "streams"), "for pixels: the stream that each port hears");
    private final Field<Address> address = required(
            "address",
            new AddressShape().orFor(Node.Scalar.class, new Choice<>(Map.of("none", new Address.None()))),
            "how the board is told its ID");
    private final Field<Double> price = required("price", Numeral.fromZero(), "of one board");
    private final Field<Double> fuse =
            optional("fuse", Numeral.aboveZero(), "amps of each port's fuse; none where not given");
    private final Field<Double> ampsMost =
            optional("ampsMost", Numeral.aboveZero(), "amps of the whole board; for outputs: of each, at mains");
    private final Field<Integer> portMost =
            optional("portMost", Whole.of(1, Integer.MAX_VALUE), "pixels a port passes on at most");
    private final Field<Integer> outputs = optional("outputs", Whole.of(1, 1_000_000), "for outputs: how many");
    private final Field<Integer> hears = optional("hears", new Stream(true), "for outputs: the stream of its block");
    private final Field<List<Integer>> streams = optional(
            "streams",
            Items.of(new Stream(false), 1, "streams"),
            "for panels: the streams over which a panel is cut, in equal parts");

    BoardShape() {
        super("a board model");
    }

    /** A 1-based stream of a cable, or where allowed the word for all of them. */
    private record Stream(boolean any) implements Shape<Integer> {
        private static final Shape<Integer> NUMBER = Whole.of(1, ControllerShape.MOST_STREAMS);
        private static final String ANY = "any";

        @Override
        public @Nullable Integer read(Place place, Problems problems) {
            if (any && ANY.equals(Words.text(place.node()))) {
                return BoardModel.ANY;
            }
            return any && NUMBER.read(place, new Problems()) == null
                    ? refuse(place, problems)
                    : NUMBER.read(place, problems);
        }

        private @Nullable Integer refuse(Place place, Problems problems) {
            problems.add(place.wrong(wanted()));
            return null;
        }

        @Override
        public String wanted() {
            return NUMBER.wanted() + (any ? " or " + ANY : "");
        }

        @Override
        public Map<String, Object> schema() {
            return any ? Map.of("anyOf", List.of(NUMBER.schema(), Map.of("const", ANY))) : NUMBER.schema();
        }
    }

    @Override
    protected void check(Values values, Problems problems) {
        Drives what = values.find(drives);
        if (what == null || (values.given(drives) && values.failed())) {
            return;
        }
        need(what, Drives.PIXELS, ports, true, values, problems);
        need(what, Drives.PIXELS, portMost, false, values, problems);
        need(what, Drives.OUTPUTS, outputs, true, values, problems);
        need(what, Drives.OUTPUTS, hears, true, values, problems);
        need(what, Drives.PANEL, streams, true, values, problems);
    }

    /** Such a field belongs to boards of one sort, where it may be needed, and to no others. */
    private static void need(
            Drives what, Drives only, Field<?> field, boolean needed, Values values, Problems problems) {
        if (what != only && values.given(field)) {
            Place place = values.place(field);
            String wanted = "must be left out, since the board drives " + Choice.word(what);
            problems.add(place, place.node().described(), wanted);
        } else if (what == only && needed && !values.given(field)) {
            refuseLack(field, values.place(), problems);
        }
    }

    @Override
    protected BoardModel build(Values values) {
        return new BoardModel(
                values.get(board),
                values.get(drives),
                values.get(ports, List.of()),
                values.get(address),
                values.get(price),
                values.get(fuse, Double.POSITIVE_INFINITY),
                values.get(ampsMost, Double.POSITIVE_INFINITY),
                values.get(portMost, Integer.MAX_VALUE),
                values.get(outputs, 0),
                values.get(hears, BoardModel.ANY),
                values.get(streams, List.of()));
    }
}
