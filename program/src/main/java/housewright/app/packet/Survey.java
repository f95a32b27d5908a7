package housewright.app.packet;

import housewright.finding.Finding;
import housewright.finding.Subject;
import housewright.model.Circuit;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.Room;
import housewright.model.Words;
import housewright.study.Study;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a person is asked: the open questions to them, then what the model lacks and somebody on site can see or measure. */
public final class Survey {
    static final String QUESTIONS = "questions";
    private static final String SURVEY = "survey";
    private static final List<String> LENGTHS = List.of("m", "cm", "mm", "ft", "in");
    private static final String LOOK_ONLY =
            "Look only: open no cover and switch nothing. What is behind a cover is the electrician's.";
    private static final String FROM_THE_FLOOR = "Stay on the floor; read it with a lamp or from a photo.";
    private static final String OVERHEAD =
            "Stay on the floor. What it carries is stated by somebody entitled to state it, never guessed or tried out.";

    private final Study study;
    private final Project project;
    private final Map<String, PacketItem> items = new LinkedHashMap<>();

    private Survey(Study study) {
        this.study = study;
        this.project = study.project();
    }

    /** @param person the id of whom it is for */
    public static List<PacketItem> of(Study study, String person) {
        Survey survey = new Survey(study);
        survey.questions(person);
        survey.venue();
        survey.findings();
        return List.copyOf(survey.items.values());
    }

    private void questions(String person) {
        for (Question each : project.questions().values()) {
            boolean open = each.answer() == null || each.answer().isBlank();
            if (open && person.equals(each.to()) && each.asks() != null) {
                String due = each.due() == null ? "" : "wanted by " + each.due();
                put(new PacketItem(
                        each.id(),
                        QUESTIONS,
                        "questions." + each.id(),
                        "answer",
                        each.about() == null ? "" : each.about(),
                        each.asks(),
                        "",
                        List.of(),
                        List.of(),
                        "",
                        Answering.asItIs(each),
                        due));
            }
        }
    }

    private void put(PacketItem item) {
        items.putIfAbsent(item.subject() + " " + item.field(), item);
    }

    private void ask(String subject, String field, String asks, String hint, List<String> units, String caution) {
        ask(subject, field, asks, hint, units, List.of(), caution);
    }

    private void ask(
            String subject,
            String field,
            String asks,
            String hint,
            List<String> units,
            List<String> choices,
            String caution) {
        String key = "s" + (items.size() + 1);
        String was = Answering.cell(project, subject, field);
        put(new PacketItem(
                key,
                SURVEY,
                subject,
                field,
                subject.substring(subject.lastIndexOf('.') + 1),
                asks,
                hint,
                units,
                choices,
                caution,
                was,
                ""));
    }

    private void venue() {
        for (Room room : project.venue().rooms().values()) {
            if (room.outline().isEmpty()) {
                ask(
                        subject("venue.rooms", room.id()),
                        "note",
                        "What are the sides of " + said(room.id()) + ", going round?",
                        "each wall's length in order, such as 18 m, 11 m, 18 m, 11 m; a sketch as a photo helps",
                        List.of(),
                        "");
            }
            if (room.ceiling() == null) {
                ask(
                        subject("venue.rooms", room.id()),
                        "ceiling",
                        "How high is the ceiling of " + said(room.id()) + " above its floor?",
                        "",
                        LENGTHS,
                        "Measure from the floor, with a tape along a wall or a laser; climb on nothing.");
            }
        }
        for (Place place : project.venue().places().values()) {
            if (place.at() == null && place.room() != null) {
                ask(
                        subject("venue.places", place.id()),
                        "at",
                        "Where in " + said(place.room()) + " is " + said(place.id()) + "?",
                        "along, across and up, from the corner the plan begins in: 3 m, 4.2 m, 1 m",
                        List.of(),
                        "");
            }
            if (place.hang() != null && place.hang().limit() == null) {
                ask(
                        subject("venue.places", place.id()),
                        "hang.stated-by",
                        "Who states what " + said(place.id()) + " carries, and when did they?",
                        "name, trade and date; photograph the plate or the letter",
                        List.of(),
                        OVERHEAD);
                ask(
                        subject("venue.places", place.id()),
                        "hang.limit",
                        "What do they state that " + said(place.id()) + " carries?",
                        "",
                        List.of("kg", "lb"),
                        OVERHEAD);
            }
        }
        for (Pathway way : project.venue().pathways().values()) {
            String between = said(way.from()) + " and " + said(way.to());
            if (study.cabling().metres(way) == null) {
                ask(
                        subject("venue.pathways", way.id()),
                        "length",
                        "How long is the way of the cable between " + between + "?",
                        "along where it really runs",
                        LENGTHS,
                        "");
            }
            if (way.kind() == PathwayKind.CONDUIT && way.bore() == null) {
                ask(
                        subject("venue.pathways", way.id()),
                        "bore",
                        "What is the inside diameter of the conduit between " + between + "?",
                        "",
                        List.of("mm", "in"),
                        LOOK_ONLY);
            }
        }
        for (Circuit circuit : project.venue().circuits().values()) {
            if (circuit.rating() == null) {
                ask(
                        subject("venue.circuits", circuit.id()),
                        "rating",
                        "What is printed on the breaker of " + said(circuit.id()) + "?",
                        "the number before or after the A",
                        List.of("A"),
                        LOOK_ONLY);
            }
        }
    }

    private static String subject(String section, String id) {
        return section + "." + id;
    }

    private static String said(@Nullable String id) {
        return id == null ? "an unknown place" : Words.said(id);
    }

    /** Findings of rules that say what is not known, of things that are there to be looked at. */
    private void findings() {
        Stream.concat(study.findingsBeyondFeeds().stream(), study.laterBeyondFeeds().stream())
                .sorted(Finding.REPORT_ORDER)
                .forEach(finding -> finding(finding.rule(), finding.subjects().getFirst()));
    }

    private void finding(String rule, Subject about) {
        String id = about.id();
        Equipment thing = project.equipment().get(id);
        boolean there = thing != null && thing.life() != Life.NEW && thing.life() != Life.HIRE;
        String equipment = subject("equipment", id);
        switch (rule) {
            case "cable-length-unknown" ->
                ask(subject("cables", id), "length", "How long is the cable " + id + ", end to end?", "", LENGTHS, "");
            case "type-missing" -> {
                if (there) {
                    ask(
                            equipment,
                            "note",
                            "What is " + said(id) + "?",
                            "what is printed on it; photograph front, back and type plate",
                            List.of(),
                            LOOK_ONLY);
                }
            }
            case "place-missing" -> {
                if (there) {
                    ask(
                            equipment,
                            "at",
                            "Where is " + said(id) + "?",
                            "",
                            List.of(),
                            List.copyOf(project.venue().places().keySet()),
                            "");
                }
            }
            case "rack-unit-missing" -> {
                if (there) {
                    ask(
                            equipment,
                            "unit",
                            "At which unit of its rack does " + said(id) + " begin?",
                            "counted from the bottom, the lowest is 1",
                            List.of(),
                            "");
                }
            }
            case "dmx-address-missing" -> {
                if (there) {
                    ask(
                            equipment,
                            "light.address",
                            "Which address does " + said(id) + " show?",
                            "a number from 1 to 512",
                            List.of(),
                            FROM_THE_FLOOR);
                }
            }
            case "address-missing" -> {
                if (there) {
                    ask(
                            equipment,
                            "ip",
                            "Which network address has " + said(id) + "?",
                            "such as 192.168.10.20",
                            List.of(),
                            "");
                }
            }
            default -> {}
        }
    }
}
