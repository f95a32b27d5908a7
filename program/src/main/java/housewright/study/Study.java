package housewright.study;

import housewright.cable.Cabling;
import housewright.check.Checks;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.signal.SignalRules;
import housewright.finding.Exempted;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.Subject;
import housewright.light.Lights;
import housewright.model.AcceptedPlan;
import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.Figures;
import housewright.model.Library;
import housewright.model.Life;
import housewright.model.LogEntry;
import housewright.model.Project;
import housewright.model.Types;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.network.Networks;
import housewright.operation.Operation;
import housewright.order.Need;
import housewright.order.OrderLine;
import housewright.order.Orders;
import housewright.picture.Pictures;
import housewright.power.Supplies;
import housewright.room.Rooms;
import housewright.signal.FeedProof;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.signal.Signals;
import housewright.sound.Sound;
import housewright.work.Work;
import housewright.work.WorkTask;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One project at one moment, and everything that follows from it. Safe to ask from several threads; every answer is
 * worked out once. Equal projects give equal answers.
 */
public final class Study implements Evidence {
    private final Types types;
    private final Moment moment;
    private final List<Rule> rules;
    private final Map<Moment, Study> byMoment;
    private final Signals.Layouts layouts;
    private final Once<Map<String, Present>> things;
    private final Once<Signals> signals;
    private final Once<Cabling> cabling;
    private final Once<Pictures> pictures;
    private final Once<Networks> networks;
    private final Once<Sound> sound;
    private final Once<Lights> lights;
    private final Once<Supplies> supplies;
    private final Once<Rooms> rooms;
    private final Once<Operation> operation;
    private final Once<Work> work;
    private final Once<Orders> orders;
    private final Once<Findings> beyondFeeds;
    private final Once<Findings> findings;
    private final Once<Verdict> verdict;
    private final Map<String, Once<List<Mend>>> mends;
    private final @Nullable Study alike;

    /**
     * @param alike one of the same design, whose answers that rest on the design alone are taken over; null for none
     * @param work the tasks, where they are known to be the same; null for none
     */
    private Study(
            Types types,
            Moment moment,
            List<Rule> rules,
            Map<Moment, Study> byMoment,
            Signals.Layouts layouts,
            @Nullable Study alike,
            @Nullable Once<Work> work) {
        this.types = types;
        this.moment = moment;
        this.rules = rules;
        this.byMoment = byMoment;
        this.layouts = layouts;
        this.alike = alike;
        if (alike == null) {
            this.mends = new ConcurrentHashMap<>();
            this.things = new Once<>(() -> Present.all(types, moment, layouts));
            this.signals = new Once<>(() -> Signals.of(types, moment, layouts));
            this.cabling = new Once<>(() -> Cabling.of(types, things.get(), moment));
            this.pictures = new Once<>(() -> Pictures.of(types, things.get(), signals()));
            this.networks = new Once<>(() -> Networks.of(types, things.get(), signals(), cabling()));
            this.sound = new Once<>(() -> Sound.of(project(), things.get(), signals(), cabling()));
            this.lights = new Once<>(() -> Lights.of(types, things.get(), signals(), cabling()));
            this.supplies = new Once<>(() -> Supplies.of(types, things.get(), cabling(), networks()));
            this.rooms = new Once<>(() -> Rooms.of(types, things.get()));
            this.operation = new Once<>(() -> Operation.of(project(), things.get(), cabling(), signals()));
        } else {
            this.mends = alike.mends;
            this.things = alike.things;
            this.signals = alike.signals;
            this.cabling = alike.cabling;
            this.pictures = alike.pictures;
            this.networks = alike.networks;
            this.sound = alike.sound;
            this.lights = alike.lights;
            this.supplies = alike.supplies;
            this.rooms = alike.rooms;
            this.operation = alike.operation;
        }
        this.work = work != null
                ? work
                : new Once<>(() -> {
                    Study before = at(Moment.today());
                    return Work.of(types, before.cabling(), cabling(), before.proofs(), proofs());
                });
        this.orders = new Once<>(() -> orders(begins()));
        this.beyondFeeds = new Once<>(() -> Checks.run(someRules(false), this));
        this.findings = new Once<>(() -> Checks.together(rules, beyondFeeds.get(), Checks.run(someRules(true), this)));
        this.verdict = new Once<>(() -> Verdict.of(this));
    }

    /** Those that say the state of a feed look for mends of it, which takes long; the others need not wait for them. */
    private List<Rule> someRules(boolean stateOfFeed) {
        return rules.stream()
                .filter(rule -> SignalRules.isStateOfFeed(rule) == stateOfFeed)
                .toList();
    }

    /** The project when the work is done. */
    public static Study of(Project project, Library library) {
        return of(project, library, RuleCatalogue.all());
    }

    static Study of(Project project, Library library, List<Rule> rules) {
        return of(new Types(project, library), rules, new Signals.Layouts());
    }

    private static Study of(Types types, List<Rule> rules, Signals.Layouts layouts) {
        Map<Moment, Study> byMoment = new ConcurrentHashMap<>();
        Study target = new Study(types, Moment.target(), rules, byMoment, layouts, null, null);
        byMoment.put(target.moment, target);
        return target;
    }

    @Override
    public Study at(Moment other) {
        return byMoment.computeIfAbsent(
                other,
                each -> new Study(types, each, rules, byMoment, layouts, alike == null ? null : alike.at(each), null));
    }

    /** What becomes of it with another content of the project, at the same moment. */
    public Study with(Project changed) {
        Types other = new Types(changed, types.library());
        return of(other, rules, layouts.keptFor(other)).at(moment);
    }

    /**
     * The study of the project after an edit, when the work is done. Where the edit is of the plan or the log alone, what
     * rests on the design is not worked out again; nor are the tasks, unless it names one that nothing named before.
     */
    public Study after(Project edited) {
        boolean sameDesign = Change.between(project(), edited).stream().allMatch(Study::leavesTheDesign);
        Types other = new Types(edited, types.library());
        if (!sameDesign) {
            return of(other, rules, layouts.keptFor(other));
        }
        Study first = at(Moment.target());
        Map<Moment, Study> others = new ConcurrentHashMap<>();
        Study after = new Study(
                other,
                first.moment,
                rules,
                others,
                layouts,
                first.alike == null ? first : first.alike,
                Work.isAlike(project(), edited) ? first.work : null);
        others.put(after.moment, after);
        return after;
    }

    private static boolean leavesTheDesign(Change change) {
        return switch (change) {
            case Change.Accept accept -> true;
            case Change.Put put -> isOfThePlan(put.section());
            case Change.Drop drop -> isOfThePlan(drop.section());
            case Change.Arrange arrange -> isOfThePlan(arrange.section());
            case Change.Patch patch -> false;
            case Change.Unpatch unpatch -> false;
            case Change.Repatch repatch -> false;
            case Change.Pair pair -> false;
            case Change.Describe describe -> false;
            case Change.Reckon reckon -> false;
            case Change.Exempt exempt -> false;
        };
    }

    private static boolean isOfThePlan(Section section) {
        return section == Section.PINS || section == Section.LOG;
    }

    @Override
    public Project project() {
        return types.project();
    }

    @Override
    public Types types() {
        return types;
    }

    @Override
    public Moment moment() {
        return moment;
    }

    @Override
    public Signals signals() {
        return signals.get();
    }

    @Override
    public Cabling cabling() {
        return cabling.get();
    }

    @Override
    public Pictures pictures() {
        return pictures.get();
    }

    @Override
    public Networks networks() {
        return networks.get();
    }

    @Override
    public Sound sound() {
        return sound.get();
    }

    @Override
    public Lights lights() {
        return lights.get();
    }

    @Override
    public Supplies supplies() {
        return supplies.get();
    }

    @Override
    public Rooms rooms() {
        return rooms.get();
    }

    @Override
    public Operation operation() {
        return operation.get();
    }

    /** The tasks from TODAY to TARGET, whatever moment this is. */
    public Work work() {
        return moment.equals(Moment.target()) ? work.get() : at(Moment.target()).work();
    }

    /** Whether {@link #orders()} are at hand: they rest on all of the work, which takes long to find. */
    public boolean knowsOrders() {
        return at(Moment.target()).orders.isKnown();
    }

    /**
     * What is bought and hired, whatever moment this is; wanted when the accepted plan begins what uses it, or on the first
     * day on site where none does.
     */
    public Orders orders() {
        return moment.equals(Moment.target())
                ? orders.get()
                : at(Moment.target()).orders();
    }

    /**
     * What a plan of the work is made for.
     *
     * @param from the day from which an order that nobody has placed could be placed
     */
    public PlanJob planJob(LocalDate from) {
        return PlanJob.of(types, work(), at(Moment.today()).proofs(), from);
    }

    /**
     * As {@link #planJob}, with the pins, what has happened and the accepted plan.
     *
     * @param now nothing that is not begun yet begins before it
     * @param happened by the ids of tasks and orders; the project's own log as a rule
     */
    public PlanBasis planBasis(LocalDateTime now, Map<String, LogEntry> happened) {
        return PlanBasis.of(this, now, happened);
    }

    /** The day on which the accepted plan begins each of its tasks. */
    private Map<String, LocalDate> begins() {
        AcceptedPlan plan = project().plan();
        Map<String, LocalDate> begins = new HashMap<>();
        if (plan != null) {
            plan.times().forEach((id, task) -> begins.put(id, task.from().toLocalDate()));
        }
        return begins;
    }

    @Override
    public Map<String, LocalDate> neededByPlan() {
        AcceptedPlan plan = project().plan();
        if (plan == null || plan.times().isEmpty()) {
            return Map.of();
        }
        Map<String, LocalDate> needed = new HashMap<>();
        for (OrderLine line : orders().lines()) {
            if (line.order() != null && line.need() != null && line.planned()) {
                needed.merge(line.order(), line.need(), (one, other) -> one.isBefore(other) ? one : other);
            }
        }
        return needed;
    }

    /**
     * As {@link #orders()}, wanted by a plan.
     *
     * @param begins the day on which each task begins, by its id; of a task that is not in it nothing is known
     */
    public Orders orders(Map<String, LocalDate> begins) {
        Work tasks = work();
        Map<String, Need> needs = new HashMap<>();
        Map<List<String>, Need> known = new HashMap<>(); // of a round of work, all that it needs have the same
        Function<List<String>, Need> need = using -> known.computeIfAbsent(using, each -> need(tasks, each, begins));
        for (Equipment each : project().equipment().values()) {
            if (each.life() == Life.NEW) {
                needs.put(each.id(), need.apply(tasks.using(each.id())));
            }
        }
        for (Cable each : project().cables().values()) {
            if (each.life() == Life.NEW) {
                needs.put(each.id(), need.apply(tasks.using(each.id())));
            }
        }
        for (String hire : project().hires().keySet()) {
            List<String> using = tasks.tasks().stream()
                    .filter(task -> task.hires().contains(hire))
                    .map(WorkTask::id)
                    .toList();
            needs.put(hire, need.apply(using));
        }
        return Orders.of(
                types, at(Moment.today()).cabling(), at(Moment.target()).cabling(), needs, SiteDays.first(project()));
    }

    private static Need need(Work work, List<String> using, Map<String, LocalDate> begins) {
        LocalDate first = using.stream()
                .map(begins::get)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(null);
        return new Need(first, using, work.downstream(using));
    }

    /** Every feed's proof, in the order of the file. */
    public List<FeedProof> proofs() {
        return signals().proofs();
    }

    public Optional<FeedProof> findProof(String feed) {
        return signals().findProof(feed);
    }

    @Override
    public List<Mend> mends(FeedProof proof) {
        if (proof.proven() || proof.pairs().isEmpty()) {
            return List.of();
        }
        return mends.computeIfAbsent(
                        proof.feed().id(),
                        feed -> new Once<>(() -> List.copyOf(signals().mends(proof))))
                .get();
    }

    /** Whether {@link #mends} are at hand: to find that there is none can take long. */
    public boolean knowsMends(FeedProof proof) {
        Once<List<Mend>> known = mends.get(proof.feed().id());
        return proof.proven() || proof.pairs().isEmpty() || (known != null && known.isKnown());
    }

    /** Whether a feed that fails at this moment is proven in the target: the work brings it. */
    public boolean comesWithTheWork(FeedProof proof) {
        return !moment.equals(Moment.target())
                && !proof.proven()
                && at(Moment.target())
                        .findProof(proof.feed().id())
                        .filter(FeedProof::proven)
                        .isPresent();
    }

    /** The project's own reason to let a feed be that is not proven. */
    public Optional<Exempted> findExemption(FeedProof proof) {
        Subject feed = Subject.feed(proof.feed().id());
        return findings().exempted().stream()
                .filter(each -> each.finding().subjects().getFirst().equals(feed))
                .filter(each -> SignalRules.isStateOfFeed(each.finding().rule()))
                .findFirst();
    }

    /** Whether it is no fault yet, at this stage of the job, that a feed is not proven. */
    public boolean isNotYetDue(FeedProof proof) {
        Subject feed = Subject.feed(proof.feed().id());
        return findings().notYetDue().stream()
                .filter(finding -> SignalRules.isStateOfFeed(finding.rule()))
                .anyMatch(finding -> finding.subjects().getFirst().equals(feed));
    }

    /** The findings that are due, without those that only say the state of a feed; quicker than all of them. */
    public List<Finding> findingsBeyondFeeds() {
        return beyondFeeds.get().due();
    }

    /** The findings that are due at a later stage, without those that only say the state of a feed. */
    public List<Finding> laterBeyondFeeds() {
        return beyondFeeds.get().notYetDue();
    }

    /** The types in use whose figures are typical ones, to be replaced by the data sheet's, in order of first use. */
    public List<String> typicalModels() {
        Set<String> typical = new LinkedHashSet<>();
        for (Equipment equipment : project().equipment().values()) {
            if (moment.isThere("equipment", equipment.id(), equipment.life())) {
                Equipment now = moment.isDone("equipment", equipment.id()) ? equipment : equipment.today();
                types.findModel(now.model())
                        .filter(model -> model.figures() == Figures.TYPICAL)
                        .ifPresent(model -> typical.add(model.id()));
            }
        }
        return List.copyOf(typical);
    }

    /** What the rules find. */
    public Findings findings() {
        return findings.get();
    }

    /** The answer in a line. */
    public Verdict verdict() {
        return verdict.get();
    }
}
