package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.FloorPoint;
import housewright.model.LightData;
import housewright.model.Lighting;
import housewright.model.Look;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.SpacePoint;
import housewright.model.Stage;
import housewright.model.Target;
import housewright.model.Words;
import housewright.signal.Present;
import housewright.unit.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Saturated colour on the faces of a target that cameras see, from the side they face: no camera makes skin of it. What
 * counts is intensity times level over distance squared, of all that is aimed there from in front.
 */
public final class SaturatedFaces implements Rule {
    static final Limit SHARE = Limit.most("saturated part of the light on a face that cameras see", 30, "%");

    private static final Card CARD = new Card(
            "saturated-colour-on-faces",
            "Is light on faces that cameras see mostly white?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(SHARE));

    private static final double ALL_BUT_GONE = 0.6;
    /** An aim this far outside the area still lights it. */
    private static final double EDGE_M = 0.5;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Lighting lighting = evidence.project().lighting();
        if (lighting == null) {
            return Stream.empty();
        }
        double most = evidence.limit(CARD, SHARE) / 100;
        List<Finding> findings = new ArrayList<>();
        for (Target target : lighting.targets().values()) {
            if (!target.camera() || target.area().size() < 3 || target.facing() == null) {
                continue;
            }
            Map<String, Double> strengths = strengths(evidence, target);
            for (Look look : lighting.looks().values()) {
                check(evidence, target, look, strengths, most, findings);
            }
        }
        return findings.stream();
    }

    private static void check(
            Evidence evidence,
            Target target,
            Look look,
            Map<String, Double> strengths,
            double most,
            List<Finding> findings) {
        double all = 0;
        double saturated = 0;
        Map<String, String> colours = new LinkedHashMap<>();
        for (Map.Entry<String, Double> each : strengths.entrySet()) {
            Ratio level = look.levels().get(each.getKey());
            if (level == null) {
                continue;
            }
            double light = each.getValue() * level.fraction();
            all += light;
            String colour = colour(evidence, look, each.getKey());
            if (colour != null && Looks.isSaturated(colour) && light > 0) {
                saturated += light;
                colours.put(each.getKey(), colour);
            }
        }
        if (saturated > all * most) {
            findings.add(finding(target, look, colours, saturated / all, most));
        }
    }

    private static @Nullable String colour(Evidence evidence, Look look, String id) {
        String asked = look.colours().get(id);
        Present thing = evidence.lights().things().get(id);
        return asked != null || thing == null
                ? asked
                : Lights.setting(thing.equipment()).colour();
    }

    /** What each fixture that is aimed at the target from in front gives there, at full. */
    private static Map<String, Double> strengths(Evidence evidence, Target target) {
        Map<String, Double> strengths = new LinkedHashMap<>();
        double facing = target.facing() == null ? 0 : target.facing().radians();
        for (Receiver each : evidence.lights().receivers()) {
            SpacePoint aim = Lights.setting(each.thing().equipment()).aim();
            String at = each.thing().equipment().at();
            Place place =
                    at == null ? null : evidence.project().venue().places().get(at);
            SpacePoint from = place == null ? null : place.at();
            Model model = each.thing().model();
            LightData data = model == null ? null : model.light();
            if (aim == null || from == null || data == null || data.peak() == null || !isIn(target, aim)) {
                continue;
            }
            double x = from.x().metres() - aim.x().metres();
            double y = from.y().metres() - aim.y().metres();
            double z = from.z().metres() - aim.z().metres();
            boolean inFront = x * Math.cos(facing) + y * Math.sin(facing) > 0;
            if (inFront) {
                strengths.put(each.id(), data.peak().candelas() / (x * x + y * y + z * z));
            }
        }
        return strengths;
    }

    private static boolean isIn(Target target, SpacePoint aim) {
        double left = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (FloorPoint corner : target.area()) {
            left = Math.min(left, corner.x().metres());
            right = Math.max(right, corner.x().metres());
            low = Math.min(low, corner.y().metres());
            high = Math.max(high, corner.y().metres());
        }
        double x = aim.x().metres();
        double y = aim.y().metres();
        return x > left - EDGE_M && x < right + EDGE_M && y > low - EDGE_M && y < high + EDGE_M;
    }

    private static Finding finding(Target target, Look look, Map<String, String> colours, double share, double most) {
        List<String> ids = List.copyOf(colours.keySet());
        Map<String, String> white = new LinkedHashMap<>(look.colours());
        ids.forEach(id -> white.put(id, "warm white"));
        return CARD.finding(
                share > ALL_BUT_GONE ? Severity.FIX : Severity.NOTE,
                Said.subjects(
                        Said.look(look.id()), Said.subjects(new Subject("target", target.id()), Said.equipment(ids))),
                String.format(
                        Locale.ROOT,
                        "In the look %s %.0f %% of the light on faces at %s is %s, from %s: on camera "
                                + (share > ALL_BUT_GONE ? "they have no skin tone left." : "they take on its colour."),
                        Words.said(look.id()),
                        share * 100,
                        Words.said(target.id()),
                        colours.get(ids.getFirst()),
                        Said.things(ids)),
                List.of(new Value("saturated part of the light", share * 100, most * 100, "%")),
                List.of(
                        new Fix(
                                "Let " + Said.things(ids)
                                        + " be warm white in this look, and put the colour on the wall" + " behind.",
                                List.of(Looks.put(look, look.levels(), white))),
                        Fix.of("Or bring more white onto the faces from in front.")));
    }
}
