package housewright.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A thing itself. */
public record Equipment(
        String id,

        @Doc("Its type: one of the project's or of the library's") @Nullable
        String model,

        @Doc("The place where it stands, hangs or is racked") @Nullable
        String at,

        @Default("keep") Life life,
        @Doc("The mains circuit it is on") @Nullable String circuit,
        @Doc("The outlet that powers it") @Nullable Ref poweredBy,
        @Doc("How switches, ports and points are set") Map<LocalRef, Setting> set,
        @Doc("Lowest rack unit it takes") @Nullable Integer unit,

        @Doc("Safety attachment of anything overhead") @Nullable
        Fitted secondary,

        @Nullable FixtureSetting light,

        @Doc("Fixture it shares an address with, on purpose") @Nullable
        String gang,

        @Doc("End-of-line terminator") @Nullable Fitted terminator,
        @Doc("Network address") @Nullable String ip,

        @Doc("Networks its ports carry; default network where not said")
        Map<NamePattern, List<Integer>> vlans,

        @Doc("Host of a card") @Nullable String partOf,
        @Doc("Computer a program runs on") @Nullable String runsOn,
        @Nullable String serial,
        @Nullable String label,

        @Doc("What the hall is handed with it: password, licence, firmware") @Nullable
        Handover handover,

        @Doc("What differs today") @Nullable EquipmentToday was,
        Remarks remarks) {
    public Equipment {
        set = Ordered.copy(set);
        vlans = Ordered.copy(vlans);
    }

    /** The same, set otherwise. */
    public Equipment with(Map<LocalRef, Setting> otherwise) {
        return copy(circuit, poweredBy, otherwise, unit, light, terminator);
    }

    /** The same at another address. */
    public Equipment with(FixtureSetting otherwise) {
        return copy(circuit, poweredBy, set, unit, otherwise, terminator);
    }

    /** The same with a terminator, or without one. */
    public Equipment withTerminator(@Nullable Fitted otherwise) {
        return copy(circuit, poweredBy, set, unit, light, otherwise);
    }

    /** The same at another height in its rack. */
    public Equipment atUnit(int otherwise) {
        return copy(circuit, poweredBy, set, otherwise, light, terminator);
    }

    /** The same, powered from elsewhere: by an outlet, or else straight by a circuit. */
    public Equipment poweredFrom(@Nullable String otherCircuit, @Nullable Ref otherOutlet) {
        return copy(otherCircuit, otherOutlet, set, unit, light, terminator);
    }

    private Equipment copy(
            @Nullable String circuit,
            @Nullable Ref poweredBy,
            Map<LocalRef, Setting> set,
            @Nullable Integer unit,
            @Nullable FixtureSetting light,
            @Nullable Fitted terminator) {
        return new Equipment(
                id,
                model,
                at,
                life,
                circuit,
                poweredBy,
                set,
                unit,
                secondary,
                light,
                gang,
                terminator,
                ip,
                vlans,
                partOf,
                runsOn,
                serial,
                label,
                handover,
                was,
                remarks);
    }

    /** As it stands before the work, {@code was} taken in. */
    public Equipment today() {
        EquipmentToday was = this.was;
        if (was == null) {
            return this;
        }
        FixtureSetting light = this.light;
        FixtureSetting wasLight = was.light();
        Map<LocalRef, Setting> set = new java.util.LinkedHashMap<>(this.set);
        set.putAll(was.set());
        Map<NamePattern, List<Integer>> vlans = new java.util.LinkedHashMap<>(this.vlans);
        vlans.putAll(was.vlans());
        return new Equipment(
                id,
                Words.first(was.model(), model),
                Words.first(was.at(), at),
                life,
                Words.first(was.circuit(), circuit),
                Words.first(was.poweredBy(), poweredBy),
                set,
                Words.first(was.unit(), unit),
                Words.first(was.secondary(), secondary),
                wasLight == null ? light : light == null ? wasLight : light.overlaidBy(wasLight),
                gang,
                Words.first(was.terminator(), terminator),
                Words.first(was.ip(), ip),
                vlans,
                partOf,
                runsOn,
                serial,
                label,
                handover,
                null,
                remarks);
    }
}
