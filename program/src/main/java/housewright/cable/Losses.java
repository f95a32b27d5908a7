package housewright.cable;

import housewright.model.Attenuation;
import housewright.unit.CrossSection;

/** What a length of cable takes from a signal. */
public interface Losses {
    /** Of copper at 20 °C, in Ω·mm²/m: the resistivity behind ASTM B258's tables of gauges. */
    double COPPER = 0.017241;

    /** Loss of a coaxial cable in dB: a·√f + b·f for each 100 m; not below some 5 MHz, where the skin effect ends. */
    static double coaxDb(Attenuation attenuation, double megahertz, double metres) {
        return (attenuation.a() * Math.sqrt(megahertz) + attenuation.b() * megahertz) * metres / 100;
    }

    /** Resistance of a pair of conductors, there and back, in ohm. */
    static double loopOhms(CrossSection conductor, double metres) {
        return 2 * metres * COPPER / conductor.squareMillimetres();
    }

    /**
     * By how many dB the level at a load falls by what is in series with it, from a source of no resistance: 20·log10((Z
     * + R)/Z). Not the share of the power that is lost, which as 10·log10 is half of it.
     */
    static double dropDb(double loadOhms, double seriesOhms) {
        return 20 * Math.log10((loadOhms + seriesOhms) / loadOhms);
    }

    /** The share of the power taken from the source that stays in the cable, for a drop of the level. */
    static double lostShare(double dropDb) {
        return 1 - Math.pow(10, -dropDb / 20);
    }

    /** Where the capacitance of a cable takes 3 dB from what the source gives, in Hz: 1/(2π·R·C). */
    static double cornerHertz(double sourceOhms, double picofarads) {
        return 1 / (2 * Math.PI * sourceOhms * picofarads * 1e-12);
    }
}
