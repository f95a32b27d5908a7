package housewright.work;

import housewright.cable.Cabling;
import housewright.cable.Lead;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Equipment;
import housewright.model.Hire;
import housewright.model.Kind;
import housewright.model.LabourUnit;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Order;
import housewright.model.Place;
import housewright.model.Practice;
import housewright.model.Project;
import housewright.model.Room;
import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import housewright.model.Termination;
import housewright.model.Types;
import housewright.model.Words;
import housewright.signal.FeedProof;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the steps of the derivation share: the two states, the drafts so far, and how lengths and heights are reckoned. */
final class Job {
    /** Reach and steps where nobody says: common practice, as in the built-in practice. */
    private static final double REACH_M = 2.0;

    private static final double STEPS_M = 3.5;
    private static final double HEAVY_KG = 20;

    /** A unit that is missing counts as this, and says so. */
    private static final int UNKNOWN_MINUTES = 15;

    /** What could fall is heavy: nobody else is in the room. Where no more than a tool could, the floor below is fenced off. */
    private static final Set<TaskKind> LOADS =
            EnumSet.of(TaskKind.MOUNT, TaskKind.MOVE, TaskKind.STRIKE, TaskKind.SECURE, TaskKind.OWN);

    /** Work for which nobody can hold on to the steps. */
    private static final Set<TaskKind> BOTH_HANDS =
            EnumSet.of(TaskKind.MOUNT, TaskKind.MOVE, TaskKind.STRIKE, TaskKind.SECURE, TaskKind.TERMINATE);

    final Types types;
    final Project project;
    final Practice practice;
    final Cabling today;
    final Cabling target;
    final List<FeedProof> proofsToday;
    final List<FeedProof> proofsTarget;
    final Map<String, Draft> drafts = new LinkedHashMap<>();
    /** The task that one has become part of, by id. */
    final Map<String, String> joined = new HashMap<>();

    final Set<String> notes = new LinkedHashSet<>();
    private final Map<String, Set<Draft>> byEntity = new HashMap<>();
    private final Map<String, String> orderOf = new HashMap<>();
    private final @Nullable Hire lift;
    private final @Nullable Hire tower;

    Job(Types types, Cabling today, Cabling target, List<FeedProof> proofsToday, List<FeedProof> proofsTarget) {
        this.types = types;
        this.project = types.project();
        this.practice = types.practice();
        this.today = today;
        this.target = target;
        this.proofsToday = proofsToday;
        this.proofsTarget = proofsTarget;
        for (Order order : project.orders().values()) {
            order.items().forEach(item -> orderOf.putIfAbsent(item, order.id()));
        }
        Hire found = null;
        for (Hire hire : project.hires().values()) {
            if (hire.isLift() || (found == null && hire.isTower())) {
                found = found != null && found.isLift() ? found : hire;
            }
        }
        this.lift = found;
        this.tower = project.hires().values().stream()
                .filter(Hire::isTower)
                .findFirst()
                .orElse(null);
    }

    // ---- drafts ----

    Draft draft(TaskKind kind, String about, String title, String why) {
        String section = kind.section();
        return draft(kind, section == null ? kind.word() : kind.id(about), about, title, why);
    }

    Draft draft(TaskKind kind, String id, String about, String title, String why) {
        String section = kind.section();
        Draft draft = new Draft(id, kind, title, why);
        drafts.put(draft.id, draft);
        if (section != null) {
            about(draft, section, about);
        }
        return draft;
    }

    void about(Draft draft, String section, String entity) {
        draft.about(section, entity);
        byEntity.computeIfAbsent(section + "." + entity, each -> new LinkedHashSet<>())
                .add(draft);
    }

    @Nullable
    Draft find(TaskKind kind, String about) {
        return drafts.get(joined.getOrDefault(kind.id(about), kind.id(about)));
    }

    /** What changes an entity, such as {@code cables.C501}. */
    Collection<Draft> changing(String entity) {
        return byEntity.getOrDefault(entity, Set.of());
    }

    /** The tasks after which a thing is where it belongs. */
    List<Draft> placed(String equipment) {
        List<Draft> placed = new ArrayList<>(2);
        for (TaskKind kind : List.of(TaskKind.MOUNT, TaskKind.MOVE)) {
            Draft draft = find(kind, equipment);
            if (draft != null) {
                placed.add(draft);
            }
        }
        return placed;
    }

    // ---- lengths ----

    /** Adds so many of a labour unit to a task. */
    void takes(Draft draft, String unit, double count) {
        if (count <= 0) {
            return;
        }
        LabourUnit labour = practice.labour().get(unit);
        if (labour == null) {
            draft.assumed.add(UNKNOWN_MINUTES + " minutes for each " + unit + ", for which there is no labour unit");
            draft.count(unit, count, "piece");
            draft.leastSeconds += 60 * UNKNOWN_MINUTES * count / 2;
            draft.likelySeconds += 60 * UNKNOWN_MINUTES * count;
            draft.mostSeconds += 60 * UNKNOWN_MINUTES * count * 2;
            return;
        }
        draft.count(unit, count, labour.per());
        draft.leastSeconds += labour.least().seconds() * count;
        draft.likelySeconds += labour.likely().seconds() * count;
        draft.mostSeconds += labour.most().seconds() * count;
        draft.crew = Math.max(draft.crew, labour.crew());
        labour.skills().stream().filter(skill -> !skill.equals("general")).forEach(draft.skills::add);
    }

    // ---- where, and how high ----

    @Nullable
    Place place(@Nullable String id) {
        return id == null ? null : project.venue().places().get(id);
    }

    /** Where it is; a card or a program is where its host is. */
    @Nullable
    String placeOf(Equipment thing) {
        Set<String> seen = new LinkedHashSet<>();
        for (Equipment each = thing; each != null && seen.add(each.id()); ) {
            if (each.at() != null) {
                return each.at();
            }
            String host = each.partOf() != null ? each.partOf() : each.runsOn();
            each = host == null ? null : project.equipment().get(host);
        }
        return null;
    }

    /** Above its room's floor, in m; null where nobody has said. */
    @Nullable
    Double height(@Nullable Place place) {
        if (place == null || place.at() == null) {
            return null;
        }
        Room room = project.venue().rooms().get(String.valueOf(place.room()));
        double floor = room == null || room.floor() == null ? 0 : room.floor().metres();
        return place.at().z().metres() - floor;
    }

    double reach() {
        return practice.reach() == null ? REACH_M : practice.reach().metres();
    }

    double steps() {
        return practice.steps() == null ? STEPS_M : practice.steps().metres();
    }

    boolean hasTower() {
        return tower != null;
    }

    boolean isHeavy(@Nullable Model model) {
        double limit = practice.heavy() == null ? HEAVY_KG : practice.heavy().kilograms();
        return model != null && model.weight() != null && model.weight().kilograms() > limit;
    }

    boolean hangs(@Nullable String place) {
        Place where = place(place);
        return where != null && where.hang() != null;
    }

    boolean isRacked(Equipment thing) {
        Place where = place(thing.at());
        return where != null && where.rack() != null;
    }

    /** The work is at that place: how high, and what that asks for. */
    void at(Draft draft, @Nullable String place) {
        if (place == null) {
            draft.assumed.add("work from the floor: no place is said");
            return;
        }
        draft.at(place);
        Double height = height(place(place));
        if (height == null) {
            draft.assumed.add("work from the floor: nobody has said where " + Words.said(place) + " is");
        } else {
            up(draft, height);
        }
    }

    /** As {@link #at}, with both feet on the floor: what hangs is set by its remote control or over the network. */
    void fromTheFloor(Draft draft, Equipment thing) {
        String place = placeOf(thing);
        Double height = height(place(place));
        if (place != null && height != null && height > reach()) {
            draft.at(place);
            draft.assumed.add("set from the floor, by its remote control or over the network: it hangs "
                    + Say.metres(height) + " up");
        } else {
            at(draft, place);
        }
    }

    /** The work is so high above the floor, in m. */
    void up(Draft draft, double height) {
        draft.high(height);
        if (height <= reach()) {
            return;
        }
        if (height <= steps()) {
            Hire platform = tower;
            if (platform != null && BOTH_HANDS.contains(draft.kind)) {
                draft.crew = Math.max(draft.crew, 2);
                hire(draft, platform);
            } else {
                draft.cautions.add(
                        "From steps on firm ground, never from the top step, with somebody within call; local rules decide.");
            }
            return;
        }
        draft.overhead = true;
        draft.crew = Math.max(draft.crew, 2);
        if (LOADS.contains(draft.kind)) {
            draft.conditions.add(RoomCondition.EMPTY);
        }
        draft.cautions.add(
                "Work at height, " + Say.metres(height)
                        + " up: fence off the floor below and keep it clear, tools tied on; only people trained for it, by local law.");
        Hire way = lift;
        if (way == null) {
            draft.assumed.add(
                    "somebody says how to get " + Say.metres(height) + " up: no lift or tower is entered under hires");
        } else {
            hire(draft, way);
        }
    }

    private void hire(Draft draft, Hire hire) {
        if (lift != null && draft.hires.contains(lift.id())) {
            return; // whoever is in the lift needs no tower
        }
        if (hire.equals(lift) && tower != null && draft.hires.remove(tower.id()) && tower.skill() != null) {
            draft.skills.remove(tower.skill());
        }
        draft.hires.add(hire.id());
        if (hire.skill() != null) {
            draft.skills.add(hire.skill());
        }
    }

    // ---- deliveries ----

    /** The task uses something new, which must be there. */
    void uses(Draft draft, String item, @Nullable String type) {
        String order = orderOf.get(item);
        if (order == null && type != null) {
            order = orderOf.get(type);
        }
        if (order == null) {
            draft.unordered.add(item);
        } else {
            draft.deliveries.add(order);
            draft.after(find(TaskKind.RECEIVE, order));
        }
    }

    /** How many pieces of an order are the job's, cables counted one by one. */
    int pieces(Order order) {
        int pieces = 0;
        for (String item : new LinkedHashSet<>(order.items())) {
            if (project.equipment().containsKey(item) || project.cables().containsKey(item)) {
                pieces++;
            } else {
                for (Equipment each : project.equipment().values()) {
                    pieces += isNew(each) && item.equals(each.model()) ? 1 : 0;
                }
                for (Cable each : project.cables().values()) {
                    pieces += each.life() == Life.NEW && item.equals(each.type()) && !isFixed(each) ? 1 : 0;
                }
                if (types.findCableType(item).isPresent() && hasFixed(item)) {
                    pieces++; // the drum
                }
            }
        }
        return pieces;
    }

    /** How many of the pieces are loose leads. */
    int leads(Order order) {
        int leads = 0;
        for (Cable each : project.cables().values()) {
            boolean ordered = order.items().contains(each.id()) || order.items().contains(String.valueOf(each.type()));
            leads += each.life() == Life.NEW && !isFixed(each) && ordered ? 1 : 0;
        }
        return leads;
    }

    private boolean hasFixed(String type) {
        return project.cables().values().stream()
                .anyMatch(each -> each.life() == Life.NEW && type.equals(each.type()) && isFixed(each));
    }

    // ---- what changes ----

    static boolean isNew(Equipment thing) {
        return thing.life() == Life.NEW;
    }

    static boolean isStruck(Equipment thing) {
        return thing.life() == Life.STRIKE;
    }

    /** There before and after. */
    static boolean stays(Equipment thing) {
        return thing.life() == Life.KEEP || thing.life() == Life.MOVE;
    }

    /** It stands, hangs or is racked elsewhere afterwards, or is said to be moved. */
    static boolean isMoved(Equipment thing) {
        Equipment was = thing.today();
        return stays(thing)
                && (!Objects.equals(was.at(), thing.at())
                        || !Objects.equals(was.unit(), thing.unit())
                        || (thing.life() == Life.MOVE && thing.was() == null));
    }

    static boolean isSwapped(Equipment thing) {
        return stays(thing) && !Objects.equals(thing.today().model(), thing.model());
    }

    @Nullable
    Model model(Equipment thing) {
        return types.findModel(thing.model()).orElse(null);
    }

    @Nullable
    Kind kind(Equipment thing) {
        Model model = model(thing);
        return model == null ? null : model.kind();
    }

    /** A card in itself, or in a card of its own: broken data, which a rule reports. */
    boolean isPartOfItself(Equipment thing) {
        Set<String> seen = new LinkedHashSet<>();
        for (Equipment each = thing; each != null; ) {
            if (!seen.add(each.id())) {
                return true;
            }
            String host = each.partOf() != null ? each.partOf() : each.runsOn();
            each = host == null ? null : project.equipment().get(host);
        }
        return false;
    }

    boolean isPanel(@Nullable String equipment) {
        Equipment thing = equipment == null ? null : project.equipment().get(equipment);
        return thing != null && kind(thing) == Kind.PANEL;
    }

    /** Pulled along the building or made off on site; any other is a loose lead. */
    static boolean isFixed(Cable cable) {
        return CableType.isBought(cable.type()) && (!cable.via().isEmpty() || cable.terminated() == Termination.SITE);
    }

    static boolean isReplugged(Cable cable) {
        Cable was = cable.today();
        return !Objects.equals(was.from(), cable.from())
                || !Objects.equals(was.to(), cable.to())
                || !was.ways().equals(cable.ways());
    }

    static boolean isRerouted(Cable cable) {
        return !cable.today().via().equals(cable.via());
    }

    static boolean hasOtherEnds(Cable cable) {
        return !cable.today().ends().equals(cable.ends());
    }

    @Nullable
    Lead lead(String cable) {
        return target.findLead(cable).orElse(null);
    }
}
