package housewright.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** The zip archive that a workbook is kept in. */
public final class Archive {
    /** The least time that a zip holds. */
    private static final LocalDateTime NEVER = LocalDateTime.of(1980, 1, 1, 0, 0);

    private Archive() {}

    /** By its directory: some programs write parts that cannot be read one after the other. */
    static ZipFile open(byte[] bytes) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
                .get();
    }

    /** The same workbook without the time at which it was made, so that equal contents give equal bytes. */
    public static byte[] timeless(byte[] workbook) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(workbook.length);
        try (ZipFile from = open(workbook);
                ZipOutputStream to = new ZipOutputStream(out)) {
            for (ZipArchiveEntry entry : Collections.list(from.getEntriesInPhysicalOrder())) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(NEVER);
                to.putNextEntry(same);
                byte[] part = from.getInputStream(entry).readAllBytes();
                to.write(entry.getName().equals("docProps/core.xml") ? undated(part) : part);
                to.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // no disk is written
        }
        return out.toByteArray();
    }

    private static byte[] undated(byte[] core) {
        return new String(core, StandardCharsets.UTF_8)
                .replaceAll("(<dcterms:(created|modified)[^>]*>)[^<]*", "$11980-01-01T00:00:00Z")
                .getBytes(StandardCharsets.UTF_8);
    }
}
