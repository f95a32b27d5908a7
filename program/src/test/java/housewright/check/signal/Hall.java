package housewright.check.signal;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Library;
import housewright.model.Model;
import housewright.model.Project;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** A small invented hall without a fault, to be broken in one place by each test. */
public final class Hall {
    private final String text;

    private Hall(String text) {
        this.text = text;
    }

    public static final Hall CLEAN = new Hall("""
            housewright: 1
            project: {name: Small hall, stage: design, picture: 1080p50}
            models:
              mic:
                kind: microphone
                ports: {out: {out: analog-audio, connector: XLR-3M, level: mic}}
                points: [pickup]
                routes: [pickup -> out]
                latency: 0 ms
              desk:
                kind: mixer
                ports:
                  "in-{1..4}": {in: analog-audio, connector: XLR-3F, level: mic}
                  "out-{1..4}": {out: analog-audio, connector: XLR-3M, level: line}
                points: ["ch-{1..4}", "mix-{1..2}", main]
                patch: free
                latency: 1 ms
              effects:
                kind: processor
                ports:
                  in: {in: analog-audio, connector: XLR-3F, level: line}
                  out: {out: analog-audio, connector: XLR-3M, level: line}
                routes: [in -> out]
                latency: 2 ms
              speaker:
                kind: loudspeaker
                ports: {in: {in: analog-audio, connector: XLR-3F, level: line}}
                points: [sound]
                routes: [in -> sound]
                latency: 0 ms
              camera:
                kind: camera
                ports: {sdi: {out: sdi, connector: BNC, formats: [1080p50]}}
                points: [picture]
                routes: ["picture -> sdi:v"]
                latency: 1 frame
              screen:
                kind: display
                ports:
                  sdi: {in: sdi, connector: BNC, formats: [1080p50]}
                  line: {in: analog-audio, connector: XLR-3F, level: line}
                  hdmi: {in: hdmi, connector: HDMI-A}
                points: [picture, sound]
                routes: ["sdi:v -> picture", line -> sound]
                latency: {audio: 0 ms, video: 1 frame}
            equipment:
              mic-1: {model: mic}
              mic-2: {model: mic}
              desk: {model: desk}
              unit: {model: effects}
              left: {model: speaker}
              right: {model: speaker}
              camera: {model: camera}
              screen: {model: screen}
            cables:
              C1: {from: mic-1.out, to: desk.in-1}
              C2: {from: mic-2.out, to: desk.in-2}
              C3: {from: desk.out-1, to: left.in}
              C4: {from: desk.out-2, to: right.in}
              C5: {from: camera.sdi, to: screen.sdi}
              C6: {from: desk.out-3, to: screen.line}
            patch:
              desk:
                - in-1 -> ch-1
                - in-2 -> ch-2
                - ch-1 -> main, out-3
                - ch-2 -> main
                - main -> out-1
                - main -> out-2
            feeds:
              speech: {from: mic-1.pickup, to: [left.sound, right.sound], carries: audio, within: 5 ms}
              picture: {from: camera.picture, to: screen.picture, carries: picture}
              screen-sound: {from: mic-1.pickup, to: screen.sound, carries: audio}
              quiet: {never: yes, from: mic-2.pickup, to: screen.sound}
            """);

    /** The same with one passage replaced, which must be there once. */
    public Hall but(String passage, String other) {
        int at = text.indexOf(passage);
        if (at < 0 || text.indexOf(passage, at + 1) >= 0) {
            throw new AssertionError("Not once in the hall: " + passage);
        }
        return new Hall(text.replace(passage, other));
    }

    /** The same with lines added to a section. */
    public Hall with(String section, String lines) {
        return but("\n" + section + ":\n", "\n" + section + ":\n" + lines.indent(2));
    }

    /** The same with a section added. */
    public Hall plus(String section) {
        return new Hall(text + section + "\n");
    }

    public String text() {
        return text;
    }

    public Project project() {
        return switch (ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), NO_TYPES)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }

    /** The hall brings its own types. */
    public static final Library NO_TYPES = new Library() {
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
            return List.of();
        }

        @Override
        public Optional<Model> findModel(String id) {
            return Optional.empty();
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
