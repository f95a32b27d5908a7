package housewright.paper;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Words;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A label for each end of each cable: what it is, where this end goes, where the other one is. */
final class CableLabels implements Paper {
    @Override
    public String id() {
        return "cable-labels";
    }

    @Override
    public String title() {
        return "Cable labels";
    }

    @Override
    public String recipient() {
        return "Whoever labels cable";
    }

    @Override
    public String question() {
        return "What goes on each end of each cable?";
    }

    @Override
    public boolean isOnLabels() {
        return true;
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        List<LabelPages.Said> all = new ArrayList<>();
        for (Lead lead : study.cabling().leads()) {
            if (!lead.isInside()) {
                all.add(end(lead, Joint::from, Joint::to, options));
                all.add(end(lead, Joint::to, Joint::from, options));
            }
        }
        return LabelSheets.of(this, all, options);
    }

    private static LabelPages.Said end(
            Lead lead,
            Function<Joint, @Nullable Plug> here,
            Function<Joint, @Nullable Plug> there,
            PaperOptions options) {
        String label = lead.cable().label();
        List<String> lines = List.of(
                lead.id() + (label == null ? "" : " " + label),
                "Here: " + said(lead, here),
                "Other: " + said(lead, there));
        return new LabelPages.Said(lines, options.labels().code("cables." + lead.id()));
    }

    /** The socket, or the things and how many ways of a multicore go to each; a line where nobody knows. */
    private static String said(Lead lead, Function<Joint, @Nullable Plug> end) {
        List<Plug> plugs = new ArrayList<>();
        for (Joint joint : lead.joints()) {
            Plug plug = end.apply(joint);
            if (plug != null) {
                plugs.add(plug);
            }
        }
        if (plugs.isEmpty()) {
            return "________";
        }
        if (lead.joints().size() == 1) {
            return Objects.requireNonNull(plugs.getFirst()).at().saidPort();
        }
        Map<String, Integer> ways = new LinkedHashMap<>();
        plugs.forEach(plug -> ways.merge(Words.said(plug.at().thing()), 1, Integer::sum));
        List<String> said = new ArrayList<>();
        ways.forEach((thing, count) -> said.add(thing + " (" + Say.count(count, "way") + ")"));
        return String.join(", ", said);
    }
}
