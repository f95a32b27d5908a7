package housewright.check.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.check.Small;
import housewright.model.Battery;
import housewright.power.CircuitLoad;
import housewright.power.Supplies;
import housewright.power.Supply;
import org.junit.jupiter.api.Test;

/** The rules about power, racks and weight, each with a good and a bad case, and their limits against what is published. */
class PowerRulesTest {
    private static final Small HALL = new Small("""
            housewright: 1
            project: {name: Small hall, stage: design, mains: {voltage: 230 V}}
            venue:
              rooms: {hall: {floor: 0 m, outline: [[0 m, 0 m], [9 m, 0 m], [9 m, 9 m], [0 m, 9 m]]}}
              places:
                rack: {room: hall, at: [1 m, 1 m, 0 m], rack: {units: 10, depth: 500 mm}}
                bar: {room: hall, at: [4 m, 4 m, 5 m], hang: {limit: 20 kg, stated-by: an engineer}}
              circuits:
                c1: {rating: 16 A, phase: L1, places: [rack]}
                c2: {rating: 16 A, phase: L1, places: [bar]}
            models:
              outlet:
                kind: power-distributor
                weight: 0.2 kg
                ports: {mains: {in: mains, connector: terminals, power: 3000 W}, "out-{1..4}": {out: mains, connector: mains-socket}}
              strip:
                kind: power-distributor
                weight: 1 kg
                rack: 1 U
                ports: {mains: {in: mains, connector: mains-plug, power: 2300 W}, "out-{1..6}": {out: mains, connector: mains-socket}}
              ups:
                kind: ups
                power: 0 W
                battery: {type: lead 12 V 9 Ah, count: 2}
                rack: 2 U
                depth: 400 mm
                weight: 25 kg
                ports: {mains: {in: mains, connector: C14, power: 1000 W}, "out-{1..4}": {out: mains, connector: C13}}
              load:
                kind: mixer
                power: 200 W
                rack: 1 U
                depth: 300 mm
                weight: 8 kg
                ports:
                  mains: {in: mains, connector: C14}
                  in: {in: analog-audio, connector: XLR-3F}
                  out: {out: analog-audio, connector: XLR-3M}
              lamp:
                kind: fixture
                power: 100 W
                weight: 8 kg
                ports: {mains: {in: mains, connector: C14}, mains-out: {out: mains, connector: C13}}
                points: [lamp]
            cable-types:
              thin: {carries: [mains], conductor: 1.5 mm2}
            equipment:
              wall: {model: outlet, at: rack, circuit: c1}
              strip: {model: strip, at: rack, unit: 9, powered-by: wall.out-1}
              ups: {model: ups, at: rack, unit: 1, powered-by: wall.out-2}
              desk: {model: load, at: rack, unit: 3, powered-by: ups.out-1}
              box: {model: load, at: rack, unit: 4, powered-by: strip.out-1}
              lamp-1: {model: lamp, at: bar, secondary: fitted, circuit: c2}
              lamp-2: {model: lamp, at: bar, secondary: fitted, powered-by: lamp-1.mains-out}
            cables:
              M1: {type: thin, from: lamp-1.mains-out, to: lamp-2.mains, length: 5 m}
              A1: {from: desk.out, to: box.in}
            """);

    private static Small but(String... pairs) {
        Small hall = HALL;
        for (int i = 0; i < pairs.length; i += 2) {
            hall = hall.but(pairs[i], pairs[i + 1]);
        }
        return hall;
    }

    @Test
    void aSoundHallIsSilent() {
        for (var rule : PowerRules.all()) {
            assertThat(HALL.findings(rule.card().id())).as(rule.card().id()).isEmpty();
        }
    }

    /** Worked examples with I = P / (V x power factor), figures as a lighting handbook reckons them, to the digits printed. */
    @Test
    void currentAsInTheWorkedExamples() {
        assertThat(Supplies.amperes(6 * 180, 120, 0.95)).isCloseTo(9.474, within(0.001));
        assertThat(Supplies.amperes(6 * 180, 120, 0.95) * 1.25).isCloseTo(11.84, within(0.01));
        assertThat(Supplies.amperes(8 * 150, 120, 0.9)).isCloseTo(11.11, within(0.005));
        assertThat(Supplies.amperes(4 * 575, 120, 1)).isCloseTo(19.17, within(0.005));
        assertThat(Supplies.amperes(2400, 230, 1)).isCloseTo(10.43, within(0.005));
    }

    /** NEC 210.20(A), as two public pages work it out: 15 A at 120 V carries 12 A, 20 A carries 16 A, for three hours and more. */
    @Test
    void fourFifthsForHours() {
        assertThat(15 * CircuitOverloaded.CONTINUOUS.value() / 100).isEqualTo(12);
        assertThat(20 * CircuitOverloaded.CONTINUOUS.value() / 100).isEqualTo(16);
        assertThat(12.0 * 120).isEqualTo(1440);
        // ten of 180 W fit on 20 A at 120 V and a power factor of 0.95, eleven do not
        assertThat(us(1800).findings("circuit-overloaded")).isEmpty();
        assertThat(us(1980).lines("circuit-overloaded"))
                .singleElement()
                .asString()
                .startsWith("fix");
    }

    /** IEC 60038: 230/400 V at 50 Hz; ANSI C84.1: 120, 208, 240, 277 and 480 V, both as quoted on public pages. */
    @Test
    void aCircuitHasAVoltageThatASupplyGives() {
        for (double volts : new double[] {110, 120, 125, 208, 240, 277, 480}) {
            assertThat(CircuitVoltageOdd.isNominal(volts, true))
                    .as("%s V in the US", volts)
                    .isTrue();
        }
        for (double volts : new double[] {220, 230, 240, 400}) {
            assertThat(CircuitVoltageOdd.isNominal(volts, false))
                    .as("%s V", volts)
                    .isTrue();
        }
        assertThat(CircuitVoltageOdd.isNominal(230, true)).isFalse();
        assertThat(CircuitVoltageOdd.isNominal(120, false)).isFalse();
        assertThat(but("c2: {rating: 16 A", "c2: {rating: 16 A, voltage: 120 V").lines("circuit-voltage-odd"))
                .singleElement()
                .asString()
                .startsWith("fix [circuit c2, equipment lamp-1, equipment lamp-2] c2 is entered at 120 V, and a supply"
                        + " here gives 230 and 400 V");
        assertThat(but("c2: {rating: 16 A", "c2: {rating: 16 A, voltage: 230 V").findings("circuit-voltage-odd"))
                .isEmpty();
    }

    /** NEMA WD 6, from memory: a 5-15 plug is for 15 A, at 120 V and a power factor of 0.95 that is 1710 W. */
    @Test
    void aPlugCarriesWhatItIsMadeFor() {
        String set = "stage: design, mains: {voltage: 120 V}, rules: {set: us}";
        Small us = but(
                "stage: design, mains: {voltage: 230 V}",
                set,
                "box: {model: load, at: rack, unit: 4, powered-by: strip.out-1}",
                "box: {model: load, at: rack, unit: 4, powered-by: strip.out-1}\n  more: {model: kettle, powered-by: strip.out-2}",
                "      strip:\n".substring(4),
                "  kettle: {kind: other, ports: {mains: {in: mains, connector: C14}}, power: 1510 W, weight: 1 kg}\n  strip:\n");
        assertThat(us.findings("mains-connector-overloaded")).isEmpty();
        assertThat(us.but("power: 1510 W", "power: 1511 W").lines("mains-connector-overloaded"))
                .singleElement()
                .asString()
                .startsWith("stop [equipment strip");
    }

    /** A change that would only move the trouble is not offered: what is wired in, and a dimmer onto the sound's circuit. */
    @Test
    void noFixBreaksAnotherRule() {
        Small full = but(
                "c2: {rating: 16 A, phase: L1, places: [bar]}",
                "c2: {rating: 1 A, phase: L1, places: [bar]}\n    c3: {rating: 32 A, places: [bar]}");
        assertThat(full.findings("circuit-overloaded")
                        .getFirst()
                        .fixes()
                        .getFirst()
                        .words())
                .startsWith("Put lamp 1 on c3");
        Small wired = full.but(
                "ports: {mains: {in: mains, connector: C14}, mains-out",
                "ports: {mains: {in: mains, connector: terminals}, mains-out");
        assertThat(wired.findings("circuit-overloaded").getFirst().fixes()).hasSize(1);
        Small dimmer = full.but("    kind: fixture", "    kind: dimmer")
                .but(
                        "      outlet:\n".substring(4),
                        "  camera: {kind: camera, weight: 1 kg, power: 5 W, ports: {mains: {in: mains, connector: C14}}}\n  outlet:\n");
        assertThat(dimmer.findings("circuit-overloaded").getFirst().fixes()).hasSize(2);
        assertThat(dimmer.but(
                                "equipment:\n",
                                "equipment:\n  cam: {model: camera, at: bar, secondary: fitted, circuit: c3}\n")
                        .findings("circuit-overloaded")
                        .getFirst()
                        .fixes())
                .hasSize(1);
    }

    private static Small us(int watts) {
        return but(
                "stage: design, mains: {voltage: 230 V}",
                "stage: design, mains: {voltage: 120 V}, rules: {set: us}",
                "c2: {rating: 16 A",
                "c2: {rating: 20 A",
                "  lamp-2: {model: lamp, at: bar, secondary: fitted, powered-by: lamp-1.mains-out}\n",
                "",
                "  M1: {type: thin, from: lamp-1.mains-out, to: lamp-2.mains, length: 5 m}\n",
                "",
                "kind: fixture\n    power: 100 W",
                "kind: fixture\n    power: " + watts + " W");
    }

    @Test
    void aboveItsRatingABreakerTripsAndAboveFourFifthsItIsWorthKnowing() {
        // 16 A x 230 V x 0.95 = 3496 W; four fifths of it 2796.8 W
        assertThat(lamps(1398).findings("circuit-overloaded")).isEmpty();
        assertThat(lamps(1399).lines("circuit-overloaded"))
                .singleElement()
                .asString()
                .startsWith("note [circuit c2");
        assertThat(lamps(1748).lines("circuit-overloaded"))
                .singleElement()
                .asString()
                .startsWith("note");
        assertThat(lamps(1749).lines("circuit-overloaded"))
                .singleElement()
                .asString()
                .startsWith("stop");
    }

    private static Small lamps(int watts) {
        return but("kind: fixture\n    power: 100 W", "kind: fixture\n    power: " + watts + " W");
    }

    @Test
    void whatIsOnEveryCircuitIsTheSumOfWhatGoesIntoIt() {
        Supplies supplies = HALL.study().supplies();
        for (CircuitLoad load : supplies.circuits()) {
            double roots = load.on().stream()
                    .filter(each -> each.outlet() == null)
                    .map(Supply::id)
                    .mapToDouble(supplies::through)
                    .sum();
            assertThat(load.watts()).isEqualTo(roots).isPositive();
        }
        assertThat(supplies.through("wall")).isEqualTo(400);
    }

    @Test
    void aCircuitOfNoKnownRatingIsNotGuessed() {
        assertThat(but("c2: {rating: 16 A, phase: L1", "c2: {phase: L1").lines("circuit-rating-missing"))
                .containsExactly(
                        "stop [circuit c2, equipment lamp-1, equipment lamp-2] Nobody has written the breaker's rating of"
                                + " c2, so it cannot be said whether it carries the 200 W on it. Until then nothing new is plugged in"
                                + " there: lamp 1 and lamp 2.");
        assertThat(but(", mains: {voltage: 230 V}", "").findings("circuit-rating-missing"))
                .hasSize(2);
    }

    @Test
    void aCircuitComesToItsPlaces() {
        assertThat(but("fitted, circuit: c2", "fitted, circuit: c1").findings("circuit-not-at-place"))
                .hasSize(1);
    }

    @Test
    void aThingWithoutAFigureIsNamed() {
        assertThat(but("    kind: mixer\n    power: 200 W\n", "    kind: mixer\n")
                        .lines("power-figure-missing"))
                .singleElement()
                .asString()
                .contains("desk and box");
    }

    @Test
    void leadAndEntrySayTheSame() {
        assertThat(but(
                                "M1: {type: thin, from: lamp-1.mains-out, to: lamp-2.mains",
                                "M1: {type: thin, from: strip.out-4, to: lamp-2.mains")
                        .findings("supply-said-twice"))
                .hasSize(1);
        assertThat(but("powered-by: strip.out-1", "circuit: c2, powered-by: strip.out-1")
                        .findings("supply-said-twice"))
                .hasSize(1);
    }

    @Test
    void anOutletTakesOnePlug() {
        assertThat(but("powered-by: wall.out-2", "powered-by: wall.out-1").lines("outlet-shared"))
                .containsExactly(
                        "fix [equipment wall, equipment strip, equipment ups] strip and ups both hang on one outlet,"
                                + " wall, out 1.");
    }

    @Test
    void aStripCarriesWhatItSaysAndNoMore() {
        assertThat(but(
                                "kind: mixer\n    power: 200 W",
                                "kind: mixer\n    power: 2300 W",
                                "powered-by: ups.out-1",
                                "circuit: c1")
                        .findings("outlet-overloaded"))
                .isEmpty();
        assertThat(but(
                                "kind: mixer\n    power: 200 W",
                                "kind: mixer\n    power: 2301 W",
                                "powered-by: ups.out-1",
                                "circuit: c1")
                        .lines("outlet-overloaded"))
                .containsExactly(
                        "stop [equipment strip, equipment box] strip carries 2301 W for box, 1 W more than it is made for:"
                                + " it gets hot.");
    }

    /** IEC 60320-1, from memory: C13 and C14 are for 10 A; at 230 V and 0.95 that is 2185 W. */
    @Test
    void aConnectorCarriesWhatItsPatternIsRatedFor() {
        assertThat(lamps(1092).findings("mains-connector-overloaded")).isEmpty();
        assertThat(lamps(1093).lines("mains-connector-overloaded"))
                .containsExactly(
                        "stop [equipment lamp-1, equipment lamp-2] The mains inlet of lamp 1 carries 10 A with the 1 after"
                                + " it and is rated for 10 A.");
    }

    @Test
    void noStripHangsOnAStrip() {
        Small second = but(
                "equipment:\n", "equipment:\n  more: {model: strip, at: rack, unit: 10, powered-by: strip.out-2}\n");
        assertThat(second.findings("strip-into-strip")).hasSize(1);
        assertThat(second.but("unit: 10, powered-by: strip.out-2", "unit: 10, powered-by: wall.out-3")
                        .findings("strip-into-strip"))
                .isEmpty();
    }

    /** A branch of 12 A on 30 m of 12 AWG (3.31 mm2) loses 3.75 V, 3.13 % of 120 V: a worked example with IEC 60028 copper. */
    @Test
    void voltageLostAsInTheWorkedExample() {
        double lost = Supplies.drop(12, 30, 3.31);
        assertThat(lost).isCloseTo(3.75, within(0.005));
        assertThat(lost / 120 * 100).isCloseTo(3.13, within(0.01)).isGreaterThan(MainsVoltageDrop.MOST.value());
    }

    @Test
    void aLongThinLeadLosesTooMuch() {
        // 100 W is 0.458 A; 3 % of 230 V is lost at 6.9 V, that is over 656 m
        assertThat(but("to: lamp-2.mains, length: 5 m", "to: lamp-2.mains, length: 655 m")
                        .findings("mains-voltage-drop"))
                .isEmpty();
        assertThat(but("to: lamp-2.mains, length: 5 m", "to: lamp-2.mains, length: 657 m")
                        .findings("mains-voltage-drop"))
                .hasSize(1);
    }

    @Test
    void manySuppliesOnASmallBreakerAreTold() {
        assertThat(but("c2: {rating: 16 A", "c2: {rating: 2 A").findings("inrush-together"))
                .isEmpty();
        assertThat(but("c2: {rating: 16 A", "c2: {rating: 1 A").findings("inrush-together"))
                .hasSize(1);
    }

    /** A worked example: 216 Wh at 0.9 and 300 W last 38.9 minutes, and 19.4 at half of the charge. */
    @Test
    void batteryTimeAsInTheWorkedExample() {
        assertThat(UpsTimeShort.wattHours(new Battery("lead 12 V 9 Ah", 2, null)))
                .isEqualTo(216.0);
        assertThat(UpsTimeShort.wattHours(new Battery("built-in", 1, null))).isNull();
        assertThat(Supplies.minutes(216, 0.9, 1, 300)).isCloseTo(38.9, within(0.05));
        assertThat(Supplies.minutes(216, UpsTimeShort.EFFICIENCY, UpsTimeShort.USABLE, 300))
                .isCloseTo(19.4, within(0.05));
    }

    @Test
    void aUpsHasSomethingInHand() {
        assertThat(desk(800).findings("ups-overloaded")).isEmpty();
        assertThat(desk(801).lines("ups-overloaded")).singleElement().asString().startsWith("fix");
        assertThat(desk(1001).lines("ups-overloaded"))
                .singleElement()
                .asString()
                .startsWith("stop");
        // 216 Wh x 60 x 0.45 = 5832 W min: five minutes at 1166 W
        assertThat(desk(1166).findings("ups-time-short")).isEmpty();
        assertThat(desk(1167).findings("ups-time-short")).hasSize(1);
    }

    private static Small desk(int watts) {
        return but("kind: mixer\n    power: 200 W", "kind: mixer\n    power: " + watts + " W");
    }

    @Test
    void aUpsIsNotForLamps() {
        assertThat(but("fitted, circuit: c2", "fitted, powered-by: ups.out-2").lines("ups-feeds-heavy"))
                .containsExactly(
                        "note [equipment ups, equipment lamp-1, equipment lamp-2] lamp 1 and lamp 2 are on ups and will"
                                + " empty it before the desk and the stream have had their use of it.");
    }

    @Test
    void soundStaysOnOnePhase() {
        String moved = "box: {model: load, at: rack, unit: 4, circuit: c2}";
        Small two = but("box: {model: load, at: rack, unit: 4, powered-by: strip.out-1}", moved);
        assertThat(two.findings("sound-on-two-phases")).isEmpty();
        assertThat(two.but("c2: {rating: 16 A, phase: L1", "c2: {rating: 16 A, phase: L2")
                        .lines("sound-on-two-phases"))
                .singleElement()
                .asString()
                .contains("on different phases");
        assertThat(two.but("c2: {rating: 16 A, phase: L1", "c2: {rating: 16 A").lines("sound-on-two-phases"))
                .singleElement()
                .asString()
                .contains("nobody has said");
    }

    @Test
    void dimmersKeepApartFromSound() {
        assertThat(but("    kind: fixture\n", "    kind: dimmer\n", "fitted, circuit: c2", "fitted, circuit: c1")
                        .findings("sound-with-dimmers"))
                .hasSize(1);
    }

    @Test
    void everythingInARackHasUnitsOfItsOwn() {
        assertThat(but("unit: 3", "unit: 2").lines("rack-clash"))
                .containsExactly(
                        "fix [equipment desk, equipment ups, place rack] desk is drawn in unit 2 of rack, where ups is"
                                + " (units 1 to 2).");
        assertThat(but("unit: 9", "unit: 10").findings("rack-too-small")).isEmpty();
        assertThat(but("unit: 9", "unit: 11").findings("rack-too-small")).hasSize(1);
        assertThat(but("units: 10", "units: 4", "unit: 9, ", "").lines("rack-too-small"))
                .singleElement()
                .asString()
                .contains("takes 5 U, 1 more than it has");
        assertThat(but("unit: 4, ", "").findings("rack-unit-missing")).hasSize(1);
    }

    @Test
    void aRackIsDeepEnoughForThePlugsToo() {
        assertThat(but("depth: 500 mm", "depth: 475 mm").findings("rack-too-shallow"))
                .isEmpty();
        assertThat(but("depth: 500 mm", "depth: 474 mm").lines("rack-too-shallow"))
                .singleElement()
                .asString()
                .startsWith("note");
        assertThat(but("depth: 500 mm", "depth: 399 mm").lines("rack-too-shallow"))
                .singleElement()
                .asString()
                .startsWith("fix");
    }

    @Test
    void heavyThingsStandLow() {
        assertThat(but("unit: 1,", "unit: 5,").findings("rack-top-heavy")).isEmpty();
        assertThat(but("unit: 1,", "unit: 6,").findings("rack-top-heavy")).hasSize(1);
    }

    /**
     * Worked examples of the trade: 153 W are 522 BTU/h with 3.412 (a course that uses 3.4 prints 520), 1200 W are 4094;
     * 1.76 cubic feet a minute for each watt and kelvin.
     */
    @Test
    void heatAsInTheWorkedExamples() {
        assertThat(153 * Supplies.BTU_PER_HOUR).isCloseTo(522.0, within(0.1));
        assertThat(1200 * Supplies.BTU_PER_HOUR).isCloseTo(4094, within(0.5));
        double cubicMetresAnHourInACubicFootAMinute = Math.pow(0.3048, 3) * 60;
        assertThat(RackHeat.AIR / cubicMetresAnHourInACubicFootAMinute).isCloseTo(1.76, within(0.01));
    }

    @Test
    void heatIsToldAboveTheLimit() {
        assertThat(desk(250).findings("rack-heat")).isEmpty();
        assertThat(desk(251).findings("rack-heat")).hasSize(1);
    }

    @Test
    void whatHangsStaysWithinTheStatedLimit() {
        assertThat(but("limit: 20 kg", "limit: 16 kg").findings("hanging-overloaded"))
                .isEmpty();
        assertThat(but("limit: 20 kg", "limit: 15.9 kg").lines("hanging-overloaded"))
                .containsExactly(
                        "stop [place bar, equipment lamp-1, equipment lamp-2] lamp 1 and lamp 2 weigh 16 kg at bar, 0.1 kg"
                                + " over the limit of 15.9 kg (an engineer), clamps and cables not counted. It blocks any work up"
                                + " there.");
    }

    @Test
    void nothingOverheadIsGuessed() {
        assertThat(but(
                                ", hang: {limit: 20 kg, stated-by: an engineer}",
                                "",
                                "lamp-1: {model: lamp, at: bar, secondary: fitted",
                                "lamp-1: {model: lamp, at: bar, life: new")
                        .lines("hanging-data-missing"))
                .containsExactly(
                        "stop [place bar, equipment lamp-1, equipment lamp-2] At bar lamp 1 and lamp 2 hang over people,"
                                + " and it is not known what it carries and whether lamp 1 has a secondary attachment. It blocks hanging"
                                + " lamp 1.");
        assertThat(but(", stated-by: an engineer", "").lines("hanging-data-missing"))
                .singleElement()
                .asString()
                .contains("who states its limit");
        assertThat(but(
                                "    kind: fixture\n    power: 100 W\n    weight: 8 kg\n",
                                "    kind: fixture\n    power: 100 W\n")
                        .findings("hanging-data-missing"))
                .hasSize(1);
        assertThat(but(
                                "lamp-2: {model: lamp, at: bar, secondary: fitted",
                                "lamp-2: {model: lamp, at: bar, secondary: missing")
                        .lines("secondary-missing"))
                .singleElement()
                .asString()
                .contains("lamp 2 at bar has no secondary attachment");
    }

    /** Where the height is not said either, it is refused, not guessed; what hangs nowhere is in no sum. */
    @Test
    void aLampAtAPlaceOfUnknownHeightStops() {
        Small unknown = but(
                "bar: {room: hall, at: [4 m, 4 m, 5 m], hang: {limit: 20 kg, stated-by: an engineer}}",
                "bar: {room: hall}",
                "lamp-1: {model: lamp, at: bar, secondary: fitted, circuit: c2}",
                "lamp-1: {model: lamp, at: bar, circuit: c2}",
                "lamp-2: {model: lamp, at: bar, secondary: fitted,",
                "lamp-2: {model: lamp, at: bar,");
        assertThat(unknown.lines("hanging-data-missing"))
                .containsExactly(
                        "stop [place bar, equipment lamp-1, equipment lamp-2] Nobody has said how high bar is, so"
                                + " it is not known whether lamp 1 and lamp 2 hang over people. It blocks any work there.");
        assertThat(unknown.but("bar: {room: hall}", "bar: {room: hall, at: [4 m, 4 m, 1 m]}")
                        .findings("hanging-data-missing"))
                .isEmpty();
        assertThat(but("lamp-2: {model: lamp, at: bar, secondary", "lamp-2: {model: lamp, secondary")
                        .lines("hanging-data-missing"))
                .containsExactly(
                        "stop [equipment lamp-2] lamp 2 hangs somewhere, and nobody has said where: what it weighs"
                                + " is in the sum of no point.");
    }

    @Test
    void aDimmerAndAScreenUpHighHangToo() {
        for (String kind : new String[] {"dimmer", "projection-screen", "amplifier"}) {
            Small high = but(
                    ", hang: {limit: 20 kg, stated-by: an engineer}",
                    "",
                    "    kind: fixture",
                    "    kind: " + kind,
                    "lamp-1: {model: lamp, at: bar, secondary: fitted,",
                    "lamp-1: {model: lamp, at: bar,",
                    "lamp-2: {model: lamp, at: bar, secondary: fitted,",
                    "lamp-2: {model: lamp, at: bar,");
            assertThat(high.findings("hanging-data-missing")).as(kind).hasSize(1);
        }
    }

    /** 16 kg is 35.27 lb and 15 kg is 33.07 lb (1 lb = 0.45359237 kg); 400 mm are 15.7 in. */
    @Test
    void inTheUsWeightsAreInPoundsAndDepthsInInches() {
        Small us = but("stage: design, mains: {voltage: 230 V}", "stage: design, rules: {set: us}");
        assertThat(us.but("limit: 20 kg", "limit: 15 kg").lines("hanging-overloaded"))
                .singleElement()
                .asString()
                .contains("weigh 35.3 lb at bar, 2.2 lb over the limit of 33.1 lb (an engineer)");
        Small shallow = us.but("depth: 500 mm", "depth: 380 mm");
        assertThat(shallow.lines("rack-too-shallow"))
                .singleElement()
                .asString()
                .contains("ups is 15.7 in deep and rack has 15 in: it does not go in.");
        assertThat(shallow.findings("rack-too-shallow").getFirst().fixes())
                .as("a plug does not make it shorter")
                .noneMatch(fix -> fix.words().contains("plugs"));
    }

    /** A lamp 2.3 m up and higher is over people, wherever nobody wrote that things hang there. */
    @Test
    void aLampUpHighHangsWhateverIsWritten() {
        String unsaid = "lamp-1: {model: lamp, at: bar, circuit: c2}";
        Small low = but(
                ", hang: {limit: 20 kg, stated-by: an engineer}",
                "",
                "4 m, 5 m]",
                "4 m, 2.2 m]",
                "lamp-1: {model: lamp, at: bar, secondary: fitted, circuit: c2}",
                unsaid,
                "lamp-2: {model: lamp, at: bar, secondary: fitted,",
                "lamp-2: {model: lamp, at: rack,");
        assertThat(low.findings("hanging-data-missing")).isEmpty();
        assertThat(low.but("4 m, 2.2 m]", "4 m, 2.3 m]").findings("hanging-data-missing"))
                .hasSize(1);
    }

    @Test
    void atTheSurveyItIsAQuestion() {
        Small survey = but("stage: design", "stage: survey", ", hang: {limit: 20 kg, stated-by: an engineer}", "");
        assertThat(survey.lines("hanging-limit-to-ask"))
                .containsExactly(
                        "note [place bar] Ask today who states what bar carries: without it nothing may be planned up"
                                + " there.");
        assertThat(survey.study().findings().due().stream().map(each -> each.rule()))
                .contains("hanging-limit-to-ask")
                .doesNotContain("hanging-data-missing");
        assertThat(survey.but("equipment:\n", "questions: {q1: {about: places.bar, asks: Who?}}\nequipment:\n")
                        .findings("hanging-limit-to-ask"))
                .isEmpty();
    }
}
