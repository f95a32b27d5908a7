package housewright.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What of a piece of equipment differs today. */
public record EquipmentToday(
        @Nullable String model,
        @Nullable String at,
        @Nullable String circuit,
        @Nullable Ref poweredBy,
        Map<LocalRef, Setting> set,
        @Nullable Integer unit,
        @Nullable Fitted secondary,
        @Nullable FixtureSetting light,
        @Nullable Fitted terminator,
        @Nullable String ip,
        Map<NamePattern, List<Integer>> vlans) {
    public EquipmentToday {
        set = Ordered.copy(set);
        vlans = Ordered.copy(vlans);
    }
}
