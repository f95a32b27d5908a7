package housewright.store.sqlite;

import housewright.app.StoreException;
import java.io.Closeable;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** One open file: what is done in it is done whole, and what goes wrong is said in a sentence. */
final class Database implements Closeable {

    /** Something to do in a transaction. */
    interface Work<T> {
        T in(Handle handle) throws StoreException;
    }

    /** Something to do in a transaction that gives nothing back. */
    interface Task {
        void in(Handle handle) throws StoreException;
    }

    private final Trouble trouble;
    private final Connections connections;
    private final Jdbi jdbi;

    /** SQLite lets one write at a time and makes others ask again and again; here they queue up. */
    private final ReentrantLock writing = new ReentrantLock(true);

    Database(Path file, Connections.Mode mode, Settings settings) {
        trouble = new Trouble(file);
        connections = new Connections(file, mode, settings);
        jdbi = Jdbi.create(connections);
    }

    /** Reads what was there at one instant. */
    <T> T read(Work<T> work) throws StoreException {
        return transaction("BEGIN", work);
    }

    /** Writes all of it or nothing. Nobody else writes between what it reads and what it writes. */
    <T> T write(Work<T> work) throws StoreException {
        writing.lock();
        try {
            return transaction("BEGIN IMMEDIATE", handle -> {
                long before = totalChanges(handle);
                T result = work.in(handle);
                if (totalChanges(handle) > before) {
                    handle.execute("UPDATE written SET times = times + 1");
                }
                return result;
            });
        } finally {
            writing.unlock();
        }
    }

    /** For what SQLite does not allow in a transaction. */
    <T> T outsideTransactions(Work<T> work) throws StoreException {
        try (Handle handle = jdbi.open()) {
            return work.in(handle);
        } catch (JdbiException e) {
            throw trouble.of(e);
        }
    }

    private <T> T transaction(String begin, Work<T> work) throws StoreException {
        try (Handle handle = jdbi.open()) {
            boolean done = false;
            try {
                handle.execute(begin);
                T result = work.in(handle);
                handle.execute("COMMIT");
                done = true;
                return result;
            } finally {
                if (!done) {
                    abandon(handle);
                }
            }
        } catch (JdbiException e) {
            throw trouble.of(e);
        }
    }

    /** Closes the connection for good: SQLite rolls back what was begun, whatever state it is in. */
    private static void abandon(Handle handle) {
        try {
            handle.getConnection().close();
        } catch (SQLException e) {
            // What made it be abandoned is told; this adds nothing.
        }
    }

    private static long totalChanges(Handle handle) {
        return handle.createQuery("SELECT total_changes()").mapTo(long.class).one();
    }

    @Override
    public void close() {
        connections.close();
    }
}
