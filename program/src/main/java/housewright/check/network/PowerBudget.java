package housewright.check.network;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.network.PowerClass;
import housewright.network.Powered;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** More power classes on a switch than it may give in total: the last to be plugged in stays off. */
public final class PowerBudget implements Rule {
    static final Limit MOST = Limit.most("part of a switch's power budget that is taken", 100, "%");

    private static final Card CARD = new Card(
            "network-power-budget",
            "Does every switch have the power for all that hangs on it?",
            Set.of(Severity.FIX),
            new Source.Published(
                    "IEEE 802.3af, 802.3at and 802.3bt, as quoted on public pages", "power classes 1 to 8"),
            Stage.DESIGN,
            List.of(MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST) / 100;
        Map<String, List<Powered>> bySwitch = new LinkedHashMap<>();
        for (Powered each : evidence.networks().powered()) {
            Plug by = each.by();
            if (by != null && each.gives() > 0 && !each.otherwise()) {
                bySwitch.computeIfAbsent(by.at().thing(), key -> new ArrayList<>())
                        .add(each);
            }
        }
        List<Finding> findings = new ArrayList<>();
        bySwitch.forEach((hub, powered) -> {
            Present present = evidence.networks().thing(hub);
            Model model = present == null ? null : present.model();
            double budget = model == null || model.poe() == null || model.poe().budget() == null
                    ? 0
                    : model.poe().budget().watts();
            double sum = powered.stream()
                    .mapToDouble(each -> PowerClass.of(each.takes()).atPort())
                    .sum();
            if (budget > 0 && sum > budget * most) {
                findings.add(finding(hub, powered, sum, budget, most));
            }
        });
        return findings.stream();
    }

    private static Finding finding(String hub, List<Powered> powered, double sum, double budget, double most) {
        List<String> things = powered.stream().map(each -> each.thing().id()).toList();
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(hub));
        subjects.addAll(Said.equipment(things));
        String limit = most < 1 ? String.format(Locale.ROOT, "; %.0f %% of that is the limit", most * 100) : "";
        return CARD.finding(
                Severity.FIX,
                subjects,
                Words.said(hub) + " is asked for " + Said.watts(sum) + " by the power classes of "
                        + Said.things(things, 5) + ", and has " + Said.watts(budget) + " for all its ports" + limit
                        + ".",
                List.of(new Value("power by class", sum, budget * most, "W")),
                List.of(Fix.of(
                        "Give some of them a supply or a power injector of their own, or take a switch with a larger"
                                + " budget.")));
    }
}
