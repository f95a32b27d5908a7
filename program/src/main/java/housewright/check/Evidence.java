package housewright.check;

import housewright.cable.Cabling;
import housewright.light.Lights;
import housewright.model.Equipment;
import housewright.model.Project;
import housewright.model.RuleSet;
import housewright.model.Rules;
import housewright.model.Types;
import housewright.network.Networks;
import housewright.operation.Operation;
import housewright.picture.Pictures;
import housewright.power.Supplies;
import housewright.room.Rooms;
import housewright.signal.FeedProof;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.Signals;
import housewright.sound.Sound;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What a rule may ask: the project, and each trade's results, worked out when first asked for. */
public interface Evidence {
    Project project();

    /** The types the project may use: its own and the library's. */
    Types types();

    /** The state of the hall that is being checked. */
    Moment moment();

    /** The signals at that moment. */
    Signals signals();

    /** The limit as the project wants it: its own where that is tighter and in the same unit, else the rule's. */
    default double limit(Rule.Card card, Rule.Limit limit) {
        Rules rules = project().about().rules();
        String wanted = rules == null || !card.limits().getFirst().equals(limit)
                ? null
                : rules.tighten().get(card.id());
        return wanted == null ? limit.value() : Tightening.of(wanted, limit).orElse(limit.value());
    }

    /** Which limits apply where they differ between regions. */
    default RuleSet ruleSet() {
        Rules rules = project().about().rules();
        return rules == null ? RuleSet.METRIC_EU : rules.set();
    }

    /** The cables at that moment. */
    Cabling cabling();

    /** The ways of the pictures at that moment. */
    Pictures pictures();

    /** The network at that moment. */
    Networks networks();

    /** What becomes of sound at that moment: levels, delays in the air, clocks. */
    Sound sound();

    /** The DMX at that moment. */
    Lights lights();

    /** The mains at that moment. */
    Supplies supplies();

    /** Who sees what at that moment. */
    Rooms rooms();

    /** What a volunteer must touch at that moment. */
    Operation operation();

    /** The day on which the accepted plan begins what needs an order, by the order's id; none without such a plan. */
    Map<String, LocalDate> neededByPlan();

    /**
     * The thing of that id, which is there because something reckoned with it.
     *
     * @throws IllegalArgumentException where there is none
     */
    default Equipment getEquipment(String id) {
        Equipment thing = project().equipment().get(id);
        if (thing == null) {
            throw new IllegalArgumentException("There is no equipment " + id);
        }
        return thing;
    }

    /** The same project at another moment. */
    Evidence at(Moment other);

    /** The cheapest mends of a feed that is not proven, cheapest first; empty where none is known. */
    List<Mend> mends(FeedProof proof);
}
