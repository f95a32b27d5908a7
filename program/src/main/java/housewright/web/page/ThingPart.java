package housewright.web.page;

import housewright.app.Now;
import housewright.app.table.Table;
import housewright.app.table.Tables;
import housewright.app.table.Tables.Column;
import housewright.app.table.Tables.Row;
import housewright.finding.Finding;
import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.Place;
import housewright.model.SpacePoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is shown beside a drawing of the thing that is chosen in it.
 *
 * @param kind in words
 * @param row where it is edited; null where no table has it
 * @param about where its findings are
 * @param position where it is, where the drawing lets it be moved; null elsewhere
 */
public record ThingPart(
        String subject,
        String id,
        String kind,
        List<Line> lines,
        List<Told> findings,
        @Nullable String row,
        @Nullable String about,
        @Nullable Position position,
        long base) {
    private static final int MOST_FINDINGS = 6;

    public ThingPart {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
    }

    /** Something known of it. */
    public record Line(String title, String text) {}

    /** A finding about it. */
    public record Told(String state, String message, String fix) {}

    /** Coordinates as a person writes them. */
    public record Position(String x, String y, String z) {}

    /** @param subject as drawings name it, such as {@code equipment:desk}; empty where there is no such thing */
    public static Optional<ThingPart> of(Now now, Links links, String job, String subject, boolean moves) {
        int colon = subject.indexOf(':');
        if (colon < 1 || colon == subject.length() - 1) {
            return Optional.empty();
        }
        Subject thing = new Subject(subject.substring(0, colon), subject.substring(colon + 1));
        Optional<Table> table = table(thing.kind());
        Optional<Row> row = table.flatMap(each -> Tables.of(now.study(), each).find(thing.id()));
        if (row.isEmpty()) {
            return Optional.empty();
        }
        List<Finding> about = Stream.concat(
                        now.study().findingsBeyondFeeds().stream(), now.study().laterBeyondFeeds().stream())
                .filter(finding -> finding.subjects().stream().anyMatch(each -> isSame(each, thing)))
                .toList();
        List<Told> told =
                about.stream().limit(MOST_FINDINGS).map(ThingPart::told).toList();
        if (about.size() > MOST_FINDINGS) {
            told = Stream.concat(
                            told.stream(),
                            Stream.of(new Told("note", (about.size() - MOST_FINDINGS) + " more findings", "")))
                    .toList();
        }
        String path = about.isEmpty()
                ? null
                : about.getFirst().subjects().stream()
                        .filter(each -> isSame(each, thing))
                        .map(Subject::path)
                        .findFirst()
                        .orElse(null);
        return Optional.of(new ThingPart(
                subject,
                thing.id(),
                table.get().one(),
                lines(now, table.get(), row.get()),
                told,
                links.of(thing),
                path == null
                        ? null
                        : Query.of(job + "/findings").with("about", path).href(),
                moves && table.get() == Table.PLACES ? position(now, thing.id()) : null,
                now.revision()));
    }

    private static Optional<Table> table(String kind) {
        return Optional.ofNullable(
                switch (kind) {
                    case "equipment" -> Table.EQUIPMENT;
                    case "cable" -> Table.CABLES;
                    case "network-send" -> Table.NETWORK_SENDS;
                    case "radio" -> Table.RADIO;
                    case "feed" -> Table.FEEDS;
                    case "place" -> Table.PLACES;
                    case "room" -> Table.ROOMS;
                    case "pathway" -> Table.PATHWAYS;
                    case "circuit" -> Table.CIRCUITS;
                    default -> null;
                });
    }

    private static boolean isSame(Subject finding, Subject thing) {
        return finding.id().equals(thing.id())
                && (finding.kind().equals(thing.kind()) || finding.kind().equals("venue." + thing.kind()));
    }

    private static List<Line> lines(Now now, Table table, Row row) {
        List<Line> lines = new ArrayList<>();
        Equipment thing = now.project().equipment().get(row.id());
        if (table == Table.EQUIPMENT && thing != null) {
            now.study().types().findModel(thing.model()).ifPresent(model -> {
                if (model.name() != null) {
                    lines.add(new Line("Name", model.name()));
                }
                lines.add(new Line("Sort", model.kind().word().replace('-', ' ')));
            });
            Place place = now.project().venue().places().get(String.valueOf(thing.at()));
            if (place != null && place.room() != null) {
                lines.add(new Line("Room", place.room()));
            }
        }
        if (table == Table.PLACES) {
            List<String> here = now.project().equipment().values().stream()
                    .filter(each -> row.id().equals(each.at()))
                    .map(Equipment::id)
                    .toList();
            if (!here.isEmpty()) {
                lines.add(new Line("Here", String.join(", ", here)));
            }
        }
        for (Column column : Tables.columns(table)) {
            String text = row.cell(column.key());
            if (!text.isEmpty() && lines.stream().noneMatch(each -> each.text().equals(text))) {
                lines.add(new Line(column.title(), text));
            }
        }
        return lines;
    }

    private static Told told(Finding finding) {
        return new Told(
                finding.severity().name().toLowerCase(Locale.ROOT),
                finding.message(),
                finding.fixes().isEmpty() ? "" : finding.fixes().getFirst().words());
    }

    private static Position position(Now now, String id) {
        Place place = now.project().venue().places().get(id);
        SpacePoint at = place == null ? null : place.at();
        return at == null
                ? new Position("", "", "")
                : new Position(at.x().text(), at.y().text(), at.z().text());
    }
}
