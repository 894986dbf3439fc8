package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Yard;

/** The limits of a yard's controllers. What a controller is nobody changes: only more of them are offered. */
final class ControllerLimits {
    private static final int CHANNELS = 1 << 30;

    /** So many controllers in place of one are offered. */
    private static final int MORE = 4;

    private final Yard yard;
    private final int enough;
    private final List<Claim> all = new ArrayList<>();

    private ControllerLimits(Yard yard) {
        this.yard = yard;
        enough = Limits.things(yard);
    }

    static List<Claim> of(Yard yard) {
        ControllerLimits limits = new ControllerLimits(yard);
        yard.controllers().stream().map(Controller::model).distinct().forEach(limits::controller);
        yard.controllers().forEach(limits::numbers);
        return limits.all;
    }

    private void controller(ControllerModel model) {
        String of = "controller " + model.name() + ", ";
        if (model.jacks() < enough) {
            Lever jacks = lever(
                    of + "jacks",
                    model,
                    model.jacks(),
                    enough,
                    (was, more) -> with(was, more, was.boardsPerCable(), was.streamMost(), was.channelMost()));
            all.add(Claim.of(jacks, another(model)));
        }
        if (model.boardsPerCable() < enough) {
            fixed(lever(
                    of + "boardsPerCable",
                    model,
                    model.boardsPerCable(),
                    enough,
                    (was, most) -> with(was, was.jacks(), most, was.streamMost(), was.channelMost())));
        }
        fixed(lever(
                of + "streamMost",
                model,
                model.streamMost(),
                CHANNELS,
                (was, most) -> with(was, was.jacks(), was.boardsPerCable(), most, was.channelMost())));
        fixed(lever(
                of + "channelMost",
                model,
                model.channelMost(),
                CHANNELS,
                (was, most) -> with(was, was.jacks(), was.boardsPerCable(), was.streamMost(), most)));
    }

    private static ControllerModel with(
            ControllerModel was, int jacks, int boardsPerCable, int streamMost, int channelMost) {
        return new ControllerModel(
                was.name(), jacks, was.streams(), boardsPerCable, streamMost, channelMost, was.universeSlots());
    }

    private void fixed(Lever lever) {
        all.add(Claim.of(lever, null));
    }

    private static Lever lever(
            String field,
            ControllerModel model,
            int from,
            int loosest,
            BiFunction<ControllerModel, Integer, ControllerModel> change) {
        return new Lever(
                field,
                "",
                from,
                loosest,
                1,
                (draft, value) -> draft.controllers(model.name(), was -> change.apply(was, value.intValue())));
    }

    /** Jacks come with controllers: more of them beside the first of the model. */
    private Candidate another(ControllerModel model) {
        Controller first = yard.controllers().stream()
                .filter(each -> each.model().equals(model))
                .findFirst()
                .orElseThrow();
        return Candidate.figure(new Lever("controllers like " + first.id(), "", 1, MORE, 1, (draft, count) -> {
            List<Controller> more = new ArrayList<>(draft.controllers);
            for (int i = 2; i <= count.intValue(); i++) {
                more.add(new Controller(
                        first.id() + " " + i, model, first.at(), first.firstChannel(), first.firstUniverse()));
            }
            draft.controllers = more;
        }));
    }

    private void numbers(Controller controller) {
        String of = "controller " + controller.id() + ", ";
        if (controller.firstUniverse() > 1) {
            all.add(Claim.of(
                            of + "firstUniverse " + controller.firstUniverse(),
                            draft -> numbered(draft, controller.id(), controller.firstChannel(), 1))
                    .changed(of + "firstUniverse 1"));
        }
        if (controller.firstChannel() > 1) {
            all.add(Claim.of(
                            of + "firstChannel " + controller.firstChannel(),
                            draft -> numbered(draft, controller.id(), 1, controller.firstUniverse()))
                    .changed(of + "firstChannel 1"));
        }
    }

    private static void numbered(YardDraft draft, String id, int firstChannel, int firstUniverse) {
        draft.controllers = draft.controllers.stream()
                .map(each -> each.id().equals(id)
                        ? new Controller(
                                each.id(),
                                each.model(),
                                each.at(),
                                Math.min(firstChannel, each.firstChannel()),
                                Math.min(firstUniverse, each.firstUniverse()))
                        : each)
                .toList();
    }
}
