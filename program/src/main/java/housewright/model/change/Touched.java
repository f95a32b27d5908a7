package housewright.model.change;

import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import java.util.LinkedHashSet;
import java.util.Set;

/** What a change touches. */
final class Touched {
    private Touched() {}

    static Set<String> by(Change change) {
        return switch (change) {
            case Change.Put put -> Set.of(put.section().path() + "." + put.id());
            case Change.Drop drop -> Set.of(drop.section().path() + "." + drop.id());
            case Change.Patch patch -> entry(patch.device(), patch.entry());
            case Change.Unpatch unpatch -> Set.of(into(unpatch.device(), unpatch.to()));
            case Change.Repatch repatch -> Set.of("patch." + repatch.device());
            case Change.Pair pair -> Set.of("pairs." + pair.id());
            case Change.Describe describe -> Set.of("project");
            case Change.Reckon reckon -> Set.of("budget", "practice");
            case Change.Exempt exempt -> Set.of("exempt");
            case Change.Accept accept -> Set.of("plan.times");
            case Change.Arrange arrange -> Set.of(); // an order is nothing to lose
        };
    }

    private static Set<String> entry(String device, PatchEntry entry) {
        Set<String> places = new LinkedHashSet<>();
        entry.join().pairs().forEach(pair -> places.add(into(device, pair.to())));
        return places;
    }

    private static String into(String device, Spot place) {
        return "patch." + device + "." + place;
    }
}
