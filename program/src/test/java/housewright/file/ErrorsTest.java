package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of the format broken, in {@code errors.txt}, and what is said about it. */
class ErrorsTest {
    private static final String HEAD = "housewright: 1\nproject: {name: A}\n";
    private static final String TABLE = housewright.file.Files.resource("errors.txt");

    /** A bad file. @param expected the errors, a line each */
    record Case(String rule, String text, String expected) {
        String whole() {
            return rule.endsWith("(whole)") || text.startsWith("housewright") ? text : HEAD + text;
        }

        String found() {
            StringBuilder found = new StringBuilder();
            for (String error : housewright.file.Files.errors("", whole())) {
                found.append(error).append('\n');
            }
            return found.toString();
        }

        @Override
        public String toString() {
            return rule;
        }
    }

    static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        String[] blocks = ("\n" + TABLE).split("\n=== ", -1);
        for (int i = 1; i < blocks.length; i++) {
            String block = blocks[i].endsWith("\n") ? blocks[i] : blocks[i] + "\n";
            int text = block.indexOf('\n') + 1;
            int mark = block.indexOf("--- errors\n");
            int end = mark < 0 ? block.length() : mark;
            String expected = mark < 0 ? "" : block.substring(block.indexOf('\n', mark) + 1);
            cases.add(new Case(
                    block.substring(0, text - 1),
                    block.substring(text, end),
                    expected.strip().isEmpty() ? "" : expected.stripTrailing() + "\n"));
        }
        return cases;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theErrorsSayWhatIsWrong(Case each) {
        assertThat(each.found()).isEqualTo(each.expected());
    }

    @Test
    void theTableIsRewrittenWhenAskedTo() throws IOException {
        if (Boolean.getBoolean("golden.update")) {
            StringBuilder table = new StringBuilder(TABLE.substring(0, TABLE.indexOf("\n=== ") + 1));
            for (Case each : cases()) {
                table.append("=== ").append(each.rule()).append('\n').append(each.text());
                table.append("--- errors\n").append(each.found());
            }
            Path file = Path.of("src/test/resources/housewright/file/errors.txt");
            Files.writeString(file, table.toString());
            fail("Rewrote " + file + ". Read the diff, then run again without -Dgolden.update=true.");
        }
    }
}
