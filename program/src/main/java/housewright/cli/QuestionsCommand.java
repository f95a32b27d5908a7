package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.Saving;
import housewright.app.packet.Packet;
import housewright.study.Study;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A question packet for somebody on site. */
@Command(
        name = "questions",
        header = "Writes a question packet: one page that opens on a phone, asks, and saves the answers.",
        description = {
            "Holds the open questions to a person, and what the survey lacks and somebody on site can see or measure. It needs no server and no network, takes answers, readings and photos, keeps them in the phone's browser, and saves an answers file for: housewright answers FILE ANSWERS",
            "Exit status: 0 written, 2 there is no such file or person, or it cannot be written."
        })
final class QuestionsCommand extends FileCommand {
    @Option(names = "--to", required = true, paramLabel = "PERSON", description = "Id of whom it is for.")
    String to = "";

    @Option(names = "--out", required = true, paramLabel = "PAGE", description = "The new file, such as packet.html.")
    String out = "";

    QuestionsCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        Set<String> people = project.project().people().keySet();
        if (!people.contains(to)) {
            return desk.refuse(project.name() + " has no person " + to + "; "
                    + Desk.instead(to, people, "its people are ", "enter them under people."));
        }
        Study study = desk.study(project, false);
        int count = desk.during("Looking for what the survey lacks", () -> Packet.count(study, to));
        if (desk.files.create(out, Packet.html(study, to)) instanceof Saving.NotSaved not) {
            return desk.refuse(not.why());
        }
        desk.print(desk.page()
                .wrapped(out + " asks " + count + (count == 1 ? " thing" : " things") + " of " + to
                        + ". Send it to them; what comes back is read with:")
                .line("  housewright answers " + quoted() + " ANSWERS.json"));
        return Status.FINE;
    }
}
