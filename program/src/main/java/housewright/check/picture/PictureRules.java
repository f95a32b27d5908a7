package housewright.check.picture;

import housewright.check.Rule;
import java.util.List;

/** The rules about pictures, written out: easy to find, and always in the same order. */
public final class PictureRules {
    private PictureRules() {}

    public static List<Rule> all() {
        return List.of(
                new NoCommonPictureFormat(),
                new PathBelowHouseFormat(),
                new MixerSourceOffFormat(),
                new FrameRateNotHouse(),
                new MixerWithoutSynchroniser(),
                new ProtectedPicture(),
                new PictureConvertedOften(),
                new EmbeddedChannelLost(),
                new EmbeddedPairSplit(),
                new ScreenInputNotSet(),
                new ScreenSetToTwoInputs(),
                new SplitToUnlikeScreens(),
                new CameraNotControlled());
    }
}
