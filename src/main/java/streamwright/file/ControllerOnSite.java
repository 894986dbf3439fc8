package streamwright.file;

import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Point;

/** A controller of the yard. */
final class ControllerOnSite extends Referring<Controller> {
    private final Field<String> id = required("id", Words.ID, "its id");
    private final Field<ControllerModel> model = required(
            "model",
            new Named<>("a controller model", around.library().controllers(), around.whole()),
            "its controller model");
    private final Field<Point> at = required("at", PointShape.POINT, "where it stands");
    private final Field<Integer> firstChannel =
            optional("firstChannel", Whole.of(1, Integer.MAX_VALUE), 1, "its first channel");
    private final Field<Integer> firstUniverse =
            optional("firstUniverse", Whole.of(1, 63_999), 1, "universe of its first channel (ANSI E1.31: 1 to 63999)");

    ControllerOnSite(Around around) {
        super("a controller", around);
    }

    @Override
    protected Controller build(Values values) {
        return new Controller(
                values.get(id), values.get(model), values.get(at), values.get(firstChannel), values.get(firstUniverse));
    }
}
