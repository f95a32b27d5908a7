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
import housewright.model.Event;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.unit.Level;
import housewright.unit.Unit;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The dose of sound of a day, for whoever is there from the rehearsal on. */
public final class HearingExposure implements Rule {
    static final Limit DOSE = Limit.most("dose of a day", 100, "%");
    static final Limit AUDIENCE = Limit.most("average level of an event", 100, "dBA");

    /** At this level eight hours make the whole of a day's dose. */
    private static final double SAFE_ALL_DAY_DBA = 85;

    private static final Card CARD = new Card(
            "hearing-exposure",
            "Do the levels that are planned leave everybody their hearing?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.Published(
                    "NIOSH Publication 98-126 and cdc.gov, for people at work; WHO standard for safe listening venues"
                            + " and events (2022), as quoted on public pages, for an audience",
                    "85 dBA for 8 h, halved for every 3 dB; 100 dB averaged over 15 min"),
            Stage.DESIGN,
            List.of(DOSE, AUDIENCE));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Map<LocalDate, List<Event>> days = new TreeMap<>();
        for (Event event : evidence.project().events().values()) {
            Level level = event.level();
            if (level == null || event.at() != null) {
                continue;
            }
            if (level.unit() != Unit.DBA) {
                findings.add(CARD.finding(
                        Severity.FIX,
                        List.of(new Subject("event", event.id())),
                        "The level of " + Words.said(event.id()) + " is not given A-weighted: nothing says whether "
                                + level.text() + " harms.",
                        List.of(),
                        List.of(Fix.of("Measure or state it in dBA, as an average over the event."))));
            } else if (level.value() > AUDIENCE.value()) {
                findings.add(tooLoud(event, level.value()));
            } else if (event.from() == null || event.to() == null) {
                if (level.value() > SAFE_ALL_DAY_DBA) {
                    findings.add(CARD.finding(
                            Severity.FIX,
                            List.of(new Subject("event", event.id())),
                            Words.said(event.id()) + " is planned at " + level.text()
                                    + ", and nobody has said how long it lasts: whether that harms hangs on it.",
                            List.of(),
                            List.of(Fix.of("Write when it begins and ends."))));
                }
            } else {
                days.computeIfAbsent(event.from().toLocalDate(), day -> new ArrayList<>())
                        .add(event);
            }
        }
        double limit = evidence.limit(CARD, DOSE);
        days.forEach((day, events) -> {
            double dose = events.stream().mapToDouble(HearingExposure::dose).sum();
            if (dose > limit) {
                findings.add(tooLong(day, events, dose, limit));
            }
        });
        return findings.stream();
    }

    /** Minutes at a level that make the whole of a day's dose: 480 / 2^((L - 85) / 3). */
    static double minutes(double dba) {
        return 480 / Math.pow(2, (dba - 85) / 3);
    }

    /** In percent of a day's dose. */
    private static double dose(Event event) {
        Level level = event.level();
        LocalDateTime from = event.from();
        LocalDateTime to = event.to();
        return level == null || from == null || to == null
                ? 0
                : 100 * (Duration.between(from, to).toSeconds() / 60.0) / minutes(level.value());
    }

    private static Finding tooLoud(Event event, double level) {
        return CARD.finding(
                Severity.STOP,
                List.of(new Subject("event", event.id())),
                String.format(
                        Locale.ROOT,
                        "%s is planned at %.0f dBA: above %.0f dBA the hearing of all who listen is at risk within"
                                + " minutes.",
                        Words.said(event.id()),
                        level,
                        AUDIENCE.value()),
                List.of(new Value("level", level, AUDIENCE.value(), "dBA")),
                List.of(Fix.of("Plan it lower, and measure it at the loudest seat; local law may ask for less.")));
    }

    private static Finding tooLong(LocalDate day, List<Event> events, double dose, double limit) {
        List<Subject> subjects = new ArrayList<>();
        events.forEach(event -> subjects.add(new Subject("event", event.id())));
        double down = 10 * Math.log10(dose / limit) / (10 * Math.log10(2)) * 3;
        return CARD.finding(
                Severity.FIX,
                subjects,
                String.format(
                        Locale.ROOT,
                        "Whoever is there on %s for %s takes %.0f %% of a day's dose of sound; %.0f %% is the most.",
                        day,
                        Wording.things(events.stream().map(Event::id).toList(), 4),
                        dose,
                        limit),
                List.of(new Value("dose", dose, limit, "%")),
                List.of(Fix.of(String.format(
                        Locale.ROOT,
                        "Plan %.0f dB less, shorten it, or give hearing protection to those who stay all day.",
                        Math.ceil(down)))));
    }
}
