package streamwright.file;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import streamwright.yard.PixelKind;

/**
 * What the fields of a yard file refer to.
 *
 * @param file the yard file, to which the paths in it are relative
 * @param library the models that it may name
 * @param whole whether all models could be read; if not, an unknown name is no news
 * @param usual the pixel kind of a row of a prop list that says none; null where no prop list is read
 */
record Around(
        Path file,
        ModelLibrary library,
        boolean whole,
        @Nullable PixelKind usual) {
    /** For the looks alone. */
    static final Around NOTHING = new Around(Path.of("yard.yaml"), ModelLibrary.EMPTY, true, null);
}
