package housewright.model;

/** The level range a port is made for. */
public enum LevelClass implements Word {
    MIC,
    INSTRUMENT,
    LINE,
    CONSUMER,
    PHONES,
    SPEAKER
}
