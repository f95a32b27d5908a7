package housewright.study;

import housewright.model.Carries;
import housewright.model.Equipment;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Words;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The answer: how many feeds are proven, and what is worst about the others.
 *
 * @param proven feeds that are proven
 * @param asked feeds that say where they begin and must arrive; of these alone can anything be proven
 * @param unfinished feeds that do not
 * @param sentence all of it in a line, without a full stop
 * @param fails whether a feed is broken, crossed or arrives where it must not, and the project does not exempt it; or
 *     a finding stops the job
 */
public record Verdict(int proven, int asked, int unfinished, String sentence, boolean fails) {
    private static final int NAMED = 2;

    static Verdict of(Study study) {
        List<FeedProof> asked = new ArrayList<>();
        int never = 0;
        int proven = 0;
        boolean fails = study.findings().stop();
        for (FeedProof proof : study.proofs()) {
            if (proof.pairs().isEmpty()) {
                continue;
            }
            asked.add(proof);
            never += proof.feed().never() ? 1 : 0;
            proven += proof.proven() ? 1 : 0;
            fails |= !proof.proven()
                    && proof.state() != FeedState.LATE
                    && study.findExemption(proof).isEmpty();
        }
        int unfinished = study.proofs().size() - asked.size();
        String sentence = sentence(study, asked, proven, never, unfinished);
        return new Verdict(proven, asked.size(), unfinished, sentence, fails);
    }

    private static String sentence(Study study, List<FeedProof> asked, int proven, int never, int unfinished) {
        String when = study.moment().inWords();
        StringBuilder sentence = new StringBuilder();
        if (asked.isEmpty()) {
            if (unfinished == 0) {
                return "No feeds are entered yet, so there is nothing to prove";
            }
            sentence.append("Nothing to prove yet");
        } else if (proven == asked.size()) {
            sentence.append(
                            asked.size() == 1
                                    ? "The one feed is proven "
                                    : asked.size() == 2
                                            ? "Both feeds are proven "
                                            : "All " + asked.size() + " feeds are proven ")
                    .append(when);
            if (never > 0) {
                sentence.append(", ")
                        .append(never)
                        .append(never == 1 ? " never-feed" : " never-feeds")
                        .append(" among them");
            }
        } else {
            sentence.append(proven)
                    .append(" of ")
                    .append(asked.size())
                    .append(asked.size() == 1 ? " feed proven " : " feeds proven ")
                    .append(when);
            List<FeedProof> open = asked.stream()
                    .filter(proof -> !study.comesWithTheWork(proof))
                    .toList();
            int coming = asked.size() - open.size();
            if (coming > 0) {
                sentence.append(coming == asked.size() - proven ? "; the other " : "; ")
                        .append(coming == 1 ? "one comes" : coming + " come")
                        .append(" with the work");
            }
            worst(study, open, sentence);
        }
        if (unfinished > 0) {
            sentence.append("; ")
                    .append(unfinished == 1 ? "one feed is" : unfinished + " feeds are")
                    .append(" not finished");
        }
        return sentence.toString();
    }

    /** Names what is worst, a room that lacks something before a feed, and counts the rest. */
    private static void worst(Study study, List<FeedProof> asked, StringBuilder sentence) {
        Map<String, Set<String>> phrases = new LinkedHashMap<>(); // what is wrong, and the feeds it stands for
        for (FeedProof proof : asked) {
            if (proof.state() == FeedState.ARRIVES) {
                phrases.put(
                        proof.feed().id() + " arrives where it must not",
                        Set.of(proof.feed().id()));
            }
        }
        phrases.putAll(roomsWithout(study, asked));
        Set<String> named = new LinkedHashSet<>();
        phrases.values().forEach(named::addAll);
        for (FeedState state : List.of(FeedState.BROKEN, FeedState.CROSSED, FeedState.LATE)) {
            for (FeedProof proof : asked) {
                if (proof.state() == state && !named.contains(proof.feed().id())) {
                    phrases.put(phrase(proof), Set.of(proof.feed().id()));
                }
            }
        }
        Set<String> told = new LinkedHashSet<>();
        int count = 0;
        for (Map.Entry<String, Set<String>> each : phrases.entrySet()) {
            if (count++ == NAMED) {
                break;
            }
            sentence.append("; ").append(each.getKey());
            told.addAll(each.getValue());
        }
        long rest = asked.stream()
                .filter(proof -> !proof.proven() && !told.contains(proof.feed().id()))
                .count();
        if (rest > 0) {
            sentence.append("; and ").append(rest).append(rest == 1 ? " more feed is not" : " more are not");
        }
    }

    private static String phrase(FeedProof proof) {
        String id = proof.feed().id();
        return switch (proof.state()) {
            case BROKEN -> proof.feed().never() ? "it cannot be shown that " + id + " holds" : id + " does not arrive";
            case CROSSED -> id + " is crossed";
            case LATE -> id + " is late";
            case ARRIVES -> id + " arrives where it must not";
            case PROVEN -> id + " is proven";
        };
    }

    private record Want(String room, Carries carries) {}

    /** Rooms to which a kind of feed should come, and none of it does. */
    private static Map<String, Set<String>> roomsWithout(Study study, List<FeedProof> asked) {
        Map<Want, Set<String>> failing = new LinkedHashMap<>();
        Set<Want> served = new LinkedHashSet<>();
        for (FeedProof proof : asked) {
            if (proof.feed().never()) {
                continue;
            }
            for (PairProof pair : proof.pairs()) {
                String room = room(study.project(), study.moment(), pair.to());
                Carries carries = carries(proof, pair.to());
                if (room == null || carries == null) {
                    continue;
                }
                Want want = new Want(room, carries);
                if (pair.state() == FeedState.BROKEN) {
                    failing.computeIfAbsent(want, each -> new LinkedHashSet<>())
                            .add(proof.feed().id());
                } else {
                    served.add(want);
                }
            }
        }
        Map<String, Set<String>> phrases = new LinkedHashMap<>();
        failing.forEach((want, feeds) -> {
            String what = noun(want.carries());
            if (what != null && !served.contains(want)) {
                phrases.put("the " + Words.said(want.room()) + " has no " + what, feeds);
            }
        });
        return phrases;
    }

    private static @Nullable String room(Project project, Moment moment, Address at) {
        Equipment equipment = project.equipment().get(at.thing());
        if (equipment == null) {
            return null;
        }
        String where = moment.isDone("equipment", equipment.id())
                ? equipment.at()
                : equipment.today().at();
        Place place = where == null ? null : project.venue().places().get(where);
        return place == null ? null : place.room();
    }

    /** What the feed says, or what the place it must arrive at is for. */
    private static @Nullable Carries carries(FeedProof proof, Address to) {
        if (proof.feed().carries() != null) {
            return proof.feed().carries();
        }
        String name = to.spot().name();
        if (name.startsWith("sound")) {
            return Carries.AUDIO;
        }
        return name.equals("picture") ? Carries.PICTURE : name.equals("lamp") ? Carries.LIGHT : null;
    }

    private static @Nullable String noun(Carries carries) {
        return switch (carries) {
            case AUDIO -> "sound";
            case PICTURE -> "picture";
            case LIGHT -> "light";
            case CONTROL, DATA -> null;
        };
    }
}
