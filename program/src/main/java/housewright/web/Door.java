package housewright.web;

import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Entrance;
import housewright.app.Role;
import housewright.app.StoreException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who may come in: the link printed at the start, which lets one browser in, and the share links. Whoever came in is
 * kept in the store, so that a server that is started again knows them; where it cannot be, they are in until it stops.
 */
final class Door {
    private static final int MOST_SESSIONS = 2000;
    /** A browser that stays away for longer must come in again. */
    static final Duration LONGEST_AWAY = Duration.ofDays(30);
    /** How exactly it is known when a browser was last seen. */
    private static final Duration SEEN = Duration.ofDays(1);
    /** Of somebody who has not shown their cookie since the start. */
    private static final String UNKNOWN = "";

    private static final String ANYBODY_ON_SITE = "Helper on site";

    private final Secrets secrets = new Secrets();
    private final String owner;
    private final ShareLinks links;
    private final ProjectStore store;
    private final InstantSource clock;
    private @Nullable String firstHash;
    /** For whoever stands beside the machine, while it serves; only this secret is kept as it is, to be shown again. */
    private @Nullable String siteSecret;

    /** The link of a session that came in by it. */
    static final String SITE = "site";

    /** By the hash of the cookie; the one used longest ago goes first. */
    private final Map<String, Known> sessions = new LinkedHashMap<>(16, 0.75f, true);

    private record Known(Session session, Instant usedAt) {}

    /** @param owner whoever started the server, as history names them */
    Door(String owner, ShareLinks links, ProjectStore store, InstantSource clock) throws StoreException {
        this.owner = owner;
        this.links = links;
        this.store = store;
        this.clock = clock;
        for (Entrance each : store.listEntrances().reversed()) {
            Session session = new Session(each.person(), each.role(), each.link(), UNKNOWN);
            sessions.put(each.cookieHash(), new Known(session, each.usedAt()));
        }
        forget(sessions.entrySet().stream()
                .filter(each -> isTooLongAway(each.getValue()))
                .map(Map.Entry::getKey)
                .toList());
    }

    /** A new secret by which one browser may come in, once, as lead; any earlier one is void. */
    synchronized String openOnce() {
        String secret = secrets.make();
        firstHash = Secrets.hash(secret);
        return secret;
    }

    /**
     * A secret by which any number of helpers may come in until it is revoked or the server stops. Whoever came in by it
     * stays in until it is revoked, by that of a later start as well.
     */
    synchronized String siteSecret() {
        if (siteSecret == null) {
            siteSecret = secrets.make();
        }
        return siteSecret;
    }

    synchronized boolean isSiteOpen() {
        return siteSecret != null;
    }

    /** Puts out whoever came in by it, for good. */
    synchronized void revokeSite() throws StoreException {
        siteSecret = null;
        List<String> out = sessions.entrySet().stream()
                .filter(each -> SITE.equals(each.getValue().session().link))
                .map(Map.Entry::getKey)
                .toList();
        out.forEach(sessions::remove);
        store.forgetEntrances(out);
    }

    /** Whether somebody comes in under this name, capitals aside. */
    boolean isTaken(String person) {
        return person.equalsIgnoreCase(owner)
                || person.equalsIgnoreCase(ANYBODY_ON_SITE)
                || links.list().stream()
                        .anyMatch(link -> !link.revoked() && link.person().equalsIgnoreCase(person));
    }

    /**
     * The cookie for whoever shows a secret; empty where nobody gave it out, it was used up, or it was revoked.
     *
     * @param known the cookie that they have; it stays theirs where the secret's role may do less
     */
    synchronized Optional<String> comeIn(String secret, @Nullable String known) {
        Role had = find(known).map(session -> session.role).orElse(Role.VIEWER);
        String hash = Secrets.hash(secret);
        if (firstHash != null && Secrets.same(firstHash, hash)) {
            firstHash = null;
            return Optional.of(admit(owner, Role.LEAD, null));
        }
        if (siteSecret != null && Secrets.same(Secrets.hash(siteSecret), hash)) {
            return Optional.of(had.mayDoAll() && known != null ? known : admit(ANYBODY_ON_SITE, Role.HELPER, SITE));
        }
        return links.findValid(hash)
                .map(link -> known != null && had.compareTo(link.role()) < 0
                        ? known
                        : admit(link.person(), link.role(), link.id()));
    }

    private String admit(String person, Role role, @Nullable String link) {
        String cookie = secrets.make();
        see(Secrets.hash(cookie), new Session(person, role, link, token(cookie)));
        if (sessions.size() > MOST_SESSIONS) {
            forget(List.of(sessions.keySet().iterator().next()));
        }
        return cookie;
    }

    private void see(String hash, Session session) {
        Instant now = clock.instant();
        sessions.put(hash, new Known(session, now));
        try {
            store.keepEntrance(new Entrance(hash, session.person, session.role, session.link, now));
        } catch (StoreException e) {
            // a store that cannot be written now: they are in until the server stops, as the pages' edits will tell
            // them
        }
    }

    private void forget(List<String> hashes) {
        List<String> gone = new ArrayList<>(hashes); // the keys themselves would go from under the loop
        gone.forEach(sessions::remove);
        try {
            store.forgetEntrances(gone);
        } catch (StoreException e) {
            // the next start forgets them
        }
    }

    private boolean isTooLongAway(Known known) {
        return known.usedAt().plus(LONGEST_AWAY).isBefore(clock.instant());
    }

    /** Whoever shows this cookie; nobody where their link was revoked meanwhile, or they were away for too long. */
    synchronized Optional<Session> find(@Nullable String cookie) {
        if (cookie == null) {
            return Optional.empty();
        }
        String hash = Secrets.hash(cookie);
        Known known = sessions.get(hash);
        if (known == null || isTooLongAway(known)) {
            return Optional.empty();
        }
        Session session = known.session();
        if (session.token.equals(UNKNOWN)) {
            session = new Session(session.person, session.role, session.link, token(cookie));
            sessions.put(hash, new Known(session, known.usedAt()));
        }
        return Optional.of(session).filter(this::stillWelcome);
    }

    /** Notes that a browser was here today; true once a day, when it should be told to keep its cookie for longer. */
    synchronized boolean seeAgain(String cookie) {
        String hash = Secrets.hash(cookie);
        Known known = sessions.get(hash);
        if (known == null || known.usedAt().plus(SEEN).isAfter(clock.instant())) {
            return false;
        }
        see(hash, known.session());
        return true;
    }

    /** Goes with each request that changes something; follows from the cookie, so that a page outlives a restart. */
    private static String token(String cookie) {
        return Secrets.hash("token of " + cookie);
    }

    boolean stillWelcome(Session session) {
        if (session.link == null) {
            return true;
        }
        return session.link.equals(SITE) ? isSiteOpen() : links.isValid(session.link);
    }
}
