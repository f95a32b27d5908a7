package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Cable whose characteristic impedance sends part of a fast signal back: SDI on anything but 75 Ω, DMX outside 85 to 150
 * Ω, AES3 more than 20 % off what its sockets have. Cable that is not made for the signal at all, such as microphone
 * cable under DMX, is another rule's, for its type states no impedance.
 */
public final class WrongCableImpedance implements Rule {
    static final Limit SDI = Limit.most("SDI, off 75 ohm by", 5, "%");
    static final Limit AES3 = Limit.most("AES3, off its sockets by", 20, "%");
    static final Limit DMX_LEAST = Limit.least("DMX", 85, "ohm");
    static final Limit DMX_MOST = Limit.most("DMX", 150, "ohm");

    private static final Card CARD = new Card(
            "wrong-cable-impedance",
            "Has every cable the characteristic impedance that its digital signal wants?",
            Set.of(Severity.FIX),
            new Source.FromMemory("SMPTE ST 292-1, AES3 and the USITT recommended practice for DMX512"),
            Stage.DESIGN,
            List.of(SDI, AES3, DMX_LEAST, DMX_MOST));

    private record Band(double least, double most, double nominal) {
        static Band around(double ohms, double percent) {
            return new Band(ohms * (1 - percent / 100), ohms * (1 + percent / 100), ohms);
        }
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Line line : evidence.cabling().lines()) {
            Band band = band(evidence, line);
            if (band == null) {
                continue;
            }
            for (Lead lead : line.leads()) {
                CableType type = lead.type();
                double ohms = type == null || type.impedance() == null
                        ? band.nominal()
                        : type.impedance().ohms();
                if ((ohms < band.least() || ohms > band.most()) && seen.add(lead.id())) {
                    findings.add(finding(evidence, line, lead, band, ohms));
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Line line, Lead lead, Band band, double ohms) {
        Signal signal = line.signal() == null ? Signal.SDI : line.signal();
        Optional<Fix> other = Recut.otherType(
                evidence,
                lead,
                type -> type.carries().contains(signal)
                        && type.impedance() != null
                        && type.impedance().ohms() >= band.least()
                        && type.impedance().ohms() <= band.most());
        List<Fix> fixes = new ArrayList<>();
        other.ifPresent(fixes::add);
        fixes.add(Fix.of(String.format(Locale.ROOT, "Take cable of %.0f ohm.", band.nominal())));
        return CARD.finding(
                Severity.FIX,
                Said.subjects(List.of(lead.id())),
                String.format(
                        Locale.ROOT,
                        "%s carries %s on cable of %s ohm, %s, and wants %.0f ohm: the mismatch sends part of the signal"
                                + " back.",
                        lead.id(),
                        signal.word(),
                        Said.number(ohms),
                        Said.types(line),
                        band.nominal()),
                List.of(new Value("characteristic impedance", ohms, band.nominal(), "ohm")),
                fixes);
    }

    private static @Nullable Band band(Evidence evidence, Line line) {
        if (line.signal() == Signal.SDI) {
            return line.leads().stream()
                            .allMatch(lead -> lead.type() == null || lead.type().impedance() == null)
                    ? null
                    : Band.around(75, evidence.limit(CARD, SDI));
        }
        if (line.signal() == Signal.DMX) {
            return new Band(DMX_LEAST.value(), DMX_MOST.value(), 120);
        }
        if (line.signal() == Signal.AES3) {
            Double ohms = ohms(line.source());
            Double other = ohms(line.sink());
            boolean agree = ohms == null || other == null || ohms.equals(other); // else the sockets are at fault
            Double wanted = ohms == null ? other : ohms;
            return agree && wanted != null ? Band.around(wanted, AES3.value()) : null;
        }
        return null;
    }

    private static @Nullable Double ohms(@Nullable Plug plug) {
        Port port = plug == null ? null : plug.port();
        if (port == null) {
            return null;
        }
        if (port.impedance() != null) {
            return port.impedance().ohms();
        }
        boolean coax = port.connector() == Connector.BNC || port.connector() == Connector.RCA;
        boolean pair = port.connector() == Connector.XLR_3F || port.connector() == Connector.XLR_3M;
        return coax ? (Double) 75.0 : pair ? (Double) 110.0 : null;
    }
}
