package housewright.store.sqlite;

import housewright.app.ProjectStore.Attachment;
import housewright.app.StoreException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What is attached to projects. Each method is part of the transaction of its handle. */
final class Attachments {

    private Attachments() {}

    /** The content's SHA-256 in hexadecimal digits. */
    static String idOf(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** @param attachment kept where there is none with this id yet */
    static Attachment attach(Handle handle, String project, Attachment attachment, byte[] content)
            throws StoreException {
        long key = Journal.getKey(handle, project);
        Optional<Attachment> kept = find(handle, key, attachment.id());
        if (kept.isPresent()) {
            return kept.get();
        }
        handle.createUpdate("""
                        INSERT INTO attachment (project, id, name, media_type, bytes, author, at, content)
                        VALUES (:project, :id, :name, :mediaType, :bytes, :author, :at, :content)""")
                .bind("project", key)
                .bind("id", attachment.id())
                .bind("name", attachment.name())
                .bind("mediaType", attachment.mediaType())
                .bind("bytes", attachment.bytes())
                .bind("author", attachment.author())
                .bind("at", attachment.at().toString())
                .bind("content", content)
                .execute();
        return attachment;
    }

    static Optional<Attachment> find(Handle handle, String project, String id) {
        return Journal.findKey(handle, project).flatMap(key -> find(handle, key, id));
    }

    static Optional<byte[]> findContent(Handle handle, String project, String id) {
        return Journal.findKey(handle, project)
                .flatMap(key -> handle.createQuery(
                                "SELECT content FROM attachment WHERE project = :project AND id = :id")
                        .bind("project", key)
                        .bind("id", id)
                        .map((row, context) -> row.getBytes("content"))
                        .findOne());
    }

    private static Optional<Attachment> find(Handle handle, long key, String id) {
        return handle.createQuery("""
                        SELECT id, name, media_type, bytes, author, at
                        FROM attachment WHERE project = :project AND id = :id""")
                .bind("project", key)
                .bind("id", id)
                .map((row, context) -> attachment(row))
                .findOne();
    }

    private static Attachment attachment(ResultSet row) throws SQLException {
        return new Attachment(
                row.getString("id"),
                row.getString("name"),
                row.getString("media_type"),
                row.getLong("bytes"),
                row.getString("author"),
                Instant.parse(row.getString("at")));
    }
}
