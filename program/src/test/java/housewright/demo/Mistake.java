package housewright.demo;

import housewright.check.signal.SignalRules;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.Severity;
import housewright.finding.Subject;
import housewright.model.Project;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * One thing put wrong in a sound project, and what must be found. See {@code mistakes/} for the data.
 *
 * @param name what was done, in words
 * @param on the project it is done in: {@code demo}, or a file of {@code halls/} without its ending
 * @param damage what is put wrong
 * @param rule id of the rule that must find it
 * @param subject one of the finding's subjects, such as {@code cable C501} or {@code equipment desk}
 * @param severity of the finding
 * @param change the first fix is one the program can make, and it clears the finding
 * @param slow looking for the mends that its finding offers takes seconds
 */
public record Mistake(
        String name,
        String on,
        Damage damage,
        String rule,
        String subject,
        Severity severity,
        boolean change,
        boolean slow) {
    /** One file of mistakes for each trade. */
    static final List<String> TRADES = List.of(
            "signal",
            "joining",
            "cable",
            "sound",
            "picture",
            "network",
            "light",
            "power",
            "people",
            "complete",
            "volunteers");

    public static List<Mistake> all() {
        List<Mistake> all = new ArrayList<>();
        for (String trade : TRADES) {
            String text = Demo.text("/housewright/mistakes/" + trade + ".yaml");
            Map<?, ?> document = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
            for (Object each : (List<?>) document.get("mistakes")) {
                all.add(of((Map<?, ?>) each));
            }
        }
        return all;
    }

    private static Mistake of(Map<?, ?> each) {
        String severity = (String) each.get("severity");
        return new Mistake(
                (String) each.get("name"),
                each.containsKey("on") ? (String) each.get("on") : "demo",
                Damage.of(each),
                (String) each.get("rule"),
                (String) each.get("subject"),
                Stream.of(Severity.values())
                        .filter(word -> word.word().equals(severity))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(each + ": no severity " + severity)),
                "change".equals(each.get("fix")),
                Boolean.TRUE.equals(each.get("slow")));
    }

    /** The text of a sound project. */
    static String text(String on) {
        return on.equals("demo") ? Demo.TEXT : Demo.text("/housewright/halls/" + on + ".yaml");
    }

    public Project project() {
        return damage.in(text(on));
    }

    /** What is found of it, due or not. Mends of feeds, which take long, are looked for only where its rule has them. */
    public List<Finding> in(Study study) {
        Stream<Finding> found = SignalRules.isStateOfFeed(rule)
                ? everything(study.findings())
                : Stream.concat(study.findingsBeyondFeeds().stream(), study.laterBeyondFeeds().stream());
        return found.filter(finding -> finding.rule().equals(rule))
                .filter(finding ->
                        finding.subjects().stream().map(Subject::toString).anyMatch(subject::equals))
                .toList();
    }

    static Stream<Finding> everything(Findings findings) {
        return Stream.concat(findings.due().stream(), findings.notYetDue().stream());
    }

    static Study study(Project project) {
        return Study.of(project, Demo.LIBRARY);
    }

    @Override
    public String toString() {
        return name;
    }
}
