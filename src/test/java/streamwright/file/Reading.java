package streamwright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import streamwright.yard.Yard;

/** Reads texts that must be good. */
final class Reading {
    private Reading() {}

    static Yard yard(Path folder, String name, String text) throws IOException {
        return value(YardFile.read(Files.writeString(folder.resolve(name), text)));
    }

    static List<String> warnings(Path folder, String name, String text) throws IOException {
        Read<Yard> read = YardFile.read(Files.writeString(folder.resolve(name), text));
        value(read);
        return ((Read.Good<Yard>) read)
                .warnings().stream()
                        .map(warning ->
                                warning.toString().substring(folder.toString().length() + 1))
                        .toList();
    }

    static <T> T value(Read<T> read) {
        if (read instanceof Read.Good<T> good) {
            return good.value();
        }
        throw new AssertionError(((Read.Bad<T>) read).problems().toString());
    }
}
