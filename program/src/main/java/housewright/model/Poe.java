package housewright.model;

import housewright.unit.Power;
import org.jspecify.annotations.Nullable;

/** Power over the network cable. */
public record Poe(
        @Doc("Power it gives on a port") @Nullable Power gives,
        @Doc("Power it takes") @Nullable Power takes,

        @Doc("Power it can give on all ports together") @Nullable
        Power budget) {}
