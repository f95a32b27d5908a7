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
import housewright.network.Link;
import housewright.network.Load;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** A link that is to carry more than its slower port passes on, or so much that little is left for bursts. */
public final class LinkOverloaded implements Rule {
    static final Limit PLANNED = Limit.most("planned load of a link", 70, "%");
    static final Limit FULL = Limit.most("load of a link", 100, "%");

    private static final Card CARD = new Card(
            "link-overloaded",
            "Does every network link carry the sum of what is sent over it?",
            Set.of(Severity.STOP, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(PLANNED, FULL));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        double planned = evidence.limit(CARD, PLANNED);
        for (Load load : evidence.networks().loads()) {
            Double rate = load.link().rate();
            double percent = rate == null || rate <= 0 ? 0 : load.bitsPerSecond() / rate * 100;
            if (rate != null && percent > planned) {
                findings.add(finding(load, rate, percent, planned));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Load load, double rate, double percent, double planned) {
        boolean over = percent > FULL.value();
        Link link = load.link();
        List<Subject> subjects = Said.cables(link);
        load.sends().forEach(send -> subjects.add(new Subject("network-send", send)));
        String message = String.format(
                Locale.ROOT,
                "%s is to carry %s of %s from %s: that is %s of the %s it passes%s.",
                Said.link(link),
                Said.some(load.sends(), 4),
                load.sends().size() == 1 ? "one send" : load.sends().size() + " sends",
                housewright.model.Words.said(load.out()),
                Said.rate(load.bitsPerSecond()),
                Said.rate(rate),
                String.format(
                        Locale.ROOT,
                        over ? ", %.0f %%" : ", %.0f %%; plan no more than " + planText(planned) + " %%",
                        percent));
        return CARD.finding(
                over ? Severity.STOP : Severity.NOTE,
                subjects,
                message,
                List.of(new Value("load", percent, over ? FULL.value() : planned, "%")),
                List.of(Fix.of(
                        "Take a faster port and link there, a lower rate for the sends, or another way for some of"
                                + " them.")));
    }

    private static String planText(double planned) {
        return String.format(Locale.ROOT, "%.0f", planned);
    }
}
