package streamwright.file;

import java.util.List;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/** A file of a board model. */
final class BoardShape extends Struct<BoardModel> {
    private static final Shape<Integer> STREAM = Whole.of(1, ControllerShape.MOST_STREAMS);
    private static final Shape<Integer> STREAM_OR_ANY = new OrWord<>(STREAM, "any", BoardModel.ANY);

    private final Field<String> board = required("board", Words.ID, "name of the model");
    private final Field<Drives> drives =
            optional("drives", Choice.of(Drives.class), Drives.PIXELS, "what hangs on the board");
    private final Field<List<Integer>> ports =
            optional("ports", Items.of(STREAM_OR_ANY, 1, "streams"), "for pixels: the stream that each port hears");
    private final Field<Address> address = required(
            "address",
            new OrWord<Address>(new AddressShape(), "none", new Address.None()),
            "how the board is told its ID");
    private final Field<Double> price = required("price", Numeral.fromZero(), "of one board");
    private final Field<Double> fuse =
            optional("fuse", Numeral.aboveZero(), "amps of each port's fuse; none where not given");
    private final Field<Double> ampsMost =
            optional("ampsMost", Numeral.aboveZero(), "amps of the whole board; for outputs: of each, at mains");
    private final Field<Integer> portMost =
            optional("portMost", Whole.of(1, Integer.MAX_VALUE), "pixels a port passes on at most");
    private final Field<Integer> outputs = optional("outputs", Whole.of(1, 1_000_000), "for outputs: how many");
    private final Field<Integer> hears = optional("hears", STREAM_OR_ANY, "for outputs: the stream of its block");
    private final Field<List<Integer>> streams = optional(
            "streams",
            Items.of(STREAM, 1, "streams"),
            "for panels: the streams over which a panel is cut, in equal parts");

    BoardShape() {
        super("a board model");
    }

    @Override
    protected void check(Values values, Problems problems) {
        Drives what = values.find(drives);
        if (what == null || values.wrong(drives)) {
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
