/**
 * Projects kept in one SQLite file, with Jdbi over SQLite's own driver and Flyway for its migrations.
 *
 * <p>The file is in write-ahead mode with {@code synchronous=FULL}: what was acknowledged is on the disk. Beside it lie
 * its {@code -wal} and {@code -shm} while it is open or after a crash; they belong to it. Backups lie in a folder beside
 * it and are whole stores: one is taken back by putting it in the place of the file while nothing has that open.
 *
 * <p>Nothing here may open the file other than through SQLite: on POSIX systems closing a file drops all locks that the
 * process holds on it, SQLite's as well.
 */
@NullMarked
package housewright.store.sqlite;

import org.jspecify.annotations.NullMarked;
