package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.room.FaceLight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** How steeply the light in front meets the faces of a lighting target. */
public final class LightAngleOnFaces implements Rule {
    static final Limit LOW = Limit.least("elevation of the light in front", 25, "deg");
    static final Limit STEEP = Limit.most("elevation of the light in front", 60, "deg");

    private static final Card CARD = new Card(
            "light-angle-on-faces",
            "Does the light in front meet faces neither so low that it dazzles nor so steeply that eyes are dark?",
            Set.of(Severity.NOTE),
            new Source.FromMemory(
                    "Stage and video lighting practice: 30 to 45 degrees, below 25 glare, above 60 dark eye sockets"),
            Stage.DESIGN,
            List.of(LOW, STEEP));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double low = evidence.limit(CARD, LOW);
        Map<String, List<FaceLight>> off = new LinkedHashMap<>();
        for (FaceLight each : evidence.rooms().faceLights()) {
            off.computeIfAbsent(each.target(), key -> new ArrayList<>()).add(each);
        }
        off.values().forEach(lights -> {
            boolean dark = lights.stream().allMatch(each -> each.elevation() > STEEP.value());
            lights.removeIf(each -> each.elevation() >= low && !(dark && each.elevation() > STEEP.value()));
        });
        off.values().removeIf(List::isEmpty);
        return off.entrySet().stream().map(each -> finding(each.getKey(), each.getValue(), low));
    }

    private static Finding finding(String target, List<FaceLight> off, double low) {
        FaceLight worst = off.stream()
                .max(Comparator.comparingDouble(
                        each -> Math.max(low - each.elevation(), each.elevation() - STEEP.value())))
                .orElseThrow();
        boolean glare = worst.elevation() < low;
        List<Subject> subjects = new ArrayList<>();
        subjects.add(new Subject("target", target));
        off.forEach(each -> subjects.add(Subject.equipment(each.fixture())));
        return CARD.finding(
                Severity.NOTE,
                subjects,
                Wording.things(off.stream().map(FaceLight::fixture).toList(), 4)
                        + (off.size() == 1 ? " meets" : " meet") + " the faces at " + Words.said(target) + " at "
                        + Math.round(worst.elevation()) + " degrees above the horizontal: "
                        + (glare ? "whoever speaks there looks into the lamp." : "eyes lie in shadow."),
                List.of(new Value("elevation", worst.elevation(), glare ? low : STEEP.value(), "deg")),
                List.of(Fix.of(
                        glare
                                ? "Hang it higher or nearer, so that it comes from 30 to 45 degrees."
                                : "Hang it further off, so that it comes from 30 to 45 degrees.")));
    }
}
