package streamwright.file;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Costs;
import streamwright.yard.Obstacle;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** A yard file. */
final class YardShape extends Referring<Yard> {
    private enum Channels {
        RENUMBER,
        KEEP
    }

    private final Field<String> name = optional("name", Words.LINE, "default the name of the file");
    private final Field<Units> units =
            optional("units", Choice.of(Units.class), Units.M, "of every length and coordinate");
    private final Field<Double> frameRate =
            optional("frameRate", new Numeral(0, true, 1000), 40.0, "frames a second that every stream must hold");
    private final Field<Double> spare = optional("spare", Numeral.share(), 0.10, "share of every stream kept free");
    private final Field<Double> brightness =
            optional("brightness", Numeral.share(), 1.0, "highest brightness of the show");
    private final Field<Channels> channels =
            optional("channels", Choice.of(Channels.class), Channels.RENUMBER, "keep: props carry their channels");
    // the models are read before the yard, so that they are known here
    {
        optional("models", Words.ANY, "folder of models on top of the program's");
    }

    private final Field<List<Controller>> controllers = required(
            "controllers", Items.unique(new ControllerOnSite(around), 1, "id", "controllers"), "controllers on site");
    private final Field<List<BoardOffer>> boards = optional(
            "boards",
            Items.unique(new OfferShape(around), 1, "model", "boards"),
            "models that the plan may use; default every addressed pixel board");
    private final Field<BoardCount> boardCount =
            optional("boardCount", new BoardCountShape(), "limits on the number of boards in all");
    private final Field<List<Spot>> spots = optional(
            "spots",
            Items.unique(new SpotShape(), 0, "id", "spots"),
            "where boards may hang, and nowhere else; default any feed point");
    private final Field<PropList> props = required(
            "props",
            new Either<>(new PropListShape(new PropShape(around)), new PropReference(around)),
            "the props, or the prop list that lists them");
    private final Field<List<Obstacle>> obstacles = optional(
            "obstacles", Items.unique(new ObstacleShape(), 0, "id", "obstacles"), "ground that no wire may cross");
    private final Field<Function<Units, Rules>> rules =
            optional("rules", new RulesShape(), "limits of length and wire");
    private final Field<Function<Units, Costs>> costs = optional("costs", new CostsShape(), "prices");
    private final Field<Work> work = optional("work", new WorkShape(), Work.DEFAULTS, "minutes of work of a change");

    YardShape(Around around) {
        super("a yard", around);
    }

    private static String nameOf(Path file) {
        String last = String.valueOf(file.getFileName());
        int dot = last.lastIndexOf('.');
        return Quote.plain(dot > 0 ? last.substring(0, dot) : last, 255);
    }

    @Override
    protected void check(Values values, Problems problems) {
        PropList list = values.find(props);
        if (list == null) {
            return;
        }
        long strings = list.drafts().stream().mapToLong(PropDraft::strings).sum();
        if (strings > StringRun.MOST_STRINGS) {
            problems.add(values.place(props), strings + " strings", "must be at most " + StringRun.MOST_STRINGS);
            return;
        }
        Map<String, PropDraft> byId = byId(list);
        Copies copies = new Copies(byId, list.ids());
        list.drafts().forEach(prop -> copies.check(prop, problems));
        List<Controller> onSite = values.find(controllers);
        if (values.find(channels) == Channels.KEEP
                && onSite != null
                && Items.whole(values.place(controllers), onSite)) {
            new KeptChannels(byId, onSite.stream().map(Controller::id).toList()).check(problems);
        }
        new Doubts(problems, new Blocked(values.get(obstacles, List.of())))
                .tell(
                        list.drafts(),
                        values.get(spots, List.of()),
                        values.place(spots),
                        values.get(controllers, List.of()),
                        values.place(controllers),
                        values.find(channels) == Channels.KEEP);
    }

    private static Map<String, PropDraft> byId(PropList list) {
        Map<String, PropDraft> byId = new LinkedHashMap<>();
        list.drafts().forEach(prop -> byId.putIfAbsent(prop.id(), prop));
        return byId;
    }

    @Override
    protected Yard build(Values values) {
        Units measure = values.get(units);
        boolean keep = values.get(channels) == Channels.KEEP;
        PropList list = values.get(props);
        List<BoardOffer> every = around.library().addressedPixelBoards().stream()
                .map(OfferShape::plain)
                .toList();
        return new Yard(
                values.get(name, nameOf(around.file())),
                measure,
                values.get(frameRate),
                values.get(spare),
                values.get(brightness),
                keep,
                values.get(controllers),
                values.get(boards, every),
                values.get(boardCount, BoardCount.FREE),
                values.get(spots, List.of()),
                new Expansion(byId(list), keep).props(),
                values.get(obstacles, List.of()),
                values.get(rules, Rules::defaults).apply(measure),
                values.get(costs, Costs::defaults).apply(measure),
                values.get(work));
    }
}
