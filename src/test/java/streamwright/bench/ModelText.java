package streamwright.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import streamwright.file.ModelLibrary;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Drives;
import streamwright.yard.Yard;

/** Model files of what a yard uses and the program's own library has not. */
final class ModelText {
    private ModelText() {}

    /** Texts by name of the file. */
    static Map<String, String> of(Yard yard) {
        ModelLibrary known = ModelLibrary.builtIn();
        Map<String, String> texts = new LinkedHashMap<>();
        for (Controller controller : yard.controllers()) {
            ControllerModel model = controller.model();
            if (!model.equals(known.controllers().get(model.name()))) {
                texts.put(model.name() + ".yaml", text(model));
            }
        }
        for (BoardOffer offer : yard.boards()) {
            BoardModel model = offer.model();
            if (!model.equals(known.boards().get(model.name()))) {
                texts.put(model.name() + ".yaml", text(model));
            }
        }
        return texts;
    }

    private static String text(ControllerModel model) {
        return """
                controller: %s
                jacks: %d
                streams: %d
                boardsPerCable: %d
                streamMost: %d
                channelMost: %d
                universeSlots: %d
                """.formatted(
                        model.name(),
                        model.jacks(),
                        model.streams(),
                        model.boardsPerCable(),
                        model.streamMost(),
                        model.channelMost(),
                        model.universeSlots());
    }

    private static String text(BoardModel model) {
        if (model.drives() != Drives.PIXELS) {
            throw new IllegalArgumentException(model.name() + " drives no pixels, and is not written here");
        }
        StringBuilder text = new StringBuilder();
        text.append("board: ").append(model.name());
        text.append("\nports: ").append(ports(model.ports()));
        text.append("\naddress: ").append(text(model.address()));
        text.append("\nprice: ").append(model.price());
        if (Double.isFinite(model.fuse())) {
            text.append("\nfuse: ").append(model.fuse());
        }
        if (Double.isFinite(model.ampsMost())) {
            text.append("\nampsMost: ").append(model.ampsMost());
        }
        if (model.portMost() < Integer.MAX_VALUE) {
            text.append("\nportMost: ").append(model.portMost());
        }
        return text.append('\n').toString();
    }

    private static String ports(List<Integer> ports) {
        return ports.stream()
                .map(port -> port == BoardModel.ANY ? "any" : port.toString())
                .collect(Collectors.joining(", ", "[", "]"));
    }

    private static String text(Address address) {
        if (address instanceof Address.Switches some) {
            return "{least: %d, most: %d, switches: %d}".formatted(some.least(), some.most(), some.switches());
        }
        if (address instanceof Address.Rotary one) {
            return "{least: %d, most: %d, style: rotary}".formatted(one.least(), one.most());
        }
        return "none";
    }
}
