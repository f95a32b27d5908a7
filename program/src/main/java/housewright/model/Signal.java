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
    MAINS;

    /** A channel of it is known to be sound, picture or control; the others carry whatever they are given. */
    public boolean saysWhatItCarries() {
        return switch (this) {
            case ANALOG_AUDIO, AES3, STAGE_LINK, USB_AUDIO, SDI, HDMI, HDBASET, DMX, SPEAKER, CONTACT, MIDI -> true;
            case ETHERNET, RADIO, SERIAL, USB, MAINS -> false;
        };
    }
}
