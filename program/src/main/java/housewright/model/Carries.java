package housewright.model;

/** What a feed is about; checked, never steers. */
public enum Carries implements Word {
    AUDIO,
    PICTURE,
    LIGHT,
    CONTROL,
    DATA
}
