package streamwright.file;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads a file to its tree; the end of its name, else its first character, tells YAML from JSON. */
final class Tree {
    private Tree() {}

    /** The root, or null where the problems were told. */
    static @Nullable Place of(Path path, Problems problems) {
        try {
            return of(path.toString(), Text.of(path), problems);
        } catch (Unreadable e) {
            problems.add(e.in(path.toString()));
            return null;
        }
    }

    static @Nullable Place of(String file, String text, Problems problems) {
        try {
            TreeBuilder tree = new TreeBuilder(file, problems);
            Node root = isJson(file, text) ? JsonText.parse(text, tree) : YamlText.parse(text, tree);
            return Place.root(file, root);
        } catch (Unreadable e) {
            problems.add(e.in(file));
            return null;
        }
    }

    static boolean ends(Path path, String ending) {
        return ends(path.toString(), ending);
    }

    private static boolean ends(String file, String ending) {
        return file.toLowerCase(Locale.ROOT).endsWith(ending);
    }

    private static boolean isJson(String file, String text) {
        if (ends(file, ".json")) {
            return true;
        }
        boolean object = text.stripLeading().startsWith("{");
        // YAML takes most JSON, but not with tabs
        return object && (!(ends(file, ".yaml") || ends(file, ".yml")) || JsonText.isWell(text));
    }
}
