package streamwright.cli;

import com.fasterxml.jackson.annotation.JsonInclude.Include;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Records as JSON for other programs: fields in their order, those without a value left out. */
final class Json {
    private Json() {}

    static String text(Object value) {
        return JsonMapper.builder()
                .enable(SerializationFeature.INDENT_OUTPUT)
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .changeDefaultPropertyInclusion(include -> include.withValueInclusion(Include.NON_NULL))
                .build()
                .writeValueAsString(value);
    }
}
