package housewright.app.packet;

import housewright.model.Doc;
import java.util.List;

/** What {@code answers --json} prints. */
public record AnswersDocument(
        @Doc("Who answered") String to,

        @Doc("When the answers were saved, by the phone's own clock")
        String saved,

        List<EntryPart> answers,
        int taken,
        int same,
        int conflicts,
        int refused,
        @Doc("The project file was written") boolean applied) {

    /** One answer. */
    public record EntryPart(
            @Doc("Section and id it is about") String about,
            @Doc("The field it goes into") String field,
            String asked,
            String answer,
            @Doc("How many photos come with it") int photos,

            @Doc("take; same: it stands so already; conflict: what was asked has changed meanwhile; refuse")
            Answering.Does does,

            @Doc("Why it is not taken; empty where it is") String why) {}

    public static AnswersDocument of(Answering answering, boolean applied) {
        return new AnswersDocument(
                answering.file().to(),
                answering.file().saved(),
                answering.entries().stream()
                        .map(each -> new EntryPart(
                                each.about(),
                                each.field(),
                                each.asked(),
                                each.answer(),
                                each.photos(),
                                each.does(),
                                each.why()))
                        .toList(),
                (int) answering.count(Answering.Does.TAKE),
                (int) answering.count(Answering.Does.SAME),
                (int) answering.count(Answering.Does.CONFLICT),
                (int) answering.count(Answering.Does.REFUSE),
                applied);
    }
}
