package streamwright.file;

import java.util.LinkedHashMap;
import java.util.Map;

/** Objects of JSON whose fields keep their order, so that the same text comes out every time. */
final class JsonObject {
    private JsonObject() {}

    static Map<String, Object> of(Object... namesAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            object.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return object;
    }
}
