package housewright.check.cable;

import housewright.check.Rule;
import java.util.List;

/** The rules about cables, written out: what hurts first, then how long, then how laid, then what the visit needs. */
public final class CableRules {
    private CableRules() {}

    public static List<Rule> all() {
        return List.of(
                new MainsWithSignal(),
                new MainsBesideSignal(),
                new FireClassTooLow(),
                new FireClassUnknown(),
                new CableLengthUnknown(),
                new CableShorterThanItsWay(),
                new CableWayBroken(),
                new TooLongForSdi(),
                new TooLongForHdmi(),
                new TooLongForUsb(),
                new NetworkRunTooLong(),
                new DmxLineTooLong(),
                new TooLongForAes3(),
                new CableTooLong(),
                new LineLosesTreble(),
                new SpeakerCableLosesLevel(),
                new WrongCableImpedance(),
                new ConduitOverfull(),
                new ConduitMayJam(),
                new BendTooTight(),
                new MicrophoneBesidePower(),
                new RunInPieces(),
                new StruckCableNeeded(),
                new NoSparePulled(),
                new TerminationNotForeseen(),
                new CableNotTested(),
                new LabelTwice(),
                new CableNotLabelled());
    }
}
