package housewright.drawing;

import housewright.model.Signal;
import housewright.model.Word;

/** The systems of a hall: one of them, or one feed, makes a signal drawing. */
public enum Trade implements Word {
    SOUND("Sound"),
    PICTURE("Picture"),
    LIGHT("Light"),
    NETWORK("Network"),
    CONTROL("Control"),
    MAINS("Mains"),
    /** Cables whose signal nobody has said yet. */
    UNKNOWN("Not known yet");

    private final String title;

    Trade(String title) {
        this.title = title;
    }

    /** As it stands in a heading. */
    public String title() {
        return title;
    }

    static Trade of(Signal signal) {
        return switch (signal) {
            case ANALOG_AUDIO, AES3, STAGE_LINK, USB_AUDIO, SPEAKER, RADIO -> SOUND;
            case SDI, HDMI, HDBASET -> PICTURE;
            case DMX -> LIGHT;
            case ETHERNET -> NETWORK;
            case CONTACT, MIDI, SERIAL, USB -> CONTROL;
            case MAINS -> MAINS;
        };
    }
}
