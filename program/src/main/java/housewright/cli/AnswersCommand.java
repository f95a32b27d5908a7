package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.ProjectFiles.Loading;
import housewright.app.Saving;
import housewright.app.packet.Answering;
import housewright.app.packet.Answering.Does;
import housewright.app.packet.Answering.Entry;
import housewright.app.packet.AnswersDocument;
import housewright.app.packet.AnswersReader;
import housewright.file.ProjectText;
import housewright.model.change.Change;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The answers that come back from a question packet. */
@Command(
        name = "answers",
        header = "Shows what the answers of a question packet would change, and takes them on request.",
        description = {
            "An answer to what has changed since the packet was made is shown as a conflict and not taken. Photos go into the folder photos beside FILE.",
            "Exit status: 0 every answer can be taken, 1 some cannot, 2 it cannot be read or written."
        })
final class AnswersCommand extends FileCommand {
    @Parameters(index = "1", paramLabel = "ANSWERS", description = "The file that the packet has saved.")
    String answers = "";

    @Option(names = "--apply", description = "Write them into FILE as one edit; everything else in it stays as it is.")
    boolean apply;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    AnswersCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        return switch (desk.files.load(answers, AnswersReader.MOST_BYTES + 1)) {
            case Loading.NotLoaded not -> desk.refuse(not.why());
            case Loading.Loaded loaded ->
                switch (AnswersReader.read(loaded.bytes())) {
                    case AnswersReader.Reading.Refused refused ->
                        desk.refuse(answers + " cannot be taken. " + refused.why());
                    case AnswersReader.Reading.Read read -> {
                        Map<String, byte[]> photos = new LinkedHashMap<>();
                        Answering answering = Answering.of(desk.study(project, false), read.file(), (name, jpeg) -> {
                            String kept = named(jpeg);
                            photos.put(kept, jpeg);
                            return kept;
                        });
                        yield show(project, answering, photos);
                    }
                };
        };
    }

    /** By its content, so that the same photo twice is one. */
    private static String named(byte[] jpeg) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(jpeg);
            return HexFormat.of().formatHex(hash).substring(0, 32) + ".jpg";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    private int show(ProjectFile project, Answering answering, Map<String, byte[]> photos) {
        boolean written = apply && !answering.changes().isEmpty();
        if (written) {
            String wrong = write(project, photos);
            if (wrong != null) {
                return desk.refuse(wrong);
            }
            String text = ProjectText.edit(
                    project.text(),
                    project.name(),
                    project.project(),
                    Change.apply(project.project(), answering.changes()));
            if (desk.files.replace(project, text) instanceof Saving.NotSaved not) {
                return desk.refuse(not.why());
            }
        }
        if (json) {
            desk.print(AnswersDocument.of(answering, written));
        } else {
            desk.print(text(answering, written));
        }
        return answering.count(Does.CONFLICT) + answering.count(Does.REFUSE) > 0 ? Status.STOPS : Status.FINE;
    }

    private static @Nullable String write(ProjectFile project, Map<String, byte[]> photos) {
        Path path = project.path();
        if (photos.isEmpty() || path == null) {
            return null;
        }
        Path folder = path.toAbsolutePath().resolveSibling("photos");
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> photo : photos.entrySet()) {
                Files.write(folder.resolve(photo.getKey()), photo.getValue());
            }
            return null;
        } catch (IOException e) {
            return "The photos cannot be written into " + folder + ": " + e.getMessage() + ". Nothing was changed.";
        }
    }

    private Page text(Answering answering, boolean written) {
        Page page = desk.page()
                .wrapped("Answers of " + answering.file().to() + ", saved "
                        + answering.file().saved() + ".")
                .blank();
        for (Entry entry : answering.entries()) {
            String said = entry.answer().isEmpty() ? "" : " \"" + entry.answer() + "\"";
            String with = entry.photos() == 0
                    ? ""
                    : entry.photos() == 1 ? " with a photo" : " with " + entry.photos() + " photos";
            String what = entry.about() + ", " + entry.field() + ":" + said + with;
            switch (entry.does()) {
                case TAKE -> page.hanging(Ink.GOOD, "  + ", what);
                case SAME -> page.hanging(Ink.FAINT, "  = ", what);
                case CONFLICT -> page.hanging(Ink.FIX, "  ▲ ", what + "  Conflict: " + entry.why());
                case REFUSE -> page.hanging(Ink.STOP, "  ■ ", what + "  Refused: " + entry.why());
            }
            page.hanging("      ", entry.asked());
        }
        page.blank()
                .wrapped(answering.count(Does.TAKE) + (written ? " taken, " : " to be taken, ")
                        + answering.count(Does.SAME) + " as they are, " + answering.count(Does.CONFLICT)
                        + " in conflict, " + answering.count(Does.REFUSE) + " refused.");
        if (!written && !answering.changes().isEmpty()) {
            page.line("Take them: housewright answers " + quoted() + " " + quoted(answers) + " --apply");
        }
        return page;
    }
}
