package housewright.app.packet;

import housewright.model.Doc;
import java.util.List;

/** What a question packet saves: the answers file. */
public record AnswersFile(
        @Doc("Version of this format, 1") int format,
        @Doc("Which packet it comes from") String packet,
        String project,
        @Doc("Who was asked") String to,
        @Doc("When it was saved, by the phone's own clock") String saved,
        List<Answer> answers) {
    public AnswersFile {
        answers = List.copyOf(answers);
    }

    /** One answer. */
    public record Answer(
            @Doc("Section and id, such as questions.q1 or venue.places.desk")
            String about,

            @Doc("The field of it that the answer goes into")
            String field,

            @Doc("As it was asked") String asked,

            @Doc("What stood there when the packet was made; where that has changed, the answer is a conflict")
            String was,

            @Doc("May be empty where there are photos") String answer,
            List<Photo> photos) {
        public Answer {
            photos = List.copyOf(photos);
        }
    }

    /** A photo, scaled down by the packet, without anything of the camera's beside the picture. */
    public record Photo(
            @Doc("Of the file on the phone") String name,
            @Doc("A JPEG, in Base64") String data) {}
}
