package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Event;
import housewright.model.Hire;
import housewright.model.LogEntry;
import housewright.model.Order;
import housewright.model.SiteState;
import housewright.model.Stage;
import housewright.model.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Orders and hires that come on the day that cannot move, or after it. */
public final class ComesTooLate implements Rule {
    private static final double DAY_S = 24 * 3600;

    private static final Card CARD = new Card(
            "comes-too-late",
            "Does every order and every hire come before the day that cannot move, and before the accepted plan needs it?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        LocalDate day = null;
        String what = "";
        for (Event event : evidence.project().events().values()) {
            LocalDate on = event.from() == null || !event.deadline()
                    ? null
                    : event.from().toLocalDate();
            if (on != null && (day == null || on.isBefore(day))) {
                day = on;
                what = Words.said(event.id()) + " on " + on + " cannot move";
            }
        }
        List<Finding> findings = new ArrayList<>();
        Map<String, LocalDate> needed = evidence.neededByPlan();
        for (Order order : evidence.project().orders().values()) {
            LogEntry happened = evidence.project().log().get(order.id());
            LocalDate comes = comes(order, happened);
            LocalDate begins = needed.get(order.id());
            if (comes != null && day != null && !comes.isBefore(day)) {
                findings.add(late(order, comes, what));
            } else if (comes != null && begins != null && !comes.isBefore(begins)) {
                findings.add(lateForPlan(order, comes, begins));
            }
        }
        if (day == null) {
            return findings.stream();
        }
        for (Hire hire : evidence.project().hires().values()) {
            if (!hire.offered().isEmpty() && !hire.offered().getFirst().isBefore(day)) {
                findings.add(late(hire, what));
            }
        }
        return findings.stream();
    }

    /** What comes on a day can be used from the next on: nobody says at what hour a van comes. */
    private static Finding lateForPlan(Order order, LocalDate comes, LocalDate begins) {
        return CARD.finding(
                Severity.FIX,
                List.of(new Subject("order", order.id())),
                "The order " + Words.said(order.id()) + " comes " + comes + ", and the accepted plan begins on "
                        + begins + " what needs it: " + Wording.things(order.items(), 4) + ".",
                List.of(),
                List.of(Fix.of("Ask for an earlier day, or plan again with what is known now.")));
    }

    /** As the log has it, else as promised, else as its usual time from the order on has it; null where it is here, or nothing is known. */
    private static @Nullable LocalDate comes(Order order, @Nullable LogEntry happened) {
        if (order.arrived() != null || (happened != null && happened.state() == SiteState.DONE)) {
            return null;
        }
        if (happened != null && happened.until() != null) {
            return happened.until().toLocalDate();
        }
        if (order.promised() != null || order.placed() == null || order.lead() == null) {
            return order.promised();
        }
        return order.placed().plusDays((long) Math.ceil(order.lead().seconds() / DAY_S));
    }

    private static Finding late(Order order, LocalDate comes, String what) {
        return CARD.finding(
                Severity.FIX,
                List.of(new Subject("order", order.id())),
                "The order " + Words.said(order.id())
                        + (order.promised() == null ? " comes about " : " is promised for ")
                        + comes + ", and " + what + ": "
                        + Wording.things(order.items(), 4) + (order.items().size() == 1 ? " is" : " are")
                        + " not there.",
                List.of(),
                List.of(Fix.of("Ask for an earlier day, another supplier or a loan, or plan that day without.")));
    }

    private static Finding late(Hire hire, String what) {
        return CARD.finding(
                Severity.FIX,
                List.of(new Subject("hire", hire.id())),
                Words.said(hire.id()) + " can be had from " + hire.offered().getFirst() + " on, and " + what + ".",
                List.of(),
                List.of(Fix.of("Hire it for days before, from somebody else where it must be.")));
    }
}
