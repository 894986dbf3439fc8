package streamwright.file;

import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Props that a table beside the yard file lists. */
final class PropReference extends Referring<PropList> {
    private final Field<PropList> csv = required(
            "csv",
            new Reference(around.file(), new PropRow(around)),
            "path of a prop list, relative to the yard file or absolute");

    PropReference(Around around) {
        super("a prop list", around);
    }

    @Override
    protected PropList build(Values values) {
        return values.get(csv);
    }

    private record Reference(Path yard, PropRow row) implements Shape<PropList> {
        @Override
        public @Nullable PropList read(Place place, Problems problems) {
            Path path = Neighbour.path(yard, place, problems);
            return path == null ? null : PropTable.read(path, row, problems);
        }

        @Override
        public String wanted() {
            return "the path of a file";
        }

        @Override
        public Map<String, Object> schema() {
            return Words.ANY.schema();
        }
    }
}
