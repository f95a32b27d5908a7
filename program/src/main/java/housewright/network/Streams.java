package housewright.network;

/** What streams of standard kinds take on the wire, in bit/s. */
final class Streams {
    /** Ethernet header and check, preamble and gap, IPv4 and UDP, in bytes. */
    private static final int AROUND_PACKET = 18 + 20 + 20 + 8;

    private static final int LIGHTING_DATA = 638;
    private static final double DMX_PER_SECOND = 44;
    private static final int RTP = 12;
    private static final int SAMPLES_IN_PACKET = 48;
    private static final int BYTES_IN_SAMPLE = 3;
    private static final int PACKETS_PER_SECOND = 1000;
    private static final int CHANNELS_IN_STREAM = 8;

    private Streams() {}

    /** Full universes of ANSI E1.31 at 44 packets a second. */
    static double lighting(int universes) {
        return universes * (LIGHTING_DATA + AROUND_PACKET) * 8 * DMX_PER_SECOND;
    }

    /** AES67: 48 kHz, 24 bit, packets of 1 ms, up to 8 channels a stream. */
    static double audio(int channels) {
        double rate = 0;
        for (int left = channels; left > 0; left -= CHANNELS_IN_STREAM) {
            int payload = SAMPLES_IN_PACKET * BYTES_IN_SAMPLE * Math.min(left, CHANNELS_IN_STREAM);
            rate += (payload + RTP + AROUND_PACKET) * 8.0 * PACKETS_PER_SECOND;
        }
        return rate;
    }
}
