package housewright.card;

import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Person;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Room;
import housewright.model.Words;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How a card says things, places and people. */
final class Names {
    /** What hangs with its middle above this, in m over the floor, is out of reach (as rule switched-on-overhead). */
    private static final double REACH = 2;

    private final Project project;
    private final Map<String, Present> things;

    Names(Project project, Map<String, Present> things) {
        this.project = project;
        this.things = things;
    }

    /** As it stands on its label. */
    static String thing(String id) {
        return Words.said(id);
    }

    /** With what it is, in a word, and as it stands on its label: the screen “view”. */
    String told(String id) {
        String what = switch (kind(id)) {
            case MICROPHONE -> "the mic ";
            case RADIO_TRANSMITTER -> "the radio mic ";
            case RADIO_RECEIVER -> "the radio pack ";
            case MIXER -> "the sound desk ";
            case VISION_MIXER -> "the picture desk ";
            case AMPLIFIER -> "the amp ";
            case LOUDSPEAKER -> "the speaker ";
            case COMPUTER -> "the computer ";
            case PROGRAM -> "the program ";
            case RECORDER -> "the recorder ";
            case DISPLAY -> "the screen ";
            case PROJECTOR -> "the projector ";
            case POWER_DISTRIBUTOR -> "the power strip ";
            default -> "";
        };
        return what + "“" + thing(id) + "”";
    }

    /** "the foyer, at foyer tv"; the room alone where the place is named after the thing. Null where nobody has said. */
    @Nullable
    String where(String thing) {
        Place place = place(thing);
        if (place == null) {
            return null;
        }
        String room = place.room();
        if (room == null) {
            return Words.said(place.id());
        }
        return place.id().equals(thing) ? Words.said(room) : Words.said(room) + ", " + Words.said(place.id());
    }

    @Nullable
    Place place(String thing) {
        String at = at(thing, 0);
        return at == null ? null : project.venue().places().get(at);
    }

    private @Nullable String at(String thing, int deep) {
        Present present = things.get(thing);
        if (present == null || deep > 8) {
            return null;
        }
        String host = present.equipment().partOf() != null
                ? present.equipment().partOf()
                : present.equipment().runsOn();
        return present.equipment().at() != null || host == null
                ? present.equipment().at()
                : at(host, deep + 1);
    }

    /** Its room, else its place; null where nobody has said. */
    @Nullable
    String room(String thing) {
        Place place = place(thing);
        return place == null ? null : place.room() != null ? place.room() : place.id();
    }

    boolean isHigh(String thing) {
        Place place = place(thing);
        if (place == null || place.hang() == null) {
            return false;
        }
        if (place.at() == null) {
            return true; // it hangs, and nobody has said how high
        }
        Room room = project.venue().rooms().get(String.valueOf(place.room()));
        double floor = room == null || room.floor() == null ? 0 : room.floor().metres();
        return place.at().z().metres() - floor > REACH;
    }

    boolean isInRack(String thing) {
        Place place = place(thing);
        return place != null && place.rack() != null;
    }

    Kind kind(String thing) {
        Present present = things.get(thing);
        Model model = present == null ? null : present.model();
        return model == null ? Kind.OTHER : model.kind();
    }

    /** Those with a skill, who knows least else first: the visitor who can do all comes last. A blank where none has it. */
    List<Card.Call> calls(String skill, String about) {
        List<Card.Call> calls = project.people().values().stream()
                .filter(person -> person.skills().contains(skill))
                .sorted(Comparator.comparingInt(
                        (Person person) -> person.skills().size()))
                .limit(2)
                .map(person -> new Card.Call(Words.said(person.id()), person.role(), about))
                .toList();
        return calls.isEmpty() ? List.of(new Card.Call(null, null, about)) : calls;
    }

    /** The same, with whoever sees to the mains at the end, unless it is one of them. */
    List<Card.Call> callsAndMains(List<Card.Call> others) {
        List<Card.Call> calls = new ArrayList<>(others);
        Card.Call mains = calls("mains", "a fuse or breaker").getFirst();
        if (mains.person() == null
                || others.stream().noneMatch(each -> mains.person().equals(each.person()))) {
            calls.add(mains);
        }
        return calls;
    }

    /** What is to be filled in of them. */
    static List<String> unknown(List<Card.Call> calls) {
        return calls.stream()
                .filter(call -> call.person() == null)
                .map(call -> "whom to call about " + call.about())
                .toList();
    }
}
