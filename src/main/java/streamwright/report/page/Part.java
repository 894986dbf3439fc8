package streamwright.report.page;

import gg.jte.Content;
import java.util.Map;

/**
 * One part of a page: a heading and what stands under it.
 *
 * @param id by which links find it
 */
public record Part(String id, String heading, Content content) {
    /** A part from one template. */
    static Part of(String id, String heading, String template, Map<String, Object> values) {
        return new Part(id, heading, Templates.content(template, values));
    }

    /** A part of plain sentences, a paragraph each. */
    public static Part prose(String id, String heading, java.util.List<String> sentences) {
        return of(id, heading, "prose", Map.of("sentences", sentences));
    }
}
