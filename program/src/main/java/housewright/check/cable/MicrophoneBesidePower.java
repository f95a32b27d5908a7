package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Use;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Microphone and line cable along the same way as loudspeaker or mains cable. A pathway does not say how far apart they
 * lie in it, so this is a note to whoever lays them.
 */
public final class MicrophoneBesidePower implements Rule {
    static final Limit MICROPHONE = Limit.least("microphone cable from loudspeaker and mains cable", 300, "mm");
    static final Limit LINE = Limit.least("line-level cable from mains", 150, "mm");

    private static final Card CARD = new Card(
            "microphone-beside-power",
            "Is microphone and line cable laid apart from loudspeaker and mains cable?",
            Set.of(Severity.NOTE),
            new Source.FromMemory("Handbooks of sound-system installation"),
            Stage.DESIGN,
            List.of(MICROPHONE, LINE));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Use> uses = evidence.cabling().uses();
        double microphone = evidence.limit(CARD, MICROPHONE);
        Set<String> loudPathways = new LinkedHashSet<>();
        Set<String> loudCables = new LinkedHashSet<>();
        Set<String> mainsPathways = new LinkedHashSet<>();
        Set<String> mainsCables = new LinkedHashSet<>();
        for (Pathway pathway : evidence.project().venue().pathways().values()) {
            List<String> microphones = new ArrayList<>();
            List<String> lines = new ArrayList<>();
            List<String> loudspeakers = new ArrayList<>();
            List<String> mains = new ArrayList<>();
            for (Lead lead : evidence.cabling().along(pathway)) {
                switch (uses.getOrDefault(lead.id(), Use.OTHER)) {
                    case MICROPHONE -> microphones.add(lead.id());
                    case LINE -> lines.add(lead.id());
                    case LOUDSPEAKER -> loudspeakers.add(lead.id());
                    case MAINS -> mains.add(lead.id());
                    case DATA, OTHER -> {}
                }
            }
            if (!microphones.isEmpty() && !loudspeakers.isEmpty()) {
                loudPathways.add(pathway.id());
                loudCables.addAll(microphones);
                loudCables.addAll(loudspeakers);
            }
            boolean apart = pathway.apart() != null && MainsBesideSignal.isBesideMains(pathway);
            double distance = pathway.apart() == null ? 0 : pathway.apart().metres() * 1000;
            boolean within = !mains.isEmpty() && !isEnclosed(pathway); // there mains-with-signal speaks
            List<String> near = new ArrayList<>();
            if (within || (apart && distance < microphone)) {
                near.addAll(microphones);
            }
            if (within || (apart && distance < LINE.value())) {
                near.addAll(lines);
            }
            if (!near.isEmpty()) {
                mainsPathways.add(pathway.id());
                mainsCables.addAll(near);
                mainsCables.addAll(mains);
            }
        }
        List<Finding> findings = new ArrayList<>();
        add(findings, "loudspeaker", microphone, loudPathways, loudCables);
        add(findings, "mains", microphone, mainsPathways, mainsCables);
        return findings.stream();
    }

    private static boolean isEnclosed(Pathway pathway) {
        return pathway.kind() == PathwayKind.CONDUIT || pathway.kind() == PathwayKind.TRUNKING;
    }

    private static void add(
            List<Finding> findings, String beside, double limit, Set<String> pathways, Set<String> cables) {
        if (pathways.isEmpty()) {
            return;
        }
        List<Subject> subjects =
                new ArrayList<>(pathways.stream().map(Said::pathway).toList());
        subjects.addAll(Said.subjects(cables));
        findings.add(CARD.finding(
                Severity.NOTE,
                subjects,
                (beside.equals("mains") ? "Microphone or line" : "Microphone") + " cable runs beside " + beside
                        + (beside.equals("mains") ? "" : " cable") + " in "
                        + Said.some(pathways.stream().map(Said::place).toList()) + " (" + Said.some(cables)
                        + "): microphone lines want " + Said.number(limit) + " mm"
                        + (beside.equals("mains") ? ", line level " + Said.number(LINE.value()) + " mm" : "")
                        + " between.",
                List.of(new Value("pathways shared with " + beside, pathways.size(), 0.0, "")),
                List.of(Fix.of("Lay them at opposite sides of the way, and cross at right angles."))));
    }
}
