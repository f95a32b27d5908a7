package housewright.check.sound;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.LevelClass;
import housewright.model.Port;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.sound.Patched;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is left for the next years, where it is little: one note for all of it. */
final class SpareChannels implements Rule {
    static final Limit LEFT = Limit.least("sockets or channels left over", 10, "%");
    private static final int FEW = 8;

    private static final Card CARD = new Card(
            "spare-channels",
            "Is anything left on stage boxes and desks for what the next years bring?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(LEFT));

    /** A kind of socket or channel: how many there are, how many are in use. */
    private static final class Stock {
        final Set<String> on = new LinkedHashSet<>();
        int all;
        int used;

        double leftPercent() {
            return 100.0 * (all - used) / all;
        }
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double least = evidence.limit(CARD, LEFT);
        Map<String, Stock> stocks = count(evidence);
        List<String> parts = new ArrayList<>();
        List<Value> values = new ArrayList<>();
        Set<Subject> subjects = new LinkedHashSet<>();
        stocks.forEach((what, stock) -> {
            if (stock.all >= FEW && stock.leftPercent() < least) {
                parts.add((stock.all - stock.used) + " of " + stock.all + " " + what);
                values.add(new Value(what + " left", stock.leftPercent(), least, "%"));
                stock.on.forEach(each -> subjects.add(Subject.equipment(each)));
            }
        });
        if (parts.isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(CARD.finding(
                Severity.NOTE,
                List.copyOf(subjects),
                "Little is left for the next years: " + String.join(", ", parts) + ".",
                values,
                List.of(Fix.of("Take the next larger one, or see that another can be added."))));
    }

    private static Map<String, Stock> count(Evidence evidence) {
        Sound sound = evidence.sound();
        Set<String> plugged = new HashSet<>();
        for (Line line : evidence.cabling().lines()) {
            Plug from = line.from();
            Plug to = line.to();
            if (from != null && to != null && !from.isPassive() && !to.isPassive()) {
                plugged(from, plugged);
                plugged(to, plugged);
            }
        }
        Map<String, Stock> stocks = new LinkedHashMap<>();
        Set<String> mixers = new HashSet<>();
        for (String id : evidence.project().equipment().keySet()) {
            boolean box = sound.isKind(id, Kind.STAGE_BOX);
            boolean desk = sound.isKind(id, Kind.MIXER);
            if (!box && !desk) {
                continue;
            }
            String where = box ? " of the stage boxes" : " of the desks";
            Shape shape = sound.findShape(id).orElseThrow();
            shape.sockets().forEach((name, socket) -> {
                String what = what(socket.port());
                if (what != null) {
                    count(stocks, what + where, id, plugged.contains(id + "." + name));
                }
            });
            if (desk) {
                mixers.add(id);
            }
        }
        channels(sound, mixers, stocks);
        return stocks;
    }

    private static void plugged(Plug plug, Set<String> plugged) {
        Kind kind = plug.model() == null ? null : plug.model().kind();
        if (kind == Kind.STAGE_BOX || kind == Kind.MIXER) {
            plugged.add(plug.socket());
        }
    }

    private static void channels(Sound sound, Set<String> mixers, Map<String, Stock> stocks) {
        Map<String, Set<String>> patched = new HashMap<>();
        for (Patched each : sound.patched()) {
            if (mixers.contains(each.device())) {
                patched.computeIfAbsent(each.device(), key -> new HashSet<>())
                        .add(each.to().name());
            }
        }
        for (String mixer : mixers.stream().sorted().toList()) {
            Shape shape = sound.findShape(mixer).orElseThrow();
            Set<String> used = patched.getOrDefault(mixer, Set.of());
            if (shape.model().patch() != null && shape.model().patch().free()) {
                shape.points().stream()
                        .filter(point -> point.startsWith("ch-"))
                        .forEach(point -> count(stocks, "channels of the desks", mixer, used.contains(point)));
            }
        }
    }

    private static void count(Map<String, Stock> stocks, String what, String thing, boolean used) {
        Stock stock = stocks.computeIfAbsent(what, key -> new Stock());
        stock.on.add(thing);
        stock.all++;
        stock.used += used ? 1 : 0;
    }

    private static @Nullable String what(Port port) {
        if (port.in() == Signal.ANALOG_AUDIO && port.level() == LevelClass.MIC) {
            return "microphone inputs";
        }
        return port.out() == Signal.ANALOG_AUDIO && port.level() == LevelClass.LINE ? "outputs" : null;
    }
}
