package housewright.file;

import housewright.model.AcceptedPlan;
import housewright.model.Lighting;
import housewright.model.Project;
import java.util.List;
import java.util.Map;

/** The sections whose entries have ids, by the names that the file has for them. */
final class Sections {
    private Sections() {}

    /** In the order of the format. */
    static final List<String> NAMES = List.of(
            "rooms",
            "places",
            "pathways",
            "circuits",
            "models",
            "cable-types",
            "adapters",
            "equipment",
            "cables",
            "patch",
            "network-sends",
            "radio",
            "pairs",
            "feeds",
            "targets",
            "looks",
            "controls",
            "people",
            "hires",
            "events",
            "files",
            "tasks",
            "questions",
            "orders",
            "times",
            "pins",
            "log");

    /** Where a section stands in the document: most at the top, a few within another. */
    static List<String> holder(String section) {
        return switch (section) {
            case "rooms", "places", "pathways", "circuits" -> List.of("venue", section);
            case "times", "pins" -> List.of("plan", section);
            case "targets", "looks" -> List.of("lighting", section);
            default -> List.of(section);
        };
    }

    static Map<String, ?> of(Project project, String section) {
        Lighting lighting = project.lighting();
        AcceptedPlan plan = project.plan();
        return switch (section) {
            case "rooms" -> project.venue().rooms();
            case "places" -> project.venue().places();
            case "pathways" -> project.venue().pathways();
            case "circuits" -> project.venue().circuits();
            case "models" -> project.models();
            case "cable-types" -> project.cableTypes();
            case "adapters" -> project.adapters();
            case "equipment" -> project.equipment();
            case "cables" -> project.cables();
            case "patch" -> project.patch();
            case "network-sends" -> project.networkSends();
            case "radio" -> project.radio();
            case "pairs" -> project.pairs();
            case "feeds" -> project.feeds();
            case "targets" -> lighting == null ? Map.of() : lighting.targets();
            case "looks" -> lighting == null ? Map.of() : lighting.looks();
            case "controls" -> project.controls();
            case "people" -> project.people();
            case "hires" -> project.hires();
            case "events" -> project.events();
            case "files" -> project.files();
            case "tasks" -> project.tasks();
            case "questions" -> project.questions();
            case "orders" -> project.orders();
            case "times" -> plan == null ? Map.of() : plan.times();
            case "pins" -> plan == null ? Map.of() : plan.pins();
            case "log" -> project.log();
            default -> throw new IllegalArgumentException(section);
        };
    }

    /** An entry of it, for errors. */
    static String what(String section) {
        return switch (section) {
            case "times" -> "a task of the accepted plan";
            case "log" -> "an entry of the log";
            case "equipment" -> "a piece of equipment";
            case "patch" -> "a device with a patch";
            case "network-sends" -> "a network send";
            case "radio" -> "a radio link";
            case "people" -> "one of the people";
            case "cable-types" -> "a cable type of the project";
            case "models" -> "a model of the project";
            case "adapters" -> "an adapter of the project";
            default -> Scalars.withArticle(section.substring(0, section.length() - 1)) + " of this project";
        };
    }
}
