package housewright.web;

import housewright.app.Role;
import java.util.ArrayDeque;
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

    private final Queue<Notice> notices = new ArrayDeque<>();

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

    synchronized @Nullable Notice takeNotice() {
        return notices.poll();
    }

    /** A file that was sent to be looked at; the next one takes its place. */
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
