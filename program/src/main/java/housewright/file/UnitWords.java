package housewright.file;

import housewright.unit.UnitException;

/** A wrong quantity in the words of a file error: the found text with what is wrong, then what is due. */
final class UnitWords {
    private UnitWords() {}

    static String found(UnitException e) {
        String message = String.valueOf(e.getMessage());
        String problem = problem(message);
        return Shown.quoted(e.found()) + (problem.isEmpty() ? "" : ", which " + problem);
    }

    static String expected(UnitException e) {
        String message = String.valueOf(e.getMessage());
        int due = message.lastIndexOf("; ");
        int example = message.lastIndexOf(" (for example ");
        if (due < 0 || example < due) {
            return "one such as " + String.join(", ", e.expectedUnits());
        }
        return message.substring(due + 2, example).replace(" is written with ", " in ") + ", such as " + e.example();
    }

    /** What stands between the quoted text and what is due. */
    private static String problem(String message) {
        int start = message.indexOf("\" ", 1);
        int end = message.lastIndexOf("; ");
        if (end < 0) {
            end = message.lastIndexOf(" (for example ");
        }
        if (start < 0 || end < start) {
            return "";
        }
        int nearest = message.lastIndexOf(", nearest is ", end); // which an error says apart
        return message.substring(start + 2, nearest > start ? nearest : end);
    }
}
