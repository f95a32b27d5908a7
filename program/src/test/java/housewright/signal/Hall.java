package housewright.signal;

import housewright.model.About;
import housewright.model.Adapter;
import housewright.model.Cable;
import housewright.model.CableToday;
import housewright.model.CableType;
import housewright.model.Carries;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.EquipmentToday;
import housewright.model.Feed;
import housewright.model.Fitted;
import housewright.model.Library;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.NetworkSend;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Remarks;
import housewright.model.Setting;
import housewright.model.Stage;
import housewright.model.Venue;
import housewright.model.Way;
import housewright.unit.Delay;
import housewright.unit.Gain;
import housewright.unit.Length;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A small project put together in a test, in the words of the file. */
final class Hall {
    private final Map<String, Model> types = new LinkedHashMap<>();
    private final Map<String, Equipment> equipment = new LinkedHashMap<>();
    private final Map<String, Cable> cables = new LinkedHashMap<>();
    private final Map<String, CableType> cableTypes = new LinkedHashMap<>();
    private final Map<String, List<PatchEntry>> patch = new LinkedHashMap<>();
    private final Map<String, NetworkSend> sends = new LinkedHashMap<>();
    private final Map<String, RadioLink> radio = new LinkedHashMap<>();
    private final Map<String, Feed> feeds = new LinkedHashMap<>();
    private @Nullable VideoFormat picture;

    Hall picture(String format) {
        picture = VideoFormat.parse(format);
        return this;
    }

    Hall type(Kit kit) {
        Model model = kit.model();
        types.put(model.id(), model);
        return this;
    }

    Hall cableType(CableType type) {
        cableTypes.put(type.id(), type);
        return this;
    }

    /** The same type for each id, there today and after. */
    Hall things(String type, String... ids) {
        for (String id : ids) {
            thing(id, type, Life.KEEP);
        }
        return this;
    }

    Hall thing(String id, @Nullable String type, Life life) {
        equipment.put(id, equipment(id, type, life, Map.of(), Map.of(), null));
        return this;
    }

    /** The thing was of another type. */
    Hall was(String id, String type) {
        Equipment now = thing(id);
        EquipmentToday was =
                new EquipmentToday(type, null, null, null, Map.of(), null, null, null, null, null, Map.of());
        equipment.put(id, equipment(id, now.model(), now.life(), now.set(), now.vlans(), was));
        return this;
    }

    /** The thing was set otherwise. */
    Hall wasSet(String id, String place, String setting) {
        Equipment now = thing(id);
        EquipmentToday was = new EquipmentToday(
                null,
                null,
                null,
                null,
                Map.of(new LocalRef(place), setting(setting)),
                null,
                null,
                null,
                null,
                null,
                Map.of());
        equipment.put(id, equipment(id, now.model(), now.life(), now.set(), now.vlans(), was));
        return this;
    }

    /** As {@code set: {ch-1: {gain: 3 dB}}}: on, off, mute, or a gain or delay. */
    Hall set(String id, String place, String setting) {
        Equipment now = thing(id);
        Map<LocalRef, Setting> set = new LinkedHashMap<>(now.set());
        set.put(new LocalRef(place), setting(setting));
        equipment.put(id, equipment(id, now.model(), now.life(), set, now.vlans(), now.was()));
        return this;
    }

    private static Setting setting(String text) {
        return switch (text) {
            case "on", "off" -> Setting.ofText(text);
            case "mute" -> new Setting(null, null, null, null, true, null);
            default ->
                text.endsWith("dB")
                        ? new Setting(null, Gain.parse(text), null, null, false, null)
                        : new Setting(null, null, null, Delay.parse(text), false, null);
        };
    }

    Hall vlans(String id, String ports, Integer... vlans) {
        Equipment now = thing(id);
        Map<NamePattern, List<Integer>> all = new LinkedHashMap<>(now.vlans());
        all.put(new NamePattern(ports), List.of(vlans));
        equipment.put(id, equipment(id, now.model(), now.life(), now.set(), all, now.was()));
        return this;
    }

    /** The end of its line is closed off. */
    Hall terminated(String id) {
        Equipment e = thing(id);
        equipment.put(
                id,
                new Equipment(
                        id,
                        e.model(),
                        null,
                        e.life(),
                        null,
                        null,
                        e.set(),
                        null,
                        null,
                        null,
                        null,
                        Fitted.FITTED,
                        null,
                        e.vlans(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        e.was(),
                        Remarks.NONE));
        return this;
    }

    private Equipment thing(String id) {
        Equipment thing = equipment.get(id);
        if (thing == null) {
            throw new IllegalArgumentException("no " + id);
        }
        return thing;
    }

    static Equipment equipment(
            String id,
            @Nullable String type,
            Life life,
            Map<LocalRef, Setting> set,
            Map<NamePattern, List<Integer>> vlans,
            @Nullable EquipmentToday was) {
        return new Equipment(
                id,
                type,
                null,
                life,
                null,
                null,
                set,
                null,
                null,
                null,
                null,
                null,
                null,
                vlans,
                null,
                null,
                null,
                null,
                null,
                was,
                Remarks.NONE);
    }

    Hall cable(String id, String from, String to) {
        return cable(id, from, to, Life.KEEP);
    }

    Hall cable(String id, String from, String to, Life life) {
        cables.put(id, cable(id, null, End.parse(from), End.parse(to), List.of(), life, null));
        return this;
    }

    Hall cable(String id, String type, String from, String to) {
        cables.put(id, cable(id, type, End.parse(from), End.parse(to), List.of(), Life.KEEP, null));
        return this;
    }

    /** The cable went elsewhere: {@code was: {to: …}}. */
    Hall cableWas(String id, String to) {
        Cable now = cables.get(id);
        CableToday was = new CableToday(null, null, End.parse(to), List.of(), List.of(), null, List.of(), List.of());
        cables.put(id, cable(id, now.type(), now.from(), now.to(), now.ways(), now.life(), was));
        return this;
    }

    Hall multicore(String id, Life life, String... ways) {
        List<Way> all = Arrays.stream(ways).map(Way::parse).toList();
        cables.put(id, cable(id, null, null, null, all, life, null));
        return this;
    }

    static Cable cable(
            String id,
            @Nullable String type,
            @Nullable End from,
            @Nullable End to,
            List<Way> ways,
            Life life,
            @Nullable CableToday was) {
        Length length = Length.parse("5 m");
        return new Cable(
                id,
                type,
                from,
                to,
                ways,
                List.of(),
                life,
                length,
                List.of(),
                List.of(),
                null,
                null,
                null,
                was,
                Remarks.NONE);
    }

    Hall patch(String device, String... joins) {
        for (String join : joins) {
            patch(device, PatchEntry.ofText(join));
        }
        return this;
    }

    Hall patch(String device, String join, String gain, @Nullable String delay, @Nullable Life life) {
        PatchEntry plain = PatchEntry.ofText(join);
        return patch(
                device,
                new PatchEntry(
                        plain.from(),
                        plain.to(),
                        null,
                        Gain.parse(gain),
                        delay == null ? null : Delay.parse(delay),
                        life,
                        null));
    }

    Hall patch(String device, PatchEntry entry) {
        patch.computeIfAbsent(device, key -> new ArrayList<>()).add(entry);
        return this;
    }

    Hall send(String id, String from, String to) {
        return send(id, from, to, null, null, Life.KEEP);
    }

    Hall send(String id, String from, String to, @Nullable Integer vlan, @Nullable String delay, Life life) {
        sends.put(
                id,
                new NetworkSend(
                        id,
                        Ref.parse(from),
                        Ref.parse(to),
                        null,
                        null,
                        vlan,
                        false,
                        delay == null ? null : Delay.parse(delay),
                        life,
                        Remarks.NONE));
        return this;
    }

    Hall radio(String id, String from, String to) {
        return radio(id, from, to, null, Life.KEEP);
    }

    Hall radio(String id, String from, String to, @Nullable String delay, Life life) {
        radio.put(
                id,
                new RadioLink(
                        id,
                        Ref.parse(from),
                        Ref.parse(to),
                        null,
                        null,
                        delay == null ? null : Delay.parse(delay),
                        life,
                        Remarks.NONE));
        return this;
    }

    Hall feed(String id, String from, String to) {
        return feed(id, from, to, null, null);
    }

    Hall feed(String id, String from, String to, @Nullable String within, @Nullable String through) {
        return feed(id, false, null, from, to, within, through);
    }

    Hall never(String id, String from, String to) {
        return feed(id, true, null, from, to, null, null);
    }

    Hall feed(
            String id,
            boolean never,
            @Nullable Carries carries,
            String from,
            String to,
            @Nullable String within,
            @Nullable String through) {
        feeds.put(
                id,
                new Feed(
                        id,
                        never,
                        refs(from),
                        refs(to),
                        carries,
                        within == null ? null : Delay.parse(within),
                        refs(through),
                        null,
                        Remarks.NONE));
        return this;
    }

    private static List<Ref> refs(@Nullable String text) {
        return text == null || text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(", ")).map(Ref::parse).toList();
    }

    Project project() {
        About about = new About(
                "Test hall", Stage.DESIGN, 1, "EUR", null, null, picture, null, null, List.of(), Remarks.NONE);
        return new Project(
                1,
                about,
                Venue.EMPTY,
                types,
                cableTypes,
                Map.of(),
                equipment,
                cables,
                patch,
                sends,
                radio,
                Map.of(),
                feeds,
                null,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                null,
                null,
                null,
                Map.of(),
                List.of());
    }

    Signals target() {
        return Signals.of(project(), EMPTY, Moment.target());
    }

    Signals today() {
        return Signals.of(project(), EMPTY, Moment.today());
    }

    /** The proof of a feed in the target. */
    FeedProof proof(String feed) {
        return target().findProof(feed).orElseThrow();
    }

    /** A library with nothing in it: the tests bring their own types. */
    static final Library EMPTY = library(List.of());

    static Library library(List<Model> models) {
        return new Library() {
            @Override
            public housewright.model.Practice practice() {
                return housewright.model.Practice.NONE;
            }

            @Override
            public int version() {
                return 1;
            }

            @Override
            public Collection<String> modelIds() {
                return models.stream().map(Model::id).toList();
            }

            @Override
            public Optional<Model> findModel(String id) {
                return models.stream().filter(model -> model.id().equals(id)).findFirst();
            }

            @Override
            public Collection<String> cableTypeIds() {
                return List.of();
            }

            @Override
            public Optional<CableType> findCableType(String id) {
                return Optional.empty();
            }

            @Override
            public Collection<String> adapterIds() {
                return List.of();
            }

            @Override
            public Optional<Adapter> findAdapter(String id) {
                return Optional.empty();
            }
        };
    }
}
