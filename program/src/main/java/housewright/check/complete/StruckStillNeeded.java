package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Ref;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Things that go, and that something which stays is supplied by, sits in, runs on or is operated by. */
public final class StruckStillNeeded implements Rule {
    private static final Card CARD = new Card(
            "struck-still-needed",
            "Does nothing that stays need anything that goes?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<String>> needs = new LinkedHashMap<>();
        Map<String, Equipment> all = evidence.project().equipment();
        for (Equipment each : all.values()) {
            if (each.life().target()) {
                Ref by = each.poweredBy();
                need(
                        all,
                        needs,
                        by == null || by.isRange() ? null : by.thing(),
                        () -> Words.said(each.id()) + " has its supply from it");
                need(all, needs, each.partOf(), () -> Words.said(each.id()) + " sits in it");
                need(all, needs, each.runsOn(), () -> Words.said(each.id()) + " runs on it");
                need(all, needs, each.gang(), () -> Words.said(each.id()) + " shares its address");
            }
        }
        evidence.project().controls().values().forEach(control -> {
            need(all, needs, control.press() == null ? null : control.press().thing(), () -> "its buttons are pressed");
            need(
                    all,
                    needs,
                    control.does() == null ? null : control.does().thing(),
                    () -> Words.said(control.id()) + " acts on it");
        });
        evidence.project()
                .files()
                .values()
                .forEach(file -> need(all, needs, file.device(), () -> Words.said(file.id()) + " is made for it"));
        return needs.entrySet().stream().map(each -> finding(all, each.getKey(), each.getValue()));
    }

    private static void need(
            Map<String, Equipment> all,
            Map<String, List<String>> needs,
            @Nullable String thing,
            Supplier<String> inWords) {
        Equipment needed = thing == null ? null : all.get(thing);
        if (needed != null && needed.life() == Life.STRIKE) {
            List<String> whys = needs.computeIfAbsent(needed.id(), key -> new ArrayList<>());
            String why = inWords.get();
            if (!whys.contains(why)) {
                whys.add(why);
            }
        }
    }

    private static Finding finding(Map<String, Equipment> all, String thing, List<String> whys) {
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(thing)),
                Words.said(thing) + " is to be struck, and " + Wording.some(whys, 3) + ".",
                List.of(),
                List.of(
                        new Fix("Keep it.", List.of(Copy.kept(Objects.requireNonNull(all.get(thing))))),
                        Fix.of("Or have all that needs it do without it.")));
    }
}
