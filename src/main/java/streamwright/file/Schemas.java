package streamwright.file;

import java.util.List;
import java.util.Map;

/** JSON Schema (2020-12) of every file, made from the same fields by which they are read. */
public final class Schemas {
    private Schemas() {}

    /** Of a yard file; YAML or JSON. */
    public static String yard() {
        return text("a yard", new YardShape(Around.NOTHING).schema());
    }

    /** Of a model file; YAML or JSON. */
    public static String model() {
        List<Map<String, Object>> sorts =
                List.of(new BoardShape().schema(), new ControllerShape().schema(), new PixelShape().schema());
        return text("a hardware model", Map.of("anyOf", sorts));
    }

    /** Of a model file of a board; YAML or JSON. */
    public static String board() {
        return text("a board", new BoardShape().schema());
    }

    /** Of a model file of a controller; YAML or JSON. */
    public static String controller() {
        return text("a controller", new ControllerShape().schema());
    }

    /** Of a model file of a pixel kind; YAML or JSON. */
    public static String pixel() {
        return text("a pixel kind", new PixelShape().schema());
    }

    /** Of a plan file. */
    public static String plan() {
        return text("a plan", new PlanShape().schema());
    }

    private static String text(String title, Map<String, Object> schema) {
        Map<String, Object> whole =
                JsonObject.of("$schema", "https://json-schema.org/draft/2020-12/schema", "title", title);
        whole.putAll(schema);
        return JsonPage.of(whole);
    }
}
