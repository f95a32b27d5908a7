package housewright.app.packet;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.packet.Answering.Does;
import housewright.app.packet.Answering.Entry;
import housewright.app.packet.AnswersFile.Answer;
import housewright.app.packet.AnswersFile.Photo;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Known;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.Study;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnsweringTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);
    private static final String HALL = """
            housewright: 1
            project: {name: Test hall, library: %d}
            venue:
              rooms: {hall: {note: Old.}}
              places:
                desk: {room: hall}
                bar: {room: hall, at: [1 m, 2 m, 5 m], hang: {}}
              pathways: {p1: {from: desk, to: bar, kind: conduit}}
              circuits: {c1: {voltage: 230 V}}
            equipment: {old: {at: desk}, new: {life: new}}
            people: {lead: {role: site lead}, other: {role: helper}}
            questions:
              q1: {to: lead, asks: "How many seats?", due: 2027-01-20}
              q2: {to: other, asks: "Who has the key?"}
              q3: {to: lead, asks: "Answered?", answer: Yes.}
            """.formatted(LIBRARY.version());
    private static final Project PROJECT = read(HALL);
    private static final Study STUDY = Study.of(PROJECT, LIBRARY);

    private static Project read(String text) {
        ReadResult read = ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY);
        if (read instanceof ReadResult.Refused refused) {
            throw new AssertionError(refused.errors().toString());
        }
        return ((ReadResult.Loaded) read).project();
    }

    private final List<byte[]> album = new ArrayList<>();

    private Answering answering(Project project, Answer... answers) {
        AnswersFile file = new AnswersFile(1, "x", "Test hall", "lead", "2027-01-02 10:00", List.of(answers));
        return Answering.of(Study.of(project, LIBRARY), file, (name, jpeg) -> {
            album.add(jpeg);
            return "photo-" + album.size() + ".jpg";
        });
    }

    private static Answer answer(String about, String field, String was, String text, Photo... photos) {
        return new Answer(about, field, "?", was, text, List.of(photos));
    }

    @Test
    void aPacketAsksWhatIsOpenAndWhatTheSurveyLacks() {
        List<PacketItem> items = Survey.of(STUDY, "lead");
        assertThat(items)
                .extracting(item -> item.subject() + " " + item.field())
                .contains(
                        "questions.q1 answer",
                        "venue.rooms.hall ceiling",
                        "venue.rooms.hall note",
                        "venue.places.desk at",
                        "venue.places.bar hang.stated-by",
                        "venue.places.bar hang.limit",
                        "venue.pathways.p1 length",
                        "venue.pathways.p1 bore",
                        "venue.circuits.c1 rating",
                        "equipment.old note")
                .doesNotContain("questions.q2 answer", "questions.q3 answer", "equipment.new note")
                .doesNotHaveDuplicates();
        assertThat(items.getFirst().kind()).isEqualTo("questions");
        assertThat(items)
                .filteredOn(item -> item.field().startsWith("hang"))
                .allMatch(item -> item.caution().contains("never guessed"));
    }

    @Test
    void aPacketLoadsNothingAndIsTheSameEachTime() {
        String html = Packet.html(STUDY, "lead");
        assertThat(Packet.html(STUDY, "lead")).isEqualTo(html);
        assertThat(html).contains("default-src 'none'").doesNotContain("http://", "https://", "src=\"");
    }

    @Test
    void wordsOfTheProjectCannotBreakOutOfThePage() {
        Project odd = read(HALL.replace("How many seats?", "</script><script>alert(1)</script> & <b>"));
        String html = Packet.html(Study.of(odd, LIBRARY), "lead");
        assertThat(html).doesNotContain("alert(1)</script>", "<b>");
    }

    @Test
    void answersAreOneBatchThatSaysHowItCameToBeKnown() {
        Answering answering = answering(
                PROJECT,
                answer("questions.q1", "answer", "How many seats?\n", "About ninety"),
                answer("venue.rooms.hall", "ceiling", "", "6.2 m"),
                answer("venue.rooms.hall", "note", "Old.", "18 m by 11 m"),
                answer("venue.places.desk", "at", "", "3 m, 4.2 m, 1 m"),
                answer("venue.places.bar", "hang.limit", "", "150 kg"),
                answer("venue.places.bar", "hang.stated-by", "", "A. Rigger, licensed, 2027"));
        assertThat(answering.entries()).extracting(Entry::does).containsOnly(Does.TAKE);
        Project after = Change.apply(PROJECT, answering.changes());
        assertThat(after.questions().get("q1").answer()).isEqualTo("About ninety");
        assertThat(after.questions().get("q1").remarks().by()).isEqualTo("lead");
        assertThat(after.venue().rooms().get("hall").ceiling().metres()).isEqualTo(6.2);
        assertThat(after.venue().rooms().get("hall").remarks().note()).isEqualTo("Old. 18 m by 11 m");
        assertThat(after.venue().places().get("desk").at().y().metres()).isEqualTo(4.2);
        assertThat(after.venue().places().get("desk").remarks().known()).isEqualTo(Known.MEASURED);
        assertThat(after.venue().places().get("bar").hang().statedBy()).startsWith("A. Rigger");
    }

    @Test
    void aLimitOverheadWithoutWhoStatesItIsNotTaken() {
        Answering answering = answering(PROJECT, answer("venue.places.bar", "hang.limit", "", "150 kg"));
        assertThat(answering.entries().getFirst().does()).isEqualTo(Does.REFUSE);
        assertThat(answering.changes()).isEmpty();
    }

    @Test
    void whatHasChangedMeanwhileIsAConflict() {
        Project answered = read(HALL.replace("due: 2027-01-20}", "answer: Eighty.}"));
        Answering answering = answering(
                answered,
                answer("questions.q1", "answer", "How many seats?\n", "About ninety"),
                answer("questions.q9", "answer", "Gone?\n", "Yes"));
        assertThat(answering.entries()).extracting(Entry::does).containsExactly(Does.CONFLICT, Does.CONFLICT);
        assertThat(answering.entries().getFirst().why()).contains("Eighty.");
        assertThat(answering.changes()).isEmpty();
        Project other = read(HALL.replace("How many seats?", "How many seats in the balcony?"));
        assertThat(answering(other, answer("questions.q1", "answer", "How many seats?\n", "About ninety"))
                        .entries()
                        .getFirst()
                        .does())
                .isEqualTo(Does.CONFLICT);
    }

    @Test
    void takenTwiceItIsSoAlready() {
        Answer one = answer("questions.q1", "answer", "How many seats?\n", "About ninety");
        Project after = Change.apply(PROJECT, answering(PROJECT, one).changes());
        assertThat(answering(after, one).entries().getFirst().does()).isEqualTo(Does.SAME);
    }

    @Test
    void whatNoPacketAsksIsRefused() {
        Answering answering = answering(
                PROJECT,
                answer("equipment.old", "model", "", "condenser-gooseneck"),
                answer("project", "name", "Test hall", "Other"),
                answer("venue.circuits.c1", "rating", "", "lots"),
                answer("venue.pathways.p1", "length", "", "12"));
        assertThat(answering.entries()).extracting(Entry::does).containsOnly(Does.REFUSE);
        assertThat(answering.entries()).extracting(Entry::why).noneMatch(String::isEmpty);
        assertThat(answering.changes()).isEmpty();
    }

    @Test
    void photosAreKeptWithoutWhatTheCameraWroteBesideThem() throws IOException {
        byte[] picture = jpeg();
        byte[] marked = behind(with(picture, 0xE1, "Exif\0\0GPS 52.1 0.2"), "a second picture, GPS 52.1 0.2");
        assertThat(new String(marked, StandardCharsets.ISO_8859_1)).contains("GPS");
        String data = Base64.getEncoder().encodeToString(marked);
        Answering answering =
                answering(PROJECT, answer("questions.q1", "answer", "How many seats?\n", "", new Photo("a.jpg", data)));
        assertThat(answering.entries().getFirst().does()).isEqualTo(Does.TAKE);
        assertThat(new String(album.getFirst(), StandardCharsets.ISO_8859_1)).doesNotContain("GPS", "Exif");
        assertThat(ImageIO.read(new ByteArrayInputStream(album.getFirst())).getWidth())
                .isEqualTo(8);
        assertThat(album.getFirst())
                .as("all of the picture")
                .endsWith(Arrays.copyOfRange(picture, 200, picture.length));
        Project after = Change.apply(PROJECT, answering.changes());
        assertThat(after.questions().get("q1").remarks().photo()).containsExactly("photo-1.jpg");
        Answering none = answering(
                PROJECT, answer("questions.q1", "answer", "How many seats?\n", "x", new Photo("a.jpg", "PGh0bWw+")));
        assertThat(none.entries().getFirst().why()).contains("no JPEG");
    }

    private static byte[] jpeg() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
        return bytes.toByteArray();
    }

    private static byte[] behind(byte[] jpeg, String text) {
        byte[] more = text.getBytes(StandardCharsets.ISO_8859_1);
        byte[] all = Arrays.copyOf(jpeg, jpeg.length + more.length);
        System.arraycopy(more, 0, all, jpeg.length, more.length);
        return all;
    }

    private static byte[] with(byte[] jpeg, int marker, String text) {
        byte[] segment = text.getBytes(StandardCharsets.ISO_8859_1);
        byte[] all = new byte[jpeg.length + segment.length + 4];
        all[0] = jpeg[0];
        all[1] = jpeg[1];
        all[2] = (byte) 0xFF;
        all[3] = (byte) marker;
        all[4] = (byte) ((segment.length + 2) >> 8);
        all[5] = (byte) (segment.length + 2);
        System.arraycopy(segment, 0, all, 6, segment.length);
        System.arraycopy(jpeg, 2, all, 6 + segment.length, jpeg.length - 2);
        return all;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"format\":1}",
                "{\"format\":2,\"answers\":[]}",
                "{\"format\":1,\"packet\":\"\",\"project\":\"\",\"to\":\"\",\"saved\":\"\",\"answers\":[{}]}"
            })
    void whatIsNoAnswersFileIsRefusedWithAReason(String text) {
        assertThat(AnswersReader.read(text.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOfSatisfying(
                        AnswersReader.Reading.Refused.class,
                        refused -> assertThat(refused.why()).endsWith("."));
    }

    @Test
    void aDeepOrLongFileIsRefused() {
        byte[] deep = "[".repeat(5000).getBytes(StandardCharsets.UTF_8);
        assertThat(AnswersReader.read(deep)).isInstanceOf(AnswersReader.Reading.Refused.class);
        byte[] large = new byte[AnswersReader.MOST_BYTES + 1];
        Arrays.fill(large, (byte) ' ');
        assertThat(AnswersReader.read(large)).isInstanceOf(AnswersReader.Reading.Refused.class);
    }
}
