package housewright.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The whole job: one document. */
public record Project(
        @Doc("Version of this format") @Key("housewright") int format,

        @Doc("What the job is, and what holds throughout") @Key("project")
        About about,

        @Doc("The building") Venue venue,

        @Doc("The project's own equipment types, beside the built-in library")
        Map<String, Model> models,

        @Doc("The project's own cable types") Map<String, CableType> cableTypes,
        @Doc("The project's own adapters") Map<String, Adapter> adapters,
        @Doc("The things themselves") Map<String, Equipment> equipment,
        @Doc("The cables") Map<String, Cable> cables,

        @Doc("What is set, not wired: routing inside a device")
        Map<String, List<PatchEntry>> patch,

        @Doc("Carried by a network, not a cable of its own") Map<String, NetworkSend> networkSends,
        @Doc("Radio links") Map<String, RadioLink> radio,
        @Doc("Channels that belong together, left first") Map<String, List<Ref>> pairs,
        @Doc("What must arrive where, and what must never") Map<String, Feed> feeds,

        @Doc("Light: what it is for, and the looks") @Nullable
        Lighting lighting,

        @Doc("What a volunteer presses, and what it does") Map<String, Control> controls,
        @Doc("Who is on the job") Map<String, Person> people,
        @Doc("What is hired") Map<String, Hire> hires,

        @Doc("Services, rehearsals and whatever else needs the room")
        Map<String, Event> events,

        @Doc("Files made beforehand and loaded on the day") Map<String, MadeFile> files,
        @Doc("Work that no drawing implies") Map<String, Task> tasks,
        @Doc("Questions to people and their answers") Map<String, Question> questions,
        @Doc("What is ordered where") Map<String, Order> orders,

        @Doc("What the job may cost") @Nullable Budget budget,

        @Doc("How long work takes and what is bought beyond what is needed, where that differs from common practice")
        @Nullable
        Practice practice,

        @Doc("The plan that holds, and what every plan is held to") @Nullable
        AcceptedPlan plan,

        @Doc("What happened on site, by the ids of tasks and orders")
        Map<String, LogEntry> log,

        @Doc("Rules switched off for a subject, with the reason")
        List<Exemption> exempt) {
    public Project {
        models = Ordered.copy(models);
        cableTypes = Ordered.copy(cableTypes);
        adapters = Ordered.copy(adapters);
        equipment = Ordered.copy(equipment);
        cables = Ordered.copy(cables);
        patch = Ordered.copy(patch);
        networkSends = Ordered.copy(networkSends);
        radio = Ordered.copy(radio);
        pairs = Ordered.copy(pairs);
        feeds = Ordered.copy(feeds);
        controls = Ordered.copy(controls);
        people = Ordered.copy(people);
        hires = Ordered.copy(hires);
        events = Ordered.copy(events);
        files = Ordered.copy(files);
        tasks = Ordered.copy(tasks);
        questions = Ordered.copy(questions);
        orders = Ordered.copy(orders);
        log = Ordered.copy(log);
        exempt = List.copyOf(exempt);
    }
}
