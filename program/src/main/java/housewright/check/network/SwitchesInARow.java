package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.network.Networks;
import housewright.network.Sent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** More switches one after the other than the usual spanning tree and network audio's usual buffers are made for. */
public final class SwitchesInARow implements Rule {
    static final Limit MOST = Limit.most("switches one after the other", 7, "");

    private static final Card CARD = new Card(
            "switches-in-a-row",
            "Are there few enough switches one after the other on the way of every send?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST);
        Networks networks = evidence.networks();
        Map<List<String>, Set<String>> rows = new LinkedHashMap<>();
        for (Sent sent : networks.sends()) {
            if (sent.over().size() > most) {
                List<String> row =
                        sent.over().stream().filter(networks::sharesOut).toList();
                if (row.size() > most) {
                    rows.computeIfAbsent(row, key -> new LinkedHashSet<>())
                            .add(sent.send().id());
                }
            }
        }
        return rows.entrySet().stream().map(each -> finding(each.getKey(), each.getValue(), most));
    }

    private static Finding finding(List<String> row, Set<String> sends, double most) {
        List<Subject> subjects = new ArrayList<>();
        sends.forEach(send -> subjects.add(new Subject("network-send", send)));
        subjects.addAll(Said.equipment(row));
        return CARD.finding(
                Severity.FIX,
                subjects,
                String.format(
                        Locale.ROOT,
                        "%s passes %d switches one after the other (%s); %.0f is the usual most.",
                        Said.some(sends, 3),
                        row.size(),
                        Said.things(row, 8),
                        most),
                List.of(new Value("switches", row.size(), most, "")),
                List.of(Fix.of("Join the switches to one in the middle in place of a chain.")));
    }
}
