package housewright.picture;

import java.util.List;

/** The way of one picture of one feed, device by device. */
public record PicturePath(String feed, List<Pass> passes) {
    public PicturePath {
        passes = List.copyOf(passes);
    }
}
