package streamwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The text of a file: UTF-8, a byte-order mark skipped, within the size that the tool reads. */
final class Text {
    static final int MOST_BYTES = 64 << 20;

    private Text() {}

    static String of(Path path) {
        byte[] bytes = bytes(path);
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.indexOf('\uFFFD') >= 0) {
            refuseBadBytes(bytes);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static byte[] bytes(Path path) {
        if (Files.isDirectory(path)) {
            throw new Unreadable(0, 0, "a folder", "must be a file");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new Unreadable(0, 0, "more than 64 MiB", "must be a file of at most 64 MiB");
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw new Unreadable(0, 0, "no such file", "must be there");
        } catch (IOException e) {
            throw new Unreadable(0, 0, "no way to read it (" + e.getClass().getSimpleName() + ")", "must be readable");
        }
    }

    /** The replacement character may stand in the file itself; only the decoder can tell. */
    private static void refuseBadBytes(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(1 << 13);
        int line = 1;
        int column = 1;
        CoderResult result;
        do {
            result = decoder.decode(in, out, true);
            for (char c : out.flip().toString().toCharArray()) {
                column = c == '\n' ? 1 : column + 1;
                line += c == '\n' ? 1 : 0;
            }
            out.clear();
        } while (result.isOverflow());
        if (result.isError()) {
            String found = String.format("the byte 0x%02X", bytes[in.position()]);
            throw new Unreadable(line, column, found, "must be UTF-8 text");
        }
    }
}
