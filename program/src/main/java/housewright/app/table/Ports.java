package housewright.app.table;

import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.JoinOffer;
import housewright.signal.JoinOffers;
import housewright.signal.PatchOffer;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The ports of a thing: what is in each, what could be joined to a free one, and the edit that joins it. */
public final class Ports {
    /**
     * A port.
     *
     * @param signal in words; empty where it takes whatever it is given
     * @param way in, out, or both
     * @param cables that are in it
     * @param far the other ends of those cables, as far as known
     */
    public record PortRow(
            String name, String signal, String way, String connector, List<String> cables, List<String> far) {
        public PortRow {
            cables = List.copyOf(cables);
            far = List.copyOf(far);
        }

        public boolean free() {
            return cables.isEmpty();
        }
    }

    private final Study study;

    private Ports(Study study) {
        this.study = study;
    }

    public static Ports of(Study study) {
        return new Ports(study);
    }

    /** Every port of a thing, in the order of its model; none where its model is not known. */
    public List<PortRow> list(String thing) {
        Shape shape = shape(thing);
        List<PortRow> rows = new ArrayList<>();
        if (shape != null) {
            for (Socket socket : shape.sockets().values()) {
                rows.add(row(thing, socket));
            }
        }
        return List.copyOf(rows);
    }

    private @Nullable Shape shape(String thing) {
        Equipment equipment = study.project().equipment().get(thing);
        Model model = equipment == null
                ? null
                : study.types().findModel(equipment.model()).orElse(null);
        return model == null || !model.portsKnown() ? null : Shape.of(model);
    }

    private PortRow row(String thing, Socket socket) {
        Port port = socket.port();
        Address at = new Address(thing, new Spot(socket.name(), null));
        List<String> cables = study.signals().listCables(at);
        List<String> far = new ArrayList<>();
        for (String id : cables) {
            Cable cable = study.project().cables().get(id);
            if (cable != null) {
                far.add(far(cable, at.toString()));
            }
        }
        return new PortRow(
                socket.name(),
                port.signal() == null ? "" : port.signal().word(),
                port.passive() || port.both() != null ? "both" : port.in() != null ? "in" : "out",
                port.connector() == null ? "" : port.connector().word(),
                cables,
                far);
    }

    private static String far(Cable cable, String at) {
        if (cable.from() != null && cable.from().text().equals(at)) {
            return cable.to() == null ? "unknown" : cable.to().text();
        }
        if (cable.to() != null && cable.to().text().equals(at)) {
            return cable.from() == null ? "unknown" : cable.from().text();
        }
        return cable.ways().stream()
                .flatMap(way -> way.pairs().stream())
                .filter(pair -> pair.from().toString().equals(at)
                        || pair.to().toString().equals(at))
                .map(pair -> pair.from().toString().equals(at)
                        ? pair.to().toString()
                        : pair.from().toString())
                .findFirst()
                .orElse("unknown");
    }

    /** What could be joined to a port. */
    public JoinOffers offers(String thing, String port) {
        return study.signals().joinOffers(new Address(thing, new Spot(port, null)));
    }

    /** Makes the cable of an offer, numbered on in the project's own way. */
    public Edit.Made join(JoinOffer offer) {
        String id = Numbering.inStyle(study.project().cables().keySet(), "C001");
        String says = "Joined " + offer.from() + " to " + offer.to() + " by " + id;
        return new Edit.Made(
                List.of(new Change.Put(Section.CABLES, id, offer.cable(id))),
                says,
                List.of(id),
                offer.assumed().stream()
                        .map(text -> text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1) + ".")
                        .toList());
    }

    /** What may be patched from a place of a device, or to it. */
    public List<PatchOffer> patches(String device, String place, boolean from) {
        Spot spot = new housewright.model.LocalRef(place).spots().getFirst();
        return study.signals().patchOffers(new Address(device, spot), from);
    }

    /** Sets a patch; what the output had goes. */
    public Edit.Made patch(String device, PatchOffer offer) {
        List<Change> changes = new ArrayList<>();
        for (Spot from : offer.instead()) {
            changes.add(new Change.Unpatch(device, from, offer.to()));
        }
        PatchEntry entry = PatchEntry.ofText(offer.from() + " -> " + offer.to());
        changes.add(new Change.Patch(device, entry));
        return new Edit.Made(
                changes,
                "Patched " + offer.from() + " to " + offer.to() + " in " + device,
                List.of(PatchRow.id(device, entry)),
                offer.instead().isEmpty()
                        ? List.of()
                        : List.of("Taken out: what " + offer.to() + " had, " + offer.instead() + "."));
    }
}
