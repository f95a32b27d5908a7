package housewright.model;

import java.util.Locale;

/** Connectors as the file names them; M is pins, F is sockets. */
public enum Connector implements Word {
    XLR_3M,
    XLR_3F,
    XLR_5M,
    XLR_5F,
    TRS,
    TS,
    TRS_3_5("TRS-3.5"),
    RCA,
    SPEAKER_4("speaker-4"),
    SPEAKER_2("speaker-2"),
    BNC,
    HDMI_A,
    USB_A,
    USB_B,
    USB_C,
    RJ45,
    LC,
    SC,
    DB25,
    DIN_5,
    TERMINALS("terminals"),
    C13,
    C14,
    C19,
    C20,
    MAINS_PLUG("mains-plug"),
    MAINS_SOCKET("mains-socket"),
    MAINS_INLET_LOCKING("mains-inlet-locking"),
    /** An external supply comes with it. */
    ADAPTER("adapter"),
    ANTENNA("antenna"),
    NONE("none");

    private final String word;

    Connector() {
        this.word = name().replace('_', '-').toUpperCase(Locale.ROOT);
    }

    Connector(String word) {
        this.word = word;
    }

    /** The end of a cable that goes into this one on a panel: pins into sockets, for the rest the same word. */
    public Connector mate() {
        return switch (this) {
            case XLR_3M -> XLR_3F;
            case XLR_3F -> XLR_3M;
            case XLR_5M -> XLR_5F;
            case XLR_5F -> XLR_5M;
            case C14 -> C13;
            case C13 -> C14;
            case C20 -> C19;
            case C19 -> C20;
            case MAINS_SOCKET -> MAINS_PLUG;
            case MAINS_PLUG -> MAINS_SOCKET;
            default -> this;
        };
    }

    /** It is made for mains and for nothing else. */
    public boolean isMains() {
        return switch (this) {
            case C13, C14, C19, C20, MAINS_PLUG, MAINS_SOCKET, MAINS_INLET_LOCKING -> true;
            default -> false;
        };
    }

    @Override
    public String word() {
        return word;
    }
}
