package housewright.store.sqlite;

import java.io.Closeable;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jdbi.v3.core.ConnectionFactory;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * Connections to one file, kept for the next who asks: SQLite does the work of a clean end whenever the last one is
 * closed, which is too slow to do after each step.
 */
final class Connections implements ConnectionFactory, Closeable {
    private static final int MOST_IDLE = 8;

    /** Bytes that the write-ahead file keeps after much was written at once, such as photos. */
    private static final int WRITE_AHEAD_BYTES_KEPT = 16 * 1024 * 1024;

    /** How a file is opened. None makes a file that is not there. */
    enum Mode {
        READ_WRITE("mode=rw"),
        READ("mode=ro"),
        /** Touches nothing beside the file, takes no locks and sees nothing of its write-ahead file. */
        READ_UNTOUCHED("mode=ro&immutable=1");

        private final String parameters;

        Mode(String parameters) {
            this.parameters = parameters;
        }
    }

    private final SQLiteDataSource source;
    private final boolean writes;
    private final Deque<Connection> idle = new ArrayDeque<>();
    private boolean closed;

    Connections(Path file, Mode mode, Settings settings) {
        source = source(file, mode, settings);
        writes = mode == Mode.READ_WRITE;
    }

    /** A source of connections that nobody keeps. */
    static SQLiteDataSource source(Path file, Mode mode, Settings settings) {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(Math.toIntExact(settings.patience().toMillis()));
        config.enforceForeignKeys(true);
        if (settings.mostPages() > 0) {
            config.setMaxPageCount(Math.toIntExact(settings.mostPages()));
        }
        if (mode == Mode.READ_WRITE) {
            config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
            config.setJournalSizeLimit(WRITE_AHEAD_BYTES_KEPT);
        } else {
            config.setReadOnly(true);
        }
        SQLiteDataSource source = new SQLiteDataSource(config);
        // A URI, so that no character of a file's name means anything to the driver.
        source.setUrl("jdbc:sqlite:file:" + file.toUri().getRawPath() + "?" + mode.parameters);
        return source;
    }

    /** For a new file: the mode is kept in it. */
    static void beginWritingAhead(Path file, Settings settings) throws SQLException {
        try (Connection connection = source(file, Mode.READ_WRITE, settings).getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = WAL");
        }
    }

    @Override
    public Connection openConnection() throws SQLException {
        synchronized (idle) {
            if (closed) {
                throw new SQLException("the store was closed");
            }
            Connection kept = idle.poll();
            if (kept != null) {
                return kept;
            }
        }
        Connection fresh = source.getConnection();
        if (writes) {
            try (Statement statement = fresh.createStatement()) {
                // Where a disk only says that it has written (macOS), wait until it has; nothing elsewhere.
                statement.execute("PRAGMA fullfsync = ON");
                statement.execute("PRAGMA checkpoint_fullfsync = ON");
            } catch (SQLException e) {
                fresh.close();
                throw e;
            }
        }
        return fresh;
    }

    @Override
    public void closeConnection(Connection connection) throws SQLException {
        if (connection.isClosed()) {
            return;
        }
        synchronized (idle) {
            if (!closed && idle.size() < MOST_IDLE) {
                idle.push(connection);
                return;
            }
        }
        connection.close();
    }

    @Override
    public void close() {
        synchronized (idle) {
            closed = true;
            for (Connection each : idle) {
                try {
                    each.close();
                } catch (SQLException e) {
                    // All is on the disk already; what closing would have tidied up, the next opening does.
                }
            }
            idle.clear();
        }
    }
}
