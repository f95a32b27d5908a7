package housewright.check.sound;

import housewright.check.Rule;
import java.util.List;

/** The rules about sound: levels first, then ways, stereo, time, clocks, people, and what is left over. */
public final class SoundRules {
    private SoundRules() {}

    public static List<Rule> all() {
        return List.of(
                new MicrophoneClips(),
                new MicrophoneInNoise(),
                new PreampGainShort(),
                new GainSetTwice(),
                new FullScaleDiffers(),
                new ChannelTwoInputs(),
                new LinkChannelsLost(),
                new SourceGoesNowhere(),
                new StereoOneSide(),
                new StereoCrossed(),
                new StereoFold(),
                new PerformerHearsLate(),
                new FillDelay(),
                new ClockMasters(),
                new SampleRatesDiffer(),
                new FarEndHearsItself(),
                new LoopLacksVoice(),
                new SpareChannels());
    }
}
