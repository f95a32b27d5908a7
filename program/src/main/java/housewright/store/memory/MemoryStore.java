package housewright.store.memory;

import housewright.app.ProjectStore;
import housewright.app.StoreException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Keeps everything in memory, and makes no backups. */
public final class MemoryStore implements ProjectStore {
    private static final int FULL_TEXT_EVERY = 50;

    private final Map<String, Shelf> shelves = new LinkedHashMap<>();
    private final Map<String, ShareLink> links = new LinkedHashMap<>();

    /** One project: its steps, the full texts kept now and then, and what belongs to it. */
    private static final class Shelf {
        Kept kept;
        final List<Revision> revisions = new ArrayList<>();
        final Map<Long, String> documents = new LinkedHashMap<>();
        final Map<String, Long> seen = new LinkedHashMap<>();
        final Map<String, Attachment> attachments = new LinkedHashMap<>();
        final Map<String, byte[]> contents = new LinkedHashMap<>();

        Shelf(Kept kept) {
            this.kept = kept;
        }

        void append(Revision revision) {
            revisions.add(revision);
            kept = new Kept(
                    kept.id(),
                    kept.name(),
                    kept.origin(),
                    revision.number(),
                    revision.what().at());
        }
    }

    @Override
    public synchronized List<Kept> listProjects() {
        return shelves.values().stream()
                .map(shelf -> shelf.kept)
                .sorted(Comparator.comparing(Kept::changedAt).reversed())
                .toList();
    }

    @Override
    public synchronized Kept create(String name, @Nullable String origin, NewRevision first, String document) {
        Shelf shelf = new Shelf(new Kept(freeId(name), name, origin, 0, first.at()));
        shelf.append(new Revision(1, first));
        shelf.documents.put(1L, document);
        shelves.put(shelf.kept.id(), shelf);
        return shelf.kept;
    }

    private String freeId(String name) {
        String stem =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String id = stem.isEmpty() ? "project" : stem;
        for (int n = 2; shelves.containsKey(id); n++) {
            id = (stem.isEmpty() ? "project" : stem) + "-" + n;
        }
        return id;
    }

    private Shelf shelf(String project) throws StoreException {
        Shelf shelf = shelves.get(project);
        if (shelf == null) {
            throw new StoreException("There is no project " + project + ".");
        }
        return shelf;
    }

    @Override
    public synchronized void rename(String project, String name) throws StoreException {
        Shelf shelf = shelf(project);
        Kept was = shelf.kept;
        shelf.kept = new Kept(was.id(), name, was.origin(), was.head(), was.changedAt());
    }

    @Override
    public synchronized void remove(String project) throws StoreException {
        shelf(project);
        shelves.remove(project);
    }

    @Override
    public synchronized Optional<Saved> findNewest(String project) {
        return findAt(project, Long.MAX_VALUE);
    }

    @Override
    public synchronized Optional<Saved> findAt(String project, long revision) {
        Shelf shelf = shelves.get(project);
        if (shelf == null || revision < 1 || (revision > shelf.kept.head() && revision != Long.MAX_VALUE)) {
            return Optional.empty();
        }
        long full = shelf.documents.keySet().stream()
                .filter(number -> number <= revision)
                .max(Comparator.naturalOrder())
                .orElse(1L);
        List<Revision> since = shelf.revisions.stream()
                .filter(each -> each.number() > full && each.number() <= revision)
                .toList();
        return Optional.of(new Saved(full, shelf.documents.getOrDefault(full, ""), since));
    }

    @Override
    public synchronized Appended append(String project, long head, NewRevision step, Document document)
            throws StoreException {
        Shelf shelf = shelf(project);
        if (shelf.kept.head() != head) {
            return new Appended.Moved(shelf.kept.head());
        }
        long number = head + 1;
        if (number % FULL_TEXT_EVERY == 0) {
            shelf.documents.put(number, document.text());
        }
        shelf.append(new Revision(number, step));
        return new Appended.Done(number);
    }

    @Override
    public synchronized List<Revision> listRevisions(String project, long before, int most) throws StoreException {
        return shelf(project).revisions.reversed().stream()
                .filter(each -> each.number() < before)
                .limit(most)
                .toList();
    }

    @Override
    public synchronized List<Revision> listSince(String project, long revision) throws StoreException {
        return shelf(project).revisions.stream()
                .filter(each -> each.number() > revision)
                .toList();
    }

    @Override
    public synchronized long lastSeen(String project, String person) throws StoreException {
        return shelf(project).seen.getOrDefault(person, 0L);
    }

    @Override
    public synchronized void see(String project, String person, long revision) throws StoreException {
        shelf(project).seen.put(person, revision);
    }

    @Override
    public synchronized Attachment attach(
            String project, String name, String mediaType, byte[] content, String author, Instant at)
            throws StoreException {
        Shelf shelf = shelf(project);
        String id = UUID.nameUUIDFromBytes(content).toString();
        shelf.contents.putIfAbsent(id, content.clone());
        return shelf.attachments.computeIfAbsent(
                id, each -> new Attachment(each, name, mediaType, content.length, author, at));
    }

    @Override
    public synchronized Optional<Attachment> findAttachment(String project, String id) throws StoreException {
        return Optional.ofNullable(shelf(project).attachments.get(id));
    }

    @Override
    public synchronized Optional<byte[]> findContent(String project, String id) throws StoreException {
        return Optional.ofNullable(shelf(project).contents.get(id)).map(byte[]::clone);
    }

    @Override
    public synchronized void addLink(ShareLink link) {
        links.put(link.id(), link);
    }

    @Override
    public synchronized List<ShareLink> listLinks() {
        return List.copyOf(links.values());
    }

    @Override
    public synchronized void revokeLink(String id) throws StoreException {
        ShareLink link = links.get(id);
        if (link == null) {
            throw new StoreException("There is no such link.");
        }
        links.put(id, new ShareLink(id, link.secretHash(), link.role(), link.person(), link.madeAt(), true));
    }

    @Override
    public Backup backUp(Instant now) throws StoreException {
        throw new StoreException("What is kept in memory only has no backups; export the project file.");
    }

    @Override
    public List<Backup> listBackups() {
        return List.of();
    }

    @Override
    public void close() {
        // nothing is held
    }
}
