package housewright.card;

import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;

/** Every card of a hall at the moment of a study. */
public final class Cards {
    private Cards() {}

    /** In the order in which they are wanted: start up, run, shut down, then for each room no sound and no picture. */
    public static List<Card> of(Study study) {
        Names names = new Names(study.project(), study.supplies().things());
        List<Card> cards = new ArrayList<>();
        PowerCards power = new PowerCards(study, names);
        cards.addAll(power.start());
        cards.addAll(new RunCards(study, names).cards());
        cards.addAll(power.stop());
        cards.addAll(new TroubleCards(study, names, Trouble.SOUND).cards());
        cards.addAll(new TroubleCards(study, names, Trouble.PICTURE).cards());
        return cards;
    }
}
