package housewright.work;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import housewright.model.Place;
import housewright.model.SpacePoint;
import housewright.model.TaskKind;
import housewright.model.Termination;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Cable that is pulled, made off, tested, or put into another socket. Loose leads are plugged in with their devices. */
final class Cables {
    /** A length that nothing gives counts as this. */
    private static final double UNKNOWN_M = 10;

    private static final double SLACK_M = housewright.cable.Span.SLACK_M;

    private final Job job;
    private final Map<List<String>, Integer> sameWay = new LinkedHashMap<>();

    Cables(Job job) {
        this.job = job;
        for (Cable cable : job.project.cables().values()) {
            if (cable.life() == Life.NEW && Job.isFixed(cable)) {
                sameWay.merge(cable.via(), 1, Integer::sum);
            }
        }
    }

    void derive() {
        for (Cable cable : job.project.cables().values()) {
            Lead lead = job.lead(cable.id());
            if (lead == null || !CableType.isBought(cable.type())) {
                continue;
            }
            boolean isNew = cable.life() == Life.NEW;
            boolean fixed = Job.isFixed(cable);
            if (isNew ? fixed : Job.isRerouted(cable)) {
                pull(cable, lead, isNew);
            }
            List<Plug> ends = madeOff(cable, lead, isNew);
            List<Plug> up = ends.stream().filter(this::needsAWayUp).toList();
            boolean both = up.isEmpty() || up.size() == ends.size();
            if (!ends.isEmpty()) {
                terminate(
                        cable,
                        TaskKind.TERMINATE.id(cable.id()),
                        lead,
                        both
                                ? ends
                                : ends.stream()
                                        .filter(each -> !needsAWayUp(each))
                                        .toList());
            }
            if (!both) {
                terminate(cable, TaskKind.idUp(cable.id()), lead, up);
            }
            if ((isNew && fixed) || !ends.isEmpty()) {
                test(cable, lead);
            }
            if (!isNew && Job.isReplugged(cable)) {
                replug(cable, lead);
            }
        }
    }

    private static String type(Cable cable) {
        return cable.type() == null ? "of a type not yet chosen" : cable.type();
    }

    private void pull(Cable cable, Lead lead, boolean isNew) {
        double metres = metres(job, lead);
        Set<String> from = places(lead, true);
        Set<String> to = places(lead, false);
        String ends =
                (from.isEmpty() ? "" : " from " + Say.some(from, 2)) + (to.isEmpty() ? "" : " to " + Say.some(to, 2));
        Draft draft = job.draft(
                TaskKind.PULL,
                cable.id(),
                isNew
                        ? "Pull " + cable.id() + ", " + type(cable) + ", " + Say.metres(metres) + ends
                                + ", and label both ends"
                        : "Pull " + cable.id() + " back and lay it its new way" + ends + ", and label both ends",
                isNew ? "The cable is new." : "It stays, and takes another way today.");
        draft.does.add(TaskKind.LABEL);
        int together = isNew ? sameWay.getOrDefault(cable.via(), 1) : 1;
        job.takes(draft, "pull-set-up", 1.0 / together);
        if (together > 1) {
            draft.assumed.add("pulled together with the " + Say.counted(together - 1, "other cable", "other cables")
                    + " of the same way");
        }
        along(draft, lead, metres, together);
        job.takes(draft, "label-end", 2);
        places(draft, lead);
        if (isNew) {
            job.uses(draft, cable.id(), cable.type());
        }
        draft.after(job.drafts.get(TaskKind.PRINT_LABELS.word()));
    }

    private void along(Draft draft, Lead lead, double metres, int together) {
        if (lead.span() == null) {
            draft.assumed.add("a length of " + Say.metres(metres)
                    + (metres == UNKNOWN_M
                            ? ": nobody has said how long it is"
                            : ", along and across between its two ends: nobody has said how long it is"));
        }
        boolean unknownHeight = false;
        for (Pathway pathway : lead.pathways()) {
            Double each = job.target.metres(pathway);
            PathwayKind kind = pathway.kind();
            if (kind == null) {
                draft.assumed.add("that " + pathway.id() + " is open like a tray: its kind is not said");
            }
            if (each != null) {
                job.takes(draft, "pull-" + (kind == null ? PathwayKind.TRAY : kind).word(), each / together);
                job.takes(draft, "pull-beside", each * (together - 1) / together);
            }
            if (pathway.height() == null) {
                unknownHeight = true;
            } else {
                job.up(draft, pathway.height().metres());
            }
        }
        if (unknownHeight) {
            draft.assumed.add("work from the floor where the height of a pathway is not said");
        }
        double laid = lead.pathways().isEmpty() || lead.span() == null ? metres : 2 * SLACK_M;
        job.takes(draft, "pull-loose", laid);
    }

    static double metres(Job job, Cable cable) {
        Lead lead = job.lead(cable.id());
        return lead == null ? UNKNOWN_M : metres(job, lead);
    }

    /** As the project has it; else between its two ends along walls and up and down; else a guess that says so. */
    private static double metres(Job job, Lead lead) {
        if (lead.span() != null && lead.span().metres() > 0) {
            return lead.span().metres();
        }
        for (Joint joint : lead.joints()) {
            SpacePoint from = point(job, joint.from());
            SpacePoint to = point(job, joint.to());
            if (from != null && to != null) {
                return Math.ceil(Math.abs(from.x().metres() - to.x().metres())
                        + Math.abs(from.y().metres() - to.y().metres())
                        + Math.abs(from.z().metres() - to.z().metres())
                        + 2 * SLACK_M);
            }
        }
        return UNKNOWN_M;
    }

    private static @Nullable SpacePoint point(Job job, @Nullable Plug plug) {
        Place place = plug == null || plug.equipment() == null ? null : job.place(job.placeOf(plug.equipment()));
        return place == null ? null : place.at();
    }

    private Set<String> places(Lead lead, boolean first) {
        Set<String> places = new LinkedHashSet<>();
        for (Joint joint : lead.joints()) {
            Plug plug = first ? joint.from() : joint.to();
            Equipment at = plug == null ? null : plug.equipment();
            String place = at == null ? null : job.placeOf(at);
            if (place != null) {
                places.add(Words.said(place));
            }
        }
        return places;
    }

    private void places(Draft draft, Lead lead) {
        for (Joint joint : lead.joints()) {
            for (Plug plug : joint.plugs()) {
                if (plug.equipment() != null && job.placeOf(plug.equipment()) != null) {
                    job.at(draft, job.placeOf(plug.equipment()));
                }
            }
        }
    }

    /** The ends that somebody puts a connector on, one of each way. */
    private List<Plug> madeOff(Cable cable, Lead lead, boolean isNew) {
        boolean site = cable.terminated() == Termination.SITE
                || (cable.terminated() == null && isNew && !cable.via().isEmpty());
        if (!site) {
            return List.of();
        }
        Set<String> before = new LinkedHashSet<>();
        if (!isNew) {
            if (Job.hasOtherEnds(cable)) {
                before.clear();
            } else if (Job.isRerouted(cable)) {
                job.today
                        .findLead(cable.id())
                        .ifPresent(was -> was.joints()
                                .forEach(joint -> joint.plugs()
                                        .forEach(plug -> before.add(plug.at().thing()))));
            } else {
                return List.of();
            }
        }
        List<Plug> ends = new ArrayList<>();
        for (Joint joint : lead.joints()) {
            for (Plug plug : joint.plugs()) {
                if (!before.contains(plug.at().thing())) {
                    ends.add(plug);
                }
            }
        }
        return ends;
    }

    /** Whether it takes more than steps to get there. */
    private boolean isUp(Plug plug) {
        Double height = height(plug);
        return height != null && height > job.steps();
    }

    private boolean needsAWayUp(Plug plug) {
        Double height = height(plug);
        return height != null && (height > job.steps() || (height > job.reach() && job.hasTower()));
    }

    private @Nullable Double height(Plug plug) {
        return plug.equipment() == null ? null : job.height(job.place(job.placeOf(plug.equipment())));
    }

    private void terminate(Cable cable, String id, Lead lead, List<Plug> ends) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Plug plug : ends) {
            String what =
                    (plug.connector() == null ? "an end" : plug.connector().word()) + " at "
                            + Words.said(plug.at().thing());
            counts.merge(what, 1, Integer::sum);
        }
        List<String> words = new ArrayList<>();
        counts.forEach((what, count) -> words.add((count == 1 ? "" : count + " ways of ") + what));
        Draft draft = job.draft(
                TaskKind.TERMINATE,
                id,
                cable.id(),
                "Make off " + cable.id() + ": " + Say.some(words, 3),
                "Its ends are put on here" + (cable.life() == Life.NEW ? "." : ": it ends elsewhere than today."));
        if (cable.terminated() == null) {
            draft.assumed.add("that its ends are put on here: the project does not say");
        }
        boolean multi = lead.joints().size() > 1;
        Set<String> seen = new LinkedHashSet<>();
        for (Plug plug : ends) {
            boolean oneForAll = multi && plug.connector() == Connector.DB25;
            if (!oneForAll || seen.add(plug.at().thing())) {
                job.takes(draft, unit(plug.connector()), 1);
            }
            if (oneForAll) {
                job.takes(draft, "terminate-way", 1);
            }
            if (plug.connector() == null) {
                draft.assumed.add("a plug of usual kind: its connector is not said");
            }
            if (plug.equipment() != null) {
                job.at(draft, job.placeOf(plug.equipment()));
            }
            if (job.isPanel(plug.at().thing())) {
                draft.after(job.placed(plug.at().thing()));
            }
            if (plug.port() != null && plug.port().signal() == housewright.model.Signal.MAINS) {
                draft.skills.add("mains");
                draft.cautions.add("Mains: by somebody who may, by local law.");
            }
        }
        draft.after(job.find(TaskKind.PULL, cable.id()));
        if (cable.life() == Life.NEW) {
            job.uses(draft, cable.id(), cable.type());
        }
    }

    private static String unit(@Nullable Connector connector) {
        if (connector == null) {
            return "terminate-other";
        }
        return switch (connector) {
            case XLR_3M, XLR_3F, XLR_5M, XLR_5F -> "terminate-xlr";
            case TRS, TS, TRS_3_5, RCA -> "terminate-jack";
            case SPEAKER_4, SPEAKER_2 -> "terminate-speaker";
            case BNC, ANTENNA -> "terminate-coax";
            case RJ45 -> "terminate-rj45";
            case LC, SC -> "terminate-fibre";
            case TERMINALS -> "terminate-terminals";
            case C13, C14, C19, C20, MAINS_PLUG, MAINS_SOCKET, MAINS_INLET_LOCKING -> "terminate-mains";
            case HDMI_A, USB_A, USB_B, USB_C, DB25, DIN_5, ADAPTER, NONE -> "terminate-other";
        };
    }

    private void test(Cable cable, Lead lead) {
        boolean network = isNetwork(lead.type());
        Draft draft = job.draft(
                TaskKind.TEST,
                cable.id(),
                network
                        ? "Test " + cable.id() + ": every pair through, none crossed, as long as drawn"
                        : "Test " + cable.id() + ": every conductor through, none crossed, no short"
                                + (lead.joints().size() > 1
                                        ? ", " + lead.joints().size() + " ways"
                                        : ""),
                "A cable is tested before anything depends on it; write the result into the project.");
        job.takes(
                draft,
                network ? "test-network" : "test-line",
                network ? 1 : Math.max(1, lead.joints().size()));
        for (Joint joint : lead.joints()) {
            for (Plug plug : joint.plugs()) {
                String place = plug.equipment() == null ? null : job.placeOf(plug.equipment());
                if (isUp(plug)) {
                    draft.at(place);
                    draft.assumed.add(
                            "that the tester's other half was plugged in up there when that end was made off");
                } else if (place != null) {
                    job.at(draft, place);
                }
            }
        }
        Draft made = job.find(TaskKind.TERMINATE, cable.id());
        draft.after(made != null ? made : job.find(TaskKind.PULL, cable.id()));
        draft.after(job.drafts.get(TaskKind.idUp(cable.id())));
    }

    private static boolean isNetwork(@Nullable CableType type) {
        return type != null
                && (type.id().toLowerCase(Locale.ROOT).startsWith("cat")
                        || type.carries().contains(housewright.model.Signal.ETHERNET));
    }

    private void replug(Cable cable, Lead lead) {
        Lead was = job.today.findLead(cable.id()).orElse(null);
        Set<String> before = sockets(was);
        Set<String> after = sockets(lead);
        Set<String> left = new LinkedHashSet<>(before);
        left.removeAll(after);
        Set<String> taken = new LinkedHashSet<>(after);
        taken.removeAll(before);
        int ends = Math.max(Math.max(left.size(), taken.size()), 1);
        Draft draft = job.draft(
                TaskKind.REPLUG,
                cable.id(),
                "Plug " + cable.id() + (left.isEmpty() ? "" : " from " + sockets(left))
                        + (taken.isEmpty() ? " elsewhere" : " into " + sockets(taken)) + ", and label it anew",
                "It stays, and is plugged in elsewhere today.");
        draft.does.add(TaskKind.LABEL);
        Stream.of(was, lead)
                .filter(Objects::nonNull)
                .flatMap(each -> each.joints().stream())
                .flatMap(joint -> joint.plugs().stream())
                .filter(plug -> left.contains(plug.socket()) || taken.contains(plug.socket()))
                .filter(Goes::isWiredIn)
                .forEach(plug -> Goes.disconnect(draft));
        Stream.ofNullable(was)
                .flatMap(each -> each.joints().stream())
                .flatMap(joint -> joint.plugs().stream())
                .filter(plug -> left.contains(plug.socket()) && plug.equipment() != null)
                .forEach(plug -> draft.after(job.find(
                        TaskKind.COPY, Objects.requireNonNull(plug.equipment()).id())));
        job.takes(draft, "replug", ends);
        job.takes(draft, "label-end", 2);
        for (Joint joint : lead.joints()) {
            for (Plug plug : joint.plugs()) {
                if (taken.contains(plug.socket())) {
                    if (plug.equipment() != null) {
                        job.at(draft, job.placeOf(plug.equipment()));
                    }
                    draft.after(job.placed(plug.at().thing()));
                    for (Lead here : job.today.in(plug.socket())) {
                        draft.after(job.find(TaskKind.TAKE_OUT, here.id()));
                    }
                }
            }
        }
        draft.after(job.find(TaskKind.TEST, cable.id()));
        draft.after(job.find(TaskKind.PULL, cable.id()));
        draft.after(job.drafts.get(TaskKind.PRINT_LABELS.word()));
    }

    private static Set<String> sockets(@Nullable Lead lead) {
        Set<String> sockets = new LinkedHashSet<>();
        if (lead != null) {
            lead.joints().forEach(joint -> joint.plugs().forEach(plug -> sockets.add(plug.socket())));
        }
        return sockets;
    }

    private static String sockets(Set<String> sockets) {
        if (sockets.size() > 2) {
            Set<String> things = new LinkedHashSet<>();
            sockets.forEach(each -> things.add(Words.said(each.substring(0, each.indexOf('.')))));
            return Say.some(things, 2) + " (" + sockets.size() + " ways)";
        }
        List<String> words = new ArrayList<>();
        sockets.forEach(each -> words.add(Words.said(each.replace('.', ' '))));
        return Say.some(words, 2);
    }
}
