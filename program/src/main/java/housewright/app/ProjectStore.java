package housewright.app;

import java.io.Closeable;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where projects are kept with their whole history. The texts of projects and changes are opaque to it. Safe for
 * several threads, and for several processes where what it is kept in is.
 *
 * <p>What a method has acknowledged by returning is still there after the process is killed or the power fails. A
 * {@link StoreException} says in a sentence why nothing was done; then nothing has changed.
 */
public interface ProjectStore extends Closeable {

    /** Whether it can only be looked at; then every method that would change something throws. */
    boolean isReadOnly();

    /**
     * What whoever uses it should know and may have to mend: that it can only be looked at and why, that the last backup
     * failed. Each a sentence; none where all is well.
     */
    List<String> listRemarks();

    /** What kind of step a revision is. */
    enum Step {
        /** The first revision of a project. */
        BEGIN,
        EDIT,
        UNDO,
        REDO,
        /** An earlier revision was restored. */
        RESTORE,
        /** A project file was taken over. */
        IMPORT
    }

    /**
     * A project in the list of projects.
     *
     * @param id letters, digits and hyphens
     * @param origin the file it was begun from, as the user named it; null where it was begun empty
     */
    record Kept(String id, String name, @Nullable String origin, long head, Instant changedAt) {}

    /**
     * A step to be taken.
     *
     * @param author who takes it, as people are told
     * @param of the revision undone, redone or restored; 0 for other steps
     * @param says what it does, in a few words
     * @param changes that it makes
     * @param back the changes that take it back
     */
    record NewRevision(String author, Instant at, Step step, long of, String says, String changes, String back) {}

    /**
     * A step that was taken.
     *
     * @param number from 1 in each project, without gaps
     */
    record Revision(long number, NewRevision what) {}

    /** A project in full at a revision, and the steps after it. */
    record Saved(long revision, String document, List<Revision> since) {
        public Saved {
            since = List.copyOf(since);
        }
    }

    /** What came of appending. */
    sealed interface Appended {
        record Done(long revision) implements Appended {}

        /** Somebody else appended meanwhile; nothing was written. */
        record Moved(long head) implements Appended {}
    }

    /** Newest first. */
    List<Kept> listProjects() throws StoreException;

    /**
     * Keeps a new project. Its first revision is 1.
     *
     * @param name what people call it; its id is made from it, another where that is taken
     */
    Kept create(String name, @Nullable String origin, NewRevision first, String document) throws StoreException;

    /** Gives the project another name in the list. */
    void rename(String project, String name) throws StoreException;

    /** Removes a project and its history. A backup is made first and kept until somebody deletes it. */
    void remove(String project, Instant now) throws StoreException;

    /** The project's newest full text and what was done since; empty where there is no such project. */
    Optional<Saved> findNewest(String project) throws StoreException;

    /**
     * The newest full text at or before a revision, and the steps after it up to that revision; empty where there is no
     * such revision.
     */
    Optional<Saved> findAt(String project, long revision) throws StoreException;

    /**
     * Appends a step in one transaction, if the head is still this one.
     *
     * @param document the whole project after the step, kept where it is time for another full text
     */
    Appended append(String project, long head, NewRevision step, Document document) throws StoreException;

    /** The whole project after a step, written only when it is asked for. */
    interface Document {
        String text();
    }

    /**
     * Steps with their changes, newest first.
     *
     * @param before only revisions below this one
     */
    List<Revision> listRevisions(String project, long before, int most) throws StoreException;

    /** Steps after a revision, oldest first. */
    List<Revision> listSince(String project, long revision) throws StoreException;

    /**
     * A step without its changes.
     *
     * @param of the revision undone, redone or restored; 0 for other steps
     */
    record StepTaken(long number, String author, Step step, long of) {}

    /** Steps after a revision without their changes, oldest first. */
    List<StepTaken> listSteps(String project, long revision) throws StoreException;

    /** The newest revision that this person has looked at; 0 where none. */
    long lastSeen(String project, String person) throws StoreException;

    /** Somebody has looked at a revision; an older one than the last they saw changes nothing. */
    void see(String project, String person, long revision) throws StoreException;

    /**
     * A photo, a scan or another file that belongs to a project.
     *
     * @param id made from its content
     * @param bytes how many it has
     */
    record Attachment(String id, String name, String mediaType, long bytes, String author, Instant at) {}

    /** Keeps it; the same content twice is kept once, under the first name. */
    Attachment attach(String project, String name, String mediaType, byte[] content, String author, Instant at)
            throws StoreException;

    Optional<Attachment> findAttachment(String project, String id) throws StoreException;

    /** What was attached, byte for byte; empty where there is no such attachment. */
    Optional<byte[]> findContent(String project, String id) throws StoreException;

    /**
     * A sheet of a paper as it was last printed.
     *
     * @param content a hash of what it said
     * @param revision of the project that it was printed from
     */
    record Printed(
            String paper, String sheet, String title, String content, long revision, String person, Instant at) {}

    /** Keeps what was last printed of a paper, in place of what was kept of it before; none forgets that it was. */
    void keepPrinted(String project, String paper, List<Printed> sheets) throws StoreException;

    /** What was last printed of all papers, by paper and sheet. */
    List<Printed> listPrinted(String project) throws StoreException;

    /**
     * What somebody prints a project's papers on.
     *
     * @param size word for the paper
     * @param labels name or measurements of the label stock
     */
    record Stationery(String size, String labels) {}

    /** Keeps what this person prints on, in place of what was kept before. */
    void keepStationery(String project, String person, Stationery stationery) throws StoreException;

    /** What this person chose last; empty where nothing was. */
    Optional<Stationery> findStationery(String project, String person) throws StoreException;

    /** A link by which somebody else on the local network may come in. */
    record ShareLink(String id, String secretHash, Role role, String person, Instant madeAt, boolean revoked) {}

    /** Keeps a link; its id must be a new one. */
    void addLink(ShareLink link) throws StoreException;

    /** Newest first, revoked ones as well. */
    List<ShareLink> listLinks() throws StoreException;

    /** It lets nobody in from now on, for ever. */
    void revokeLink(String id) throws StoreException;

    /**
     * A browser that somebody has come in with.
     *
     * @param cookieHash of what it shows
     * @param link by which they came in; null for whoever started the server
     * @param usedAt when it was last seen, to about a day
     */
    record Entrance(
            String cookieHash,
            String person,
            Role role,
            @Nullable String link,
            Instant usedAt) {}

    /** Keeps who came in, or when they were last seen. */
    void keepEntrance(Entrance entrance) throws StoreException;

    /** The one used last first. */
    List<Entrance> listEntrances() throws StoreException;

    /** Forgets these browsers; those not kept are none. */
    void forgetEntrances(Collection<String> cookieHashes) throws StoreException;

    /** A whole copy of everything kept. */
    record Backup(Path file, Instant at, long bytes) {}

    /** Makes a copy that is whole at one instant, while others go on working. */
    Backup backUp(Instant now) throws StoreException;

    /**
     * Makes a copy where the newest is older than a day and something was changed since; empty where none is due. To be
     * called now and then while a store is open; opening does. A failure is among the remarks until a backup is made.
     */
    Optional<Backup> backUpIfDue(Instant now) throws StoreException;

    /** Newest first. */
    List<Backup> listBackups() throws StoreException;

    @Override
    void close();
}
