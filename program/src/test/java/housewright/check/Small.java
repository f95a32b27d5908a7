package housewright.check;

import housewright.check.signal.Hall;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.study.Study;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A small hall as text, with no library, and what one rule finds in it. */
public record Small(String text) {
    /** The same with one passage replaced, which must be there once. */
    public Small but(String passage, String other) {
        int at = text.indexOf(passage);
        if (at < 0 || text.indexOf(passage, at + 1) >= 0) {
            throw new AssertionError("Not once in the hall: " + passage);
        }
        return new Small(text.replace(passage, other));
    }

    /** What a rule finds, due or not, each as "severity [subjects] message". */
    public List<String> lines(String rule) {
        return findings(rule).stream()
                .map(finding -> finding.severity().word() + " " + finding.subjects() + " " + finding.message())
                .toList();
    }

    public List<Finding> findings(String rule) {
        Findings findings = study().findings();
        if (!findings.failures().isEmpty()) {
            throw new AssertionError(findings.failures());
        }
        return Stream.concat(findings.due().stream(), findings.notYetDue().stream())
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    public Study study() {
        return switch (ProjectReader.read("small.yaml", text.getBytes(StandardCharsets.UTF_8), Hall.NO_TYPES)) {
            case ReadResult.Loaded loaded -> Study.of(loaded.project(), Hall.NO_TYPES);
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }
}
