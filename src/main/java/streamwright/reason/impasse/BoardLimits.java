package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Yard;

/** The limits of a yard's boards. What a board is nobody changes: only of how many there may be another number is offered. */
final class BoardLimits {
    private final Yard yard;
    private final int enough;
    private final List<Claim> all = new ArrayList<>();

    private BoardLimits(Yard yard) {
        this.yard = yard;
        enough = Limits.things(yard);
    }

    static List<Claim> of(Yard yard) {
        BoardLimits limits = new BoardLimits(yard);
        yard.boards().forEach(limits::board);
        return limits.all;
    }

    private void fixed(Lever lever) {
        all.add(Claim.of(lever, null));
    }

    private static long pixels(Yard yard) {
        return yard.strings().stream().mapToLong(string -> string.pixels()).sum();
    }

    private void board(BoardOffer offer) {
        BoardModel model = offer.model();
        String name = model.name();
        if (offer.most() < enough) {
            Lever lever = new Lever(
                    "boards: " + name + ", most",
                    "",
                    offer.most(),
                    enough,
                    1,
                    (draft, most) -> draft.boards(
                            name, was -> new BoardOffer(was.model(), most.intValue(), was.have(), was.price())));
            all.add(Claim.of(lever, Candidate.figure(lever)));
        }
        double amps = Math.ceil(PixelLimits.draw(yard)) + 1;
        if (model.portMost() < pixels(yard)) {
            double most = pixels(yard);
            fixed(new Lever(
                    "board " + name + ", portMost", "", model.portMost(), most, 1, set(name, BoardLimits::portMost)));
        }
        if (model.ampsMost() < amps) {
            fixed(new Lever(
                    "board " + name + ", ampsMost", "A", model.ampsMost(), amps, 1, set(name, BoardLimits::ampsMost)));
        }
        if (model.fuse() < Double.POSITIVE_INFINITY && PixelLimits.draw(yard) > 0) {
            // a port may feed all, at whatever share of its fuse
            double fuse =
                    Math.max(model.fuse(), amps / Math.max(0.01, yard.rules().fuseLoad()));
            fixed(new Lever("board " + name + ", fuse", "A", model.fuse(), fuse, 0.5, set(name, BoardLimits::fuse)));
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
}
