package housewright.study;

import housewright.check.Rule;
import housewright.check.cable.CableRules;
import housewright.check.complete.CompleteRules;
import housewright.check.joining.JoiningRules;
import housewright.check.light.LightRules;
import housewright.check.network.NetworkRules;
import housewright.check.people.PeopleRules;
import housewright.check.picture.PictureRules;
import housewright.check.power.PowerRules;
import housewright.check.signal.SignalRules;
import housewright.check.sound.SoundRules;
import housewright.check.volunteers.VolunteerRules;
import java.util.ArrayList;
import java.util.List;

/** Every rule there is, trade by trade. */
public final class RuleCatalogue {
    private RuleCatalogue() {}

    public static List<Rule> all() {
        List<Rule> rules = new ArrayList<>(SignalRules.all());
        rules.addAll(JoiningRules.all());
        rules.addAll(CableRules.all());
        rules.addAll(SoundRules.all());
        rules.addAll(PictureRules.all());
        rules.addAll(NetworkRules.all());
        rules.addAll(LightRules.all());
        rules.addAll(PowerRules.all());
        rules.addAll(PeopleRules.all());
        rules.addAll(CompleteRules.all());
        rules.addAll(VolunteerRules.all());
        rules.add(new RuleSettings(rules));
        return List.copyOf(rules);
    }
}
