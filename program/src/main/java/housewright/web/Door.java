package housewright.web;

import housewright.app.Role;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who may come in: the link printed at the start, which lets one browser in, and the share links. */
final class Door {
    private static final int MOST_SESSIONS = 2000;
    private static final String ANYBODY_ON_SITE = "Helper on site";

    private final Secrets secrets = new Secrets();
    private final String owner;
    private final ShareLinks links;
    private @Nullable String firstHash;
    /** For whoever stands beside the machine, while it serves; only this secret is kept as it is, to be shown again. */
    private @Nullable String siteSecret;

    /** The link of a session that came in by it. */
    static final String SITE = "site";

    /** By the hash of the cookie; the one used longest ago goes first. */
    private final Map<String, Session> sessions = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Session> eldest) {
            return size() > MOST_SESSIONS;
        }
    };

    /** @param owner whoever started the server, as history names them */
    Door(String owner, ShareLinks links) {
        this.owner = owner;
        this.links = links;
    }

    /** A new secret by which one browser may come in, once, as lead; any earlier one is void. */
    synchronized String openOnce() {
        String secret = secrets.make();
        firstHash = Secrets.hash(secret);
        return secret;
    }

    /** A secret by which any number of helpers may come in until it is revoked or the server stops. */
    synchronized String siteSecret() {
        if (siteSecret == null) {
            siteSecret = secrets.make();
        }
        return siteSecret;
    }

    synchronized boolean isSiteOpen() {
        return siteSecret != null;
    }

    synchronized void revokeSite() {
        siteSecret = null;
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
        sessions.put(Secrets.hash(cookie), new Session(person, role, link, secrets.make()));
        return cookie;
    }

    /** Whoever shows this cookie; nobody where their link was revoked meanwhile. */
    synchronized Optional<Session> find(@Nullable String cookie) {
        if (cookie == null) {
            return Optional.empty();
        }
        return Optional.ofNullable(sessions.get(Secrets.hash(cookie))).filter(this::stillWelcome);
    }

    boolean stillWelcome(Session session) {
        if (session.link == null) {
            return true;
        }
        return session.link.equals(SITE) ? isSiteOpen() : links.isValid(session.link);
    }
}
