package housewright.cli;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Days, times and numbers as people type them behind an option; what is none is refused in their words. */
final class Said {
    private Said() {}

    static CommandLine read(CommandLine commands) {
        return commands.registerConverter(LocalDateTime.class, Said::time)
                .registerConverter(LocalDate.class, Said::day)
                .registerConverter(Double.TYPE, Said::number)
                .registerConverter(Long.class, Said::whole);
    }

    /** A day alone is its beginning; a blank may stand for the T, as in a project file. */
    private static LocalDateTime time(String text) {
        String said = text.strip();
        try {
            return said.length() <= "2027-03-15".length()
                    ? LocalDate.parse(said).atStartOfDay()
                    : LocalDateTime.parse(said.replaceFirst(" +", "T"));
        } catch (DateTimeParseException e) {
            throw new TypeConversionException(
                    "'" + text
                            + "' is no time. Write year, month, day, hour and minute, such as 2027-03-15T08:30, or a day alone for its beginning.");
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw new TypeConversionException(
                    "'" + text + "' is no day. Write year, month and day, such as 2027-03-15.");
        }
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is no number.");
        }
    }

    private static long whole(String text) {
        try {
            return Long.parseLong(text.strip());
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is no whole number.");
        }
    }
}
