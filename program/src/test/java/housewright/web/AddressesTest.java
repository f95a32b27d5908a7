package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class AddressesTest {
    private final AtomicReference<List<String>> network = new AtomicReference<>(List.of("192.168.1.20"));

    @Test
    void followsTheMachineFromOneNetworkToAnother() {
        Addresses addresses = new Addresses(true, 7878, network::get, Duration.ZERO);
        assertThat(addresses.shared()).containsExactly("http://192.168.1.20:7878");
        assertThat(addresses.hosts().allow("192.168.1.20:7878")).isTrue();
        network.set(List.of("10.0.0.7"));
        assertThat(addresses.shared()).containsExactly("http://10.0.0.7:7878");
        assertThat(addresses.hosts().allow("10.0.0.7:7878")).isTrue();
        assertThat(addresses.hosts().allow("192.168.1.20:7878"))
                .as("somebody else's now")
                .isFalse();
        assertThat(addresses.hosts().allow("127.0.0.1:7878")).isTrue();
    }

    @Test
    void whatIsNotSharedAnswersToThisMachineAlone() {
        Addresses addresses = new Addresses(false, 7878, network::get, Duration.ZERO);
        assertThat(addresses.shared()).isEmpty();
        assertThat(addresses.hosts().allow("192.168.1.20:7878")).isFalse();
        assertThat(addresses.hosts().allow("localhost:7878")).isTrue();
    }
}
