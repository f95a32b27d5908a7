package housewright.sheet;

import java.io.IOException;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** Opens a zip archive by its directory: some programs write parts that cannot be read one after the other. */
final class Archive {
    private Archive() {}

    static ZipFile open(byte[] bytes) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
                .get();
    }
}
