package housewright.store.sqlite;

import housewright.app.ProjectStore;
import housewright.app.StoreException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Several projects in one SQLite file. Several processes may have it open at once, on one machine. */
public final class SqliteStore implements ProjectStore {
    private final Database database;
    private final Backups backups;
    private final Trouble trouble;
    private final @Nullable String whyReadOnly;
    private volatile @Nullable String backupTrouble;

    private SqliteStore(Database database, Backups backups, Trouble trouble, @Nullable String whyReadOnly) {
        this.trouble = trouble;
        this.database = database;
        this.backups = backups;
        this.whyReadOnly = whyReadOnly;
    }

    /**
     * Opens a file, and makes it where it is not there; not its folder. One of an older version is backed up and brought
     * up to date, and a backup is made where one is due.
     *
     * @throws StoreException where it is damaged, newer than this program, not a store, locked, or cannot be reached;
     *     then the file is byte for byte what it was
     */
    public static SqliteStore open(Path file, Instant now) throws StoreException {
        return open(file, now, Settings.USUAL);
    }

    static SqliteStore open(Path given, Instant now, Settings settings) throws StoreException {
        Path file = StoreFile.behindLinks(given);
        StoreFile found = new StoreFile(file, settings);
        Connections.Mode mode = found.open(now);
        Database database = new Database(file, mode, settings);
        try {
            database.read(Journal::listProjects); // whether it is locked shows only now
        } catch (StoreException e) {
            database.close();
            throw e;
        }
        if (mode == Connections.Mode.READ_WRITE) {
            writeAhead(database);
        }
        SqliteStore store =
                new SqliteStore(database, new Backups(file, settings), new Trouble(file), found.whyReadOnly());
        if (!store.isReadOnly()) {
            try {
                store.backUpIfDue(now);
            } catch (StoreException e) {
                // It is among the remarks: work goes on without a backup sooner than not at all.
            }
        }
        return store;
    }

    /** A backup that was put in a store's place does not write ahead, and whoever reads would hold up who writes. */
    private static void writeAhead(Database database) {
        try {
            database.outsideTransactions(handle -> handle.createQuery("PRAGMA journal_mode = WAL")
                    .mapTo(String.class)
                    .one());
        } catch (StoreException e) {
            // Another process is at work in it as it is: it is slower so, and as safe; the next opening tries again.
        }
    }

    @Override
    public boolean isReadOnly() {
        return whyReadOnly != null;
    }

    @Override
    public List<String> listRemarks() {
        return Stream.of(Optional.ofNullable(whyReadOnly), Optional.ofNullable(backupTrouble))
                .flatMap(Optional::stream)
                .toList();
    }

    @Override
    public List<Kept> listProjects() throws StoreException {
        return database.read(Journal::listProjects);
    }

    @Override
    public Kept create(String name, @Nullable String origin, NewRevision first, String document) throws StoreException {
        return write(handle -> Journal.create(handle, name, origin, first, document));
    }

    @Override
    public void rename(String project, String name) throws StoreException {
        change(handle -> Journal.rename(handle, project, name));
    }

    @Override
    public void remove(String project, Instant now) throws StoreException {
        requireWritable();
        database.read(handle -> Journal.getKey(handle, project));
        backUp(now, Backups.Reason.BEFORE_REMOVAL);
        change(handle -> Journal.remove(handle, project));
    }

    @Override
    public Optional<Saved> findNewest(String project) throws StoreException {
        return database.read(handle -> Journal.findNewest(handle, project));
    }

    @Override
    public Optional<Saved> findAt(String project, long revision) throws StoreException {
        return database.read(handle -> Journal.findAt(handle, project, revision));
    }

    @Override
    public Appended append(String project, long head, NewRevision step, Document document) throws StoreException {
        return write(handle -> Journal.append(handle, project, head, step, document));
    }

    @Override
    public List<Revision> listRevisions(String project, long before, int most) throws StoreException {
        return database.read(handle -> Journal.listRevisions(handle, project, before, most));
    }

    @Override
    public List<Revision> listSince(String project, long revision) throws StoreException {
        return database.read(handle -> Journal.listSince(handle, project, revision));
    }

    @Override
    public List<StepTaken> listSteps(String project, long revision) throws StoreException {
        return database.read(handle -> Journal.listSteps(handle, project, revision));
    }

    @Override
    public long lastSeen(String project, String person) throws StoreException {
        return database.read(handle -> Journal.lastSeen(handle, project, person));
    }

    @Override
    public void see(String project, String person, long revision) throws StoreException {
        change(handle -> Journal.see(handle, project, person, revision));
    }

    @Override
    public Attachment attach(String project, String name, String mediaType, byte[] content, String author, Instant at)
            throws StoreException {
        String id = Attachments.idOf(content);
        Attachment attachment = new Attachment(id, name, mediaType, content.length, author, at);
        return write(handle -> Attachments.attach(handle, project, attachment, content));
    }

    @Override
    public Optional<Attachment> findAttachment(String project, String id) throws StoreException {
        return database.read(handle -> Attachments.find(handle, project, id));
    }

    @Override
    public Optional<byte[]> findContent(String project, String id) throws StoreException {
        return database.read(handle -> Attachments.findContent(handle, project, id));
    }

    @Override
    public void keepPrinted(String project, String paper, List<Printed> sheets) throws StoreException {
        change(handle -> Prints.keep(handle, project, paper, sheets));
    }

    @Override
    public List<Printed> listPrinted(String project) throws StoreException {
        // as with entrances: a store that cannot be written may be of a version that kept none
        return whyReadOnly == null ? database.read(handle -> Prints.list(handle, project)) : List.of();
    }

    @Override
    public void keepStationery(String project, String person, Stationery stationery) throws StoreException {
        change(handle -> Prints.keepStationery(handle, project, person, stationery));
    }

    @Override
    public Optional<Stationery> findStationery(String project, String person) throws StoreException {
        return whyReadOnly == null
                ? database.read(handle -> Prints.findStationery(handle, project, person))
                : Optional.empty(); // as with what was printed
    }

    @Override
    public void addLink(ShareLink link) throws StoreException {
        change(handle -> Links.add(handle, link));
    }

    @Override
    public List<ShareLink> listLinks() throws StoreException {
        return database.read(Links::list);
    }

    @Override
    public void revokeLink(String id) throws StoreException {
        change(handle -> Links.revoke(handle, id));
    }

    @Override
    public void keepEntrance(Entrance entrance) throws StoreException {
        change(handle -> Entrances.keep(handle, entrance));
    }

    @Override
    public List<Entrance> listEntrances() throws StoreException {
        // what cannot be written was not brought up to date: it may be of a version that kept none
        return whyReadOnly == null ? database.read(Entrances::list) : List.of();
    }

    @Override
    public void forgetEntrances(Collection<String> cookieHashes) throws StoreException {
        if (!cookieHashes.isEmpty()) {
            change(handle -> Entrances.forget(handle, cookieHashes));
        }
    }

    @Override
    public Backup backUp(Instant now) throws StoreException {
        return backUp(now, Backups.Reason.ROUTINE);
    }

    @Override
    public Optional<Backup> backUpIfDue(Instant now) throws StoreException {
        try {
            if (!backups.isDue(database, now)) {
                return Optional.empty();
            }
        } catch (StoreException e) {
            backupTrouble = noBackup(e);
            throw e;
        }
        return Optional.of(backUp(now, Backups.Reason.ROUTINE));
    }

    private Backup backUp(Instant now, Backups.Reason reason) throws StoreException {
        try {
            Backup made = backups.make(database, now, reason);
            backupTrouble = null;
            return made;
        } catch (StoreException e) {
            backupTrouble = noBackup(e);
            throw e;
        }
    }

    private static String noBackup(StoreException e) {
        return "The last backup failed. " + e.why();
    }

    @Override
    public List<Backup> listBackups() throws StoreException {
        return backups.list();
    }

    private <T> T write(Database.Work<T> work) throws StoreException {
        requireWritable();
        return database.write(work);
    }

    private void change(Database.Task task) throws StoreException {
        requireWritable();
        database.write(handle -> {
            task.in(handle);
            return handle;
        });
    }

    private void requireWritable() throws StoreException {
        if (whyReadOnly != null) {
            throw trouble.told(whyReadOnly, null);
        }
    }

    @Override
    public void close() {
        database.close();
    }
}
