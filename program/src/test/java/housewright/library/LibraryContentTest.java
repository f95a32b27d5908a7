package housewright.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.model.Adapter;
import housewright.model.Attenuation;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Figures;
import housewright.model.Kind;
import housewright.model.Latency;
import housewright.model.LevelClass;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Phantom;
import housewright.model.Poe;
import housewright.model.Port;
import housewright.model.Route;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.unit.Delay;
import housewright.unit.Length;
import housewright.unit.Level;
import housewright.unit.Power;
import housewright.unit.Resistance;
import housewright.unit.Sensitivity;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the built-in library must hold, and what its figures must agree with. */
class LibraryContentTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);

    private static final List<Model> MODELS =
            LIBRARY.modelIds().stream().map(LibraryContentTest::model).toList();
    private static final List<CableType> CABLES = LIBRARY.cableTypeIds().stream()
            .map(id -> LIBRARY.findCableType(id).orElseThrow())
            .toList();
    private static final List<Adapter> ADAPTERS = LIBRARY.adapterIds().stream()
            .map(id -> LIBRARY.findAdapter(id).orElseThrow())
            .toList();

    /** 20 log(100 V / 0.7746 V). */
    private static final double HUNDRED_VOLTS_DBU = 42.2;

    private static Model model(String id) {
        return LIBRARY.findModel(id).orElseThrow(() -> new AssertionError("The library has no " + id));
    }

    @Test
    void thereIsEnoughToDesignASmallHallWith() {
        assertThat(MODELS.stream().filter(Model::portsKnown)).hasSizeGreaterThanOrEqualTo(120);
        assertThat(CABLES).hasSizeGreaterThanOrEqualTo(35);
        assertThat(ADAPTERS).hasSizeGreaterThanOrEqualTo(15);
    }

    @Test
    void allFiguresSayThatTheyAreTypicalAndAllTypesHaveAName() {
        assertThat(MODELS).allSatisfy(each -> {
            assertThat(each.figures()).as(each.id()).isEqualTo(Figures.TYPICAL);
            assertThat(each.name()).as(each.id()).isNotBlank();
        });
        assertThat(CABLES).allSatisfy(each -> {
            assertThat(each.figures()).as(each.id()).isEqualTo(Figures.TYPICAL);
            assertThat(each.name()).as(each.id()).isNotBlank();
        });
        assertThat(ADAPTERS).allSatisfy(each -> {
            assertThat(each.figures()).as(each.id()).isEqualTo(Figures.TYPICAL);
            assertThat(each.name()).as(each.id()).isNotBlank();
        });
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void thereIsATypeOfEveryKind(Kind kind) {
        assertThat(MODELS).filteredOn(Model::portsKnown).anyMatch(each -> each.kind() == kind);
    }

    /** The list of what the library must cover, each by the ids that do. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "dynamic microphones, mic-dynamic-vocal mic-dynamic-instrument, MICROPHONE",
        "condenser microphones, condenser-gooseneck mic-condenser-small mic-condenser-large, MICROPHONE",
        "boundary and choir microphones, mic-condenser-boundary mic-condenser-choir, MICROPHONE",
        "headset and lapel microphones, mic-headset mic-lavalier, MICROPHONE",
        "DI boxes, di-passive di-active di-stereo di-computer, DI",
        "radio transmitters, radio-handheld-digital radio-beltpack-digital radio-handheld-fm, RADIO_TRANSMITTER",
        "radio receivers, radio-receiver-digital-1 radio-receiver-digital-2 radio-receiver-digital-4, RADIO_RECEIVER",
        "in-ear transmitters, in-ear-transmitter in-ear-transmitter-digital, RADIO_TRANSMITTER",
        "in-ear belt packs, in-ear-beltpack in-ear-beltpack-digital, RADIO_RECEIVER",
        "stage boxes, stagebox-8x4-stage-a stagebox-16x8-stage-a stagebox-32x16-stage-a stagebox-16x8-stage-b, STAGE_BOX",
        "expanders, expander-8x8-stage-a expander-16x0-stage-a expander-8x8-stage-b, STAGE_BOX",
        "analogue desks, analog-8 analog-16, MIXER",
        "digital desks, desk-digital-16-stage-a desk-digital-32-stage-a desk-digital-24-stage-b desk-digital-64-stage-b, MIXER",
        "DSPs, dsp-4x8 dsp-8x8 dsp-8x8-echo-cancel, PROCESSOR",
        "amplifiers, amplifier-2x300 amplifier-4x500-dsp amplifier-2x120-100v amplifier-4x250-100v, AMPLIFIER",
        "powered loudspeakers, loudspeaker-powered-8 loudspeaker-powered-12 subwoofer-powered-15, LOUDSPEAKER",
        "100 V loudspeakers, speaker-ceiling-100v speaker-column-100v speaker-horn-100v, LOUDSPEAKER",
        "personal monitor mixers, personal-mixer-16 personal-mixer-net-24, PERSONAL_MIXER",
        "hearing loops, hearing-loop-amplifier hearing-loop-wire, HEARING_LOOP",
        "recorders, recorder-usb-stick recorder-multitrack-32 recorder-picture-sdi, RECORDER",
        "audio interfaces, audio-interface-2x2 audio-interface-18x20 audio-interface-8x8-processing, AUDIO_INTERFACE",
        "computers, computer-media computer-stream computer-keys computer-multitrack, COMPUTER",
        "programs, program-words program-multitrack program-sound-processing, PROGRAM",
        "wall panels, wall-panel-6-net wall-panel-4-contact wall-panel-4-serial, CONTROL_PANEL",
        "button pads, button-pad-8-contact button-pad-8-midi button-pad-8-net button-pad-15-usb, BUTTON_PAD",
        "DMX interfaces, dmx-interface-usb, DMX_INTERFACE",
        "DMX nodes, dmx-node-1 dmx-node-2 dmx-node-4, DMX_NODE",
        "DMX splitters, dmx-splitter-1x4 dmx-splitter-1x8, DMX_SPLITTER",
        "DMX terminators, dmx-terminator, OTHER",
        "fixtures, led-profile-26 led-wash-zoom led-par led-blinder-2 tungsten-profile-26, FIXTURE",
        "converters, converter-sdi-hdmi converter-hdmi-sdi hdbaset-transmitter hdbaset-receiver converter-cross-scan, CONVERTER",
        "splitters, sdi-splitter-1x2 sdi-splitter-1x4 sdi-splitter-1x8 hdmi-splitter-1x2, SPLITTER",
        "routers, sdi-router-4x4 sdi-router-12x12 hdmi-matrix-4x4, MATRIX",
        "embedders, embedder-analog-2 embedder-analog-4 embedder-analog-8 embedder-aes3-4, EMBEDDER",
        "de-embedders, de-embedder-analog-2 de-embedder-analog-8 de-embedder-aes3-4, DE_EMBEDDER",
        "vision mixers, vision-mixer-4-hdmi vision-mixer-8-sdi, VISION_MIXER",
        "cameras, camera-ptz-20x camera-box-sdi camcorder-hdmi, CAMERA",
        "capture, capture-hdmi-usb capture-sdi-usb capture-card-4-sdi, CAPTURE",
        "SDI cards with several outputs, sdi-output-card-4, EXPANSION_CARD",
        "displays, display-24-sdi display-confidence-32 tv-55, DISPLAY",
        "projectors, projector-5000 projector-8000, PROJECTOR",
        "screens, projection-screen-300 projection-screen-400-frame, PROJECTION_SCREEN",
        "streaming encoders, encoder-stream-hdmi encoder-stream-sdi, ENCODER",
        "switches, switch-8 switch-8-poe switch-16-poe switch-24, SWITCH",
        "UPSs, ups-desk-600 ups-rack-1500, UPS",
        "power distributors, power-strip-8 power-distributor-rack-12 power-sequencer-8, POWER_DISTRIBUTOR",
        "racks, rack-wall-6 rack-12 rack-24, OTHER",
        "floor boxes and patch panels, floor-box-12 patch-audio-24 patch-bnc-16 patch-rj45-24, PANEL",
    })
    void coversTheTrades(String what, String ids, Kind kind) {
        assertThat(ids.split(" "))
                .as(what)
                .allSatisfy(id -> assertThat(model(id).kind()).as(id).isEqualTo(kind));
    }

    @Test
    void aSketchLetsASurveyBegin() {
        List<Model> sketches =
                MODELS.stream().filter(each -> !each.portsKnown()).toList();

        assertThat(sketches).hasSizeGreaterThanOrEqualTo(10);
        assertThat(sketches)
                .allSatisfy(each -> assertThat(each.ports()).as(each.id()).isEmpty());
    }

    @Test
    void everyPortNamesItsConnector() {
        assertThat(MODELS)
                .allSatisfy(each -> each.ports()
                        .forEach((name, port) -> assertThat(port.connector())
                                .as(each.id() + "." + name)
                                .isNotNull()));
    }

    @Test
    void whateverPassesSomethingOnSaysHowLongThatTakes() {
        assertThat(MODELS)
                .filteredOn(each -> !each.routes().isEmpty()
                        || each.patch() != null
                        || !each.points().isEmpty())
                .allSatisfy(each -> {
                    Latency latency = each.latency();
                    assertThat(latency).as(each.id()).isNotNull();
                    for (Signal signal : signals(each)) {
                        assertThat(latencyOf(latency, signal))
                                .as(each.id() + ", " + signal.word())
                                .isNotEmpty()
                                .doesNotContainNull();
                    }
                });
    }

    private static Set<Signal> signals(Model model) {
        Set<Signal> signals = EnumSet.noneOf(Signal.class);
        model.ports().values().forEach(port -> {
            Signal signal = port.signal();
            if (signal != null) {
                signals.add(signal);
            }
        });
        // mains goes by, and what a network or USB socket carries depends on the type's use of it
        signals.removeAll(EnumSet.of(Signal.MAINS, Signal.ETHERNET, Signal.USB, Signal.SERIAL, Signal.MIDI));
        return signals;
    }

    private static List<@Nullable Delay> latencyOf(@Nullable Latency latency, Signal signal) {
        if (latency == null) {
            return List.of();
        }
        if (latency.all() != null) {
            return List.of(latency.all());
        }
        return switch (signal) {
            case SDI, HDMI, HDBASET -> Arrays.asList(latency.video(), latency.audio());
            case DMX, CONTACT -> Arrays.asList(latency.control());
            default -> Arrays.asList(latency.audio());
        };
    }

    @Test
    void whatConvertsSaysAtWhichLevelItClips() {
        assertThat(MODELS)
                .filteredOn(LibraryContentTest::isDigitalInside)
                .isNotEmpty()
                .allSatisfy(each -> each.ports().forEach((name, port) -> {
                    if (port.signal() == Signal.ANALOG_AUDIO) {
                        assertThat(port.max()).as(each.id() + "." + name).isNotNull();
                    }
                }));
    }

    private static boolean isDigitalInside(Model model) {
        Latency latency = model.latency();
        Delay audio = latency == null ? null : latency.audio() != null ? latency.audio() : latency.all();
        return audio != null && audio.value() > 0;
    }

    @Test
    void whatHangsOverheadHasAWeight() {
        Set<Kind> overhead =
                EnumSet.of(Kind.FIXTURE, Kind.LOUDSPEAKER, Kind.DISPLAY, Kind.PROJECTOR, Kind.CAMERA, Kind.MICROPHONE);
        assertThat(MODELS)
                .filteredOn(each -> each.portsKnown() && overhead.contains(each.kind()))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.weight()).as(each.id()).isNotNull());
    }

    @ParameterizedTest
    @CsvSource({
        "MICROPHONE, pickup pickup-L mouth",
        "CAMERA, lens",
        "DISPLAY, picture picture-1",
        "PROJECTOR, picture",
        "LOUDSPEAKER, sound",
        "FIXTURE, lamp",
        "DI, ''",
    })
    void pointsHaveTheNamesThatTheFormatGivesThem(Kind kind, String names) {
        List<String> oneOf = names.isEmpty() ? List.of() : List.of(names.split(" "));
        assertThat(MODELS)
                .filteredOn(each -> each.kind() == kind && each.portsKnown())
                .isNotEmpty()
                .allSatisfy(each -> {
                    Set<String> points = Shape.of(each).points();
                    if (oneOf.isEmpty()) {
                        assertThat(points).as(each.id()).isEmpty();
                    } else {
                        assertThat(points).as(each.id()).containsAnyElementsOf(oneOf);
                    }
                });
    }

    @Test
    void everySourceGetsOutAndEveryDestinationIsReachedInside() {
        for (String id : List.of("mic-dynamic-vocal", "camera-ptz-20x", "camera-box-sdi", "radio-handheld-digital")) {
            Model each = model(id);
            assertThat(each.routes()).as(id).isNotEmpty();
            assertThat(froms(each)).as(id).containsAnyOf("pickup", "lens");
        }
        assertThat(MODELS)
                .filteredOn(each -> each.kind() == Kind.FIXTURE && each.portsKnown())
                .allSatisfy(each -> assertThat(tos(each)).as(each.id()).contains("lamp"));
        assertThat(MODELS)
                .filteredOn(each -> each.kind() == Kind.LOUDSPEAKER && each.portsKnown())
                .allSatisfy(each -> assertThat(tos(each)).as(each.id()).contains("sound"));
    }

    private static Set<String> froms(Model model) {
        return model.routes().stream()
                .flatMap(route -> route.from().spots().stream())
                .map(spot -> spot.name())
                .collect(Collectors.toSet());
    }

    private static Set<String> tos(Model model) {
        return model.routes().stream()
                .map(Route::to)
                .flatMap(List::stream)
                .flatMap(ref -> ref.spots().stream())
                .map(spot -> spot.name())
                .collect(Collectors.toSet());
    }

    @Test
    void fixturesHaveModesUnlessADimmerDrivesThem() {
        assertThat(MODELS)
                .filteredOn(each -> each.kind() == Kind.FIXTURE && each.portsKnown())
                .allSatisfy(each -> {
                    assertThat(each.light()).as(each.id()).isNotNull();
                    boolean hasDmx = each.ports().values().stream().anyMatch(port -> port.in() == Signal.DMX);
                    assertThat(each.light().dimmed()).as(each.id()).isNotEqualTo(hasDmx);
                    assertThat(each.light().modes().isEmpty()).as(each.id()).isNotEqualTo(hasDmx);
                    assertThat(each.light().modes().values())
                            .as(each.id())
                            .allSatisfy(slots -> assertThat(slots).isBetween(1, 512));
                });
        assertThat(model("led-profile-26").light().modes()).containsEntry("6ch", 6);
    }

    /** The field is where a tenth of the peak is left, the beam a half (IES and CIE): it cannot be the narrower. */
    @Test
    void fieldAnglesAreWiderThanBeamAngles() {
        assertThat(MODELS)
                .filteredOn(each -> each.light() != null && each.light().beam() != null)
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.light().field())
                        .as(each.id())
                        .isGreaterThan(each.light().beam()));
    }

    /** Senders of DMX have sockets, receivers pins (ANSI E1.11, from memory); for sound it is the other way round. */
    @Test
    void xlrPinsAndSocketsAreOnTheRightSides() {
        assertThat(MODELS)
                .allSatisfy(each -> each.ports().forEach((name, port) -> {
                    String where = each.id() + "." + name;
                    Connector connector = port.connector();
                    boolean xlr = connector != null && connector.word().startsWith("XLR");
                    if (xlr && port.in() == Signal.DMX) {
                        assertThat(connector).as(where).isIn(Connector.XLR_5M, Connector.XLR_3M);
                    } else if (xlr && port.out() == Signal.DMX) {
                        assertThat(connector).as(where).isIn(Connector.XLR_5F, Connector.XLR_3F);
                    } else if (xlr && (port.in() == Signal.ANALOG_AUDIO || port.in() == Signal.AES3)) {
                        assertThat(connector).as(where).isEqualTo(Connector.XLR_3F);
                    } else if (xlr && (port.out() == Signal.ANALOG_AUDIO || port.out() == Signal.AES3)) {
                        assertThat(connector).as(where).isEqualTo(Connector.XLR_3M);
                    }
                }));
    }

    @Test
    void onlyMicrophoneInputsGivePhantomPower() {
        assertThat(MODELS)
                .allSatisfy(each -> each.ports().forEach((name, port) -> {
                    if (port.phantom() == Phantom.GIVES) {
                        assertThat(port.in()).as(each.id() + "." + name).isEqualTo(Signal.ANALOG_AUDIO);
                        assertThat(port.level()).as(each.id() + "." + name).isEqualTo(LevelClass.MIC);
                    } else if (port.phantom() != null) {
                        assertThat(port.out()).as(each.id() + "." + name).isEqualTo(Signal.ANALOG_AUDIO);
                    }
                }));
        assertThat(model("mic-ribbon").ports().get(new NamePattern("out")).phantom())
                .isEqualTo(Phantom.HARMED);
    }

    /**
     * Output of microphones: moving coil 1.5, ribbon 0.5, condenser 20 to 30 mV/Pa are typical in a glossary of the
     * trade press (soundonsound.com). Small and vocal condensers give less (common practice): the test allows a factor
     * of three or so either way.
     */
    @Test
    void microphonesGiveWhatTheirPrincipleLetsThem() {
        assertThat(MODELS).filteredOn(each -> each.kind() == Kind.MICROPHONE).allSatisfy(each -> {
            Sensitivity sensitivity = each.sensitivity();
            assertThat(sensitivity).as(each.id()).isNotNull();
            boolean condenser = each.id().contains("condenser")
                    || Set.of("mic-ambience-pair", "mic-headset", "mic-lavalier", "mic-measurement")
                            .contains(each.id());
            if (condenser) {
                assertThat(sensitivity.millivoltsPerPascal()).as(each.id()).isBetween(3.0, 30.0);
            } else {
                assertThat(sensitivity.millivoltsPerPascal()).as(each.id()).isBetween(0.5, 3.0);
            }
        });
    }

    /** Impedance of a 100 V loudspeaker is 10 000 / P (an amateur-radio technical page and a maker's note). */
    @Test
    void hundredVoltLoudspeakersHaveTheImpedanceOfTheirTap() {
        List<Port> ports = MODELS.stream()
                .filter(each -> each.kind() == Kind.LOUDSPEAKER)
                .flatMap(each -> each.ports().values().stream())
                .filter(port -> port.in() == Signal.SPEAKER && isHundredVolts(port.nominal()))
                .toList();

        assertThat(ports).hasSizeGreaterThanOrEqualTo(4);
        assertThat(ports).allSatisfy(port -> {
            Power tap = port.power();
            Resistance impedance = port.impedance();
            assertThat(tap).isNotNull();
            assertThat(impedance).isNotNull();
            double expected = 10_000 / tap.watts();
            assertThat(impedance.ohms()).isCloseTo(expected, within(0.01 * expected));
        });
    }

    @Test
    void hundredVoltAmplifiersBearTheLoadTheyArePricedFor() {
        List<Port> outputs = MODELS.stream()
                .filter(each -> each.kind() == Kind.AMPLIFIER)
                .flatMap(each -> each.ports().values().stream())
                .filter(port -> port.out() == Signal.SPEAKER && isHundredVolts(port.max()))
                .toList();

        assertThat(outputs).hasSizeGreaterThanOrEqualTo(3);
        assertThat(outputs)
                .allSatisfy(port -> assertThat(port.minLoad().ohms())
                        .isCloseTo(10_000 / port.power().watts(), within(1.0)));
    }

    private static boolean isHundredVolts(@Nullable Level level) {
        return level != null && Math.abs(level.value() - HUNDRED_VOLTS_DBU) < 0.05;
    }

    /**
     * RG-6 size cable reaches 113 m with HD-SDI and 78 m with 3G-SDI at 20 dB of loss at half the clock (trade article,
     * tvyvideo.com, "Starting with 12G-SDI (I)"); the published figures drop the decimals.
     */
    @ParameterizedTest
    @CsvSource({"742.5, 113", "1485, 78"})
    void coaxReachesAsFarAsPublished(double halfClockMegahertz, int metres) {
        Attenuation loss = LIBRARY.findCableType("coax-75-rg6").orElseThrow().attenuation();
        double per100m = loss.a() * Math.sqrt(halfClockMegahertz) + loss.b() * halfClockMegahertz;

        assertThat(100 * 20 / per100m).isBetween((double) metres, metres + 1.0);
    }

    /** Power over Ethernet: 15.4 W a port for type 1, 30 W for type 2, and what a device may take of it (IEEE 802.3). */
    @Test
    void poweredPortsAndDevicesKeepToTheirClasses() {
        assertThat(MODELS).allSatisfy(each -> {
            Stream<Poe> all = Stream.concat(
                    Stream.ofNullable(each.poe()),
                    each.ports().values().stream().flatMap(port -> Stream.ofNullable(port.poe())));
            all.forEach(poe -> {
                if (poe.gives() != null) {
                    assertThat(poe.gives().watts()).as(each.id()).isIn(15.4, 30.0, 60.0, 90.0);
                }
                if (poe.takes() != null) {
                    assertThat(poe.takes().watts()).as(each.id()).isLessThanOrEqualTo(71.3);
                }
            });
        });
        assertThat(MODELS)
                .filteredOn(each -> each.kind() == Kind.SWITCH && each.portsKnown())
                .anyMatch(each -> each.poe() != null && each.poe().budget() != null)
                .anyMatch(each -> each.poe() == null);
    }

    @Test
    void anExpanderGoesOnTheLinkOfABoxOfItsProtocol() {
        for (String protocol : List.of("stage-a", "stage-b")) {
            Port through = model("stagebox-16x8-" + protocol).ports().get(new NamePattern("through"));
            Port link = model("expander-8x8-" + protocol).ports().get(new NamePattern("link"));

            assertThat(through.both()).isEqualTo(Signal.STAGE_LINK);
            assertThat(link.protocol()).isEqualTo(through.protocol()).isEqualTo(protocol);
            assertThat(link.channels()).isEqualTo(through.channels());
        }
        Model bridge = model("link-bridge-stage-a-b");
        assertThat(bridge.ports().get(new NamePattern("link-a")).protocol()).isEqualTo("stage-a");
        assertThat(bridge.ports().get(new NamePattern("link-b")).protocol()).isEqualTo("stage-b");
    }

    @Test
    void soundOnSdiIsOffUntilItIsTurnedOn() {
        for (String id : List.of("sdi-output-card-4", "computer-media-sdi-4")) {
            assertThat(model(id).switches().get("sound-on-sdi").on()).as(id).isFalse();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "mic-cable, XLR-3F XLR-3M",
        "multicore-8, XLR-3F XLR-3M",
        "multicore-16, XLR-3F XLR-3M",
        "cat5e, RJ45 RJ45",
        "cat6, RJ45 RJ45",
        "cat6-screened, RJ45 RJ45",
        "coax-75-rg59, BNC BNC",
        "coax-75-rg6, BNC BNC",
        "coax-50-rg58, BNC BNC",
        "hdmi, HDMI-A HDMI-A",
        "hdmi-active, HDMI-A HDMI-A",
        "usb-2, ''",
        "usb-3, ''",
        "dmx-cable, XLR-5F XLR-5M",
        "aes-cable, XLR-3F XLR-3M",
        "speaker-2x1.5, speaker-4 speaker-4",
        "speaker-2x2.5, speaker-4 speaker-4",
        "speaker-2x4, speaker-4 speaker-4",
        "fibre-om3, LC LC",
        "mains-3x1.5, ''",
        "mains-3x2.5, ''",
    })
    void cablesThatTheFormatNamesHaveTheirEnds(String id, String ends) {
        CableType type = LIBRARY.findCableType(id).orElseThrow();

        assertThat(type.ends().stream().map(Connector::word).collect(Collectors.joining(" ")))
                .isEqualTo(ends);
        assertThat(type.carries()).isNotEmpty();
        assertThat(type.perMetre()).isNotNull();
    }

    /** Channel of balanced twisted pair: 100 m, cords included (ANSI/TIA-568.2-D). */
    @Test
    void noTwistedPairRunsFurtherThanItsStandard() {
        assertThat(CABLES)
                .filteredOn(each ->
                        each.carries().contains(Signal.ETHERNET) && each.ends().contains(Connector.RJ45))
                .hasSizeGreaterThanOrEqualTo(3)
                .allSatisfy(each ->
                        assertThat(each.longest()).as(each.id()).isNotNull().isLessThanOrEqualTo(Length.ofMetres(100)));
    }

    @Test
    void anySignalThatIsCabledHasACable() {
        Set<Signal> cabled = EnumSet.allOf(Signal.class);
        for (CableType each : CABLES) {
            cabled.removeAll(each.carries());
        }
        assertThat(cabled).isEmpty();
    }

    /** The ids that FORMAT.md's example takes from the library, with the ports it uses. */
    @Test
    void theExampleOfTheFormatFindsItsTypes() {
        Map<String, String> used =
                Map.of("analog-16", "mic-4", "condenser-gooseneck", "out", "led-profile-26", "dmx-in");
        used.forEach((id, port) -> assertThat(Shape.of(model(id)).findSocket(port))
                .as(id + "." + port)
                .isPresent());
    }
}
