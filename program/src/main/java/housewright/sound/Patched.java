package housewright.sound;

import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;

/** One join set in a device at the moment, its ranges written out. */
public record Patched(String device, Spot from, Spot to, PatchEntry entry) {}
