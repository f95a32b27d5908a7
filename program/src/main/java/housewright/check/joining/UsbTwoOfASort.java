package housewright.check.joining;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Connector;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * USB joins a host and a device, never two of a sort. A USB-A socket is a host's, a USB-B socket a device's; USB-C may be
 * either, so only a computer's is taken for a host. Things whose own lead ends in a USB-A plug are devices.
 */
public final class UsbTwoOfASort implements Rule {
    private static final Card CARD = new Card(
            "usb-two-of-a-sort",
            "Does every USB cable join a host and a device?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.SURVEY);

    private enum Sort {
        HOST,
        DEVICE,
        EITHER
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Lead lead : evidence.cabling().leads()) {
            for (Joint joint : lead.joints()) {
                Sort one = sort(joint.from());
                Sort other = sort(joint.to());
                Plug from = joint.from();
                Plug to = joint.to();
                if (one == other && one != Sort.EITHER && from != null && to != null && !Ends.isOwn(lead)) {
                    findings.add(finding(lead, from, to, one));
                }
            }
        }
        return findings.stream();
    }

    private static Sort sort(@Nullable Plug plug) {
        Port port = plug == null ? null : plug.port();
        Model model = plug == null ? null : plug.model();
        if (port == null || model == null || (port.signal() != Signal.USB && port.signal() != Signal.USB_AUDIO)) {
            return Sort.EITHER;
        }
        if (port.connector() == Connector.USB_B) {
            return Sort.DEVICE;
        }
        if (port.connector() == Connector.USB_A) {
            return port.both() != null && !hasLeadOfItsOwn(model.kind()) ? Sort.HOST : Sort.EITHER;
        }
        return port.connector() == Connector.USB_C && model.kind() == Kind.COMPUTER ? Sort.HOST : Sort.EITHER;
    }

    private static boolean hasLeadOfItsOwn(Kind kind) {
        return switch (kind) {
            case BUTTON_PAD, CONTROL_PANEL, CAMERA, CAPTURE, AUDIO_INTERFACE, CONVERTER, DMX_INTERFACE, OTHER -> true;
            default -> false;
        };
    }

    private static Finding finding(Lead lead, Plug from, Plug to, Sort sort) {
        String sorts = sort == Sort.HOST ? "hosts" : "devices";
        String fix = sort == Sort.HOST
                ? "Use the device socket of one of them, or send it over the network; two hosts feed power into each"
                        + " other."
                : "Plug one of them into a computer.";
        return CARD.finding(
                Severity.STOP,
                List.of(
                        Subject.cable(lead.id()),
                        Subject.equipment(from.at().thing()),
                        Subject.equipment(to.at().thing())),
                lead.id() + " joins " + from.at().saidPort() + " and " + to.at().saidPort() + ", which are both USB "
                        + sorts + ": nothing passes.",
                List.of(),
                List.of(Fix.of(fix)));
    }
}
