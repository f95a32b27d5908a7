package housewright.paper;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Losses;
import housewright.cable.Plug;
import housewright.cable.SdiRate;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.study.Study;
import housewright.unit.DataRate;
import housewright.unit.VideoFormat;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;

/**
 * How a cable is tried, and what must come out; what the figures are worked out from stands with them (common practice,
 * where no source is named).
 *
 * @param how what to do
 * @param expect what to read
 */
record CableTest(String how, String expect) {
    private static final Set<Connector> XLR = EnumSet.of(Connector.XLR_3M, Connector.XLR_3F);
    private static final Set<Connector> UNBALANCED = EnumSet.of(Connector.TS, Connector.RCA);

    /** Their light is not seen and hurts the eye (IEC 60825-2). */
    private static final Set<Connector> FIBRE = EnumSet.of(Connector.LC, Connector.SC);

    static CableTest of(Study study, Lead lead, Say say) {
        Set<Signal> signals = new LinkedHashSet<>(study.cabling().signals().getOrDefault(lead.id(), Set.of()));
        CableType type = lead.type();
        if (signals.isEmpty() && type != null && type.carries().size() == 1) {
            signals.addAll(type.carries());
        }
        if (signals.isEmpty()) {
            return new CableTest("Ask first what it carries.", "");
        }
        if (signals.contains(Signal.MAINS)) {
            return new CableTest(
                    "By a licensed electrician, by local code.",
                    "Earth through, insulation and polarity as the code has it");
        }
        Signal signal = signals.iterator().next();
        Set<Connector> ends = ends(lead);
        if (ends.stream().anyMatch(FIBRE::contains)) {
            return new CableTest(
                    "Never look into an end. Light source and power meter, caps on until then; clean both ends, plug in.",
                    "Loss within what the things at its ends allow; " + arrives(study, signal, lead));
        }
        String ways = lead.joints().size() > 1 ? "Each of " + lead.joints().size() + " ways: " : "";
        return switch (signal) {
            case ANALOG_AUDIO, AES3 ->
                new CableTest(
                        "Cable tester, both ends out.",
                        ways
                                + (!ends.isEmpty() && XLR.containsAll(ends)
                                        ? "1 to 1, 2 to 2, 3 to 3; no short, not crossed"
                                        : ends.stream().anyMatch(UNBALANCED::contains)
                                                ? "signal through, screen through; no short between the two"
                                                : "hot to hot, cold to cold, screen through; no short"));
            case SPEAKER ->
                new CableTest(
                        "Amplifier off, both ends out. Ohmmeter at one end, the other end shorted; then plus to plus.",
                        ways + loop(lead, say) + "; open without the short; + to +");
            case STAGE_LINK, ETHERNET, HDBASET ->
                new CableTest(
                        "Tester for twisted pairs: wire map and length; then plug in.",
                        "1 to 8 straight"
                                + (type != null && Boolean.TRUE.equals(type.screened()) ? ", screen through" : "")
                                + length(lead, say) + "; " + link(signal, lead));
            case SDI -> new CableTest("Test picture in the house's format, five minutes.", picture(study, lead));
            case HDMI ->
                new CableTest(
                        "Picture and sound in the house's format, five minutes; move both plugs.",
                        format(study) + ", no drop-out");
            case DMX ->
                new CableTest(
                        "Cable tester, both ends out; then one lamp at a time.",
                        "1 to 1, 2 to 2, 3 to 3; no short; every lamp steady");
            case USB, USB_AUDIO ->
                new CableTest("Plug in and look at the computer.", "It names the thing; all channels there");
            case RADIO -> new CableTest("Ohmmeter, both ends out.", "Centre through, screen through, no short");
            case CONTACT, MIDI, SERIAL ->
                new CableTest("Press or send at one end.", "The other end answers, each time");
            case MAINS -> throw new IllegalStateException("said above");
        };
    }

    /** The connectors on it that are known: those of its plugs, else those that its type has. */
    private static Set<Connector> ends(Lead lead) {
        Set<Connector> ends = EnumSet.noneOf(Connector.class);
        for (Joint joint : lead.joints()) {
            for (Plug plug : joint.plugs()) {
                if (plug.connector() != null) {
                    ends.add(plug.connector());
                }
            }
        }
        if (ends.isEmpty() && lead.type() != null) {
            ends.addAll(lead.type().ends());
        }
        return ends;
    }

    private static String arrives(Study study, Signal signal, Lead lead) {
        return signal == Signal.SDI ? format(study) + ", no drop-out" : link(signal, lead);
    }

    /** Resistance of copper at 20 degrees, there and back. */
    private static String loop(Lead lead, Say say) {
        CableType type = lead.type();
        if (type == null || type.conductor() == null || lead.span() == null) {
            return "low, and the same on every try";
        }
        double ohms = Losses.loopOhms(type.conductor(), lead.span().metres());
        return "about " + Say.number(ohms, 2) + " ohm ("
                + say.lengthInWords(lead.span().metres()) + ", there and back)";
    }

    private static String length(Lead lead, Say say) {
        return lead.span() == null
                ? ""
                : ", about " + say.lengthInWords(lead.span().metres());
    }

    private static String link(Signal signal, Lead lead) {
        if (signal != Signal.ETHERNET) {
            return "both ends show the link";
        }
        String rate = lead.joints().stream()
                .flatMap(joint -> joint.plugs().stream())
                .map(Plug::port)
                .filter(port -> port != null && port.rate() != null)
                .map(CableTest::rate)
                .min(Comparator.comparingDouble(DataRate::bitsPerSecond))
                .map(Object::toString)
                .orElse("");
        return "link" + (rate.isEmpty() ? "" : " at " + rate);
    }

    private static DataRate rate(Port port) {
        return Objects.requireNonNull(port.rate());
    }

    private static String picture(Study study, Lead lead) {
        CableType type = lead.type();
        VideoFormat house = study.project().about().picture();
        SdiRate rate = house == null ? null : SdiRate.of(house).orElse(null);
        String loss = "";
        if (rate != null && type != null && type.attenuation() != null && lead.span() != null) {
            double db = Losses.coaxDb(
                    type.attenuation(), rate.halfClockMegahertz(), lead.span().metres());
            loss = "; loss about " + Say.number(db, 1) + " dB at half the clock of " + rate.said();
        }
        return format(study) + ", no drop-out" + loss;
    }

    private static String format(Study study) {
        VideoFormat house = study.project().about().picture();
        return house == null ? "the house's format (nobody has said which)" : house.toString();
    }
}
