package streamwright.reason.impasse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.yard.Yard;

/** Yards written as their users write them, with models of their own. */
final class YardText {
    private YardText() {}

    /**
     * @param folder empty, for the files
     * @param models each a file
     */
    static Yard read(Path folder, String yard, List<String> models) {
        try {
            Path own = Files.createDirectories(folder.resolve("models"));
            for (int m = 0; m < models.size(); m++) {
                Files.writeString(own.resolve(m + ".yaml"), models.get(m));
            }
            Path file = Files.writeString(folder.resolve("yard.yaml"), "models: models\n" + yard);
            if (YardFile.read(file) instanceof Read.Good<Yard> good) {
                return good.value();
            }
            throw new AssertionError(
                    ((Read.Bad<Yard>) YardFile.read(file)).problems().toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A controller model of one jack and one stream, with these lines in place of its own. */
    static String narrow(String... lines) {
        return withLines("""
                controller: narrow
                jacks: 1
                streams: 1
                boardsPerCable: 8
                streamMost: 1024
                channelMost: 65535
                universeSlots: 510
                """, lines);
    }

    /** A board model of two ports that hear any stream, with these lines in place of its own or behind them. */
    static String board(String... lines) {
        return withLines("""
                board: mine
                drives: pixels
                ports: [any, any]
                price: 20
                address: {least: 0, most: 15, switches: 4}
                """, lines);
    }

    private static String withLines(String text, String... lines) {
        for (String line : lines) {
            String field = line.substring(0, line.indexOf(':') + 1);
            String without = text.replaceAll("(?m)^" + field + ".*\n", "");
            text = without + line + "\n";
        }
        return text;
    }
}
