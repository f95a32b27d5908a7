package housewright.study;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Tightening;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Exemption;
import housewright.model.Rules;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What a project says about the rules themselves: a limit it tightens, a rule it switches off for a subject. */
final class RuleSettings implements Rule {
    private static final Card CARD = new Card(
            "rule-setting",
            "Does everything the project says about the rules mean a rule that there is, and a tighter limit?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.SURVEY);

    private final Map<String, Card> cards = new LinkedHashMap<>();

    RuleSettings(List<Rule> rules) {
        rules.forEach(rule -> cards.put(rule.card().id(), rule.card()));
        cards.put(CARD.id(), CARD);
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Rules rules = evidence.project().about().rules();
        if (rules != null) {
            rules.tighten().forEach((rule, written) -> tightened(rule, written, findings));
        }
        for (Exemption exemption : evidence.project().exempt()) {
            if (!cards.containsKey(exemption.rule())) {
                findings.add(finding(
                        "exempt." + exemption.rule(),
                        "exempt names the rule " + exemption.rule() + ", which there is not."));
            }
        }
        return findings.stream();
    }

    private void tightened(String rule, String written, List<Finding> findings) {
        Card card = cards.get(rule);
        String subject = "project.rules.tighten." + rule;
        if (card == null) {
            findings.add(finding(subject, "tighten names the rule " + rule + ", which there is not."));
        } else if (card.limits().isEmpty()) {
            findings.add(finding(subject, "tighten names the rule " + rule + ", which has no limit to tighten."));
        } else if (Tightening.of(written, card.limits().getFirst()).isEmpty()) {
            findings.add(finding(
                    subject,
                    "tighten says " + written + " for " + rule + ", whose limit is "
                            + card.limits().getFirst().text() + ": it is not used."));
        }
    }

    private static Finding finding(String subject, String message) {
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.at(subject)),
                message,
                List.of(),
                List.of(Fix.of("Name a rule of docs/rules.md, and a tighter limit in the rule's own unit.")));
    }
}
