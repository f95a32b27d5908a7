package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.Present;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Remote cameras that nothing moves: no feed, no send and no serial cable leads there. One note for all of them. */
public final class CameraNotControlled implements Rule {
    private static final String MOVE = "move";

    private static final Card CARD = new Card(
            "camera-not-controlled",
            "Does something move every camera that can be moved?",
            Set.of(Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Present> cameras = evidence.pictures().things().stream()
                .filter(CameraNotControlled::isRemote)
                .toList();
        if (cameras.isEmpty()) {
            return Stream.empty();
        }
        Set<String> moved = new HashSet<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            proof.pairs()
                    .forEach(pair ->
                            add(moved, pair.to().thing(), pair.to().spot().name()));
        }
        for (Hop send : evidence.signals().sends()) {
            add(moved, send.to().thing(), String.valueOf(send.to().spot().channel()));
        }
        List<String> still = cameras.stream()
                .filter(camera -> !moved.contains(camera.id()) && !isWired(evidence, camera))
                .map(Present::id)
                .toList();
        return still.isEmpty() ? Stream.empty() : Stream.of(finding(still));
    }

    private static void add(Set<String> moved, String thing, String place) {
        if (place.equals(MOVE)) {
            moved.add(thing);
        }
    }

    private static boolean isRemote(Present present) {
        Model model = present.model();
        return model != null
                && model.kind() == Kind.CAMERA
                && model.points().stream().anyMatch(point -> point.text().equals(MOVE));
    }

    private static boolean isWired(Evidence evidence, Present camera) {
        Model model = camera.model();
        if (model == null) {
            return false;
        }
        for (Map.Entry<NamePattern, Port> port : model.ports().entrySet()) {
            if (port.getValue().signal() == Signal.SERIAL
                    && port.getKey().names().stream()
                            .anyMatch(name -> !evidence.cabling()
                                    .in(camera.id() + "." + name)
                                    .isEmpty())) {
                return true;
            }
        }
        return false;
    }

    private static Finding finding(List<String> cameras) {
        boolean one = cameras.size() == 1;
        return CARD.finding(
                Severity.NOTE,
                cameras.stream().map(Subject::equipment).toList(),
                Said.some(cameras.stream().map(Words::said).toList(), 4)
                        + (one ? " is a remote camera" : " are remote cameras")
                        + " that nothing in the project moves.",
                List.of(),
                List.of(Fix.of("Bring control to " + (one ? "it" : "them") + ", set " + (one ? "it" : "them")
                        + " once and leave it so, or take a fixed camera.")));
    }
}
