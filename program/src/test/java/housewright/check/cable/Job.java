package housewright.check.cable;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.finding.Finding;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.Study;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A small invented job in the words of the file, with the library's types. */
final class Job {
    private static final Library LIBRARY = BuiltInLibrary.of(1);

    private Job() {}

    static Project project(String about, String sections) {
        String text = "housewright: 1\nproject: {name: A job, stage: live" + (about.isEmpty() ? "" : ", " + about)
                + "}\n" + sections;
        return switch (ProjectReader.read("job.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }

    static List<Finding> findings(Project project, String rule) {
        var findings = Study.of(project, LIBRARY).findings();
        if (!findings.failures().isEmpty()) {
            throw new AssertionError(findings.failures());
        }
        return Stream.concat(findings.due().stream(), findings.notYetDue().stream())
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    /** Severity and message of each finding of the rule. */
    static List<String> lines(String rule, String about, String sections) {
        return findings(project(about, sections), rule).stream()
                .map(finding -> finding.severity().word() + " " + finding.message())
                .toList();
    }

    static List<String> lines(String rule, String sections) {
        return lines(rule, "", sections);
    }

    /** What the rule still finds when its first fix has been made. */
    static List<Finding> afterFix(String rule, String about, String sections) {
        Project project = project(about, sections);
        List<Change> changes =
                findings(project, rule).getFirst().fixes().getFirst().changes();
        if (changes.isEmpty()) {
            throw new AssertionError("no changes");
        }
        return findings(Change.apply(project, changes), rule);
    }
}
