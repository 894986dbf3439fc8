package streamwright.file;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;
import streamwright.yard.Yard;

/** Reads a yard: a yard file in YAML or JSON, or a prop list (CSV) alone. */
public final class YardFile {
    private YardFile() {}

    /** As {@link #read(Path, Point)}, the controller of a prop list at the origin. */
    public static Read<Yard> read(Path path) {
        return read(path, new Point(0, 0));
    }

    /**
     * Reads a yard with everything that it names.
     *
     * @param controllerAt where the controller of a prop list alone stands; a yard file says it itself
     */
    public static Read<Yard> read(Path path, Point controllerAt) {
        Problems problems = new Problems();
        Place root = Tree.ends(path, ".csv") || Tree.ends(path, ".tsv")
                ? aroundPropList(path, controllerAt)
                : Tree.of(path, problems);
        return problems.outcome(root == null ? null : yard(path, root, problems));
    }

    private static @Nullable Yard yard(Path path, Place root, Problems problems) {
        ModelLibrary own = ModelLibrary.builtIn();
        long before = problems.count();
        ModelLibrary library = own.with(folder(path, root, problems));
        boolean whole = problems.count() == before;
        PixelKind usual = own.pixels().values().iterator().next();
        return new YardShape(new Around(path, library, whole, usual)).read(root, problems);
    }

    private static ModelLibrary folder(Path path, Place root, Problems problems) {
        Node.Entry named =
                root.node() instanceof Node.Fields object ? object.entries().get("models") : null;
        if (named == null || Words.text(named.value()) == null) {
            return ModelLibrary.EMPTY;
        }
        Place place = root.field("models", named.value());
        Path folder = Neighbour.path(path, place, new Problems());
        return folder == null ? ModelLibrary.EMPTY : ModelFiles.below(folder, place, problems);
    }

    /** The yard file that a prop list alone stands for. */
    private static Place aroundPropList(Path path, Point controllerAt) {
        String model = ModelLibrary.builtIn().controllers().keySet().iterator().next();
        Node at = new Node.Items(
                List.of(number(controllerAt.x()), number(controllerAt.y()), number(controllerAt.z())), 0, 0);
        Node controller = object("id", text("controller"), "model", text(model), "at", at);
        Node props = object("csv", text(String.valueOf(path.getFileName())));
        Node yard = object("controllers", new Node.Items(List.of(controller), 0, 0), "props", props);
        return Place.root(path.toString(), yard);
    }

    private static Node text(String text) {
        return new Node.Scalar(Node.Kind.TEXT, text, 0, 0);
    }

    private static Node number(double number) {
        return new Node.Scalar(Node.Kind.NUMBER, String.valueOf(number), 0, 0);
    }

    private static Node object(Object... namesAndNodes) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (int i = 0; i < namesAndNodes.length; i += 2) {
            entries.put((String) namesAndNodes[i], new Node.Entry((Node) namesAndNodes[i + 1], 0, 0));
        }
        return new Node.Fields(entries, 0, 0);
    }
}
