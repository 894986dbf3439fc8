package streamwright.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.time.LocalDateTime;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Takes the time of making out of a spreadsheet file, so that the same plan gives the same bytes. The spreadsheet
 * library cannot leave it out. The JDK reads such a zip file from a disk only, and the reader of the zip library that
 * wrote it stumbles over what stands between its parts: they are found by the zip file's own directory (PKWARE
 * APPNOTE.TXT 4.3.7, 4.3.12 and 4.3.16, from memory).
 */
final class Undated {
    private static final String PROPERTIES = "docProps/core.xml";
    private static final String CREATED = "<dcterms:created.*?</dcterms:created>";

    /** Any day that a zip file can say without a time zone; beside its first, the JDK writes one that has it. */
    private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 2, 1, 0, 0);

    private static final int DIRECTORY_END = 22;
    private static final int LOCAL_HEADER = 30;
    private static final int DIRECTORY_HEADER = 46;

    private final ByteBuffer book;

    private Undated(byte[] dated) {
        book = ByteBuffer.wrap(dated).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** @param dated a file without a comment at its end, its parts deflated */
    static byte[] book(byte[] dated) throws IOException {
        return new Undated(dated).undated();
    }

    private byte[] undated() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(book.capacity());
        try (ZipOutputStream out = new ZipOutputStream(bytes, UTF_8)) {
            int end = book.capacity() - DIRECTORY_END;
            int parts = book.getShort(end + 10);
            int at = book.getInt(end + 16);
            for (int part = 0; part < parts; part++) {
                String name = new String(book.array(), at + DIRECTORY_HEADER, book.getShort(at + 28), UTF_8);
                ZipEntry entry = new ZipEntry(name);
                entry.setTimeLocal(NO_DATE);
                out.putNextEntry(entry);
                byte[] content = content(book.getInt(at + 42), book.getInt(at + 20));
                boolean properties = name.equals(PROPERTIES);
                out.write(
                        properties
                                ? new String(content, UTF_8)
                                        .replaceFirst(CREATED, "")
                                        .getBytes(UTF_8)
                                : content);
                at += DIRECTORY_HEADER + book.getShort(at + 28) + book.getShort(at + 30) + book.getShort(at + 32);
            }
        }
        return bytes.toByteArray();
    }

    private byte[] content(int header, int length) throws IOException {
        int from = header + LOCAL_HEADER + book.getShort(header + 26) + book.getShort(header + 28);
        Inflater bare = new Inflater(true);
        try (InputStream in = new InflaterInputStream(new ByteArrayInputStream(book.array(), from, length), bare)) {
            return in.readAllBytes();
        } finally {
            bare.end();
        }
    }
}
