package housewright.model;

/** The kinds of signal a port can carry. */
public enum Signal implements Word {
    ANALOG_AUDIO,
    AES3,
    STAGE_LINK,
    USB_AUDIO,
    SDI,
    HDMI,
    HDBASET,
    ETHERNET,
    DMX,
    SPEAKER,
    RADIO,
    CONTACT,
    MIDI,
    SERIAL,
    USB,
    MAINS
}
