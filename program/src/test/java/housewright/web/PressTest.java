package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** One paper at a time of each project, and nobody waits for ever. */
class PressTest {
    private final CountDownLatch done = new CountDownLatch(1);

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private byte[] slow() {
        try {
            done.await();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
        return bytes("slow");
    }

    @Test
    void busyPressSaysSoAndOtherProjectsGoOn() {
        Press press = new Press(Duration.ofMillis(50));
        assertThatThrownBy(() -> press.make("hall", "slow", this::slow))
                .isInstanceOfSatisfying(
                        Refused.class, e -> assertThat(e.getStatus()).isEqualTo(503))
                .hasMessageContaining("It is being made still");
        assertThatThrownBy(() -> press.make("hall", "other", () -> bytes("other")))
                .isInstanceOfSatisfying(
                        Refused.class, e -> assertThat(e.getStatus()).isEqualTo(503))
                .hasMessageContaining("Another paper of this project");
        assertThat(new Press().make("chapel", "other", () -> bytes("other"))).isEqualTo(bytes("other"));
        done.countDown();
        Press patient = press;
        assertThat(patient.make("chapel", "other", () -> bytes("other"))).isEqualTo(bytes("other"));
    }

    @Test
    void lastOneIsKeptAndWhatFailedIsTriedAgain() {
        Press press = new Press();
        AtomicInteger times = new AtomicInteger();
        for (int i = 0; i < 3; i++) {
            assertThat(press.make("hall", "a", () -> bytes("a" + times.incrementAndGet())))
                    .isEqualTo(bytes("a1"));
        }
        assertThatThrownBy(() -> press.make("hall", "b", () -> {
                    throw new IllegalStateException("no ink");
                }))
                .hasRootCauseMessage("no ink");
        assertThat(press.make("hall", "b", () -> bytes("b"))).isEqualTo(bytes("b"));
    }
}
