package housewright.paper;

import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.FixtureSetting;
import housewright.model.Place;
import housewright.model.SpacePoint;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The addresses that fixtures answer to, and where each is aimed. */
final class LightSheets extends Titled {
    LightSheets() {
        super(
                "dmx-and-focus",
                "DMX address sheet and focus chart",
                "Who addresses and aims the light",
                "Which address and mode has each fixture, where does it point, and in which colour?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Lights lights = study.at(Moment.target()).lights();
        List<Receiver> receivers = lights.receivers().stream()
                .sorted(Comparator.comparing(Receiver::universe, Comparator.nullsLast(Comparator.naturalOrder()))
                        .thenComparing(Receiver::address, Comparator.nullsLast(Comparator.naturalOrder()))
                        .thenComparing(Receiver::id))
                .toList();
        if (receivers.isEmpty()) {
            return List.of();
        }
        return List.of(addresses(receivers, lights), focus(study, receivers));
    }

    private Sheet addresses(List<Receiver> receivers, Lights lights) {
        List<Row> rows = new ArrayList<>();
        for (Receiver each : receivers) {
            FixtureSetting light = each.thing().equipment().light();
            String line = lights.findLine(each.id())
                    .map(found ->
                            found.source() == null ? "" : found.source().at().saidPort())
                    .orElse("");
            String gang = each.thing().equipment().gang();
            rows.add(new Row(
                    each.id(),
                    List.of(
                            Cell.orBlank(each.universe()),
                            Cell.orBlank(each.address()),
                            Cell.orBlank(each.address() == null || each.footprint() == null ? null : each.last()),
                            Cell.of(Words.said(each.id())),
                            each.thing().model() == null
                                    ? Cell.BLANK
                                    : Cell.of(Say.type(each.thing().model())),
                            Cell.orBlank(light == null ? null : light.mode()),
                            Cell.orBlank(Say.name(each.thing().equipment().at())),
                            Cell.orBlank(line),
                            Cell.of(gang == null ? "" : "as " + Words.said(gang)),
                            Cell.BOX)));
        }
        return Sheet.lying(
                "dmx-addresses",
                "DMX addresses",
                recipient(),
                List.of(
                        Cautions.LAMPS,
                        new Block.Table(
                                "addresses",
                                List.of(
                                        Column.number("Universe", 8),
                                        Column.number("First", 6),
                                        Column.number("Last", 6),
                                        Column.text("Fixture", 14),
                                        Column.text("Type", 28),
                                        Column.text("Mode", 9),
                                        Column.text("At", 14),
                                        Column.text("Line from", 20),
                                        Column.text("Same address", 12),
                                        Column.text("Set", 5)),
                                rows)));
    }

    private Sheet focus(Study study, List<Receiver> receivers) {
        Say say = Say.of(study.project());
        List<Row> rows = new ArrayList<>();
        for (Receiver each : receivers) {
            FixtureSetting light = each.thing().equipment().light();
            Place place = study.project()
                    .venue()
                    .places()
                    .get(String.valueOf(each.thing().equipment().at()));
            SpacePoint hangs = place == null ? null : place.at();
            rows.add(new Row(
                    each.id(),
                    List.of(
                            Cell.of(Words.said(each.id())),
                            Cell.orBlank(Say.name(each.thing().equipment().at())),
                            Cell.orBlank(
                                    hangs == null ? null : say.length(hangs.z().metres())),
                            Cell.orBlank(light == null ? null : at(light.aim())),
                            Cell.orBlank(light == null ? null : light.colour()),
                            Cell.orBlank(light == null ? null : light.focus()),
                            each.thing().equipment().secondary() == null
                                    ? Cell.BLANK
                                    : Cell.of(
                                            each.thing().equipment().secondary().word()),
                            Cell.BOX)));
        }
        return Sheet.lying(
                "focus-chart",
                "Focus chart",
                recipient(),
                List.of(
                        Cautions.LADDERS,
                        Cautions.LAMPS,
                        new Block.Text(
                                "Points are measured along, across and up from the hall's corner, as on the floor plan. "
                                        + "Aim with the room dark and only this fixture lit."),
                        new Block.Table(
                                "focus",
                                List.of(
                                        Column.text("Fixture", 14),
                                        Column.text("Hangs at", 14),
                                        Column.number(say.lengthHead("Height"), 8),
                                        Column.text("Aimed at", 20),
                                        Column.text("Colour", 14),
                                        Column.text("Focus", 22),
                                        Column.text("Safety", 9),
                                        Column.text("Done", 6)),
                                rows)));
    }

    private static @Nullable String at(@Nullable SpacePoint point) {
        return point == null ? null : point.x() + ", " + point.y() + ", " + point.z();
    }
}
