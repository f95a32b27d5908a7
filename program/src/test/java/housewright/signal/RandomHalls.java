package housewright.signal;

import housewright.model.Carries;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Small systems in which much is likely to happen: the same seed gives the same system. */
final class RandomHalls {
    private static final Map<String, Kit> KITS = new java.util.LinkedHashMap<>();

    static {
        kit(new Kit("mic", Kind.MICROPHONE)
                .out("out", Signal.ANALOG_AUDIO)
                .points("pickup")
                .routes("pickup -> out"));
        kit(new Kit("speaker", Kind.LOUDSPEAKER)
                .in("in", Signal.ANALOG_AUDIO)
                .points("sound")
                .route("in -> sound", "6 dB", "1.5 ms")
                .latency("0.4 ms"));
        kit(new Kit("box", Kind.STAGE_BOX)
                .in("in-{1..2}", Signal.ANALOG_AUDIO)
                .out("out-{1..2}", Signal.ANALOG_AUDIO)
                .port(
                        "link",
                        Kit.Plug.both(Signal.STAGE_LINK).protocol("stage-a").channels(4, 4))
                .routes("in-{1..2} -> link:{1..2}", "link:{1..2} -> out-{1..2}")
                .latency("0.3 ms"));
        kit(new Kit("box-b", Kind.STAGE_BOX)
                .in("in-{1..2}", Signal.ANALOG_AUDIO)
                .port(
                        "link",
                        Kit.Plug.both(Signal.STAGE_LINK).protocol("stage-b").channels(2, 4))
                .routes("in-{1..2} -> link:{1..2}"));
        kit(new Kit("box-plain", Kind.STAGE_BOX)
                .out("out-{1..2}", Signal.ANALOG_AUDIO)
                .port("link", Kit.Plug.both(Signal.STAGE_LINK).channels(3, 2))
                .routes("link:{1..2} -> out-{1..2}")
                .latency("0.2 ms"));
        kit(new Kit("desk", Kind.MIXER)
                .in("in-{1..2}", Signal.ANALOG_AUDIO)
                .out("out-{1..2}", Signal.ANALOG_AUDIO)
                .port(
                        "link",
                        Kit.Plug.both(Signal.STAGE_LINK).protocol("stage-a").channels(4, 4))
                .port("usb", Kit.Plug.both(Signal.USB_AUDIO).channels(2, 3))
                .points("ch-{1..3}", "mix-1", "main-{L,R}")
                .patchFree()
                .latency("0.7 ms"));
        kit(new Kit("old-desk", Kind.MIXER)
                .in("in-{1..2}", Signal.ANALOG_AUDIO)
                .out("out-{1..2}", Signal.ANALOG_AUDIO)
                .points("ch-{1..2}", "main-L")
                .patchFree());
        kit(new Kit("matrix", Kind.MATRIX)
                .in("in-{1..3}", Signal.ANALOG_AUDIO)
                .out("out-{1..3}", Signal.ANALOG_AUDIO)
                .patchList("in-1 -> out-{1..3}", "in-2 -> out-2", "in-2 -> out-3", "in-3 -> out-1"));
        kit(new Kit("processor", Kind.PROCESSOR)
                .in("in-{1..2}", Signal.ANALOG_AUDIO)
                .out("out-{1..2}", Signal.ANALOG_AUDIO)
                .points("sum")
                .route("in-1 -> sum", "-6 dB", null)
                .route("in-2 -> sum", "-6 dB", "2 ms")
                .route("sum -> out-1", "3 dB", null)
                .route("in-1 -> out-2", "-3 dB", null)
                .gate("duck", true, "out-2")
                .gate("link-outputs", false, "sum")
                .latency("1.2 ms"));
        kit(new Kit("split", Kind.SPLITTER)
                .in("in", Signal.ANALOG_AUDIO)
                .out("out-{1..2}", Signal.ANALOG_AUDIO)
                .route("in -> out-{1..2}", "-3 dB", null));
        kit(new Kit("computer", Kind.COMPUTER)
                .port("sdi-{1..2}", Kit.Plug.out(Signal.SDI).channels(0, 4).formats("1080p25", "1080p50"))
                .port("usb", Kit.Plug.both(Signal.USB_AUDIO).channels(3, 2))
                .both("net", Signal.ETHERNET)
                .points("words", "play-{L,R}")
                .patchFree()
                .gate("sound-on-sdi", false, "sdi-{1..2}:{1..4}")
                .gate("on-air", true, "net")
                .latency("5 ms", "1 frame"));
        kit(new Kit("camera", Kind.CAMERA)
                .port("sdi", Kit.Plug.out(Signal.SDI).channels(0, 2).formats("1080p25"))
                .both("net", Signal.ETHERNET)
                .points("picture")
                .routes("picture -> sdi:v", "picture -> net:v")
                .latency(null, "2 frames"));
        kit(new Kit("sdi-box", Kind.CONVERTER)
                .port("in", Kit.Plug.in(Signal.SDI).channels(4, 4))
                .port("out-{1..2}", Kit.Plug.out(Signal.HDMI).channels(2, 2).formats("1080p25"))
                .routes("in:v -> out-{1..2}:v", "in:{1..2} -> out-1:{1..2}", "in:{3,4} -> out-2:{1,2}")
                .latency("0.5 frames"));
        kit(new Kit("embedder", Kind.EMBEDDER)
                .port("in", Kit.Plug.in(Signal.SDI).channels(2, 2))
                .in("sound-{1..2}", Signal.ANALOG_AUDIO)
                .port("out", Kit.Plug.out(Signal.SDI).channels(4, 4))
                .routes("in:v -> out:v")
                .patchList("in:{1..2} -> out:{1..2}", "sound-1 -> out:{1..4}", "sound-2 -> out:{1..4}")
                .gate("bars", false, "out:v")
                .latency("1 ms", "0 frames"));
        kit(new Kit("display", Kind.DISPLAY)
                .port("hdmi-{1..2}", Kit.Plug.in(Signal.HDMI).channels(2, 2))
                .points("picture", "sound-{L,R}")
                .routes("hdmi-{1..2}:v -> picture", "hdmi-1:1 -> sound-L", "hdmi-1:2 -> sound-R")
                .latency("3 ms", "2 frames"));
        kit(new Kit("decoder", Kind.CONVERTER)
                .both("net", Signal.ETHERNET)
                .port("out", Kit.Plug.out(Signal.HDMI).channels(2, 2).formats("1080p25"))
                .patchFree()
                .latency("2 ms", "1 frame"));
        kit(new Kit("panel", Kind.PANEL).ties("front-{1..3} = rear-{1..3}"));
        kit(new Kit("net-switch", Kind.SWITCH).both("p-{1..4}", Signal.ETHERNET));
        kit(new Kit("tx", Kind.RADIO_TRANSMITTER)
                .out("radio", Signal.RADIO)
                .points("pickup")
                .routes("pickup -> radio")
                .latency("2 ms"));
        kit(new Kit("rx", Kind.RADIO_RECEIVER)
                .in("radio", Signal.RADIO)
                .out("out", Signal.ANALOG_AUDIO)
                .routes("radio -> out")
                .latency("1 ms"));
        kit(new Kit("sketch").sketch());
    }

    private static void kit(Kit kit) {
        KITS.put(kit.model().id(), kit);
    }

    private static final List<String> SOUND = List.of(
            "mic",
            "mic",
            "speaker",
            "speaker",
            "box",
            "box",
            "box-b",
            "box-plain",
            "desk",
            "desk",
            "old-desk",
            "matrix",
            "processor",
            "processor",
            "split",
            "split",
            "panel",
            "panel",
            "tx",
            "rx",
            "sketch");
    private static final List<String> PICTURE = List.of(
            "computer",
            "computer",
            "camera",
            "sdi-box",
            "sdi-box",
            "embedder",
            "display",
            "display",
            "decoder",
            "net-switch",
            "panel",
            "mic",
            "desk",
            "sketch");
    private static final List<String> NETWORK = List.of(
            "computer",
            "computer",
            "camera",
            "camera",
            "decoder",
            "decoder",
            "decoder",
            "net-switch",
            "net-switch",
            "net-switch",
            "panel",
            "display",
            "display");

    private record Jack(String thing, String name, Port port) {}

    private final Random random;
    private final Hall hall = new Hall();
    private final List<String> things = new ArrayList<>();
    private final List<String> types = new ArrayList<>();
    private final List<Jack> jacks = new ArrayList<>();
    private final Set<String> taken = new TreeSet<>();

    private RandomHalls(long seed) {
        this.random = new Random(seed);
    }

    /** A system with its feeds. */
    static Project of(long seed) {
        RandomHalls halls = new RandomHalls(seed);
        halls.build();
        halls.feeds();
        return halls.hall.project();
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private Life life() {
        return chance(88) ? Life.KEEP : pick(List.of(Life.NEW, Life.STRIKE, Life.MOVE, Life.HIRE, Life.NEW));
    }

    private void build() {
        KITS.values().forEach(hall::type);
        if (chance(80)) {
            hall.picture("1080p50");
        }
        List<String> stock = pick(List.of(SOUND, SOUND, PICTURE, NETWORK));
        int count = 5 + random.nextInt(7);
        for (int i = 0; i < count; i++) {
            String type = pick(stock);
            String id = type + "-" + (char) ('a' + i);
            hall.thing(id, type, life());
            if (type.equals("desk") && chance(25)) {
                hall.was(id, "old-desk");
            }
            things.add(id);
            types.add(type);
            SlowGraph.ports(KITS.get(type).model()).forEach((name, port) -> jacks.add(new Jack(id, name, port)));
        }
        if (jacks.isEmpty()) {
            return;
        }
        cables();
        for (int i = 0; i < things.size(); i++) {
            inside(things.get(i), KITS.get(types.get(i)));
        }
        sends();
        radio();
    }

    private void cables() {
        int count = jacks.size();
        for (int i = 0; i < count; i++) {
            Jack from = pick(jacks);
            Jack to = chance(90) ? partner(from) : pick(jacks);
            if (to == null || (to == from && chance(95))) {
                continue;
            }
            String id = "C" + (count - i);
            String one = from.thing() + "." + from.name();
            String other = to.thing() + "." + to.name();
            boolean shared = taken.contains(one) || taken.contains(other);
            if (shared && !chance(12)) {
                continue;
            }
            taken.add(one);
            taken.add(other);
            if (chance(4)) {
                hall.cable(id, one, "unknown", life());
            } else if (chance(10)) {
                hall.multicore(id, life(), one + " -> " + other);
            } else if (chance(50)) {
                hall.cable(id, other, one, life());
            } else {
                hall.cable(id, one, other, life());
                Jack was = pick(jacks);
                if (chance(10)) {
                    hall.cableWas(id, was.thing() + "." + was.name());
                }
            }
        }
    }

    private @Nullable Jack partner(Jack jack) {
        List<Jack> fitting = new ArrayList<>();
        for (Jack each : jacks) {
            Signal mine = jack.port().signal();
            Signal its = each.port().signal();
            boolean fits = mine == null || its == null || mine == its;
            boolean turns = (jack.port().leaves() && each.port().arrives())
                    || (jack.port().arrives() && each.port().leaves());
            if (each != jack && fits && turns && !taken.contains(each.thing() + "." + each.name())) {
                fitting.add(each);
            }
        }
        return fitting.isEmpty() ? null : pick(fitting);
    }

    /** Patch, settings and networks. */
    private void inside(String id, Kit kit) {
        var model = kit.model();
        if (!model.portsKnown()) {
            hall.cable("K" + id, pick(jacks).thing() + "." + pick(jacks).name(), id + ".socket");
            return;
        }
        List<String> in = new ArrayList<>(SlowGraph.points(model));
        List<String> out = new ArrayList<>(SlowGraph.points(model));
        SlowGraph.ports(model).forEach((name, port) -> {
            SlowGraph.channels(port, true).forEach(channel -> in.add(name + ":" + channel));
            SlowGraph.channels(port, false).forEach(channel -> out.add(name + ":" + channel));
            if (port.signal() == Signal.ETHERNET) {
                for (String channel : List.of("v", "1", "2")) {
                    in.add(name + ":" + channel);
                    out.add(name + ":" + channel);
                }
            }
        });
        if (model.patch() != null) {
            int count = model.patch().free() ? Math.min(14, in.size()) : 4;
            for (int i = 0; i < count; i++) {
                entry(
                        id,
                        in,
                        out,
                        model.patch().free()
                                ? null
                                : pick(model.patch().joins()).pairs());
            }
        }
        for (String name : model.switches().keySet()) {
            if (chance(50)) {
                hall.set(id, name, chance(60) ? "on" : "off");
            }
            if (chance(10)) {
                hall.wasSet(id, name, chance(50) ? "on" : "off");
            }
        }
        if (chance(25)) {
            List<String> places = new ArrayList<>(in);
            if (!places.isEmpty()) {
                String place = pick(places);
                place = place.endsWith(":1") && chance(50) ? place.substring(0, place.length() - 2) : place;
                hall.set(id, place, pick(List.of("mute", "6 dB", "-12 dB", "3 ms", "1 frame")));
            }
        }
        if (model.kind() == Kind.SWITCH && chance(50)) {
            hall.vlans(id, "p-{1..2}", chance(50) ? new Integer[] {1, 2} : new Integer[] {2});
        } else if (!model.ports().isEmpty() && in.contains("net:v") && chance(15)) {
            hall.vlans(id, "net", 2);
        }
    }

    private void entry(
            String id, List<String> in, List<String> out, @Nullable List<housewright.model.Join.Pair> listed) {
        String join;
        if (listed != null && chance(90)) {
            var pair = pick(listed);
            join = pair.from() + " -> " + pair.to();
        } else {
            String from = pick(in);
            String to = pick(out);
            if (in.contains("main-L") && chance(70)) {
                List<String> stages = List.of("in-", "ch-", "mai", "out");
                int stage = random.nextInt(3);
                from = pick(in.stream()
                        .filter(each -> each.startsWith(stages.get(stage)))
                        .toList());
                to = pick(out.stream()
                        .filter(each -> each.startsWith(stages.get(stage + 1)))
                        .toList());
            }
            join = from + " -> " + to;
            if (chance(10) && out.contains("main-L")) {
                join = from + " -> main-L, " + to;
            } else if (from.startsWith("usb") && chance(20)) {
                join = "usb:{1..2} -> " + to;
            }
        }
        if (chance(70)) {
            hall.patch(id, join);
        } else {
            Life life = chance(50) ? null : life();
            String gain = pick(List.of("0 dB", "-6 dB", "3 dB", "-0.5 dB"));
            hall.patch(id, join, gain, chance(30) ? pick(List.of("1 ms", "1 frame")) : null, life);
        }
    }

    private void sends() {
        List<String> ends = new ArrayList<>();
        for (Jack each : jacks) {
            if (each.port().signal() == Signal.ETHERNET && each.name().equals("net")) {
                ends.add(each.thing() + ".net:");
            }
        }
        for (int i = 0; ends.size() > 1 && i < 5; i++) {
            String sender = pick(ends);
            String taker = pick(ends);
            if (sender.equals(taker)) {
                continue;
            }
            String from = sender + pick(List.of("v", "v", "1"));
            String to = taker + pick(List.of("v", "v", "1", "2"));
            String delay = chance(40) ? "1 ms" : null;
            hall.send("S" + (9 - i), from, to, chance(15) ? pick(List.of(1, 2)) : null, delay, life());
        }
    }

    private void radio() {
        for (String tx : things) {
            for (String rx : things) {
                if (tx.startsWith("tx-") && rx.startsWith("rx-") && chance(60)) {
                    String delay = chance(30) ? "1 ms" : null;
                    hall.radio("R-" + tx + "-" + rx, tx + ".radio", rx + ".radio", delay, life());
                }
            }
        }
    }

    // ---- feeds

    private List<String> places(boolean begins) {
        List<String> places = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) {
            String id = things.get(i);
            var model = KITS.get(types.get(i)).model();
            if (!model.portsKnown()) {
                if (chance(20)) {
                    places.add(id + ".anything");
                }
                continue;
            }
            SlowGraph.points(model).forEach(point -> places.add(id + "." + point));
            SlowGraph.ports(model).forEach((name, port) -> {
                SlowGraph.channels(port, !begins).forEach(channel -> places.add(id + "." + name + ":" + channel));
            });
        }
        return places;
    }

    private void feeds() {
        List<String> begins = places(true);
        List<String> ends = places(false);
        if (begins.isEmpty() || ends.isEmpty()) {
            hall.feed("nothing", "", "");
            return;
        }
        SlowProof proof = new SlowProof(hall.project(), Moment.target());
        for (int i = 0; i < 12; i++) {
            String source = farReaching(proof, begins);
            String other = farReaching(proof, begins);
            String within = chance(35) ? pick(List.of("0.5 ms", "1 ms", "3 ms", "45 ms", "2 frames")) : null;
            String to = reachedOrAny(proof, source, ends);
            switch (i % 4) {
                case 0, 1 -> {
                    Carries carries = chance(25) ? pick(List.of(Carries.values())) : null;
                    String through = chance(30) ? through(proof, source) : null;
                    hall.feed("F" + i, false, carries, source, to, within, through);
                }
                case 2 -> {
                    String second = reachedOrAny(proof, other, ends);
                    boolean paired = chance(60);
                    String both = chance(50) ? to + ", " + second : second + ", " + to;
                    hall.feed("F" + i, paired ? source + ", " + other : source, both, within, null);
                }
                default ->
                    hall.never("N" + i, chance(30) ? source + ", " + other : source, chance(60) ? pick(ends) : to);
            }
        }
    }

    /** Of a few places, one from which much is reached. */
    private String farReaching(SlowProof proof, List<String> begins) {
        String best = pick(begins);
        for (int i = 0; i < 4; i++) {
            String each = pick(begins);
            if (chance(85) && reached(proof, each).size() > reached(proof, best).size()) {
                best = each;
            }
        }
        return best;
    }

    private List<String> reached(SlowProof proof, String source) {
        SlowGraph.State begin = proof.graph.begin(
                housewright.model.Ref.parse(source).addresses().getFirst());
        return begin == null
                ? List.of()
                : proof.reached(begin, false).stream()
                        .filter(state -> state.carried().isEmpty() && !state.equals(begin))
                        .map(SlowGraph.State::place)
                        .toList();
    }

    private String reachedOrAny(SlowProof proof, String source, List<String> ends) {
        List<String> reached = new ArrayList<>(reached(proof, source));
        reached.retainAll(ends);
        return reached.isEmpty() || chance(25)
                ? pick(ends)
                : reached.get(reached.size() - 1 - random.nextInt(Math.min(4, reached.size())));
    }

    private @Nullable String through(SlowProof proof, String source) {
        List<String> reached = reached(proof, source);
        if (reached.isEmpty()) {
            return null;
        }
        return chance(30) ? pick(reached) + ", " + pick(reached) : pick(reached);
    }
}
