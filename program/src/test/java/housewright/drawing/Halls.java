package housewright.drawing;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.model.Project;
import housewright.study.Study;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Projects to draw. */
final class Halls {
    static final Library LIBRARY = BuiltInLibrary.of(1);
    static final Imprint IMPRINT = new Imprint("7", "2027-01-11");
    static final List<String> NAMES = List.of(
            "/housewright/demo/carrowfenn-hall.yaml",
            "/housewright/halls/us-sanctuary.yaml",
            "/housewright/halls/theatre-studio.yaml",
            "/housewright/halls/network-room.yaml");

    /** A microphone, a floor box, a desk and a loudspeaker; the desk is new, the old one is struck. */
    static final String TINY = """
            housewright: 1
            project: {name: Tiny hall, stage: design, library: 1}
            venue:
              rooms:
                hall: {outline: [[0 m, 0 m], [8 m, 0 m], [8 m, 5 m], [0 m, 5 m]], floor: 0 m, ceiling: 3 m}
              places:
                stage: {room: hall, at: [1 m, 2 m, 1.2 m]}
                desk:  {room: hall, at: [7 m, 2.5 m, 0.9 m]}
                wall:  {room: hall, at: [0.5 m, 4 m, 2.4 m], hang: {limit: 40 kg, stated-by: surveyor 2026}}
                attic: {}
                rack:  {room: hall, at: [7.5 m, 4 m, 0.2 m], rack: {units: 6}}
              pathways:
                p1: {from: stage, to: desk, kind: floor-void, length: 8 m, height: 0 m}
            models:
              mic:   {name: Microphone, kind: microphone, ports: {out: {out: analog-audio, connector: XLR-3M}}, points: [pickup], routes: [pickup -> out]}
              box:   {name: Floor box, kind: panel, ties: ["front-{1..4} = rear-{1..4}"]}
              mixer: {name: Small desk, kind: mixer, ports: {"mic-{1..4}": {in: analog-audio, connector: XLR-3F}, out-1: {out: analog-audio, connector: XLR-3M}}, points: ["ch-{1..4}", main], patch: free, rack: 2 U}
              speaker: {name: Loudspeaker, kind: loudspeaker, ports: {in: {in: analog-audio, connector: XLR-3F}}, points: [sound], routes: [in -> sound], height: 600 mm}
            equipment:
              mic-1: {model: mic, at: stage}
              mic-2: {model: mic, at: stage}
              box:   {model: box, at: stage}
              desk:  {model: mixer, at: desk, life: new}
              old-desk: {model: mixer, at: desk, life: strike}
              spare: {model: mixer, at: rack, unit: 3}
              lost:  {model: mic}
              speaker: {model: speaker, at: wall}
            cables:
              C1: {type: mic-cable, from: mic-1.out, to: box.front-1, length: 3 m}
              C2: {type: mic-cable, from: box.front-2, to: mic-2.out, length: 3 m}
              M1: {type: multicore-8, ways: ["box.rear-{1..4} -> desk.mic-{1..4}"], via: [p1], was: {ways: ["box.rear-{1..4} -> old-desk.mic-{1..4}"]}}
              C3: {type: mic-cable, from: desk.out-1, to: speaker.in, length: 9 m, life: new}
              C4: {type: mic-cable, from: desk.mic-4, to: unknown, life: new}
            patch:
              desk: [mic-1 -> ch-1, ch-1 -> main, main -> out-1]
            feeds:
              speech: {from: mic-1.pickup, to: speaker.sound, carries: audio}
              second: {from: mic-2.pickup, to: speaker.sound, carries: audio}
            """;

    private Halls() {}

    static Drawings tiny() {
        return drawings(read(TINY));
    }

    static Drawings drawings(Project project) {
        return Drawings.of(Study.of(project, LIBRARY), IMPRINT);
    }

    static Project load(String resource) {
        try (InputStream in = Halls.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new AssertionError(resource + " is not on the class path");
            }
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Project read(String text) {
        return switch (ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused ->
                throw new AssertionError(String.join(
                        "\n", refused.errors().stream().map(Object::toString).toList()));
        };
    }
}
