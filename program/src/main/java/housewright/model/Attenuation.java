package housewright.model;

/** Loss of a coaxial cable in dB per 100 m: a·√f + b·f, f in MHz. */
public record Attenuation(double a, double b) {}
