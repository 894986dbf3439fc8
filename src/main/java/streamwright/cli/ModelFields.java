package streamwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.file.ModelLibrary;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.ControllerModel;
import streamwright.yard.Drives;
import streamwright.yard.PixelKind;

/** Hardware models as the fields of a model file; what a model does not limit has no field. */
final class ModelFields {
    /** The first field of a model file says the sort of the model, and its value the name. */
    static final List<String> SORTS = List.of("board", "controller", "pixel");

    private ModelFields() {}

    static List<Map<String, Object>> of(ModelLibrary library) {
        List<Map<String, Object>> models = new ArrayList<>();
        library.boards().values().forEach(board -> models.add(board(board)));
        library.controllers().values().forEach(controller -> models.add(controller(controller)));
        library.pixels().values().forEach(pixel -> models.add(pixel(pixel)));
        return models;
    }

    static String name(Map<String, Object> model) {
        return text(model.values().iterator().next());
    }

    /** The model as a model file. */
    static String yaml(Map<String, Object> model) {
        return model.entrySet().stream()
                .map(field -> field.getKey() + ": " + scalar(field.getValue()) + "\n")
                .collect(Collectors.joining());
    }

    /** A field as a cell of a table. */
    static String text(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Map<?, ?> map) {
            return "{"
                    + map.entrySet().stream()
                            .map(entry -> entry.getKey() + ": " + text(entry.getValue()))
                            .collect(Collectors.joining(", "))
                    + "}";
        }
        // plain figures: a file has no thousands set apart
        return value instanceof Double figure && figure == Math.rint(figure)
                ? String.valueOf(figure.longValue())
                : String.valueOf(value);
    }

    private static String scalar(Object value) {
        return value instanceof String words && words.matches(".*[^A-Za-z0-9_-].*")
                ? '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"'
                : text(value);
    }

    private static Map<String, Object> board(BoardModel board) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("board", board.name());
        fields.put("drives", board.drives().name().toLowerCase(Locale.ROOT));
        if (board.drives() == Drives.PIXELS) {
            fields.put("ports", board.ports().stream().map(ModelFields::stream).toList());
        } else if (board.drives() == Drives.OUTPUTS) {
            fields.put("outputs", board.outputs());
            fields.put("hears", stream(board.hears()));
        } else {
            fields.put("streams", board.streams());
        }
        fields.put("address", address(board.address()));
        fields.put("price", board.price());
        putFinite(fields, "fuse", board.fuse());
        putFinite(fields, "ampsMost", board.ampsMost());
        if (board.portMost() < Integer.MAX_VALUE) {
            fields.put("portMost", board.portMost());
        }
        return fields;
    }

    private static Object stream(int stream) {
        return stream == BoardModel.ANY ? "any" : stream;
    }

    private static void putFinite(Map<String, Object> fields, String name, double figure) {
        if (Double.isFinite(figure)) {
            fields.put(name, figure);
        }
    }

    private static Object address(Address address) {
        Map<String, Object> fields = new LinkedHashMap<>();
        if (address instanceof Address.Switches binary) {
            fields.put("least", binary.least());
            fields.put("most", binary.most());
            fields.put("switches", binary.switches());
        } else if (address instanceof Address.Rotary rotary) {
            fields.put("least", rotary.least());
            fields.put("most", rotary.most());
            fields.put("style", "rotary");
        } else {
            return "none";
        }
        return fields;
    }

    private static Map<String, Object> controller(ControllerModel controller) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("controller", controller.name());
        fields.put("jacks", controller.jacks());
        fields.put("streams", controller.streams());
        fields.put("boardsPerCable", controller.boardsPerCable());
        fields.put("streamMost", controller.streamMost());
        fields.put("channelMost", controller.channelMost());
        fields.put("universeSlots", controller.universeSlots());
        return fields;
    }

    private static Map<String, Object> pixel(PixelKind pixel) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("pixel", pixel.name());
        fields.put("channels", pixel.channels());
        fields.put("bits", pixel.bits());
        fields.put("bitTime", pixel.bitTime());
        fields.put("reset", pixel.reset());
        fields.put("prefix", pixel.prefix());
        fields.put("volts", pixel.volts());
        fields.put("voltsLow", pixel.voltsLow());
        fields.put("amps", pixel.amps());
        fields.put("pitch", pixel.pitch());
        fields.put("wire", Map.of("mm2", pixel.wireMm2()));
        fields.put("source", pixel.source());
        return fields;
    }
}
