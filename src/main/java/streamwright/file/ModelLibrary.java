package streamwright.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import streamwright.yard.BoardModel;
import streamwright.yard.ControllerModel;
import streamwright.yard.Drives;
import streamwright.yard.PixelKind;

/** Hardware models by name, in a fixed order; the three sorts have names of their own. */
public record ModelLibrary(
        Map<String, BoardModel> boards, Map<String, ControllerModel> controllers, Map<String, PixelKind> pixels) {
    static final ModelLibrary EMPTY = new ModelLibrary(Map.of(), Map.of(), Map.of());

    public ModelLibrary {
        boards = ordered(boards);
        controllers = ordered(controllers);
        pixels = ordered(pixels);
    }

    private static <T> Map<String, T> ordered(Map<String, T> models) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(models));
    }

    /** The models inside the program. */
    public static ModelLibrary builtIn() {
        return BuiltIn.LIBRARY;
    }

    /** Read when first asked for. */
    private static final class BuiltIn {
        static final ModelLibrary LIBRARY = ModelFiles.builtIn();
    }

    /** These models with others on top: the same name wins over this one's, and keeps its place in the order. */
    public ModelLibrary with(ModelLibrary top) {
        return new ModelLibrary(
                merged(boards, top.boards), merged(controllers, top.controllers), merged(pixels, top.pixels));
    }

    private static <T> Map<String, T> merged(Map<String, T> below, Map<String, T> top) {
        Map<String, T> both = new LinkedHashMap<>(below);
        both.putAll(top);
        return both;
    }

    /** What a yard may use that names no boards. */
    public List<BoardModel> addressedPixelBoards() {
        return boards.values().stream()
                .filter(board -> board.drives() == Drives.PIXELS && board.addressed())
                .toList();
    }
}
