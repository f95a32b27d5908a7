package housewright.model;

import housewright.unit.Length;
import housewright.unit.LuminousFlux;
import housewright.unit.Mass;
import housewright.unit.Power;
import housewright.unit.RackUnits;
import housewright.unit.Sensitivity;
import housewright.unit.TimeSpan;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A type of equipment: its ports, what is fixed inside, its figures. */
public record Model(
        String id,
        @Nullable String name,
        @Default("other") Kind kind,
        @Doc("Where the figures come from") @Nullable Figures figures,

        @Doc("no: a sketch whose sockets nobody has counted yet; any port may be named") @Default("yes")
        boolean portsKnown,

        @Doc("Sockets and plugs, by the name on the panel") Map<NamePattern, Port> ports,

        @Doc("Named places inside that signals are routed to and from")
        List<NamePattern> points,

        @Doc("Fixed inside; left of the arrow arrives, right leaves")
        List<Route> routes,

        @Doc("Passive, straight through, both ways") List<Tie> ties,

        @Doc("What the project's patch may join: free, or a list of joins") @Nullable
        Patchable patch,

        @Doc("Switches that stop what they gate while off") Map<String, Switch> switches,

        @Doc("Time a signal takes through it, once a pass") @Nullable
        Latency latency,

        @Doc("Power taken from the mains") @Nullable Power power,
        @Nullable Poe poe,
        @Nullable Battery battery,
        @Nullable Mass weight,
        @Doc("Height in a rack") @Nullable RackUnits rack,
        @Nullable Length depth,
        @Nullable Length width,
        @Nullable Length height,

        @Doc("In the project's currency; in the library a plain figure to start from") @Nullable
        BigDecimal price,

        @Doc("Usual time from order to delivery") @Nullable TimeSpan lead,
        @Nullable LightData light,

        @Doc("Output for a sound pressure of 1 Pa") @Nullable
        Sensitivity sensitivity,

        @Doc("Light output of a projector") @Nullable LuminousFlux lumens,

        @Doc("Gives its own picture format, whatever format it takes")
        boolean scales,

        @Doc("A switch that sends multicast only where it is asked for") @Nullable
        Boolean igmp,

        Remarks remarks) {
    public Model {
        ports = Ordered.copy(ports);
        points = List.copyOf(points);
        routes = List.copyOf(routes);
        ties = List.copyOf(ties);
        switches = Ordered.copy(switches);
    }

    public boolean isPassive() {
        return !ties.isEmpty() && routes.isEmpty();
    }
}
