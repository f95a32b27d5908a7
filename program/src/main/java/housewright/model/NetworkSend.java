package housewright.model;

import housewright.unit.DataRate;
import housewright.unit.Delay;
import org.jspecify.annotations.Nullable;

/** Channels carried by a network. */
public record NetworkSend(
        String id,
        Ref from,
        Ref to,

        @Doc("What it is: ip-video, network-audio, lighting-data …") @Key("as") @Nullable
        String as,

        @Nullable DataRate rate,
        @Nullable Integer vlan,
        boolean multicast,
        @Nullable Delay delay,
        @Default("keep") Life life,
        Remarks remarks) {}
