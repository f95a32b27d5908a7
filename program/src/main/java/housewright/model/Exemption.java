package housewright.model;

import org.jspecify.annotations.Nullable;

/** A rule switched off for a subject. */
public record Exemption(String rule, @Nullable String subject, String why) {}
