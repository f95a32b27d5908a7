package housewright.paper;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.study.Study;
import housewright.work.WorkTask;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;

/** Projects to print. */
final class Halls {
    static final Library LIBRARY = BuiltInLibrary.of(1);
    static final PaperOptions OPTIONS = new PaperOptions(PageSize.A4, "Carrowfenn Hall refit", "3f9a1c2", "2027-01-11");

    private Halls() {}

    static Study demo() {
        try (InputStream in = Halls.class.getResourceAsStream("/housewright/demo/carrowfenn-hall.yaml")) {
            return of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One of the examples, such as {@code refit}. */
    static Study example(String name) {
        try {
            return of(Files.readString(Path.of("..", "examples", name + ".yaml")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A small refit whose tasks are planned one after the other on one day, with a lift and a log. */
    static Study planned() {
        try {
            String text = Files.readString(Path.of("..", "examples", "refit-plan.yaml"));
            List<WorkTask> tasks = of(text).work().tasks();
            StringBuilder plan = new StringBuilder(text);
            plan.append("\nhires:\n  lift: {kind: aerial-lift, per-day: 140, offered: [2027-05-08, 2027-05-08], ")
                    .append("skill: lift-operator}\nplan:\n  times:\n");
            LocalDateTime from = LocalDateTime.of(2027, 5, 8, 9, 0);
            for (int i = 0; i < tasks.size(); i++) {
                LocalDateTime to = from.plusMinutes(20);
                plan.append("    %s: {from: %s, to: %s, people: [%s], hires: [%s]}\n"
                        .formatted(
                                tasks.get(i).id(),
                                from.toString().replace('T', ' '),
                                to.toString().replace('T', ' '),
                                i % 3 == 0 ? "lead, visitor" : i % 3 == 1 ? "lead" : "visitor",
                                i % 4 == 1 ? "lift" : ""));
                from = to;
            }
            plan.append("log:\n  %s: {state: done, from: 2027-05-08 09:00, to: 2027-05-08 09:15, people: [lead], "
                    .formatted(tasks.getFirst().id()));
            plan.append("note: Measured 21.5 m with the tape}\n");
            return of(plan.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Study of(String yaml) {
        return switch (ProjectReader.read("hall.yaml", yaml.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> Study.of(loaded.project(), LIBRARY);
            case ReadResult.Refused refused ->
                throw new AssertionError(refused.errors().toString());
        };
    }
}
