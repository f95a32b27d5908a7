package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Wording;
import housewright.model.Equipment;
import housewright.model.Fitted;
import housewright.model.FixtureSetting;
import housewright.model.Hire;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.Room;
import housewright.model.Task;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The work overhead that the change from today to the target implies. */
final class Overhead {
    private Overhead() {}

    /** @param height above the room's floor, in m */
    record Work(Equipment thing, Place place, double height) {}

    /** Things that hang and stay, and get another address at their display: unless it is known that they need none. */
    static List<Work> readdressed(Evidence evidence) {
        List<Work> all = new ArrayList<>();
        for (Equipment each : evidence.project().equipment().values()) {
            FixtureSetting light = each.light();
            if (each.life() == Life.KEEP
                    && light != null
                    && light.address() != null
                    && Objects.equals(each.at(), each.today().at())
                    && !isAddressed(light, each.today().light())
                    && evidence.types()
                            .findModel(each.model())
                            .map(Model::light)
                            .filter(data -> Boolean.TRUE.equals(data.rdm()))
                            .isEmpty()) {
                add(evidence, each, each.at(), all);
            }
        }
        return all;
    }

    private static boolean isAddressed(FixtureSetting light, @Nullable FixtureSetting was) {
        return was != null
                && Objects.equals(light.address(), was.address())
                && Objects.equals(light.universe(), was.universe())
                && Objects.equals(light.mode(), was.mode());
    }

    private static void add(Evidence evidence, Equipment thing, @Nullable String at, List<Work> all) {
        Place place = at == null ? null : evidence.project().venue().places().get(at);
        if (place != null && place.hang() != null && place.at() != null) {
            Room room = evidence.project().venue().rooms().get(String.valueOf(place.room()));
            double floor =
                    room == null || room.floor() == null ? 0 : room.floor().metres();
            all.add(new Work(thing, place, place.at().z().metres() - floor));
        }
    }

    static List<Work> work(Evidence evidence) {
        List<Work> all = new ArrayList<>();
        for (Equipment each : evidence.project().equipment().values()) {
            String before = each.life() == Life.NEW ? null : each.today().at();
            String after = each.life() == Life.STRIKE ? null : each.at();
            boolean secured = each.secondary() == Fitted.FITTED && each.today().secondary() == Fitted.MISSING;
            boolean moved = before != null && after != null && !before.equals(after);
            if (each.life() == Life.NEW || each.life() == Life.STRIKE || moved) {
                add(evidence, each, before, all);
                add(evidence, each, after, all);
            } else if (secured) {
                add(evidence, each, after, all);
            }
        }
        return all;
    }

    /** What waits for a hire, in words: tasks that name it, and things high up. */
    static List<String> blocked(Evidence evidence, Hire hire) {
        List<String> blocked = new ArrayList<>();
        for (Task task : evidence.project().tasks().values()) {
            if (task.needs().contains(hire.id())) {
                blocked.add("\"" + (task.name() == null ? Words.said(task.id()) : task.name()) + "\"");
            }
        }
        Set<String> places = new LinkedHashSet<>();
        for (Work work : hire.isLift() ? work(evidence) : List.<Work>of()) {
            if (work.height() > NoWayUp.HIGH.value()) {
                places.add(work.place().id());
            }
        }
        if (!places.isEmpty()) {
            blocked.add("all work at " + Wording.things(places, 4));
        }
        return blocked;
    }
}
