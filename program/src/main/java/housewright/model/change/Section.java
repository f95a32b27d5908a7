package housewright.model.change;

import housewright.model.AcceptedPlan;
import housewright.model.Adapter;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Circuit;
import housewright.model.Control;
import housewright.model.Equipment;
import housewright.model.Event;
import housewright.model.Feed;
import housewright.model.Hire;
import housewright.model.Lighting;
import housewright.model.LogEntry;
import housewright.model.Look;
import housewright.model.MadeFile;
import housewright.model.Model;
import housewright.model.NetworkSend;
import housewright.model.Order;
import housewright.model.Pathway;
import housewright.model.Person;
import housewright.model.Pin;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.RadioLink;
import housewright.model.Room;
import housewright.model.Target;
import housewright.model.Task;
import java.util.Map;
import java.util.function.Function;

/** The parts of a project that hold entities by id. */
public enum Section {
    ROOMS("venue.rooms", Room.class, p -> p.venue().rooms()),
    PLACES("venue.places", Place.class, p -> p.venue().places()),
    PATHWAYS("venue.pathways", Pathway.class, p -> p.venue().pathways()),
    CIRCUITS("venue.circuits", Circuit.class, p -> p.venue().circuits()),
    MODELS("models", Model.class, Project::models),
    CABLE_TYPES("cable-types", CableType.class, Project::cableTypes),
    ADAPTERS("adapters", Adapter.class, Project::adapters),
    EQUIPMENT("equipment", Equipment.class, Project::equipment),
    CABLES("cables", Cable.class, Project::cables),
    NETWORK_SENDS("network-sends", NetworkSend.class, Project::networkSends),
    RADIO("radio", RadioLink.class, Project::radio),
    FEEDS("feeds", Feed.class, Project::feeds),
    TARGETS("lighting.targets", Target.class, p -> lighting(p).targets()),
    LOOKS("lighting.looks", Look.class, p -> lighting(p).looks()),
    CONTROLS("controls", Control.class, Project::controls),
    PEOPLE("people", Person.class, Project::people),
    HIRES("hires", Hire.class, Project::hires),
    EVENTS("events", Event.class, Project::events),
    FILES("files", MadeFile.class, Project::files),
    TASKS("tasks", Task.class, Project::tasks),
    QUESTIONS("questions", Question.class, Project::questions),
    ORDERS("orders", Order.class, Project::orders),
    PINS("plan.pins", Pin.class, p -> plan(p).pins()),
    LOG("log", LogEntry.class, Project::log);

    private static final Lighting NO_LIGHTING = new Lighting(Map.of(), Map.of());

    private final String path;
    private final Class<? extends Record> type;

    @SuppressWarnings("ImmutableEnumChecker") // a function that keeps nothing
    private final Function<Project, Map<String, ? extends Record>> entities;

    Section(String path, Class<? extends Record> type, Function<Project, Map<String, ? extends Record>> entities) {
        this.path = path;
        this.type = type;
        this.entities = entities;
    }

    /** Its keys in the file, with a dot between. */
    public String path() {
        return path;
    }

    /** The record its entities are. */
    public Class<? extends Record> type() {
        return type;
    }

    /** Its entities in the order of the file. */
    public Map<String, ? extends Record> of(Project project) {
        return entities.apply(project);
    }

    static AcceptedPlan plan(Project project) {
        AcceptedPlan plan = project.plan();
        return plan == null ? AcceptedPlan.NONE : plan;
    }

    static Lighting lighting(Project project) {
        Lighting lighting = project.lighting();
        return lighting == null ? NO_LIGHTING : lighting;
    }
}
