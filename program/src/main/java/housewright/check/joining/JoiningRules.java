package housewright.check.joining;

import housewright.check.Rule;
import java.util.List;

/** The rules about what is plugged into what, in the order in which a reader would ask. */
public final class JoiningRules {
    private JoiningRules() {}

    public static List<Rule> all() {
        return List.of(
                new PlugDoesNotFit(),
                new AdapterOfNoUse(),
                new CableWrongForSignal(),
                new RunJoinsNothing(),
                new UsbTwoOfASort(),
                new InputOverdriven(),
                new MicIntoLine(),
                new InstrumentWithoutDi(),
                new ConsumerIntoLine(),
                new UnbalancedTooLong(),
                new StereoIntoMono(),
                new PhantomMissing(),
                new PhantomHarms(),
                new SpeakerLevelIntoInput(),
                new AmplifierOutputsTied(),
                new AmplifierLoad(),
                new LineLoudspeakerMixed(),
                new LineTapsOverRating(),
                new AmplifierPower(),
                new MainsPinsLive(),
                new MainsIntoSignal(),
                new DmxOnThreePins());
    }
}
