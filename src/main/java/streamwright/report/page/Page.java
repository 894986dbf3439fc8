package streamwright.report.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A whole page: works from a file, asks nothing of anyone, prints on A4 and Letter.
 *
 * @param title what it is about, e.g. the yard's name
 * @param subtitle what it says of it
 * @param block facts for the title block, by name
 */
public record Page(String title, String subtitle, Map<String, String> block, List<Part> parts) {
    public Page {
        block = new LinkedHashMap<>(block);
        parts = List.copyOf(parts);
    }

    public String html() {
        return Templates.text(
                "page",
                Map.of(
                        "page", this,
                        "style", Templates.resource("page.css"),
                        "script", Templates.resource("page.js")));
    }
}
