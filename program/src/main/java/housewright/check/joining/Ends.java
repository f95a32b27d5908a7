package housewright.check.joining;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Port;
import housewright.model.Types;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether the ends of a cable go where they are plugged in. */
final class Ends {
    private Ends() {}

    /**
     * An end that does not go where it is plugged in.
     *
     * @param plug what the cable has at this end; of a thing's own lead, what the thing at the other end has
     * @param socket of the port
     */
    record Misfit(Plug at, Connector plug, Connector socket) {}

    /** A lead that belongs to the thing itself, so that it has that thing's plug. */
    static boolean isOwn(Lead lead) {
        CableType type = lead.type();
        return type != null
                && type.carries().isEmpty()
                && type.ends().isEmpty()
                && lead.cable().ends().isEmpty();
    }

    /** The adapters that the cable names. */
    static List<Adapter> adapters(Lead lead, Types types) {
        List<Adapter> adapters = new ArrayList<>();
        for (String id : lead.cable().adapters()) {
            types.findAdapter(id).ifPresent(adapters::add);
        }
        return adapters;
    }

    /** Every end that does not go in, with these adapters at hand; a person turns a lead round where that helps. */
    static List<Misfit> misfits(Lead lead, List<Adapter> adapters) {
        List<Misfit> misfits = new ArrayList<>();
        boolean own = isOwn(lead);
        for (Joint joint : lead.joints()) {
            if (own) {
                own(joint, adapters, misfits);
                continue;
            }
            Plug from = joint.from();
            Plug to = joint.to();
            Connector first = from == null ? null : from.connector();
            Connector second = to == null ? null : to.connector();
            boolean straight = goes(from, first, adapters) && goes(to, second, adapters);
            if (straight || (from != null && to != null && goes(from, second, adapters) && goes(to, first, adapters))) {
                continue;
            }
            add(from, first, adapters, misfits);
            add(to, second, adapters, misfits);
        }
        return misfits;
    }

    /** Both ends of such a cable go into both sockets of every way, without adapters. */
    static boolean fit(Lead lead, List<Connector> ends) {
        if (ends.size() != 2) {
            return false;
        }
        for (Joint joint : lead.joints()) {
            Plug from = joint.from();
            Plug to = joint.to();
            boolean straight = Mating.goes(ends.getFirst(), socket(from)) && Mating.goes(ends.getLast(), socket(to));
            boolean turned = Mating.goes(ends.getLast(), socket(from)) && Mating.goes(ends.getFirst(), socket(to));
            if (!straight && !turned) {
                return false;
            }
        }
        return true;
    }

    static @Nullable Connector socket(@Nullable Plug plug) {
        Port port = plug == null ? null : plug.port();
        return port == null ? null : port.connector();
    }

    private static boolean goes(@Nullable Plug at, @Nullable Connector plug, List<Adapter> adapters) {
        return Mating.goesBy(plug, socket(at), adapters);
    }

    private static void add(@Nullable Plug at, @Nullable Connector plug, List<Adapter> adapters, List<Misfit> misfits) {
        Connector socket = socket(at);
        if (at != null && plug != null && socket != null && !Mating.goesBy(plug, socket, adapters)) {
            misfits.add(new Misfit(at, plug, socket));
        }
    }

    /** One of the two things has the plug; where the words for both are alike it is a plug here and a socket there. */
    private static void own(Joint joint, List<Adapter> adapters, List<Misfit> misfits) {
        Connector one = socket(joint.from());
        Connector other = socket(joint.to());
        if (joint.from() != null
                && one != null
                && other != null
                && one != other
                && !Mating.goesBy(other, one, adapters)
                && !Mating.goesBy(one, other, adapters)) {
            misfits.add(new Misfit(joint.from(), other, one));
        }
    }
}
