package housewright.drawing;

import housewright.finding.Subject;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Room;
import housewright.signal.FeedProof;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** All drawings of one study, under one imprint. Safe to ask from several threads; each asking draws anew. */
public final class Drawings {
    private final Study study;
    private final Imprint imprint;
    private final boolean us;
    private final Map<State, Nets> nets = new EnumMap<>(State.class);

    private Drawings(Study study, Imprint imprint, boolean us) {
        this.study = study;
        this.imprint = imprint;
        this.us = us;
    }

    /** On sheets of the kind that the project's rules go with. */
    public static Drawings of(Study study, Imprint imprint) {
        return of(study, imprint, Paper.isUs(study.project().about()));
    }

    /** @param us on US sheets, with lengths in feet and inches; else on those of ISO, in metres */
    public static Drawings of(Study study, Imprint imprint, boolean us) {
        return new Drawings(study, imprint, us);
    }

    /** The systems that the project has anything of in a state, in their own order. */
    public List<Trade> trades(State state) {
        List<Trade> trades = new ArrayList<>();
        for (Trade trade : Trade.values()) {
            if (!net(trade, state).links().isEmpty()) {
                trades.add(trade);
            }
        }
        return trades;
    }

    /** Every sheet of a system; one that says what belongs there where the project has nothing of it. */
    public List<Sheet> signal(Trade trade, State state) {
        return signal(trade, state, Set.of());
    }

    /**
     * The same with the way of a feed lit. Where it stops, the drawing of {@link #feed} says why.
     *
     * @throws IllegalArgumentException where there is no such feed
     */
    public List<Sheet> signal(Trade trade, State state, String litFeed) {
        return signal(
                trade,
                state,
                way(litFeed, state == State.TODAY ? State.TODAY : State.TARGET).lit());
    }

    /**
     * One of the sheets, without drawing the others.
     *
     * @param number from 1 to the sheet's {@link Sheet#of}; a greater one gives the last
     */
    public Sheet signal(Trade trade, State state, int number) {
        List<Part> parts = Parts.of(project(), net(trade, state));
        return sheet(trade, state, parts, Math.clamp(number, 1, Math.max(1, parts.size())), Set.of());
    }

    /**
     * The same with the way of a feed lit.
     *
     * @throws IllegalArgumentException where there is no such feed
     */
    public Sheet signal(Trade trade, State state, int number, String litFeed) {
        List<Part> parts = Parts.of(project(), net(trade, state));
        Set<Subject> lit =
                way(litFeed, state == State.TODAY ? State.TODAY : State.TARGET).lit();
        return sheet(trade, state, parts, Math.clamp(number, 1, Math.max(1, parts.size())), lit);
    }

    /** What each sheet of a system holds, without drawing any; none where the project has nothing of it. */
    public List<Contents> contents(Trade trade, State state) {
        List<Part> parts = Parts.of(project(), net(trade, state));
        List<Contents> contents = new ArrayList<>();
        for (Part part : parts) {
            contents.add(new Contents(
                    contents.size() + 1,
                    parts.size() == 1 ? trade.title() : part.placesSaid(),
                    List.copyOf(part.subjects())));
        }
        return contents;
    }

    /**
     * What a feed passes, as far as it comes: equipment, cables, sends and radio links.
     *
     * @throws IllegalArgumentException where there is no such feed
     */
    public Set<Subject> passed(String feed, State state) {
        return Set.copyOf(
                way(feed, state == State.TODAY ? State.TODAY : State.TARGET).lit());
    }

    private List<Sheet> signal(Trade trade, State state, Set<Subject> lit) {
        List<Part> parts = Parts.of(project(), net(trade, state));
        List<Sheet> sheets = new ArrayList<>();
        for (int n = 1; n <= Math.max(1, parts.size()); n++) {
            sheets.add(sheet(trade, state, parts, n, lit));
        }
        return sheets;
    }

    private Sheet sheet(Trade trade, State state, List<Part> parts, int number, Set<Subject> lit) {
        String title = trade.title() + ", " + state.title();
        String id = "signal-" + trade.word() + "-" + state.word();
        if (parts.isEmpty()) {
            return empty(id, title, EmptySheets.signal(trade, state));
        }
        Part part = parts.get(number - 1);
        Diagram diagram = Diagram.of(part, Map.of());
        SignalInk ink = new SignalInk(project(), diagram, Layering.lay(diagram), lit);
        String named = parts.size() == 1 ? title : title + ": " + part.placesSaid();
        List<String> legend = SignalInk.legend(state, part);
        return page(id + "-" + number, named, number, parts.size(), ink, List.of(), legend);
    }

    /**
     * The way of one feed, every step of it, and where it stops.
     *
     * @throws IllegalArgumentException where there is no such feed
     */
    public Sheet feed(String feed, State state) {
        FeedWay way = way(feed, state == State.TODAY ? State.TODAY : State.TARGET);
        Net net = state == State.CHANGE ? Net.change(way(feed, State.TODAY).net(), way.net()) : way.net();
        FeedProof proof = proof(feed, state);
        String id = "feed-" + feed + "-" + state.word();
        String title = "Feed " + feed + ", " + state.title() + ": " + FeedWords.of(proof);
        if (net.boxes().isEmpty()) {
            return empty(id, title, EmptySheets.feed(proof));
        }
        Part part = new Part(List.of(), net, Map.of(), way.stops());
        Diagram diagram = Diagram.of(part, way.numbers());
        SignalInk ink = new SignalInk(project(), diagram, Layering.lay(diagram), way.lit());
        return page(id, title, 1, 1, ink, way.hops(), SignalInk.legend(state, part));
    }

    /**
     * The venue from above, to scale, with what stands where. Where nothing has a position yet, a sheet that says what
     * belongs there, with a mapping of 1 unit per metre.
     */
    public Plan floorPlan(State state) {
        FloorPlan plan = new FloorPlan(project().venue(), new Things(study, state), us);
        String id = "floor-plan-" + state.word();
        String title = "Floor plan, " + state.title();
        return plan.isEmpty()
                ? new Plan(empty(id, title, EmptySheets.floorPlan()), new Mapping(1, 0, 0), List.of())
                : plan.draw(id, scale -> heading(title, scale, 1, 1));
    }

    /** The same, as DXF in metres, for whoever draws in CAD. */
    public String floorPlanDxf(State state) {
        String title = project().about().name() + ", floor plan, " + state.title();
        return new Dxf(project().venue(), new Things(study, state)).write(title);
    }

    /** Each room from the side, in the order of the project; none where no room has an outline or a place in it. */
    public List<Plan> sideViews(State state) {
        Things things = new Things(study, state);
        List<SideView> views = new ArrayList<>();
        List<String> rooms = new ArrayList<>();
        for (Room room : project().venue().rooms().values()) {
            SideView view = new SideView(project().venue(), room, things, us);
            if (!view.isEmpty()) {
                views.add(view);
                rooms.add(room.id());
            }
        }
        List<Plan> plans = new ArrayList<>();
        for (int n = 1; n <= views.size(); n++) {
            SideView view = views.get(n - 1);
            String room = rooms.get(n - 1);
            String title = "Side view of " + room + ", " + view.seen() + ", " + state.title();
            int number = n;
            plans.add(view.draw(
                    "side-view-" + room + "-" + state.word(), scale -> heading(title, scale, number, views.size())));
        }
        return plans;
    }

    /** The places that are racks, in the order of the project. */
    public List<String> rackPlaces() {
        return project().venue().places().values().stream()
                .filter(place -> place.rack() != null)
                .map(Place::id)
                .toList();
    }

    /**
     * One rack from its front, to scale.
     *
     * @throws IllegalArgumentException where there is no such rack
     */
    public Sheet rack(String id, State state) {
        Place place = project().venue().places().get(id);
        if (place == null || place.rack() == null) {
            throw new IllegalArgumentException("no rack " + id);
        }
        Elevation rack = new Elevation(place, place.rack(), new Things(study, state).at(id));
        String title = "Rack " + id + ", " + state.title();
        return new RackSheets(List.of(rack), us)
                .draw("rack-" + id + "-" + state.word(), (scale, number, of) -> heading(title, scale, number, of))
                .getFirst();
    }

    /** Every rack from its front, to scale; one sheet that says what belongs there where there is no rack. */
    public List<Sheet> racks(State state) {
        Things things = new Things(study, state);
        List<Elevation> racks = new ArrayList<>();
        for (Place place : project().venue().places().values()) {
            if (place.rack() != null) {
                racks.add(new Elevation(place, place.rack(), things.at(place.id())));
            }
        }
        String title = "Rack elevations, " + state.title();
        String id = "racks-" + state.word();
        return racks.isEmpty()
                ? List.of(empty(id, title, EmptySheets.racks()))
                : new RackSheets(racks, us).draw(id, (scale, number, of) -> heading(title, scale, number, of));
    }

    /** Gives a drawing its title block once its scale is known. */
    interface Naming {
        Page.Heading heading(String scale);
    }

    private Sheet page(
            String id, String title, int number, int of, SignalInk ink, List<String> hops, List<String> notes) {
        Steps steps = new Steps(hops, ink.width());
        Page page = Page.fit(us, 1, Math.max(ink.width(), steps.width()), ink.height() + steps.height(), notes);
        Page.Heading heading = heading(title, "not to scale", number, of);
        Svg svg = page.begin(heading);
        ink.draw(svg, page.left(), page.top());
        steps.draw(svg, page.left(), page.top() + ink.height());
        return page.end(svg, id, heading, ink.subjects());
    }

    private Sheet empty(String id, String title, List<String> what) {
        Page page = Page.fit(us, 0, 400, 300, List.of());
        Page.Heading heading = heading(title, "not to scale", 1, 1);
        Svg svg = page.begin(heading);
        double y = page.top() + 100;
        svg.open("g", "class", "empty");
        for (String line : what) {
            svg.words(page.width() / 2, y, "middle", 15, false, line);
            y += 24;
        }
        svg.close();
        return page.end(svg, id, heading, List.of());
    }

    private Page.Heading heading(String title, String scale, int number, int of) {
        return new Page.Heading(project().about().name(), title, imprint, scale, number, of);
    }

    private FeedWay way(String feed, State state) {
        return new FeedWay(at(state), nets(state), proof(feed, state));
    }

    private FeedProof proof(String feed, State state) {
        return at(state).findProof(feed).orElseThrow(() -> new IllegalArgumentException("no feed " + feed));
    }

    private Net net(Trade trade, State state) {
        return switch (state) {
            case TODAY, TARGET -> nets(state).of(trade);
            case CHANGE ->
                Net.change(nets(State.TODAY).of(trade), nets(State.TARGET).of(trade));
        };
    }

    private synchronized Nets nets(State state) {
        return nets.computeIfAbsent(state, each -> new Nets(at(each)));
    }

    private Study at(State state) {
        return study.at(state == State.TODAY ? Moment.today() : Moment.target());
    }

    private Project project() {
        return study.project();
    }
}
