package housewright.web;

import java.util.List;
import java.util.stream.Stream;

/** All that the server answers to, and who may ask it. */
final class Routes {
    private Routes() {}

    static List<Route> all() {
        return Stream.of(
                        DoorPages.routes(),
                        ProjectPages.routes(),
                        OriginFile.routes(),
                        OverviewPages.routes(),
                        FeedPages.routes(),
                        FindingPages.routes(),
                        QuestionPages.routes(),
                        HistoryPages.routes(),
                        SharingPages.routes(),
                        TablePages.routes(),
                        PacketPages.routes(),
                        SpreadsheetPages.routes(),
                        JoinPages.routes(),
                        SignalPages.routes(),
                        VenuePages.routes(),
                        RackPages.routes(),
                        ThingPages.routes(),
                        OrderPages.routes(),
                        WorkPages.routes(),
                        PlanPages.routes(),
                        PaperPages.routes(),
                        SitePages.routes())
                .flatMap(List::stream)
                .toList();
    }
}
