package housewright.store.sqlite;

import housewright.app.StoreException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import org.sqlite.SQLiteErrorCode;

/**
 * What a file says of itself, read without changing it.
 *
 * @param applicationId in its header
 * @param version of its schema, in its header
 * @param check what SQLite's check said: {@code ok}, or what is wrong
 */
record Inspection(int applicationId, int version, String check) {

    private static final String NOT_CHECKED = "not checked";

    /** Reads the header only, and touches nothing beside the file. */
    static Inspection ofHeader(Path file, Settings settings) throws StoreException {
        return of(file, Connections.Mode.READ_UNTOUCHED, NOT_CHECKED, settings);
    }

    /** Checks a file that nobody has open, and touches nothing beside it. */
    static Inspection ofUntouched(Path file, Settings settings) throws StoreException {
        return of(file, Connections.Mode.READ_UNTOUCHED, "PRAGMA integrity_check(1)", settings);
    }

    /** Checks what the file and its write-ahead file hold together. */
    static Inspection ofAll(Path file, Connections.Mode mode, Settings settings) throws StoreException {
        return of(file, mode, "PRAGMA quick_check(1)", settings);
    }

    private static Inspection of(Path file, Connections.Mode mode, String check, Settings settings)
            throws StoreException {
        try (Connection connection = Connections.source(file, mode, settings).getConnection();
                Statement statement = connection.createStatement()) {
            return new Inspection(
                    (int) Long.parseLong(first(statement, "PRAGMA application_id")),
                    (int) Long.parseLong(first(statement, "PRAGMA user_version")),
                    check.equals(NOT_CHECKED) ? NOT_CHECKED : first(statement, check));
        } catch (SQLException e) {
            if (Trouble.isCode(e, SQLiteErrorCode.SQLITE_NOTADB)) {
                throw new StoreException(
                        file + " is no store of projects: it is not an SQLite file, or is damaged at its beginning."
                                + " Nothing was changed. If it was a store, keep it and put the newest backup of "
                                + Backups.folderOf(file) + " in its place; if not, name another file.",
                        e);
            }
            throw new Trouble(file).of(e);
        }
    }

    private static String first(Statement statement, String sql) throws SQLException {
        try (ResultSet rows = statement.executeQuery(sql)) {
            return rows.next() ? String.valueOf(rows.getString(1)) : "nothing";
        }
    }

    void requireOurs(Path file) throws StoreException {
        if (applicationId != Schema.APPLICATION_ID) {
            throw new StoreException(file
                    + " is no store of projects: another program made it. Nothing was changed; name another file.");
        }
    }

    void requireNotNewer(Path file, Settings settings) throws StoreException {
        if (version > settings.version()) {
            throw new StoreException(String.format(
                    Locale.ROOT,
                    "%s was made by a newer Housewright (its form is %d; this one knows up to %d). Nothing was changed;"
                            + " open it with the newer one.",
                    file,
                    version,
                    settings.version()));
        }
    }

    void requireWhole(Path file) throws StoreException {
        if (!check.equals("ok")) {
            throw new Trouble(file).damaged(check);
        }
    }
}
