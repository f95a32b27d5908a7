package housewright.model;

import housewright.unit.VideoFormat;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the job is, and what holds throughout. */
public record About(
        String name,
        @Doc("How far the job is") @Default("survey") Stage stage,

        @Doc("Version of the built-in library this project was made with") @Default("1")
        int library,

        @Doc("Currency of every price, as a three-letter code") @Nullable
        String currency,

        @Doc("Time zone of every time, such as Europe/London") @Nullable
        ZoneId timeZone,

        @Nullable Mains mains,

        @Doc("The house picture format; one frame of it is the length of a frame") @Nullable
        VideoFormat picture,

        @Nullable Air air,
        @Nullable Rules rules,
        @Doc("What the job is for, in words") List<String> aims,
        Remarks remarks) {
    public About {
        aims = List.copyOf(aims);
    }
}
