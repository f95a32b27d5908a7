package housewright.web.page;

import housewright.app.Now;
import housewright.app.ProjectStore.Revision;
import housewright.finding.Severity;
import housewright.model.AcceptedPlan;
import housewright.model.Event;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.SiteState;
import housewright.model.Words;
import housewright.order.OrderLine;
import housewright.plan.chance.Chance;
import housewright.signal.FeedProof;
import housewright.signal.Moment;
import housewright.study.Study;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How far the job is from its first service.
 *
 * @param answer in a sentence
 * @param under what the title line leaves out: stage, and the hall as it is today
 * @param facts figures, each leading to its page
 * @param whole whether those are there that take long to work out
 * @param seenUpTo the revision that the person looked at last; 0 where never
 * @param news steps since, newest first
 * @param more how many steps since are not among them
 * @param file what is to be said of the file that the project was begun from; null where nothing is
 * @param begin whether to say what comes first: until a feed is entered, since before there is nothing to prove
 */
public record OverviewPage(
        String answer,
        String under,
        List<Fact> facts,
        boolean whole,
        long seenUpTo,
        List<Step> news,
        long more,
        @Nullable FileNews file,
        boolean begin) {
    private static final int MOST_NEWS = 12;

    public OverviewPage {
        facts = List.copyOf(facts);
        news = List.copyOf(news);
    }

    /**
     * @param figure with its unit
     * @param href the page that it leads to; null where there is none yet
     */
    public record Fact(
            String figure, String words, @Nullable String href) {}

    /** A step of the history. */
    public record Step(long revision, String says, String who, String when, String href) {}

    /**
     * @param changed the file is another than when it was taken over or written
     * @param writable it can be written back
     */
    public record FileNews(String name, String words, boolean changed, boolean writable) {}

    /**
     * @param chances how likely the accepted plan keeps each event, as far as that is known
     * @param href where the project's pages begin
     * @param since steps after the revision looked at last, newest first
     */
    public static OverviewPage of(
            Now now,
            List<Chance> chances,
            String href,
            long seen,
            List<Revision> since,
            @Nullable FileNews file,
            Instant at,
            ZoneId zone) {
        Study study = now.study();
        boolean whole = study.knowsOrders(); // asked once: what is not known here may be when the facts are written
        List<Step> news = since.stream()
                .limit(MOST_NEWS)
                .map(each -> step(each, href, at, zone))
                .toList();
        return new OverviewPage(
                study.verdict().sentence() + ".",
                under(study),
                facts(now, chances, href, at, zone, whole),
                whole,
                seen,
                news,
                since.size() - news.size(),
                file,
                now.project().feeds().isEmpty());
    }

    /** @param whole whether with what takes long to work out; else a line says that it is being worked out */
    public static List<Fact> facts(Now now, List<Chance> chances, String href, Instant at, ZoneId zone, boolean whole) {
        Study study = now.study();
        Project project = now.project();
        LocalDate today = LocalDate.ofInstant(at, zone);
        List<Fact> facts = new ArrayList<>();
        feeds(study, href, facts);
        findings(study, href, facts);
        questions(project, href, today, facts);
        if (whole) {
            orders(study, href, today, facts);
        } else {
            facts.add(new Fact("…", "what is to be ordered is being worked out", href + "/orders"));
        }
        plan(study, chances, href, facts);
        days(project, LocalDateTime.ofInstant(at, zone), facts);
        figures(study, href, facts);
        return facts;
    }

    static Step step(Revision revision, String href, Instant at, ZoneId zone) {
        return new Step(
                revision.number(),
                revision.what().says(),
                revision.what().author(),
                Dates.ago(revision.what().at(), at, zone),
                href + "/history/" + revision.number());
    }

    private static String under(Study study) {
        String stage = "Stage: " + study.project().about().stage().word() + ".";
        if (study.project().feeds().isEmpty()) {
            return stage;
        }
        return stage + " " + study.at(Moment.today()).verdict().sentence() + ".";
    }

    private static void feeds(Study study, String href, List<Fact> facts) {
        if (study.proofs().isEmpty()) {
            facts.add(new Fact("No", "feeds entered yet; a feed says what must arrive where", href + "/feeds"));
            return;
        }
        int proven = study.verdict().proven();
        int asked = study.verdict().asked();
        long early = study.proofs().stream()
                .filter(proof -> !proof.proven() && !proof.pairs().isEmpty())
                .filter(study::isNotYetDue)
                .count();
        String more = early == 0 ? "" : ", " + early + " of the others not due at this stage";
        facts.add(new Fact(proven + " of " + asked, "feeds proven in the target" + more, href + "/feeds"));
        long unmended = study.proofs().stream()
                .filter(proof -> !proof.proven() && !proof.pairs().isEmpty())
                .filter(proof -> study.findExemption(proof).isEmpty())
                .count();
        if (unmended > 0) {
            Optional<FeedProof> worst = study.proofs().stream()
                    .filter(proof -> !proof.proven() && !proof.pairs().isEmpty())
                    .max(Comparator.comparing(FeedProof::state));
            facts.add(new Fact(
                    Long.toString(unmended),
                    (unmended == 1 ? "feed to mend" : "feeds to mend, the worst first") + ": "
                            + worst.map(proof -> proof.feed().id()).orElse(""),
                    worst.map(proof -> href + "/feeds/" + proof.feed().id()).orElse(href + "/feeds")));
        }
    }

    private static void findings(Study study, String href, List<Fact> facts) {
        long stop = count(study, Severity.STOP);
        long fix = count(study, Severity.FIX);
        long notes = count(study, Severity.NOTE);
        facts.add(new Fact(
                Long.toString(stop),
                stop == 1 ? "finding stops the job" : "findings stop the job",
                href + "/findings#stop"));
        facts.add(new Fact(Long.toString(fix), "to fix before the visit", href + "/findings#fix"));
        int later = study.findings().notYetDue().size();
        facts.add(new Fact(
                Long.toString(notes),
                (notes == 1 ? "note" : "notes")
                        + (later == 0 ? "" : "; " + later + " more findings due at a later stage"),
                href + "/findings#note"));
    }

    private static long count(Study study, Severity severity) {
        return study.findings().count(severity);
    }

    private static void questions(Project project, String href, LocalDate today, List<Fact> facts) {
        List<Question> open = project.questions().values().stream()
                .filter(question ->
                        question.answer() == null || question.answer().isBlank())
                .toList();
        long late = open.stream()
                .filter(question -> question.due() != null && question.due().isBefore(today))
                .count();
        facts.add(new Fact(
                Integer.toString(open.size()),
                (open.size() == 1 ? "question open" : "questions open") + (late == 0 ? "" : ", " + late + " overdue"),
                href + "/questions"));
    }

    private static void orders(Study study, String href, LocalDate today, List<Fact> facts) {
        List<OrderLine> lines = study.orders().lines();
        if (lines.isEmpty()) {
            return;
        }
        long open = 0;
        long due = 0;
        long late = 0;
        for (OrderLine line : lines) {
            boolean waits = line.state() == OrderLine.State.TO_ORDER || line.state() == OrderLine.State.IN_NO_ORDER;
            LocalDate latest = line.latest();
            open += waits ? 1 : 0;
            due += waits && latest != null && !latest.isAfter(today.plusDays(OrdersPage.SOON)) ? 1 : 0;
            late += line.state() == OrderLine.State.LATE ? 1 : 0;
        }
        facts.add(new Fact(
                Long.toString(open),
                (open == 1 ? "line to order" : "lines to order")
                        + (due == 0 ? "" : ", " + due + " of them within a week or overdue")
                        + (late == 0 ? "" : "; " + late + " ordered and coming too late"),
                href + "/orders"));
    }

    private static void plan(Study study, List<Chance> chances, String href, List<Fact> facts) {
        Project project = study.project();
        AcceptedPlan plan = project.plan();
        if (plan == null || plan.times().isEmpty()) {
            facts.add(new Fact("No", "plan accepted yet", href + "/plan"));
            return;
        }
        long done = plan.times().keySet().stream()
                .map(id -> TaskWords.entry(project, id))
                .filter(entry -> entry != null && entry.state() == SiteState.DONE)
                .count();
        LocalDateTime end = plan.times().values().stream()
                .map(task -> task.stretches().getLast().to())
                .max(Comparator.naturalOrder())
                .orElse(LocalDateTime.MIN);
        String likely = project.events().values().stream()
                .filter(Event::deadline)
                .flatMap(event ->
                        chances.stream().filter(chance -> chance.event().equals(event.id())))
                .map(chance -> "; that " + Words.said(chance.event()) + " is kept is "
                        + chance.likely().word())
                .findFirst()
                .orElse("");
        facts.add(new Fact(
                done + " of " + plan.times().size(),
                "planned tasks done, the last planned to end " + TaskWords.moment(end) + likely,
                href + "/plan"));
    }

    private static void days(Project project, LocalDateTime at, List<Fact> facts) {
        Optional<Event> deadline = project.events().values().stream()
                .filter(event -> event.deadline() && event.from() != null)
                .min(Comparator.comparing(OverviewPage::from));
        Optional<Event> next = project.events().values().stream()
                .filter(event -> event.from() != null && event.from().isAfter(at) && !"elsewhere".equals(event.at()))
                .min(Comparator.comparing(OverviewPage::from));
        if (deadline.isPresent()) {
            facts.add(days(deadline.get(), at, "the day that cannot move"));
        } else {
            facts.add(new Fact("No", "date that cannot move is entered yet", null));
        }
        if (next.isPresent() && !next.equals(deadline)) {
            facts.add(days(next.get(), at, "the next event in the room"));
        }
    }

    private static LocalDateTime from(Event event) {
        LocalDateTime from = event.from();
        return from == null ? LocalDateTime.MAX : from;
    }

    private static Fact days(Event event, LocalDateTime at, String what) {
        LocalDateTime from = from(event);
        long days = ChronoUnit.DAYS.between(at.toLocalDate(), from.toLocalDate());
        String figure = days == 0 ? "Today" : Math.abs(days) + (Math.abs(days) == 1 ? " day" : " days");
        return new Fact(
                figure,
                (days > 0 ? "to " : days < 0 ? "since " : "") + Words.said(event.id()) + ", " + what + ": "
                        + Dates.moment(from),
                null);
    }

    private static void figures(Study study, String href, List<Fact> facts) {
        int typical = study.typicalModels().size();
        Set<String> lacking = new LinkedHashSet<>();
        study.proofs().forEach(proof -> proof.pairs().forEach(pair -> lacking.addAll(pair.lacking())));
        if (typical > 0) {
            facts.add(new Fact(
                    Integer.toString(typical),
                    typical == 1
                            ? "type in use has typical figures, to be replaced by the data sheet's"
                            : "types in use have typical figures, to be replaced by the data sheets'",
                    null));
        }
        if (!lacking.isEmpty()) {
            facts.add(new Fact(
                    Integer.toString(lacking.size()),
                    lacking.size() == 1 ? "figure missing in the proofs" : "figures missing in the proofs",
                    href + "/feeds#lacking"));
        }
    }
}
