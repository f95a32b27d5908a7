package housewright.check.light;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.LightData;
import housewright.model.Look;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A look that asks a white lamp for a colour. */
public final class LookColourNotPossible implements Rule {
    /** With so few channels nothing but its level, and at most a zoom or a second dimmer, can be set. */
    private static final int NO_COLOUR_CHANNELS = 3;

    private static final Card CARD = new Card(
            "look-colour-not-possible",
            "Can every fixture show the colour that a look asks of it?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Look look : Looks.all(evidence).values()) {
            List<String> wrong = new ArrayList<>();
            look.colours().forEach((id, colour) -> {
                if (!Looks.isWhite(colour) && isWhiteOnly(evidence, id)) {
                    wrong.add(id);
                }
            });
            if (!wrong.isEmpty()) {
                findings.add(CARD.finding(
                        Severity.FIX,
                        Said.subjects(Said.look(look.id()), Said.equipment(wrong)),
                        "The look " + Words.said(look.id()) + " asks " + Said.things(wrong) + " for "
                                + look.colours().get(wrong.getFirst()) + ", and "
                                + (wrong.size() == 1 ? "it gives" : "they give") + " white only.",
                        List.of(),
                        List.of(new Fix(
                                "Let the look leave " + Said.things(wrong) + " white, and take a coloured lamp for it.",
                                List.of(Looks.put(look, look.levels(), Looks.without(look.colours(), wrong)))))));
            }
        }
        return findings.stream();
    }

    /** It gives whites only, or its white is fixed and its mode has no room for a colour; and nobody has put a filter in. */
    private static boolean isWhiteOnly(Evidence evidence, String id) {
        Receiver receiver = evidence.lights().findReceiver(id).orElse(null);
        Model model = receiver == null ? null : receiver.thing().model();
        LightData data = model == null ? null : model.light();
        if (receiver == null
                || data == null
                || Lights.setting(receiver.thing().equipment()).colour() != null) {
            return false;
        }
        Integer footprint = receiver.footprint();
        return data.tunableWhite() || (data.white() != null && footprint != null && footprint <= NO_COLOUR_CHANNELS);
    }
}
