package streamwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;
import streamwright.yard.ControllerModel;
import streamwright.yard.PixelKind;

/** Reads hardware models, one a file: those inside the program, or a folder of the user's. */
final class ModelFiles {
    private static final String FOLDER = "/streamwright/models/";
    /** A folder with more than this was named by mistake. */
    private static final int MOST_FILES = 10_000;

    private final Problems problems;
    private final Map<String, BoardModel> boards = new LinkedHashMap<>();
    private final Map<String, ControllerModel> controllers = new LinkedHashMap<>();
    private final Map<String, PixelKind> pixels = new LinkedHashMap<>();

    private ModelFiles(Problems problems) {
        this.problems = problems;
    }

    /** The models inside the program, in the order of their index. */
    static ModelLibrary builtIn() {
        Problems problems = new Problems();
        ModelFiles files = new ModelFiles(problems);
        for (String name : resource("index.txt").lines().toList()) {
            files.add(Tree.of(name, resource(name), problems));
        }
        if (problems.outcome(files) instanceof Read.Bad<ModelFiles> bad) {
            throw new IllegalStateException("the program's own models are wrong: " + bad.problems());
        }
        return files.library();
    }

    private static String resource(String name) {
        try (InputStream in = ModelFiles.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its model file " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every .yaml, .yml and .json below a folder, in the order of their paths. */
    static ModelLibrary below(Path folder, Place named, Problems problems) {
        ModelFiles files = new ModelFiles(problems);
        for (Path path : paths(folder, named, problems)) {
            files.add(Tree.of(path, problems));
        }
        return files.library();
    }

    private static List<Path> paths(Path folder, Place named, Problems problems) {
        List<Path> paths = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            problems.add(named.wrong("a folder that is there"));
            return paths;
        }
        int[] seen = {0};
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path path, BasicFileAttributes attributes) throws IOException {
                    boolean model = Tree.ends(path, ".yaml") || Tree.ends(path, ".yml") || Tree.ends(path, ".json");
                    if (model && isInside(folder, path, attributes)) {
                        paths.add(path);
                    }
                    return ++seen[0] > MOST_FILES ? FileVisitResult.TERMINATE : FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            problems.add(
                    named.wrong("a folder that can be read (" + e.getClass().getSimpleName() + ")"));
        }
        if (seen[0] > MOST_FILES) {
            problems.add(named.wrong("a folder of at most " + MOST_FILES + " files"));
            return List.of();
        }
        return paths.stream().sorted().toList();
    }

    /** Whether it is a file of this folder: no link to elsewhere, no pipe that might never end. */
    private static boolean isInside(Path folder, Path path, BasicFileAttributes attributes) throws IOException {
        if (!attributes.isSymbolicLink()) {
            return attributes.isRegularFile();
        }
        return Files.isRegularFile(path) && path.toRealPath().startsWith(folder.toRealPath());
    }

    private void add(@Nullable Place root) {
        if (root == null) {
            return;
        }
        if (says(root, "board")) {
            put(boards, "board", root, new BoardShape());
        } else if (says(root, "controller")) {
            put(controllers, "controller", root, new ControllerShape());
        } else if (says(root, "pixel")) {
            put(pixels, "pixel", root, new PixelShape());
        } else {
            problems.add(root, root.node().described(), "must be an object with a field board, controller or pixel");
        }
    }

    private static boolean says(Place root, String field) {
        return root.node() instanceof Node.Fields object && object.entries().containsKey(field);
    }

    private <T> void put(Map<String, T> models, String field, Place root, Shape<T> shape) {
        T model = shape.read(root, problems);
        Node.Entry name = ((Node.Fields) root.node()).entries().get(field);
        if (model == null || name == null) {
            return;
        }
        String said = String.valueOf(Words.text(name.value()));
        if (models.putIfAbsent(said, model) != null) {
            String found = Quote.quoted(said) + " a second time";
            problems.add(root.field(field, name.value()), found, "must differ from that of another file of the folder");
        }
    }

    private ModelLibrary library() {
        return new ModelLibrary(boards, controllers, pixels);
    }
}
