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
import housewright.model.Words;
import housewright.network.Load;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    private record Cause(Set<String> sends, boolean over) {}

    private record Loaded(Load load, double rate, double percent) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double planned = evidence.limit(CARD, PLANNED);
        Map<Cause, List<Loaded>> causes = new LinkedHashMap<>();
        for (Load load : evidence.networks().loads()) {
            Double rate = load.link().rate();
            double percent = rate == null || rate <= 0 ? 0 : load.bitsPerSecond() / rate * 100;
            if (rate != null && percent > planned) {
                causes.computeIfAbsent(new Cause(load.sends(), percent > FULL.value()), key -> new ArrayList<>())
                        .add(new Loaded(load, rate, percent));
            }
        }
        return causes.values().stream().map(loaded -> finding(loaded, planned));
    }

    /** The first of the links on the way that is loaded most stands for all of them. */
    private static Finding finding(List<Loaded> loaded, double planned) {
        Loaded worst = loaded.getFirst();
        Set<Subject> subjects = new LinkedHashSet<>();
        for (Loaded each : loaded) {
            worst = each.percent() > worst.percent() ? each : worst;
        }
        subjects.addAll(Said.cables(worst.load().link()));
        loaded.forEach(each -> subjects.addAll(Said.cables(each.load().link())));
        worst.load().sends().forEach(send -> subjects.add(new Subject("network-send", send)));
        boolean over = worst.percent() > FULL.value();
        double load = worst.load().bitsPerSecond();
        String sends = Said.some(worst.load().sends(), 4);
        String put = worst.load().sends().size() == 1 ? " puts " : " put ";
        String link = Said.link(worst.load().link());
        String from = Words.said(worst.load().out());
        String more = loaded.size() == 1 ? "" : " (" + (loaded.size() - 1) + " more on the way)";
        String message = over
                ? link + " is overloaded by " + Said.rate(load - worst.rate()) + ": " + sends + put + Said.rate(load)
                        + " from " + from + " on a link that passes " + Said.rate(worst.rate()) + more + "."
                : String.format(Locale.ROOT, "%s is loaded to %.1f %% ", link, worst.percent())
                        + "by " + sends + " from " + from + " (" + Said.rate(load) + " of " + Said.rate(worst.rate())
                        + "); plan no more than " + String.format(Locale.ROOT, "%.0f", planned) + " %" + more + ".";
        return CARD.finding(
                over ? Severity.STOP : Severity.NOTE,
                List.copyOf(subjects),
                message,
                List.of(new Value("load", worst.percent(), over ? FULL.value() : planned, "%")),
                List.of(Fix.of(
                        "Take a faster port and link there, a lower rate for the sends, or another way for some of"
                                + " them.")));
    }
}
