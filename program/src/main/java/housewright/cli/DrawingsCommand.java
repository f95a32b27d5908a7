package housewright.cli;

import housewright.app.ProjectFile;
import housewright.drawing.Drawings;
import housewright.drawing.Imprint;
import housewright.drawing.Plan;
import housewright.drawing.Sheet;
import housewright.drawing.State;
import housewright.drawing.Trade;
import housewright.model.Feed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Every drawing of a project, as files. */
@Command(
        name = "drawings",
        header = "Writes every drawing as an SVG file, and the floor plan as DXF for whoever draws in CAD.",
        description = {
            "Floor plan, side views, racks, signal drawings by system and the way of each feed; of the target, or of today. The DXF is in metres, its layers by kind. Drawings of an earlier run are written over, other files in the folder stay.",
            "Exit status: 0 written, 2 there is no such file, or they cannot be written."
        })
final class DrawingsCommand extends FileCommand {
    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "The folder to write into; made where it is not there.")
    String out = "";

    @Option(names = "--today", description = "Draw the hall as it is today, before the work.")
    boolean today;

    DrawingsCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        Map<String, String> files = desk.during("Drawing", () -> draw(project));
        try {
            Path folder = Files.createDirectories(Path.of(out));
            for (Map.Entry<String, String> each : files.entrySet()) {
                Files.write(folder.resolve(each.getKey()), each.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException | InvalidPathException e) {
            return desk.refuse("The drawings cannot be written into " + out + ": " + e.getMessage() + ".");
        }
        desk.print(desk.page().wrapped(files.size() + " drawings are in " + out + "."));
        return Status.FINE;
    }

    private Map<String, String> draw(ProjectFile project) {
        State state = today ? State.TODAY : State.TARGET;
        Drawings drawings = Drawings.of(desk.study(project, false), Imprint.NONE);
        Map<String, String> files = new LinkedHashMap<>();
        svg(drawings.floorPlan(state).sheet(), files);
        drawings.sideViews(state).stream().map(Plan::sheet).forEach(sheet -> svg(sheet, files));
        drawings.racks(state).forEach(sheet -> svg(sheet, files));
        for (Trade trade : drawings.trades(state)) {
            drawings.signal(trade, state).forEach(sheet -> svg(sheet, files));
        }
        for (Feed feed : project.project().feeds().values()) {
            svg(drawings.feed(feed.id(), state), files);
        }
        files.put("floor-plan-" + state.word() + ".dxf", drawings.floorPlanDxf(state));
        return files;
    }

    private static void svg(Sheet sheet, Map<String, String> files) {
        String name = sheet.id().replaceAll("[^A-Za-z0-9-]", "-");
        String numbered = files.containsKey(name + ".svg") ? name + "-" + sheet.number() : name;
        files.put(numbered + ".svg", "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + sheet.svg() + "\n");
    }
}
