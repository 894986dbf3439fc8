package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.PixelKind;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** The limits of a yard's boards, controllers and pixels. */
final class Hardware {
    private static final int CHANNELS = 1 << 30;

    private final Yard yard;
    private final int enough;
    private final List<Claim> all = new ArrayList<>();

    private Hardware(Yard yard) {
        this.yard = yard;
        enough = Limits.things(yard);
    }

    static List<Claim> of(Yard yard) {
        Hardware hardware = new Hardware(yard);
        yard.boards().forEach(hardware::board);
        yard.controllers().stream().map(Controller::model).distinct().forEach(hardware::controller);
        yard.controllers().forEach(hardware::numbers);
        yard.streamKinds().forEach(hardware::pixel);
        return hardware.all;
    }

    /** Amps of all pixels of a yard together, at the show's brightness. */
    static double draw(Yard yard) {
        double amps = 0;
        for (Prop prop : yard.props()) {
            PixelKind kind = prop.pixel();
            for (var string : prop.strings()) {
                amps += kind == null ? 0 : kind.amps() * yard.brightness() * string.pixels();
            }
        }
        return amps;
    }

    private static long pixels(Yard yard) {
        return yard.strings().stream().mapToLong(string -> string.pixels()).sum();
    }

    private void board(BoardOffer offer) {
        BoardModel model = offer.model();
        String name = model.name();
        if (offer.most() < enough) {
            all.add(Claim.of(new Lever(
                    "boards: " + name + ", most",
                    "",
                    offer.most(),
                    enough,
                    1,
                    (draft, most) -> draft.boards(
                            name, was -> new BoardOffer(was.model(), most.intValue(), was.have(), was.price())))));
        }
        double amps = Math.ceil(draw(yard)) + 1;
        if (model.portMost() < pixels(yard)) {
            double most = pixels(yard);
            all.add(Claim.of(new Lever(
                    "board " + name + ", portMost", "", model.portMost(), most, 1, set(name, Hardware::portMost))));
        }
        if (model.ampsMost() < amps) {
            all.add(Claim.of(new Lever(
                    "board " + name + ", ampsMost", "A", model.ampsMost(), amps, 1, set(name, Hardware::ampsMost))));
        }
        if (model.fuse() < Double.POSITIVE_INFINITY && draw(yard) > 0) {
            // a port may feed all, at whatever share of its fuse
            double fuse =
                    Math.max(model.fuse(), amps / Math.max(0.01, yard.rules().fuseLoad()));
            all.add(Claim.of(
                    new Lever("board " + name + ", fuse", "A", model.fuse(), fuse, 0.5, set(name, Hardware::fuse))));
        }
        address(model);
    }

    private void address(BoardModel model) {
        int bits = 32 - Integer.numberOfLeadingZeros(Math.max(1, enough));
        Address free = new Address.Switches(0, (1 << bits) - 1, bits);
        String words = null;
        if (model.address() instanceof Address.None) {
            words = "board " + model.name() + " has no address";
        } else if (model.address() instanceof Address.Switches s && s.most() - s.least() + 1 < enough) {
            words = "board " + model.name() + ", IDs " + s.least() + " to " + s.most();
        } else if (model.address() instanceof Address.Rotary r && r.most() - r.least() + 1 < enough) {
            words = "board " + model.name() + ", IDs " + r.least() + " to " + r.most();
        }
        if (words != null) {
            all.add(Claim.of(
                    words, draft -> draft.boards(model.name(), offer -> with(offer, with(offer.model(), free)))));
        }
    }

    private static BoardOffer with(BoardOffer offer, BoardModel model) {
        return new BoardOffer(model, offer.most(), offer.have(), offer.price());
    }

    private static BiConsumer<YardDraft, Double> set(String model, BiFunction<BoardModel, Double, BoardModel> change) {
        return (draft, value) -> draft.boards(model, offer -> with(offer, change.apply(offer.model(), value)));
    }

    private static BoardModel portMost(BoardModel was, double most) {
        return with(was, was.address(), was.fuse(), was.ampsMost(), (int) most);
    }

    private static BoardModel ampsMost(BoardModel was, double amps) {
        return with(was, was.address(), was.fuse(), amps, was.portMost());
    }

    private static BoardModel fuse(BoardModel was, double amps) {
        return with(was, was.address(), amps, was.ampsMost(), was.portMost());
    }

    private static BoardModel with(BoardModel was, Address address) {
        return with(was, address, was.fuse(), was.ampsMost(), was.portMost());
    }

    private static BoardModel with(BoardModel was, Address address, double fuse, double ampsMost, int portMost) {
        return new BoardModel(
                was.name(),
                was.drives(),
                was.ports(),
                address,
                was.price(),
                fuse,
                ampsMost,
                portMost,
                was.outputs(),
                was.hears(),
                was.streams());
    }

    private void controller(ControllerModel model) {
        String of = "controller " + model.name() + ", ";
        if (model.jacks() < enough) {
            lever(
                    of + "jacks",
                    model,
                    model.jacks(),
                    enough,
                    (was, jacks) -> new ControllerModel(
                            was.name(),
                            jacks.intValue(),
                            was.streams(),
                            was.boardsPerCable(),
                            was.streamMost(),
                            was.channelMost(),
                            was.universeSlots()));
        }
        if (model.boardsPerCable() < enough) {
            lever(
                    of + "boardsPerCable",
                    model,
                    model.boardsPerCable(),
                    enough,
                    (was, most) -> new ControllerModel(
                            was.name(),
                            was.jacks(),
                            was.streams(),
                            most.intValue(),
                            was.streamMost(),
                            was.channelMost(),
                            was.universeSlots()));
        }
        lever(
                of + "streamMost",
                model,
                model.streamMost(),
                CHANNELS,
                (was, most) -> new ControllerModel(
                        was.name(),
                        was.jacks(),
                        was.streams(),
                        was.boardsPerCable(),
                        most.intValue(),
                        was.channelMost(),
                        was.universeSlots()));
        lever(
                of + "channelMost",
                model,
                model.channelMost(),
                CHANNELS,
                (was, most) -> new ControllerModel(
                        was.name(),
                        was.jacks(),
                        was.streams(),
                        was.boardsPerCable(),
                        was.streamMost(),
                        most.intValue(),
                        was.universeSlots()));
    }

    private void lever(
            String field,
            ControllerModel model,
            int from,
            int loosest,
            BiFunction<ControllerModel, Double, ControllerModel> change) {
        all.add(Claim.of(new Lever(
                field,
                "",
                from,
                loosest,
                1,
                (draft, value) -> draft.controllers(model.name(), was -> change.apply(was, value)))));
    }

    private void numbers(Controller controller) {
        if (controller.firstUniverse() > 1) {
            all.add(Claim.of(
                    "controller " + controller.id() + ", firstUniverse " + controller.firstUniverse(),
                    draft -> draft.controllers = draft.controllers.stream()
                            .map(each -> each.id().equals(controller.id())
                                    ? new Controller(each.id(), each.model(), each.at(), each.firstChannel(), 1)
                                    : each)
                            .toList()));
        }
        if (controller.firstChannel() > 1) {
            all.add(Claim.of(
                    "controller " + controller.id() + ", firstChannel " + controller.firstChannel(),
                    draft -> draft.controllers = draft.controllers.stream()
                            .map(each -> each.id().equals(controller.id())
                                    ? new Controller(each.id(), each.model(), each.at(), 1, each.firstUniverse())
                                    : each)
                            .toList()));
        }
    }

    private void pixel(PixelKind kind) {
        if (kind.voltsLow() > 0 && kind.amps() > 0 && yard.brightness() > 0) {
            String words = "pixel " + kind.name() + ", voltsLow " + Lever.plain(kind.voltsLow()) + " V";
            all.add(Claim.of(
                    words,
                    draft -> draft.props = draft.props.stream()
                            .map(prop -> kind.equals(prop.pixel()) ? with(prop, withoutLow(kind)) : prop)
                            .toList()));
        }
    }

    private static PixelKind withoutLow(PixelKind was) {
        return new PixelKind(
                was.name(),
                was.channels(),
                was.bits(),
                was.bitTime(),
                was.reset(),
                was.prefix(),
                was.volts(),
                -1e9,
                was.amps(),
                was.pitch(),
                was.wireMm2(),
                was.source());
    }

    private static Prop with(Prop prop, PixelKind kind) {
        return new Prop(
                prop.id(),
                kind,
                prop.follow(),
                prop.tailGiven(),
                prop.copyOf(),
                prop.channel(),
                prop.controller(),
                prop.strings(),
                prop.outputs(),
                prop.panel(),
                prop.at());
    }
}
