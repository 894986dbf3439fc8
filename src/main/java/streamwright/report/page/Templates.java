package streamwright.report.page;

import gg.jte.Content;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The page templates, compiled with the program; every value is escaped for where it stands. */
final class Templates {
    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Templates.class.getClassLoader(), Templates.class.getPackageName());

    private Templates() {}

    static String text(String template, Map<String, Object> values) {
        StringOutput output = new StringOutput();
        ENGINE.render(template + ".jte", values, output);
        return output.toString();
    }

    static Content content(String template, Map<String, Object> values) {
        return output -> output.writeContent(text(template, values));
    }

    /** A file that lies beside this class and stands in the page as it is. */
    static Content resource(String name) {
        try (InputStream in = Templates.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + name);
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return output -> output.writeContent(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
