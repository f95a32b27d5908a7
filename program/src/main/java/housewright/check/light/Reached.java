package housewright.check.light;

import housewright.check.Evidence;
import housewright.light.Lights;
import housewright.model.Exemption;
import housewright.model.Ref.Address;
import housewright.power.Supply;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a signal gets to.
 *
 * @param things without the one it begins at
 * @param sockets and points, such as {@code panel.contact-1}: what stops at the same ones, stops for the same reason
 * @param light it gets as far as DMX, or as lighting data on the network
 */
record Reached(Set<String> things, Set<String> sockets, boolean light) {
    static Reached by(Evidence evidence, Address from) {
        Set<String> things = new HashSet<>();
        Set<String> sockets = new HashSet<>();
        boolean[] light = {false};
        evidence.signals().reaches(from, at -> {
            things.add(at.thing());
            sockets.add(at.thing() + "." + at.spot().name());
            light[0] |= Lights.isLight(at);
            return false;
        });
        things.remove(from.thing());
        if (sockets.isEmpty()) {
            sockets.add(from.toString());
        }
        return new Reached(things, sockets, light[0]);
    }

    /** The ways of feeds that are reported as broken. */
    static List<PairProof> broken(Evidence evidence) {
        if (evidence.moment().equals(Moment.today())) {
            return List.of(); // of those that come with the work nothing is said
        }
        return evidence.signals().proofs().stream()
                .filter(proof -> !proof.feed().never() && proof.state() == FeedState.BROKEN)
                .filter(proof -> evidence.project().exempt().stream().noneMatch(each -> concerns(each, proof)))
                .flatMap(proof -> proof.pairs().stream())
                .filter(pair -> pair.state() == FeedState.BROKEN)
                .toList();
    }

    private static boolean concerns(Exemption exemption, FeedProof proof) {
        String subject = exemption.subject();
        return exemption.rule().equals("feed-does-not-arrive")
                && (subject == null || subject.equals("feeds." + proof.feed().id()));
    }

    /**
     * What a broken feed does not get to although it has become light on its way: that feed says why, and how to mend it.
     */
    static Set<String> missedAsLight(Evidence evidence) {
        Set<String> missed = new HashSet<>();
        for (PairProof pair : broken(evidence)) {
            String lamp = pair.to().thing();
            if (evidence.lights().things().containsKey(lamp)
                    && by(evidence, pair.from()).light()) {
                missed.add(lamp);
                missed.add(hangsOn(evidence, lamp));
            }
        }
        return missed;
    }

    /** The dimmer that a lamp without DMX of its own is plugged into, or the lamp itself. */
    static String hangsOn(Evidence evidence, String lamp) {
        Supply supply = evidence.supplies().find(lamp).orElse(null);
        Address outlet = supply == null ? null : supply.outlet();
        return outlet == null || evidence.lights().findReceiver(lamp).isPresent() ? lamp : outlet.thing();
    }
}
