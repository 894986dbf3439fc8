package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import streamwright.layout.Layout;
import streamwright.yard.Drives;
import streamwright.yard.Prop;
import streamwright.yard.Spot;

/** A prop's outputs or a panel on other boards of its sort, or on a new board. */
final class FixtureAlternatives {
    private static final int BOARDS = 3;

    private final Base base;
    private final Nearby nearby;
    private final NewBoard newBoard;

    FixtureAlternatives(Base base, Nearby nearby) {
        this.base = base;
        this.nearby = nearby;
        newBoard = new NewBoard(base, nearby);
    }

    /** Empty where the plan does not carry the prop, or no place is known. */
    List<Alternative> of(Prop prop) {
        Optional<Nearby.At> where =
                nearby.boards().stream().filter(at -> carries(at.hung(), prop)).findFirst();
        if (where.isEmpty() || prop.at() == null) {
            return List.of();
        }
        Nearby.At at = where.get();
        Layout without = Edits.board(base.layout, at.cable(), at.board(), hung -> without(hung, prop));
        Drives sort = at.hung().model().drives();
        List<Alternative> alternatives = new ArrayList<>();
        for (Nearby.At other : nearby.boards(sort, prop.at(), at::other, BOARDS)) {
            Layout changed = Edits.board(
                    without,
                    other.cable(),
                    other.board(),
                    hung -> sort == Drives.OUTPUTS ? Edits.plusOutputs(hung, prop) : Edits.plusPanel(hung, prop));
            alternatives.add(base.alternative("board " + other.hung().name(), base.settle.all(changed)));
        }
        if (carriesNothingElse(at.hung(), prop)) {
            return alternatives;
        }
        Spot spot = nearby.place(prop.at());
        Layout.Hung own = alone(at.hung(), spot, prop);
        alternatives.add(base.alternative(
                "a " + own.model().name() + " board of its own at " + nearby.name(spot),
                base.settle.all(newBoard.hung(without, own))));
        return alternatives;
    }

    private static boolean carries(Layout.Hung hung, Prop prop) {
        Layout.Block block = hung.block();
        return hung.panels().contains(prop)
                || (block != null
                        && block.props().stream().anyMatch(lines -> lines.prop().equals(prop)));
    }

    private static boolean carriesNothingElse(Layout.Hung hung, Prop prop) {
        return without(hung, prop).bare();
    }

    private static Layout.Hung without(Layout.Hung hung, Prop prop) {
        Layout.Block block = hung.block();
        List<Layout.Lines> rest = block == null
                ? List.of()
                : block.props().stream()
                        .filter(lines -> !lines.prop().equals(prop))
                        .toList();
        return new Layout.Hung(
                hung.name(),
                hung.boardId(),
                hung.model(),
                hung.spot(),
                hung.ports(),
                block == null || rest.isEmpty() ? null : new Layout.Block(block.stream(), rest, block.kind()),
                hung.panels().stream().filter(panel -> !panel.equals(prop)).toList());
    }

    private static Layout.Hung alone(Layout.Hung like, Spot spot, Prop prop) {
        Layout.Block block = like.block();
        return new Layout.Hung(
                null,
                null,
                like.model(),
                spot,
                List.of(),
                block == null
                        ? null
                        : new Layout.Block(block.stream(), List.of(new Layout.Lines(prop, 1)), block.kind()),
                block == null ? List.of(prop) : List.of());
    }
}
