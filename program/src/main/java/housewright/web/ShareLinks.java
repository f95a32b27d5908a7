package housewright.web;

import housewright.app.ProjectStore.ShareLink;
import java.util.List;
import java.util.Optional;

/** The links by which others come in. */
interface ShareLinks {
    List<ShareLink> list();

    /** Looked at with every request, so it answers from memory. */
    default boolean isValid(String id) {
        return list().stream().anyMatch(link -> link.id().equals(id) && !link.revoked());
    }

    /** Every link is compared, whichever fits. */
    default Optional<ShareLink> findValid(String secretHash) {
        return list().stream()
                .filter(link -> !link.revoked())
                .filter(link -> Secrets.same(link.secretHash(), secretHash))
                .findFirst();
    }
}
