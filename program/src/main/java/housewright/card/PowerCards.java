package housewright.card;

import housewright.card.Card.Call;
import housewright.card.Card.Step;
import housewright.model.Battery;
import housewright.model.Control;
import housewright.model.Kind;
import housewright.model.Look;
import housewright.model.Model;
import housewright.model.Ref;
import housewright.model.Words;
import housewright.operation.PowerOrder;
import housewright.operation.Touch;
import housewright.operation.Touch.How;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Start up and shut down: each thing that is touched, in the order that suits the hall. */
final class PowerCards {
    private static final Set<Kind> LOUD = Set.of(Kind.AMPLIFIER, Kind.LOUDSPEAKER);

    private final Study study;
    private final Names names;

    PowerCards(Study study, Names names) {
        this.study = study;
        this.names = names;
    }

    List<Card> start() {
        return cards("start-up", "Start up", true);
    }

    List<Card> stop() {
        return cards("shut-down", "Shut down", false);
    }

    private List<Card> cards(String id, String title, boolean up) {
        List<PowerOrder.Step> order = up
                ? study.operation().order().steps()
                : study.operation().order().shutDown();
        if (order.isEmpty()) {
            return List.of();
        }
        Card all = card(id, title, up, order, true, true);
        List<Card> one = Dealing.cards(List.of(all));
        if (one.size() == 1) {
            return one;
        }
        // quiet things and loud ones on cards of their own
        int turn = 1;
        while (turn < order.size() && isLoud(order.subList(turn, turn + 1)) == isLoud(order.subList(0, 1))) {
            turn++;
        }
        return turn == order.size()
                ? one
                : Dealing.cards(List.of(
                        card(id, title, up, order.subList(0, turn), true, false),
                        card(id, title, up, order.subList(turn, order.size()), false, true)));
    }

    private Card card(String id, String title, boolean up, List<PowerOrder.Step> part, boolean begins, boolean ends) {
        List<Step> steps = new ArrayList<>();
        List<String> toFillIn = new ArrayList<>();
        for (PowerOrder.Step each : part) {
            steps.add(up ? startStep(each, toFillIn) : stopStep(each.touch(), toFillIn));
        }
        if (ends) {
            steps.addAll(light(!up));
        }
        List<String> first = new ArrayList<>();
        if (begins) {
            first.add("Do the steps in this order. Tick each box.");
        }
        if (isLoud(part)) {
            first.add(fadersDown());
            first.add(
                    up
                            ? "What makes the sound loud comes on last. If it came first, it would thump."
                            : "What makes the sound loud goes off first.");
        }
        if (ends && !up) {
            first.add("What is not on a card stays on. Leave it on.");
        }
        List<Call> calls = names.callsAndMains(names.calls("audio", "help").subList(0, 1));
        return new Card(id, title, null, first, steps, List.of(), cautions(part), calls, toFillIn);
    }

    private boolean isLoud(List<PowerOrder.Step> steps) {
        return steps.stream().flatMap(step -> step.wakes().stream()).anyMatch(each -> LOUD.contains(names.kind(each)));
    }

    private String fadersDown() {
        List<String> desks = study.operation().desks().stream()
                .filter(desk -> names.kind(desk) == Kind.MIXER)
                .map(names::told)
                .toList();
        return desks.isEmpty()
                ? "First turn all sound down."
                : "First pull down all faders on " + Words.and(desks) + ".";
    }

    private Step startStep(PowerOrder.Step step, List<String> toFillIn) {
        Touch touch = step.touch();
        String name = names.told(touch.thing());
        Kind kind = names.kind(touch.thing());
        String see = switch (touch.how()) {
            case PROGRAM -> "Its window is open.";
            case BATTERY -> "Its light is on.";
            case MASTER -> "The lights of all it feeds are on.";
            case SWITCH, BUTTON ->
                switch (kind) {
                    case COMPUTER -> "Its start page is up.";
                    case DISPLAY -> "The screen lights up.";
                    case PROJECTOR -> "After a while there is light on the wall.";
                    default -> "Its light is on.";
                };
        };
        String act = switch (touch.how()) {
            case PROGRAM -> "Open " + name + host(touch.thing()) + ".";
            case BATTERY ->
                batteries(touch.thing())
                        + (kind == Kind.RADIO_RECEIVER ? " Turn it down. Take it out of your ear." : "")
                        + " Switch it on.";
            case MASTER -> "Switch on " + name + ". Wait. It feeds " + some(step.wakes(), touch.thing()) + ".";
            case SWITCH, BUTTON -> "Switch on " + name + "." + high(touch.thing());
        };
        return step(touch, act, see, toFillIn);
    }

    private Step stopStep(Touch touch, List<String> toFillIn) {
        String name = names.told(touch.thing());
        String act = switch (touch.how()) {
            case PROGRAM -> "Save your work. Close " + name + host(touch.thing()) + ".";
            case BATTERY, MASTER -> "Switch off " + name + ".";
            case SWITCH, BUTTON ->
                switch (names.kind(touch.thing())) {
                    case COMPUTER -> "Save your work. Shut down " + name + " from its menu. Pull no plug.";
                    case RECORDER -> "Stop " + name + ". Then shut it down. Pull no plug.";
                    case PROJECTOR ->
                        "Switch off " + name + "." + high(touch.thing()) + " Leave its plug in: it must cool.";
                    default -> "Switch off " + name + "." + high(touch.thing());
                };
        };
        String see = switch (names.kind(touch.thing())) {
            case COMPUTER -> "It is dark and still.";
            case PROJECTOR -> "Its fan stops after a while.";
            case DISPLAY -> "The screen is dark.";
            case PROGRAM -> "Its window is gone.";
            default -> "Its light is out.";
        };
        return step(touch, act, see, toFillIn);
    }

    private Step step(Touch touch, String act, String see, List<String> toFillIn) {
        String where = names.where(touch.thing());
        String name = Names.thing(touch.thing());
        if (where == null) {
            toFillIn.add("where " + name + " is");
        }
        String blank = touch.how() == How.PROGRAM ? null : names.isHigh(touch.thing()) ? "Its remote" : "Its switch";
        if (blank != null) {
            toFillIn.add("where the " + (names.isHigh(touch.thing()) ? "remote or switch" : "switch") + " of " + name
                    + " is");
        }
        return new Step(where == null ? "" : where, act, see, blank);
    }

    private String host(String program) {
        String host = study.project().equipment().get(program) == null
                ? null
                : study.getEquipment(program).runsOn();
        return host == null ? "" : " on " + names.told(host);
    }

    private String high(String thing) {
        return names.isHigh(thing) ? " It is up high." : "";
    }

    private String batteries(String thing) {
        String name = names.told(thing);
        Model model = study.types().findModel(study.getEquipment(thing).model()).orElse(null);
        Battery battery = model == null ? null : model.battery();
        Integer count = battery == null ? null : battery.count();
        String type = battery == null ? null : battery.type();
        if (count == null || type == null) {
            return "Put fresh batteries in " + name + ".";
        }
        return "Put " + count + " fresh " + type + (count == 1 ? " battery" : " batteries") + " in " + name + ".";
    }

    private static String some(Set<String> wakes, String master) {
        Set<String> others = new LinkedHashSet<>(wakes);
        others.remove(master);
        List<String> said =
                others.stream().map(each -> "“" + Names.thing(each) + "”").toList();
        return said.isEmpty()
                ? "what is plugged into it"
                : said.size() <= 6
                        ? Words.and(said)
                        : Words.and(said.subList(0, 5)) + " and " + (said.size() - 5) + " more";
    }

    /** The button that calls the first light there is, or takes all away. */
    private List<Step> light(boolean dark) {
        for (Control control : study.project().controls().values()) {
            Look look = look(control);
            Ref press = control.press();
            boolean isDark = look != null && look.levels().values().stream().allMatch(level -> level.base() == 0);
            if (look != null && press != null && isDark == dark) {
                String where = names.where(press.thing());
                return List.of(new Step(
                        where == null ? "" : where,
                        "Press " + said(press) + " on “" + Names.thing(press.thing()) + "” for the light “"
                                + Names.thing(look.id()) + "”.",
                        dark ? "The stage lights go out. The house lights stay as they are." : "The lights come up.",
                        null));
            }
        }
        return List.of();
    }

    private @Nullable Look look(Control control) {
        return study.project().lighting() == null || control.calls() == null
                ? null
                : study.project().lighting().looks().get(control.calls());
    }

    static String said(Ref press) {
        return press.addresses().getFirst().spot().name().replace('-', ' ');
    }

    private List<String> cautions(List<PowerOrder.Step> part) {
        List<String> cautions = new ArrayList<>();
        if (isLoud(part)) {
            cautions.add("Loud sound hurts ears for good. Stand back from the speakers. Start low. Go up slowly.");
        }
        if (part.stream().anyMatch(step -> names.isHigh(step.thing()))) {
            cautions.add("Do not climb on chairs or ladders.");
        }
        cautions.add(Texts.MAINS);
        return cautions;
    }
}
