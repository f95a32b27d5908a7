package housewright.work;

import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One task.
 *
 * @param id stable: made of the kind and of what it is about, or the project's own
 * @param kind what it mainly is
 * @param does every kind of work in it, the main one first
 * @param why the difference between today and the target that it comes from, as a sentence
 * @param about section and id of what it changes, such as {@code cables.C501}, the main one first
 * @param takes length for its crew
 * @param reckoned the labour units its length is the sum of; empty where the project states it
 * @param crew people at it at once
 * @param skills each of which one of the crew must have
 * @param who people who do it, where the project says so
 * @param hires each of which it needs while it lasts
 * @param places where it is done
 * @param rooms where it is done, or whose state it needs
 * @param heightM highest point of it above the floor, in m; null where nobody knows
 * @param overhead it is done above people's heads, or what it hangs is
 * @param remote it is done from afar
 * @param beforehand it is to be done before the visit
 * @param conditions what the room must be
 * @param deliveries orders whose goods it uses
 * @param unordered what it uses that is in no order
 * @param after tasks that come first, none that another of them implies
 * @param takesApart feeds that work today and stop working with it
 * @param proves the feeds that it proves
 * @param event the event at which it is held; null where it is free
 * @param mayWait nothing new waits for it: it can stay until the first service has passed
 * @param mayPause it can be left and taken up again on another day
 * @param own the project's own task
 * @param changed worked out, and changed by the project
 * @param parts what it is made of where like tasks are done in one go, each in words; else empty
 * @param cautions what could hurt somebody
 * @param assumed what was taken for granted where the project says nothing
 */
public record WorkTask(
        String id,
        TaskKind kind,
        List<TaskKind> does,
        String title,
        String why,
        List<String> about,
        Minutes takes,
        List<Portion> reckoned,
        int crew,
        List<String> skills,
        List<String> who,
        List<String> hires,
        List<String> places,
        List<String> rooms,
        @Nullable Double heightM,
        boolean overhead,
        boolean remote,
        boolean beforehand,
        List<RoomCondition> conditions,
        List<String> deliveries,
        List<String> unordered,
        List<String> after,
        List<String> takesApart,
        List<String> proves,
        @Nullable String event,
        boolean mayWait,
        boolean mayPause,
        boolean own,
        boolean changed,
        List<String> parts,
        List<String> cautions,
        List<String> assumed) {
    public WorkTask {
        does = List.copyOf(does);
        about = List.copyOf(about);
        reckoned = List.copyOf(reckoned);
        skills = List.copyOf(skills);
        who = List.copyOf(who);
        hires = List.copyOf(hires);
        places = List.copyOf(places);
        rooms = List.copyOf(rooms);
        conditions = List.copyOf(conditions);
        deliveries = List.copyOf(deliveries);
        unordered = List.copyOf(unordered);
        after = List.copyOf(after);
        takesApart = List.copyOf(takesApart);
        proves = List.copyOf(proves);
        parts = List.copyOf(parts);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
    }
}
