package housewright.paper;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.cable.Span;
import housewright.model.Connector;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Pathway;
import housewright.model.Project;
import housewright.model.RuleSet;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** How papers say figures and names; lengths in metres or, under US rules, in feet. */
final class Say {
    private static final double FOOT = 0.3048; // m, exactly (NIST SP 811)
    private static final double POUND = 0.453_592_37; // kg, exactly (NIST SP 811)

    private final boolean us;

    private Say(boolean us) {
        this.us = us;
    }

    static Say of(Project project) {
        return new Say(
                project.about().rules() != null && project.about().rules().set() == RuleSet.US);
    }

    /** The head of a column of lengths. */
    String lengthHead(String what) {
        return what + (us ? ", ft" : ", m");
    }

    /** To a tenth, without its unit. */
    String length(double metres) {
        return number(us ? metres / FOOT : metres, 1);
    }

    Cell length(@Nullable Span span) {
        return span == null ? Cell.BLANK : Cell.of(length(span.metres()));
    }

    /** With its unit. */
    String lengthInWords(double metres) {
        return length(metres) + (us ? "\u00A0ft" : "\u00A0m");
    }

    String massHead(String what) {
        return what + (us ? ", lb" : ", kg");
    }

    String mass(double kilograms) {
        return number(us ? kilograms / POUND : kilograms, 1);
    }

    String massInWords(double kilograms) {
        return mass(kilograms) + (us ? "\u00A0lb" : "\u00A0kg");
    }

    /** With at most so many decimals, alike in every locale. */
    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        if (text.indexOf('.') >= 0) {
            text = text.replaceFirst("\\.?0+$", "");
        }
        return text.equals("-0") ? "0" : text;
    }

    /** The socket that an end is in; a line to write on where nobody knows. */
    static Cell socket(@Nullable Plug plug) {
        return plug == null ? Cell.BLANK : Cell.of(plug.at().saidPort());
    }

    /** The socket of one end, of a multicore the first and the last of them; a line to write on where nobody knows. */
    static Cell end(Lead lead, Function<Joint, @Nullable Plug> end) {
        List<Plug> plugs = new ArrayList<>();
        for (Joint joint : lead.joints()) {
            Plug plug = end.apply(joint);
            if (plug != null) {
                plugs.add(plug);
            }
        }
        return plugs.size() < 2
                ? socket(plugs.isEmpty() ? null : plugs.getFirst())
                : Cell.of(plugs.getFirst().at().saidPort() + " to "
                        + Words.said(plugs.getLast().at().spot().name()));
    }

    static Cell connector(@Nullable Plug plug) {
        return plug == null ? Cell.NONE : connector(plug.connector());
    }

    static Cell connector(@Nullable Connector connector) {
        return Cell.orBlank(connector == null ? null : connector.word());
    }

    static String pathways(List<Pathway> pathways) {
        return String.join(", ", pathways.stream().map(Pathway::id).toList());
    }

    static String name(@Nullable String id) {
        return id == null ? "" : Words.said(id);
    }

    /** A type as a person reads it. */
    static String type(Model model) {
        return model.name() == null ? Words.said(model.id()) : model.name();
    }

    /** What becomes of a thing or cable. */
    static String life(Life life, boolean differsToday) {
        return switch (life) {
            case KEEP -> differsToday ? "changes" : "stays";
            case MOVE -> "moves";
            case STRIKE -> "goes";
            case NEW -> "new";
            case HIRE -> "hired";
        };
    }

    /** "one cable", "3 cables". */
    static String count(int count, String what) {
        return (count == 1 ? "one " : count + " ") + what + (count == 1 ? "" : "s");
    }
}
