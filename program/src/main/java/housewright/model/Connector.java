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

    @Override
    public String word() {
        return word;
    }
}
