package housewright.app.table;

import housewright.app.FoundType;
import housewright.app.TypeSearch;
import housewright.file.EntityCells;
import housewright.file.Naming;
import housewright.model.Equipment;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What may be chosen in a cell, by what has been typed into it. */
public final class Choices {
    /**
     * One choice.
     *
     * @param text the whole of the cell with it chosen
     * @param word what is chosen
     * @param says what it is; empty where the word says it
     * @param open more is to be typed after it: a thing, whose port comes next
     */
    public record Choice(String text, String word, String says, boolean open) {}

    private final Study study;
    private final TypeSearch types;
    private final Table table;

    private Choices(Study study, TypeSearch types, Table table) {
        this.study = study;
        this.types = types;
        this.table = table;
    }

    public static Choices of(Study study, TypeSearch types, Table table) {
        return new Choices(study, types, table);
    }

    /**
     * The best choices in front.
     *
     * @param row empty where it is new
     * @param typed the text of the cell so far
     */
    public List<Choice> find(String row, String column, String typed, int most) {
        Tables.Column known = Tables.columns(table).stream()
                .filter(each -> each.key().equals(column))
                .findFirst()
                .orElse(null);
        if (known == null || known.derived()) {
            return List.of();
        }
        int comma = known.list() ? lastComma(typed) : -1;
        String before = comma < 0 ? "" : typed.substring(0, comma + 1).stripTrailing() + " ";
        String last = typed.substring(comma + 1).strip();
        List<Choice> all = named(known, row, last);
        return all.stream()
                .limit(most)
                .map(each -> new Choice(before + each.word(), each.word(), each.says(), each.open()))
                .toList();
    }

    private static int lastComma(String typed) {
        int depth = 0;
        int comma = -1;
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            depth += c == '{' ? 1 : c == '}' && depth > 0 ? -1 : 0;
            comma = c == ',' && depth == 0 ? i : comma;
        }
        return comma;
    }

    private List<Choice> named(Tables.Column column, String row, String typed) {
        Naming naming = column.names();
        if (table == Table.PATCH && (column.key().equals("from") || column.key().equals("to"))) {
            return spots(row, column.key().equals("from"), typed);
        }
        if (column.key().equals("light.mode")) {
            return matching(modes(row), typed);
        }
        if (naming == null) {
            return matching(column.words().isEmpty() ? used(column) : words(column.words()), typed);
        }
        if (naming == Naming.SUBJECT) {
            return subjects(typed);
        }
        if (naming.isWithinAThing()) {
            return typed.contains(".") ? ports(typed, naming) : things(typed, naming);
        }
        if (naming == Naming.MODEL) {
            return models(typed);
        }
        if (naming == Naming.CABLE_TYPE || naming == Naming.ADAPTER) {
            return library(naming == Naming.CABLE_TYPE ? "cable-types" : "adapters", typed);
        }
        Map<String, String> ids = new LinkedHashMap<>();
        if (naming == Naming.ROOM_OR_PLACE) {
            ids.put("elsewhere", "not in the building");
        }
        if (column.key().equals("needs") && table == Table.EVENTS) {
            ids.put("all", "every feed");
        }
        naming.sections()
                .forEach(section -> Table.find(section)
                        .ifPresent(each -> Rows.of(study.project(), each)
                                .forEach((id, entity) -> ids.putIfAbsent(id, says(each, entity)))));
        return matching(ids, typed);
    }

    private static Map<String, String> words(List<String> words) {
        Map<String, String> all = new LinkedHashMap<>();
        words.forEach(word -> all.put(word, ""));
        return all;
    }

    /** What other rows have in the column: free text is best written alike. */
    private Map<String, String> used(Tables.Column column) {
        Map<String, Integer> count = new LinkedHashMap<>();
        if (!column.key().equals("note")
                && !column.key().equals("label")
                && !column.key().equals("serial")) {
            for (Record row : Rows.of(study.project(), table).values()) {
                String text = EntityCells.of(row).getOrDefault(column.key(), "");
                for (String each : column.list() ? text.split(",\\s*") : new String[] {text}) {
                    if (!each.isBlank() && each.length() < 60) {
                        count.merge(each, 1, Integer::sum);
                    }
                }
            }
        }
        Map<String, String> used = new LinkedHashMap<>();
        count.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(200)
                .forEach(each -> used.put(each.getKey(), ""));
        return used;
    }

    private Map<String, String> modes(String row) {
        Map<String, String> modes = new LinkedHashMap<>();
        Equipment equipment = study.project().equipment().get(row);
        Model model = equipment == null
                ? null
                : study.types().findModel(equipment.model()).orElse(null);
        if (model != null && model.light() != null) {
            model.light().modes().forEach((mode, count) -> modes.put(mode, count + " channels"));
        }
        return modes;
    }

    private String says(Table of, Record entity) {
        Map<String, String> cells = EntityCells.of(entity);
        return switch (of) {
            case EQUIPMENT -> says((Equipment) entity);
            case PLACES -> cells.getOrDefault("room", "");
            case PATHWAYS -> cells.getOrDefault("from", "?") + " to " + cells.getOrDefault("to", "?");
            case CIRCUITS -> cells.getOrDefault("rating", "");
            case CABLES -> cells.getOrDefault("from", "?") + " to " + cells.getOrDefault("to", "?");
            case PEOPLE -> cells.getOrDefault("role", "");
            case TASKS -> cells.getOrDefault("name", "");
            case EVENTS -> cells.getOrDefault("from", "");
            case HIRES -> cells.getOrDefault("kind", "");
            case FEEDS -> cells.getOrDefault("from", "?") + " to " + cells.getOrDefault("to", "?");
            default -> "";
        };
    }

    private String says(Equipment each) {
        Model model = study.types().findModel(each.model()).orElse(null);
        String name = model == null ? "" : model.name() == null ? model.kind().word() : model.name();
        return each.at() == null ? name : name.isEmpty() ? each.at() : name + ", at " + each.at();
    }

    /** Ids that begin so, then words in them that do, then those that have it anywhere, then what they are. */
    private static List<Choice> matching(Map<String, String> all, String typed) {
        String wanted = typed.toLowerCase(Locale.ROOT);
        record Ranked(int rank, Choice choice) {}
        List<Ranked> ranked = new ArrayList<>();
        all.forEach((word, says) -> {
            int rank = rank(word.toLowerCase(Locale.ROOT), says.toLowerCase(Locale.ROOT), wanted);
            if (rank < 4) {
                ranked.add(new Ranked(rank, new Choice(word, word, says, false)));
            }
        });
        ranked.sort(Comparator.comparingInt(Ranked::rank));
        return ranked.stream().map(Ranked::choice).toList();
    }

    private static int rank(String word, String says, String wanted) {
        if (word.startsWith(wanted)) {
            return 0;
        }
        int at = word.indexOf(wanted);
        if (at > 0) {
            return !Character.isLetterOrDigit(word.charAt(at - 1)) ? 1 : 2;
        }
        for (String each : wanted.split("\\s+")) {
            if (!word.contains(each) && !says.contains(each)) {
                return 4;
            }
        }
        return 3;
    }

    private List<Choice> models(String typed) {
        Map<String, String> own = new LinkedHashMap<>();
        study.project()
                .models()
                .forEach((id, model) ->
                        own.put(id, (model.name() == null ? model.kind().word() : model.name()) + ", of this project"));
        List<Choice> choices = new ArrayList<>(matching(own, typed));
        choices.addAll(library("models", typed));
        return choices;
    }

    private List<Choice> library(String section, String typed) {
        List<String> words = typed.isBlank() ? List.of() : List.of(typed.strip().split("\\s+"));
        List<Choice> choices = new ArrayList<>();
        for (FoundType type : types.find(words)) {
            if (type.section().equals(section)) {
                choices.add(new Choice(type.id(), type.id(), type.name().isEmpty() ? type.kind() : type.name(), false));
            }
        }
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        choices.sort(Comparator.comparing(choice -> !choice.word().startsWith(wanted)));
        return choices;
    }

    private List<Choice> things(String typed, Naming naming) {
        Map<String, String> things = new LinkedHashMap<>();
        study.project().equipment().values().forEach(each -> things.put(each.id(), says(each)));
        List<Choice> choices = new ArrayList<>();
        if (naming == Naming.SOCKET && table == Table.CABLES) {
            choices.addAll(matching(Map.of("unknown", "not known yet"), typed));
        }
        matching(things, typed)
                .forEach(each -> choices.add(new Choice(each.word() + ".", each.word() + ".", each.says(), true)));
        return choices;
    }

    private List<Choice> ports(String typed, Naming naming) {
        int dot = typed.indexOf('.');
        String thing = typed.substring(0, dot);
        Shape shape = shape(thing);
        if (shape == null) {
            return List.of();
        }
        Map<String, String> spots = new LinkedHashMap<>();
        Map<String, String> taken = new LinkedHashMap<>();
        for (Socket socket : shape.sockets().values()) {
            Port port = socket.port();
            boolean fits = switch (naming) {
                case SOURCE -> port.leaves();
                case DESTINATION -> port.arrives();
                default -> true;
            };
            if (!fits) {
                continue;
            }
            if (naming == Naming.SOCKET) {
                List<String> cables = study.signals().listCables(new Address(thing, new Spot(socket.name(), null)));
                (cables.isEmpty() ? spots : taken)
                        .put(
                                socket.name(),
                                (cables.isEmpty() ? "free" : "has " + String.join(", ", cables)) + says(port));
            } else {
                List<String> channels =
                        naming == Naming.DESTINATION || socket.leaving().isEmpty()
                                ? socket.arriving()
                                : socket.leaving();
                if (channels.size() <= 1) {
                    spots.put(socket.name(), says(port).replaceFirst("^, ", ""));
                } else {
                    channels.forEach(channel ->
                            spots.put(socket.name() + ":" + channel, says(port).replaceFirst("^, ", "")));
                }
            }
        }
        if (naming != Naming.SOCKET) {
            shape.points().forEach(point -> spots.put(point, ""));
        }
        spots.putAll(taken);
        List<Choice> choices = new ArrayList<>();
        for (Choice each : matching(spots, typed.substring(dot + 1))) {
            choices.add(new Choice(thing + "." + each.word(), thing + "." + each.word(), each.says(), false));
        }
        return choices;
    }

    private static String says(Port port) {
        String signal = port.signal() == null ? "" : ", " + port.signal().word();
        return signal + (port.connector() == null ? "" : ", " + port.connector().word());
    }

    private @Nullable Shape shape(String thing) {
        Equipment equipment = study.project().equipment().get(thing);
        return equipment == null
                ? null
                : study.types().findModel(equipment.model()).map(Shape::of).orElse(null);
    }

    /** Places of the row's device. */
    private List<Choice> spots(String row, boolean from, String typed) {
        Record patch = Rows.of(study.project(), table).get(row);
        String device = patch instanceof PatchRow known ? known.device() : row;
        Shape shape = device == null ? null : shape(device);
        if (shape == null) {
            return List.of();
        }
        Set<String> names = new LinkedHashSet<>();
        for (Socket socket : shape.sockets().values()) {
            List<String> channels = from ? socket.arriving() : socket.leaving();
            if (channels.size() == 1) {
                names.add(socket.name());
            } else {
                channels.forEach(channel -> names.add(socket.name() + ":" + channel));
            }
        }
        names.addAll(shape.points());
        return matching(words(List.copyOf(names)), typed);
    }

    private List<Choice> subjects(String typed) {
        Project project = study.project();
        Map<String, String> subjects = new LinkedHashMap<>();
        for (Table each : Table.values()) {
            if (each != Table.PATCH) {
                Rows.of(project, each).forEach((id, entity) -> subjects.put(each.key() + "." + id, says(each, entity)));
            }
        }
        return matching(subjects, typed);
    }
}
