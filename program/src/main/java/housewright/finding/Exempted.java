package housewright.finding;

import housewright.model.Exemption;

/** A finding that the project has switched off, and the entry that says why. */
public record Exempted(Finding finding, Exemption by) {}
