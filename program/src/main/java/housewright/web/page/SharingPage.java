package housewright.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who else may come in.
 *
 * @param shared the server listens on the local network
 * @param addresses where others find it, without a secret
 * @param site the link for whoever stands beside the machine; null where there is none
 * @param made a link just made, whose secret is shown this once; null where none was
 */
public record SharingPage(
        String answer,
        boolean shared,
        List<String> addresses,
        @Nullable Code site,
        @Nullable Code made,
        List<Row> links) {
    public SharingPage {
        addresses = List.copyOf(addresses);
        links = List.copyOf(links);
    }

    /**
     * A link as text and as a QR code.
     *
     * @param path of the dark modules, one unit each
     */
    public record Code(String what, String link, int size, String path) {}

    public record Row(String id, String person, String role, String made, boolean revoked) {}
}
