package housewright.testing;

import housewright.unit.Quantities;
import housewright.unit.Quantity;
import housewright.unit.UnitException;
import housewright.unit.VideoFormat;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;

/** Values that have nothing to do with each other, among them the texts that trip readers of YAML and JSON. */
final class RandomValues {
    private static final List<String> TEXTS = List.of(
            "Plain words",
            "on",
            "off",
            "yes",
            "No",
            "y",
            "N",
            "true",
            "FALSE",
            "~",
            "null",
            "Null",
            "",
            " ",
            "  lead",
            "trail ",
            "19:00",
            "12:30:45",
            "2027-02-15",
            "2027-02-15 09:00",
            "2001-12-14t21:59:43.10-05:00",
            "12",
            "-7",
            "+1",
            "0x1F",
            "0o14",
            "014",
            "1e3",
            "1E-3",
            ".5",
            "5.",
            "1_000",
            "1,000",
            ".inf",
            "-.INF",
            ".nan",
            "=",
            "<<",
            "a: b",
            "a:b",
            "a :b",
            "ends:",
            ":starts",
            "a #b",
            "a#b",
            "#c",
            "- x",
            "-x",
            "-",
            "--",
            "---",
            "--- x",
            "...",
            "? x",
            "?",
            "'q'",
            "\"q\"",
            "it's",
            "say \"x\"",
            "{x}",
            "[x]",
            "x}",
            "x]",
            "a, b",
            ",",
            "@x",
            "`x`",
            "%x",
            "!x",
            "!!str x",
            "&x",
            "*x",
            "|",
            ">",
            "|-",
            ">+ x",
            "\\",
            "C:\\x",
            "\\n",
            "a\tb",
            "\t",
            "one\ntwo",
            "one\ntwo\n",
            "one\n\ntwo",
            "one\n two",
            "one \ntwo",
            "\none",
            "one\n",
            "one\n\n",
            "\n",
            "# not\n- a\ncomment: x",
            "one\r\ntwo",
            "\r",
            "\u0000",
            "\u0007",
            "\u001b[31m",
            "\u007f",
            "\u0085",
            "\u00a0",
            "\u00ad",
            "\u2028",
            "\u2029",
            "\ufeff",
            "\ufffd",
            "\ufffe",
            "Grüße",
            "日本語",
            "שלום",
            "عربي",
            "😀",
            "x😀y",
            "1\u0301",
            "in-{1..16}",
            "a -> b, c",
            "50 %",
            "4 dBu",
            "§ 3 ½ ° µ",
            "x".repeat(130),
            "word ".repeat(40).strip(),
            "a: b, {c}: [d] # e ".repeat(9).strip());

    private final Random random;

    RandomValues(Random random) {
        this.random = random;
    }

    String text() {
        String text = pick(TEXTS);
        return random.nextInt(4) == 0 ? text + pick(TEXTS) : text;
    }

    <Q extends Quantity> Q quantity(Class<Q> kind) {
        while (true) {
            String number = switch (random.nextInt(4)) {
                case 0 -> Integer.toString(random.nextInt(100));
                case 1 -> random.nextInt(1000) + "." + random.nextInt(10);
                case 2 -> (random.nextBoolean() ? "-" : "") + random.nextInt(100_000) / 1000.0;
                default -> Integer.toString(random.nextInt(10));
            };
            try {
                return Quantities.parse(kind, number + " " + pick(Quantities.units(kind)));
            } catch (UnitException e) {
                // that kind has no such value; another try
            }
        }
    }

    VideoFormat format() {
        return VideoFormat.parse(pick(Quantities.units(VideoFormat.class)));
    }

    BigDecimal money() {
        return random.nextBoolean()
                ? BigDecimal.valueOf(random.nextInt(5000))
                : BigDecimal.valueOf(random.nextInt(500_000), 2);
    }

    double decimal() {
        return random.nextInt(4) == 0 ? random.nextDouble() * 1e-5 : random.nextInt(1000) / 100.0;
    }

    LocalDate date() {
        return LocalDate.of(2027, 1, 1).plusDays(random.nextInt(500));
    }

    LocalTime time() {
        return LocalTime.of(random.nextInt(24), random.nextInt(12) * 5, random.nextInt(5) == 0 ? 30 : 0);
    }

    LocalDateTime moment() {
        return LocalDateTime.of(date(), time());
    }

    ZoneId zone() {
        return ZoneId.of(pick(List.of("UTC", "Europe/London", "America/New_York", "Australia/Adelaide")));
    }

    <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
