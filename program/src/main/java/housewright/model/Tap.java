package housewright.model;

/** Where on a channel a send is taken from. */
public enum Tap implements Word {
    INPUT,
    BEFORE_FADER,
    AFTER_FADER
}
