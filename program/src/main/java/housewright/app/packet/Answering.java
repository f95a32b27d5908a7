package housewright.app.packet;

import housewright.app.packet.AnswersFile.Answer;
import housewright.app.packet.AnswersFile.Photo;
import housewright.file.EntityCells;
import housewright.file.EntityCells.Reading;
import housewright.file.FileError;
import housewright.file.ProjectReader;
import housewright.model.Known;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What an answers file would do to a project, answer by answer, and the changes that do it.
 *
 * @param changes of all that is taken, one batch
 */
public record Answering(AnswersFile file, List<Entry> entries, List<Change> changes) {
    public Answering {
        entries = List.copyOf(entries);
        changes = List.copyOf(changes);
    }

    /** What becomes of an answer. */
    public enum Does {
        TAKE,
        /** It stands so already. */
        SAME,
        /** The question, or what it asks after, has changed since the packet was made. */
        CONFLICT,
        REFUSE
    }

    /**
     * One answer.
     *
     * @param photos how many come with it
     * @param why it is not taken; empty where it is
     */
    public record Entry(String about, String field, String asked, String answer, int photos, Does does, String why) {}

    /** Keeps a photo, and says under which name. */
    public interface Album {
        /** @param jpeg without anything beside the picture */
        String keep(String name, byte[] jpeg);
    }

    /** What a survey may put; an answers file comes from a stranger's phone. */
    private static final Map<String, Set<String>> FIELDS = Map.of(
            "venue.rooms", Set.of("note", "ceiling"),
            "venue.places", Set.of("at", "hang.stated-by", "hang.limit"),
            "venue.pathways", Set.of("length", "bore"),
            "venue.circuits", Set.of("rating"),
            "equipment", Set.of("note", "at", "unit", "light.address", "ip"),
            "cables", Set.of("length"));

    private static final Set<String> MEASURED = Set.of("ceiling", "at", "length", "bore");

    public long count(Does does) {
        return entries.stream().filter(entry -> entry.does() == does).count();
    }

    /** A question as a packet knows it, to tell later whether it has changed. */
    static String asItIs(Question question) {
        return (question.asks() == null ? "" : question.asks()) + "\n"
                + (question.answer() == null ? "" : question.answer().strip());
    }

    /** What stands in a field; empty where nothing does. */
    static String cell(Project project, String subject, String field) {
        Section section = section(subject);
        Record entity = section == null ? null : section.of(project).get(id(section, subject));
        return entity == null ? "" : EntityCells.of(entity).getOrDefault(field, "");
    }

    private static @org.jspecify.annotations.Nullable Section section(String subject) {
        for (Section section : Section.values()) {
            if (subject.startsWith(section.path() + ".")) {
                return section;
            }
        }
        return null;
    }

    private static String id(Section section, String subject) {
        return subject.substring(section.path().length() + 1);
    }

    public static Answering of(Study study, AnswersFile file, Album album) {
        Project project = study.project();
        Entry[] entries = new Entry[file.answers().size()];
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < entries.length; i++) {
            order.add(i);
        }
        // Who states a limit comes before the limit.
        order.sort(Comparator.comparing(i -> file.answers().get(i).field().equals("hang.limit")));
        for (int i : order) {
            Answer answer = file.answers().get(i);
            Taken taken = take(project, study, file, answer, album);
            project = taken.project();
            entries[i] = new Entry(
                    answer.about(),
                    answer.field(),
                    answer.asked(),
                    answer.answer(),
                    answer.photos().size(),
                    taken.does(),
                    taken.why());
        }
        return new Answering(file, List.of(entries), Change.between(study.project(), project));
    }

    private record Taken(Project project, Does does, String why) {}

    private static Taken take(Project project, Study study, AnswersFile file, Answer answer, Album album) {
        Section section = section(answer.about());
        if (section == null) {
            return new Taken(project, Does.REFUSE, "There is no " + answer.about() + " to be answered.");
        }
        String id = id(section, answer.about());
        Record entity = section.of(project).get(id);
        if (entity == null) {
            return new Taken(project, Does.CONFLICT, "It is not in the project any more.");
        }
        boolean question = entity instanceof Question && answer.field().equals("answer");
        if (!question && !FIELDS.getOrDefault(section.path(), Set.of()).contains(answer.field())) {
            return new Taken(project, Does.REFUSE, "A packet does not ask after " + answer.field() + " there.");
        }
        Question asked = study.project().questions().get(id);
        String is = question && asked != null ? asItIs(asked) : cell(study.project(), answer.about(), answer.field());
        boolean same = question
                ? answer.answer().equals(cell(study.project(), answer.about(), "answer"))
                : answer.answer().equals(is);
        if (same && !answer.answer().isEmpty() && answer.photos().isEmpty()) {
            return new Taken(project, Does.SAME, "It stands so already.");
        }
        if (!is.equals(answer.was())) {
            String now = question ? cell(study.project(), answer.about(), "answer") : is;
            return new Taken(
                    project,
                    Does.CONFLICT,
                    now.isEmpty() ? "It is asked otherwise now." : "Meanwhile it says \"" + now + "\".");
        }
        return put(project, study, file, answer, section, id, entity, album);
    }

    private static Taken put(
            Project project,
            Study study,
            AnswersFile file,
            Answer answer,
            Section section,
            String id,
            Record entity,
            Album album) {
        if (answer.field().equals("hang.limit") && !answer.answer().isEmpty()) {
            Place place = project.venue().places().get(id);
            if (place == null || place.hang() == null || place.hang().statedBy() == null) {
                return new Taken(
                        project, Does.REFUSE, "Nobody is named who states this limit; without a name it is not taken.");
            }
        }
        List<byte[]> photos = new ArrayList<>();
        for (Photo photo : answer.photos()) {
            Optional<byte[]> plain = decoded(photo.data()).flatMap(Jpeg::plain);
            if (plain.isEmpty()) {
                return new Taken(project, Does.REFUSE, "Its photo " + photo.name() + " is no JPEG picture.");
            }
            photos.add(plain.get());
        }
        Map<String, String> cells = cells(file, answer, entity);
        Reading reading = cells.isEmpty() ? new Reading.Read(entity) : EntityCells.read(section, id, entity, cells);
        if (reading instanceof Reading.Refused refused) {
            FileError error = refused.errors().getFirst();
            return new Taken(
                    project,
                    Does.REFUSE,
                    "Found " + error.found() + (error.expected().isEmpty() ? "" : ", expected " + error.expected())
                            + ".");
        }
        Record read = ((Reading.Read) reading).entity();
        Project tried = Change.apply(project, List.of(new Change.Put(section, id, read)));
        List<FileError> errors =
                ProjectReader.check("answers", tried, study.types().library());
        if (!errors.isEmpty()) {
            return new Taken(
                    project,
                    Does.REFUSE,
                    "Found " + errors.getFirst().found() + ", expected "
                            + errors.getFirst().expected() + ".");
        }
        if (photos.isEmpty()) {
            return new Taken(tried, Does.TAKE, "");
        }
        List<String> names = new ArrayList<>();
        for (int i = 0; i < photos.size(); i++) {
            names.add(album.keep(answer.photos().get(i).name(), photos.get(i)));
        }
        Map<String, String> with = new LinkedHashMap<>();
        String before = EntityCells.of(read).getOrDefault("photo", "");
        names.removeIf(name -> List.of(before.split(", ")).contains(name));
        with.put(
                "photo",
                before.isEmpty()
                        ? String.join(", ", names)
                        : before + (names.isEmpty() ? "" : ", " + String.join(", ", names)));
        with.put("by", file.to());
        Reading shown = EntityCells.read(section, id, read, with);
        return shown instanceof Reading.Read last
                ? new Taken(Change.apply(project, List.of(new Change.Put(section, id, last.entity()))), Does.TAKE, "")
                : new Taken(project, Does.REFUSE, "Its photos cannot be named.");
    }

    private static Map<String, String> cells(AnswersFile file, Answer answer, Record entity) {
        Map<String, String> cells = new LinkedHashMap<>();
        String text = answer.answer().strip();
        if (text.isEmpty()) {
            return cells;
        }
        String old = EntityCells.of(entity).getOrDefault("note", "");
        boolean added = answer.field().equals("note") && !old.isEmpty();
        cells.put(answer.field(), added ? old + " " + text : text);
        cells.put("by", file.to());
        if (!(entity instanceof Question)) {
            cells.put(
                    "known",
                    (MEASURED.contains(answer.field())
                                    ? Known.MEASURED
                                    : answer.field().startsWith("hang.") ? Known.TOLD : Known.SEEN)
                            .name()
                            .toLowerCase(java.util.Locale.ROOT));
        }
        return cells;
    }

    private static Optional<byte[]> decoded(String data) {
        try {
            return Optional.of(Base64.getDecoder().decode(data));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
