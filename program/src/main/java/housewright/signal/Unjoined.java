package housewright.signal;

import housewright.model.Ref.Address;

/** A cable, patch entry or link that is there and joins nothing, and why. */
public record Unjoined(Cause cause, Address one, Address other, String why) {}
