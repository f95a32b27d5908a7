package housewright.signal;

import housewright.model.Ref.Address;

/** Something that ought to join two places and does not. */
record DeadJoin(Cause cause, Address one, Address other, String why) {}
