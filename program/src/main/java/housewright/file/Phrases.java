package housewright.file;

import housewright.model.About;
import housewright.model.Days;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.NamePattern;
import housewright.model.Ref;
import housewright.model.Tie;
import housewright.model.Way;
import housewright.model.Words;
import java.util.List;

/** Names of things for errors. */
final class Phrases {
    private Phrases() {}

    /** What a value of this kind is, with an example, where nothing was found that could say so itself. */
    static String of(Class<?> type) {
        if (type == Ref.class) {
            return "a thing and its port or point, such as desk.ch-1 or camera-1.sdi:3";
        }
        if (type == LocalRef.class) {
            return "a port, point or channel of the device, such as ch-1, link:5 or in-{1..8}";
        }
        if (type == NamePattern.class) {
            return "a name or a range of names, such as in-3 or in-{1..16}";
        }
        if (type == Join.class) {
            return "two places with an arrow between, such as link:1 -> ch-1";
        }
        if (type == Tie.class) {
            return "two ports with = between, such as front-{1..12} = rear-{1..12}";
        }
        if (type == Way.class) {
            return "two ends with an arrow between, such as floor-box.rear-{1..12} -> box.in-{1..12}";
        }
        if (type == End.class) {
            return "a port such as desk.link, or unknown";
        }
        if (type == Days.class) {
            return "days of the week, such as mon-fri, sat or mon, wed";
        }
        return Scalars.withArticle(words(type));
    }

    /** One of them, with its article. */
    static String one(Class<?> type) {
        return type == Equipment.class ? "a piece of equipment" : Scalars.withArticle(words(type));
    }

    /** The class name as words: {@code RackSpace} is rack space. */
    static String words(Class<?> type) {
        String name = type == About.class ? "Project" : type.getSimpleName();
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                if (i > 0) {
                    words.append(' ');
                }
                c = (char) (c - 'A' + 'a');
            }
            words.append(c);
        }
        return words.toString();
    }

    /** {@code a, b or c}. */
    static String oneOf(List<String> words) {
        return Words.or(words);
    }
}
