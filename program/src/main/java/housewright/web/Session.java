package housewright.web;

import housewright.app.Role;
import java.util.ArrayDeque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Queue;
import org.jspecify.annotations.Nullable;

/** Somebody who has come in with one browser. */
final class Session {
    final String person;
    final Role role;
    /** The share link used; null for whoever started the server. */
    final @Nullable String link;
    /** Goes with each request that changes something, so that no other site can send one. */
    final String token;

    private static final int MOST_KEPT = 20;

    private final Queue<Notice> notices = new ArrayDeque<>();
    private final Map<String, Map<String, String>> typed = new LinkedHashMap<>();
    private int kept;

    /**
     * What the next page says about what was just done.
     *
     * @param trouble it was not done
     * @param undo it can be taken back
     */
    record Notice(String words, boolean trouble, boolean undo) {}

    Session(String person, Role role, @Nullable String link, String token) {
        this.person = person;
        this.role = role;
        this.link = link;
        this.token = token;
    }

    /** Whoever reaches the port, before anything is known of them. */
    static Session stranger() {
        return new Session("", Role.VIEWER, null, "");
    }

    synchronized void say(Notice notice) {
        notices.add(notice);
    }

    /** Keeps what was typed into a form that was refused, for its page to show again; the oldest goes first. */
    synchronized String keep(Map<String, String> fields) {
        if (typed.size() >= MOST_KEPT) {
            typed.remove(typed.keySet().iterator().next());
        }
        String name = Integer.toString(++kept);
        typed.put(name, Map.copyOf(fields));
        return name;
    }

    /** What was kept under this name; nothing where it is not kept any more. */
    synchronized Map<String, String> typed(@Nullable String name) {
        return name == null ? Map.of() : typed.getOrDefault(name, Map.of());
    }

    synchronized @Nullable Notice takeNotice() {
        return notices.poll();
    }

    /** A file that was sent to be looked at; the next one takes its place. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Upload(String project, String name, byte[] bytes) {}

    private @Nullable Upload upload;

    synchronized void keep(Upload sent) {
        upload = sent;
    }

    /** What was sent last, where it was for this project. */
    synchronized @Nullable Upload upload(String project) {
        return upload != null && upload.project().equals(project) ? upload : null;
    }
}
