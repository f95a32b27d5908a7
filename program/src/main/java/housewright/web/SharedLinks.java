package housewright.web;

import housewright.app.ProjectStore;
import housewright.app.ProjectStore.ShareLink;
import housewright.app.Role;
import housewright.app.StoreException;
import java.time.Instant;
import java.util.List;

/** The share links of the store, held in memory, since each request looks at them. */
final class SharedLinks implements ShareLinks {
    private final ProjectStore store;
    private final Secrets secrets = new Secrets();
    private volatile List<ShareLink> links;

    /** @param secret never shown again: the store keeps only its hash */
    record Made(ShareLink link, String secret) {}

    SharedLinks(ProjectStore store) throws StoreException {
        this.store = store;
        this.links = store.listLinks();
    }

    @Override
    public List<ShareLink> list() {
        return links;
    }

    synchronized Made make(String person, Role role, Instant at) throws StoreException {
        String secret = secrets.make();
        ShareLink link = new ShareLink(secrets.make().substring(0, 12), Secrets.hash(secret), role, person, at, false);
        store.addLink(link);
        links = store.listLinks();
        return new Made(link, secret);
    }

    synchronized void revoke(String id) throws StoreException {
        store.revokeLink(id);
        links = store.listLinks();
    }
}
