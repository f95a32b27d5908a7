package housewright.app.packet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import housewright.app.packet.AnswersFile.Answer;
import housewright.app.packet.AnswersFile.Photo;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Reads answers files, which come from a stranger's phone: nothing of theirs is believed. */
public final class AnswersReader {
    /** Some forty photos. */
    public static final int MOST_BYTES = 25 * 1024 * 1024;

    private static final int MOST_ANSWERS = 1000;
    private static final int MOST_PHOTOS = 100;
    private static final int LONGEST = 4000;

    private static final ObjectMapper JSON = new ObjectMapper(JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(20)
                    .maxStringLength(8 * 1024 * 1024)
                    .build())
            .build());

    /** What came of it. */
    public sealed interface Reading {
        record Read(AnswersFile file) implements Reading {}

        /** @param why as a sentence */
        record Refused(String why) implements Reading {}
    }

    private static final class Wrong extends Exception {
        private static final long serialVersionUID = 1;

        Wrong(String why) {
            super(why);
        }
    }

    private AnswersReader() {}

    public static Reading read(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return new Reading.Refused(
                    "It has more than " + MOST_BYTES / 1024 / 1024 + " MB. Save it with fewer photos.");
        }
        try {
            JsonNode root = JSON.readTree(bytes);
            if (root == null || !root.isObject() || !root.has("answers")) {
                throw new Wrong("It is no answers file of a question packet.");
            }
            if (root.path("format").asInt() != 1) {
                throw new Wrong(
                        "It is an answers file of format " + root.path("format").asText("?") + "; 1 is read.");
            }
            List<Answer> answers = new ArrayList<>();
            int photos = 0;
            for (JsonNode each : list(root, "answers", MOST_ANSWERS)) {
                List<Photo> own = new ArrayList<>();
                for (JsonNode photo : list(each, "photos", MOST_PHOTOS)) {
                    own.add(new Photo(text(photo, "name", 300), text(photo, "data", Integer.MAX_VALUE)));
                }
                photos += own.size();
                answers.add(new Answer(
                        text(each, "about", 300),
                        text(each, "field", 100),
                        text(each, "asked", LONGEST),
                        text(each, "was", 2 * LONGEST),
                        text(each, "answer", LONGEST),
                        own));
            }
            if (photos > MOST_PHOTOS) {
                throw new Wrong("It has " + photos + " photos; " + MOST_PHOTOS + " are taken at once.");
            }
            return new Reading.Read(new AnswersFile(
                    1,
                    text(root, "packet", 100),
                    text(root, "project", 300),
                    text(root, "to", 100),
                    text(root, "saved", 40),
                    answers));
        } catch (JsonProcessingException e) {
            return new Reading.Refused("It is no answers file: it does not read as JSON.");
        } catch (IOException e) {
            return new Reading.Refused("It is no answers file: it cannot be read.");
        } catch (Wrong e) {
            return new Reading.Refused(String.valueOf(e.getMessage()));
        }
    }

    private static List<JsonNode> list(JsonNode of, String key, int most) throws Wrong {
        JsonNode list = of.path(key);
        if (!list.isArray() || list.size() > most) {
            throw new Wrong(
                    "Its \"" + key + "\" " + (list.isArray() ? "has more than " + most + " entries." : "is no list."));
        }
        List<JsonNode> items = new ArrayList<>();
        list.forEach(items::add);
        return items;
    }

    private static String text(JsonNode of, String key, int most) throws Wrong {
        JsonNode text = of.path(key);
        if (!text.isTextual() || text.asText().length() > most) {
            throw new Wrong("Its \"" + key + "\" "
                    + (text.isTextual() ? "is longer than " + most + " characters." : "is no text."));
        }
        return text.asText();
    }
}
