package housewright.check.joining;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.Study;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A few things and what joins them, out of the library or with types of their own. */
record Joined(String text) {
    static final Library LIBRARY = BuiltInLibrary.of(1);

    /** Sections under their headings, each written as in a file. */
    static Joined of(String sections) {
        return new Joined("housewright: 1\nproject: {name: Tiny, stage: order, currency: EUR}\n" + sections);
    }

    /** The same with one passage replaced, which must be there once. */
    Joined but(String passage, String other) {
        int at = text.indexOf(passage);
        if (at < 0 || text.indexOf(passage, at + 1) >= 0) {
            throw new AssertionError("Not once: " + passage);
        }
        return new Joined(text.replace(passage, other));
    }

    Project project() {
        return switch (ProjectReader.read("tiny.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }

    /** What the rule finds, due or not. */
    List<Finding> findings(String rule) {
        return findings(project(), rule);
    }

    private static List<Finding> findings(Project project, String rule) {
        Findings findings = Study.of(project, LIBRARY).findings();
        assertThat(findings.failures()).isEmpty();
        return Stream.concat(findings.due().stream(), findings.notYetDue().stream())
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    /** In a line each: severity and message. */
    List<String> lines(String rule) {
        return findings(rule).stream()
                .map(finding -> finding.severity().word() + ": " + finding.message())
                .toList();
    }

    /** The findings of the rule after the first fix of its first finding is made, which must be one of changes. */
    List<Finding> afterFix(String rule) {
        List<Change> changes = findings(rule).getFirst().fixes().getFirst().changes();
        assertThat(changes).isNotEmpty();
        return findings(Change.apply(project(), changes), rule);
    }
}
