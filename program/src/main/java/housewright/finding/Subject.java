package housewright.finding;

import java.util.Comparator;

/**
 * What a finding is about: an entity of the project.
 *
 * @param kind the section's word for one of its entities, such as {@code feed}, {@code cable}, {@code equipment}
 * @param id its id in the section
 */
public record Subject(String kind, String id) implements Comparable<Subject> {
    private static final Comparator<Subject> ORDER =
            Comparator.comparing(Subject::kind).thenComparing(Subject::id);

    public Subject {
        if (kind.isBlank() || id.isBlank()) {
            throw new IllegalArgumentException("A subject needs a kind and an id: \"" + kind + "\", \"" + id + "\"");
        }
    }

    public static Subject feed(String id) {
        return new Subject("feed", id);
    }

    public static Subject equipment(String id) {
        return new Subject("equipment", id);
    }

    public static Subject cable(String id) {
        return new Subject("cable", id);
    }

    /** @param path section and id as the file has them: {@code cables.C014}, {@code network-sends.camera-1} */
    public static Subject at(String path) {
        int dot = path.indexOf('.');
        String section = path.substring(0, Math.max(dot, 0));
        if (section.equals("people")) {
            return new Subject("person", path.substring(dot + 1));
        }
        boolean plural = section.endsWith("s");
        return new Subject(plural ? section.substring(0, section.length() - 1) : section, path.substring(dot + 1));
    }

    /** The section as the file names it, and the id: {@code cables.C014}. */
    public String path() {
        if (kind.equals("person")) {
            return "people." + id;
        }
        boolean plural = !kind.equals("equipment") && !kind.equals("patch") && !kind.equals("radio");
        return kind + (plural ? "s." : ".") + id;
    }

    @Override
    public int compareTo(Subject other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return kind + " " + id;
    }
}
