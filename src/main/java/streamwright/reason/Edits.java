package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import streamwright.layout.Layout;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/** Single changes of a layout. What is not changed stays the same object, so that {@link Settle} sees what was. */
final class Edits {
    private Edits() {}

    static <T> List<T> replaced(List<T> list, int index, T item) {
        List<T> copy = new ArrayList<>(list);
        copy.set(index, item);
        return copy;
    }

    static <T> List<T> inserted(List<T> list, int index, T item) {
        List<T> copy = new ArrayList<>(list);
        copy.add(index, item);
        return copy;
    }

    static <T> List<T> removed(List<T> list, int index) {
        List<T> copy = new ArrayList<>(list);
        copy.remove(index);
        return copy;
    }

    static Layout run(Layout layout, int cable, UnaryOperator<List<Layout.Hung>> change) {
        Layout.Run run = layout.cables().get(cable);
        Layout.Run changed = new Layout.Run(run.controller(), run.jack(), change.apply(run.boards()));
        return new Layout(replaced(layout.cables(), cable, changed));
    }

    static Layout run(Layout layout, Layout.Run added) {
        return new Layout(inserted(layout.cables(), layout.cables().size(), added));
    }

    static Layout board(Layout layout, int cable, int board, UnaryOperator<Layout.Hung> change) {
        return run(layout, cable, boards -> replaced(boards, board, change.apply(boards.get(board))));
    }

    /** Without a string; those behind it on its port close up. */
    static Layout without(Layout layout, Seat seat) {
        return board(layout, seat.cable(), seat.board(), hung -> {
            int at = hung.ports().indexOf(seat.chain());
            List<PixelString> rest = removed(seat.chain().strings(), seat.place());
            return ports(
                    hung,
                    rest.isEmpty()
                            ? removed(hung.ports(), at)
                            : replaced(hung.ports(), at, strings(seat.chain(), rest)));
        });
    }

    /** With two strings in each other's places. */
    static Layout exchanged(Layout layout, Seat one, Seat other) {
        return put(put(layout, one, other.string()), other, one.string());
    }

    private static Layout put(Layout layout, Seat seat, PixelString string) {
        return board(layout, seat.cable(), seat.board(), hung -> {
            List<Layout.Chain> chains = new ArrayList<>();
            for (Layout.Chain chain : hung.ports()) {
                boolean here =
                        chain.port() == seat.chain().port() && chain.strings().contains(seat.string());
                chains.add(here ? strings(chain, replaced(chain.strings(), seat.place(), string)) : chain);
            }
            return ports(hung, chains);
        });
    }

    /** With some strings behind another on its port. */
    static Layout.Hung behind(Layout.Hung hung, PixelString before, List<PixelString> strings) {
        List<Layout.Chain> chains = new ArrayList<>();
        for (Layout.Chain chain : hung.ports()) {
            int at = chain.strings().indexOf(before);
            List<PixelString> all = new ArrayList<>(chain.strings());
            if (at >= 0) {
                all.addAll(at + 1, strings);
            }
            chains.add(at < 0 ? chain : strings(chain, all));
        }
        return ports(hung, chains);
    }

    static Layout.Hung plus(Layout.Hung hung, Layout.Chain chain) {
        return ports(hung, inserted(hung.ports(), hung.ports().size(), chain));
    }

    /** With a prop's outputs behind the last used one of its block. */
    static Layout.Hung plusOutputs(Layout.Hung hung, Prop outputs) {
        Layout.Block block = Objects.requireNonNull(hung.block());
        int free = 1;
        for (Layout.Lines lines : block.props()) {
            free = Math.max(free, lines.first() + lines.prop().outputs());
        }
        List<Layout.Lines> props = inserted(block.props(), block.props().size(), new Layout.Lines(outputs, free));
        return hung.with(new Layout.Block(block.stream(), props, block.kind()));
    }

    static Layout.Hung plusPanel(Layout.Hung hung, Prop panel) {
        return new Layout.Hung(
                hung.name(),
                hung.boardId(),
                hung.model(),
                hung.spot(),
                hung.ports(),
                hung.block(),
                inserted(hung.panels(), hung.panels().size(), panel));
    }

    static Layout.Hung ports(Layout.Hung hung, List<Layout.Chain> ports) {
        return hung.with(ports);
    }

    private static Layout.Chain strings(Layout.Chain chain, List<PixelString> strings) {
        return new Layout.Chain(chain.port(), chain.stream(), strings);
    }
}
