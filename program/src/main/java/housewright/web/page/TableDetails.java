package housewright.web.page;

import housewright.app.Now;
import housewright.app.table.CellError;
import housewright.app.table.ColumnGuess.Guess;
import housewright.app.table.Edits;
import housewright.app.table.Paste;
import housewright.app.table.Ports;
import housewright.app.table.Ports.PortRow;
import housewright.app.table.Table;
import housewright.app.table.Tables;
import housewright.app.table.Tables.Column;
import housewright.app.table.Tables.Row;
import housewright.finding.Finding;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Shape;
import housewright.model.Words;
import housewright.signal.JoinOffer;
import housewright.signal.JoinOffers;
import housewright.signal.PatchOffer;
import housewright.web.page.TablePage.Details;
import housewright.web.page.TablePage.Field;
import housewright.web.page.TablePage.Offer;
import housewright.web.page.TablePage.Offers;
import housewright.web.page.TablePage.PastedPart;
import housewright.web.page.TablePage.PlacePart;
import housewright.web.page.TablePage.PortPart;
import housewright.web.page.TablePage.Theirs;
import housewright.web.page.TablePage.Told;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is shown beside a table. */
public final class TableDetails {
    private static final int MOST_OFFERS = 40;

    private TableDetails() {}

    /** A row with all its columns; a new one where the id is empty. */
    public static Optional<Details> of(Now now, String home, Table table, String id, boolean edits) {
        Tables tables = Tables.of(now.study(), table);
        Row row = id.isEmpty() ? null : tables.find(id).orElse(null);
        if (row == null && !id.isEmpty()) {
            return Optional.empty();
        }
        List<Field> fields = new ArrayList<>();
        for (Column column : Tables.columns(table)) {
            fields.add(new Field(
                    column.key(),
                    column.title(),
                    column.says() == null ? "" : column.says(),
                    row == null ? "" : row.cell(column.key()),
                    column.derived(),
                    column.first(),
                    column.words()));
        }
        boolean thing = table == Table.EQUIPMENT && row != null;
        return Optional.of(new Details(
                table,
                home + "/table/" + table.key(),
                home,
                id,
                Edits.of(now.study(), table).proposedId(Map.of()),
                now.revision(),
                fields,
                row == null
                        ? List.of()
                        : row.findings().stream().map(TableDetails::told).toList(),
                thing ? ports(now, home, id) : List.of(),
                thing ? places(now, home, id) : List.of(),
                edits));
    }

    private static Told told(Finding finding) {
        return new Told(
                finding.severity().name().toLowerCase(Locale.ROOT),
                finding.message(),
                finding.fixes().isEmpty() ? "" : finding.fixes().getFirst().words());
    }

    private static List<PortPart> ports(Now now, String home, String thing) {
        List<PortPart> parts = new ArrayList<>();
        for (PortRow port : Ports.of(now.study()).list(thing)) {
            String signal = port.signal().isEmpty() ? "passive" : port.signal();
            parts.add(new PortPart(
                    port.name(),
                    port.way() + ", " + signal + (port.connector().isEmpty() ? "" : ", " + port.connector()),
                    port.free(),
                    String.join(", ", port.cables()),
                    String.join(", ", port.far()),
                    home + "/join/" + TablePage.encoded(thing) + "/" + TablePage.encoded(port.name())));
        }
        return parts;
    }

    /** Each place of a device whose inside is patched, with what it is patched to and from. */
    private static List<PlacePart> places(Now now, String home, String thing) {
        Equipment equipment = now.project().equipment().get(thing);
        Model model = equipment == null
                ? null
                : now.study().types().findModel(equipment.model()).orElse(null);
        if (model == null || model.patch() == null) {
            return List.of();
        }
        Shape shape = Shape.of(model);
        Map<String, List<String>> joins = new LinkedHashMap<>();
        Map<String, Boolean> from = new LinkedHashMap<>();
        for (Shape.Socket socket : shape.sockets().values()) {
            place(socket.name(), socket.arriving(), true, joins, from);
            if (socket.arriving().isEmpty()) {
                place(socket.name(), socket.leaving(), false, joins, from);
            }
        }
        shape.points().forEach(point -> {
            joins.put(point, new ArrayList<>());
            from.put(point, true);
        });
        for (PatchEntry entry : now.project().patch().getOrDefault(thing, List.of())) {
            entry.join().pairs().forEach(pair -> {
                String more = entry.tap() == null ? "" : " " + entry.tap().word();
                more += entry.gain() == null ? "" : " " + entry.gain().text();
                more += entry.delay() == null ? "" : " " + entry.delay().text();
                joins.computeIfAbsent(pair.from().toString(), key -> new ArrayList<>())
                        .add("to " + pair.to() + more);
                joins.computeIfAbsent(pair.to().toString(), key -> new ArrayList<>())
                        .add("from " + pair.from() + more);
            });
        }
        List<PlacePart> parts = new ArrayList<>();
        joins.forEach((place, with) -> parts.add(new PlacePart(
                place,
                String.join("; ", with),
                home + "/patching/" + TablePage.encoded(thing) + "/" + TablePage.encoded(place)
                        + (from.getOrDefault(place, true) ? "" : "?way=to"))));
        return parts;
    }

    private static void place(
            String port,
            List<String> channels,
            boolean arriving,
            Map<String, List<String>> joins,
            Map<String, Boolean> from) {
        for (String channel : channels) {
            String place = channels.size() == 1 ? port : port + ":" + channel;
            joins.put(place, new ArrayList<>());
            from.put(place, arriving);
        }
    }

    public static Offers offers(JoinOffers found, String home, boolean edits) {
        List<Offer> offers = new ArrayList<>();
        for (JoinOffer each :
                found.offers().subList(0, Math.min(MOST_OFFERS, found.offers().size()))) {
            String by = each.type().id() + ", " + each.length().text()
                    + (each.via().isEmpty() ? "" : ", along " + String.join(", ", each.via()));
            offers.add(new Offer(each.far().toString(), each.far().toString(), by, String.join("; ", each.assumed())));
        }
        List<String> missing = new ArrayList<>(found.missing());
        if (!found.cables().isEmpty()) {
            missing.add("It has " + String.join(", ", found.cables()) + " in it.");
        }
        return new Offers(
                "Join " + Words.said(found.port().thing()) + ", "
                        + Words.said(found.port().spot().name()),
                home + "/join/" + TablePage.encoded(found.port().thing()) + "/"
                        + TablePage.encoded(found.port().spot().name()),
                offers,
                Math.max(0, found.offers().size() - MOST_OFFERS),
                missing,
                edits);
    }

    public static Offers patches(
            String thing, String place, boolean from, List<PatchOffer> found, String home, boolean edits) {
        List<Offer> offers = found.stream()
                .limit(MOST_OFFERS * 3L)
                .map(each -> new Offer(
                        each.from() + " -> " + each.to(),
                        from ? "to " + each.to() : "from " + each.from(),
                        each.instead().isEmpty()
                                ? ""
                                : "in place of "
                                        + each.instead().stream()
                                                .map(Object::toString)
                                                .collect(Collectors.joining(", ")),
                        ""))
                .toList();
        return new Offers(
                "Patch " + place + " in " + Words.said(thing),
                home + "/patching/" + TablePage.encoded(thing) + "/" + TablePage.encoded(place)
                        + (from ? "" : "?way=to"),
                offers,
                Math.max(0, found.size() - MOST_OFFERS * 3),
                found.isEmpty() ? List.of("Nothing more may be patched here.") : List.of(),
                edits);
    }

    public static TablePage.Pasted pasted(
            String href, long base, Table table, String text, Guess guess, Paste.Pasted pasted) {
        List<Theirs> theirs = new ArrayList<>();
        for (int i = 0; i < guess.columns().size(); i++) {
            int at = i;
            String sample = guess.rows().stream()
                    .map(row -> row.get(at))
                    .filter(cell -> !cell.isEmpty())
                    .findFirst()
                    .orElse("");
            theirs.add(new Theirs(
                    guess.head().isEmpty() ? "" : guess.head().get(i),
                    sample,
                    guess.columns().get(i)));
        }
        List<TablePage.Choice> choices = new ArrayList<>();
        if (table != Table.PATCH) {
            choices.add(new TablePage.Choice(Tables.ID, "Id"));
        }
        Tables.columns(table).stream()
                .filter(column -> !column.derived())
                .forEach(column -> choices.add(new TablePage.Choice(column.key(), column.title())));
        List<PastedPart> rows = pasted.rows().stream()
                .map(row -> new PastedPart(
                        row.number(),
                        row.id(),
                        row.isNew(),
                        row.accepted(),
                        row.cells().entrySet().stream()
                                .map(cell -> cell.getKey() + " " + cell.getValue())
                                .collect(Collectors.joining("; ")),
                        row.errors().stream().map(TableDetails::why).collect(Collectors.joining(" "))))
                .toList();
        return new TablePage.Pasted(
                href,
                base,
                text,
                theirs,
                choices,
                rows,
                pasted.accepted(),
                pasted.rows().size(),
                !guess.head().isEmpty());
    }

    private static String why(CellError error) {
        return (error.column().isEmpty() ? "" : error.column() + ": ") + error.text();
    }
}
