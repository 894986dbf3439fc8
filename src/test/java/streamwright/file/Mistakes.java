package streamwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Tables of mistakes, and the good files into which they are put. */
final class Mistakes {
    private Mistakes() {}

    /** One mistake: what it replaces in the good file, what it puts there, and the messages that must come. */
    record Mistake(String good, String bad, List<String> messages) {
        String in(String text) {
            int at = text.indexOf(good);
            if (at < 0) {
                throw new IllegalArgumentException("the good file lacks " + good);
            }
            return text.substring(0, at) + bad + text.substring(at + good.length());
        }

        @Override
        public String toString() {
            return (good + " => " + bad).replace("\n", "\\n");
        }
    }

    static Stream<Mistake> table(String name) {
        List<Mistake> mistakes = new ArrayList<>();
        for (String block : resource(name).split("\n\n+", -1)) {
            List<String> lines = block.lines().toList();
            if (!lines.get(0).startsWith("#")) {
                String[] sides = lines.get(0).split(" =>(?: |$)", 2);
                mistakes.add(new Mistake(plain(sides[0]), plain(sides[1]), lines.subList(1, lines.size())));
            }
        }
        return mistakes.stream();
    }

    private static String plain(String side) {
        return side.replace("\\n", "\n").replace("\\t", "\t");
    }

    static String resource(String name) {
        try (InputStream in = Mistakes.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("no resource " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
