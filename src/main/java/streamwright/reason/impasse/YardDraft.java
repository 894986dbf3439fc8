package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Obstacle;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** A yard in which this and that is made otherwise, one after another. */
final class YardDraft {
    double frameRate;
    double spare;
    double brightness;
    boolean keepChannels;
    List<Controller> controllers;
    List<BoardOffer> boards;
    BoardCount boardCount;
    List<Spot> spots;
    List<Prop> props;
    List<Obstacle> obstacles;
    Rules rules;
    private final Yard from;

    YardDraft(Yard yard) {
        from = yard;
        frameRate = yard.frameRate();
        spare = yard.spare();
        brightness = yard.brightness();
        keepChannels = yard.keepChannels();
        controllers = yard.controllers();
        boards = yard.boards();
        boardCount = yard.boardCount();
        spots = yard.spots();
        props = yard.props();
        obstacles = yard.obstacles();
        rules = yard.rules();
    }

    Yard yard() {
        return new Yard(
                from.name(),
                from.units(),
                frameRate,
                spare,
                brightness,
                keepChannels,
                controllers,
                boards,
                boardCount,
                spots,
                props.stream().map(YardDraft::numbered).toList(),
                obstacles,
                rules,
                from.costs(),
                from.work());
    }

    /** Strings are numbered from 1 on, also where some were left out. */
    private static Prop numbered(Prop prop) {
        List<PixelString> strings = new ArrayList<>();
        for (PixelString string : prop.strings()) {
            strings.add(
                    new PixelString(string.prop(), strings.size() + 1, string.pixels(), string.feed(), string.tail()));
        }
        return Things.with(prop, strings);
    }

    /** Makes every controller of a model otherwise. */
    void controllers(String model, UnaryOperator<ControllerModel> change) {
        controllers = controllers.stream()
                .map(each -> each.model().name().equals(model)
                        ? new Controller(
                                each.id(),
                                change.apply(each.model()),
                                each.at(),
                                each.firstChannel(),
                                each.firstUniverse())
                        : each)
                .toList();
    }

    /** Makes every offer of a board model otherwise. */
    void boards(String model, UnaryOperator<BoardOffer> change) {
        boards = boards.stream()
                .map(each -> each.model().name().equals(model) ? change.apply(each) : each)
                .toList();
    }

    /** Makes the spot of this id otherwise. */
    void spot(String id, UnaryOperator<Spot> change) {
        spots = spots.stream()
                .map(each -> id.equals(each.id()) ? change.apply(each) : each)
                .toList();
    }
}
