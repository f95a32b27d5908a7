package housewright.check.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IpTest {
    private static Ip ip(String text) {
        return Objects.requireNonNull(Ip.find(text), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "192.168.10",
                "192.168.10.256",
                "192.168.10.222.1",
                "192.168.10.x",
                "192.168.010.1",
                "192.168.10.1/31",
                "192.168.10.1/7",
                "192.168.10.1/",
                "router"
            })
    void aSlipIsNoAddress(String text) {
        assertThat(Ip.find(text)).isNull();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.0.0.0",
                "127.0.0.1",
                "224.0.0.1",
                "255.255.255.255",
                "192.168.10.0",
                "192.168.10.255",
                "10.0.3.255/22"
            })
    void whatNoSingleThingMayHaveIsNoHost(String text) {
        assertThat(ip(text).isHost()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"192.168.10.1", "192.168.10.254", "10.0.1.255/22", "223.255.255.1", "1.0.0.1"})
    void whatAThingMayHaveIsAHost(String text) {
        assertThat(ip(text).isHost()).isTrue();
    }

    /** ANSI E1.31: 239.255, then the universe in two bytes; universes run from 1 to 63999. */
    @ParameterizedTest
    @CsvSource({
        "239.255.0.1, 1",
        "239.255.1.0, 256",
        "239.255.1.1, 257",
        "239.255.31.26, 7962",
        "239.255.249.255, 63999",
        "239.255.250.0, 0",
        "239.255.0.0, 0",
        "239.254.0.1, 0",
        "192.168.0.1, 0"
    })
    void theAddressOfAUniverseOfLightingData(String text, int universe) {
        assertThat(ip(text).universe()).isEqualTo(universe);
    }

    @Test
    void withoutAMaskItIsTakenAs24() {
        assertThat(ip("192.168.10.21").networkText()).isEqualTo("192.168.10.0/24");
        assertThat(ip("10.0.2.7/22").networkText()).isEqualTo("10.0.0.0/22");
        assertThat(ip("10.0.2.7/22").text()).isEqualTo("10.0.2.7/22");
        assertThat(ip("192.168.10.21").with(22).text()).isEqualTo("192.168.10.22");
    }
}
