package housewright.demo;

import housewright.model.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * One thing put wrong in the demo, and what must be said of it.
 *
 * @param feeds the feeds that are no longer proven, and how; all others are
 * @param look the feed looked at closely
 * @param at places where it stops, each of them right; for a never-feed that arrives, places of which one is on its way
 * @param why a word of the reason; for a never-feed that arrives, of its way
 * @param mend words of what a person would do, to be among the mends; null where anything that mends will do
 * @param noMend why none may be offered; null where one must be
 * @param slow looking for its mends takes seconds
 */
record SeededBreak(
        String name,
        Damage damage,
        Map<String, String> feeds,
        String look,
        List<String> at,
        String why,
        String mend,
        String noMend,
        boolean slow) {

    static List<SeededBreak> all() {
        String text = Demo.text("/housewright/breaks/breaks.yaml");
        Map<?, ?> document = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
        List<SeededBreak> all = new ArrayList<>();
        for (Object each : (List<?>) document.get("breaks")) {
            all.add(of((Map<?, ?>) each));
        }
        return all;
    }

    private static SeededBreak of(Map<?, ?> each) {
        Map<String, String> feeds = Damage.words(each.get("feeds"));
        return new SeededBreak(
                (String) each.get("name"),
                Damage.of(each),
                feeds,
                each.containsKey("look")
                        ? (String) each.get("look")
                        : feeds.keySet().iterator().next(),
                Damage.list(each.get("at")),
                (String) each.get("why"),
                (String) each.get("mend"),
                (String) each.get("no-mend"),
                Boolean.TRUE.equals(each.get("slow")));
    }

    /** The demo with this put wrong. */
    Project made() {
        return damage.in(Demo.TEXT);
    }

    @Override
    public String toString() {
        return name;
    }
}
