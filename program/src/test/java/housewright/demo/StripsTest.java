package housewright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.study.Study;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the library's strips may carry follows the mains they are on. A NEMA 5-15 plug is rated 15 A (NEMA WD 6, from memory):
 * 1800 W at 120 V; a strip for 230 V with 10 A carries 2300 W there, and 1000 W at 100 V.
 */
class StripsTest {
    @ParameterizedTest
    @CsvSource({
        "us, 120, 1790, 0",
        "us, 120, 1810, 1",
        "metric-eu, 230, 2290, 0",
        "metric-eu, 230, 2310, 1",
        "metric-eu, 100, 990, 0",
        "metric-eu, 100, 1010, 1"
    })
    void aStripCarriesWhatItsCurrentGives(String set, int volts, int watts, int found) {
        String hall = """
                housewright: 1
                project: {name: Urn, stage: design, library: 1, mains: {voltage: %2$d V}, rules: {set: %1$s}}
                models: {urn: {kind: other, ports: {mains: {in: mains, connector: mains-plug}}, power: %3$d W}}
                venue: {circuits: {c1: {rating: 32 A, voltage: %2$d V}}}
                equipment:
                  strip: {model: power-strip-6, circuit: c1}
                  urn: {model: urn, powered-by: strip.out-1}
                """.formatted(set, volts, watts);
        Study study = Mistake.study(Demo.read(hall));
        assertThat(Mistake.everything(study.findings())
                        .filter(each -> each.rule().equals("outlet-overloaded")))
                .hasSize(found);
    }
}
