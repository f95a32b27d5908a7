package housewright.check.cable;

import housewright.cable.Lead;
import housewright.model.CableType;
import housewright.model.Pathway;
import housewright.model.PathwayKind;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the words on a sheath say about fire. */
final class FireClass {
    /** NEC 800.113 and 300.22: for ducts, plenums and other spaces that air is moved through. */
    private static final Set<String> PLENUM = Set.of("CMP", "CATVP", "OFNP", "OFCP", "CL2P", "CL3P");

    /** NEC 800.113: for shafts from floor to floor. What is good enough for a plenum is, too (800.154). */
    private static final Set<String> RISER = Set.of("CMR", "CATVR", "OFNR", "OFCR", "CL2R", "CL3R");

    private static final Set<String> GENERAL =
            Set.of("CM", "CMG", "CMX", "CATV", "CATVX", "OFN", "OFC", "OFNG", "OFCG", "CL2", "CL3", "CL2X", "CL3X");

    private static final List<String> EURO = List.of("Aca", "B1ca", "B2ca", "Cca", "Dca", "Eca", "Fca");
    private static final Set<String> LITTLE_SMOKE = Set.of("s1a", "s1b", "s1");

    private FireClass() {}

    /** It says one of the classes of the NEC. */
    static boolean isAmerican(CableType type) {
        return type.fireClass().stream()
                .anyMatch(each -> PLENUM.contains(each) || RISER.contains(each) || GENERAL.contains(each));
    }

    static boolean isForPlenum(CableType type) {
        return type.fireClass().stream().anyMatch(PLENUM::contains);
    }

    static boolean isForRiser(CableType type) {
        return isForPlenum(type) || type.fireClass().stream().anyMatch(RISER::contains);
    }

    /** It says one of the classes of EN 13501-6. */
    static boolean isEuropean(CableType type) {
        return type.fireClass().stream().anyMatch(each -> main(each) >= 0);
    }

    /** Cca-s1b,d2,a2 or better (EN 50575 with BS 6701). */
    static boolean isLowSmoke(CableType type) {
        return type.fireClass().stream().anyMatch(FireClass::isLowSmoke);
    }

    private static boolean isLowSmoke(String text) {
        int main = main(text);
        return main == 0 || (main > 0 && main <= EURO.indexOf("Cca") && LITTLE_SMOKE.contains(smoke(text)));
    }

    /** 0 is best; −1 where it is no such class. */
    private static int main(String text) {
        int dash = text.indexOf('-');
        return EURO.indexOf(dash < 0 ? text : text.substring(0, dash));
    }

    private static String smoke(String text) {
        int dash = text.indexOf('-');
        int comma = text.indexOf(',');
        return dash < 0 ? "" : text.substring(dash + 1, comma < 0 ? text.length() : comma);
    }

    /** It is laid where a fire in the building finds it, not in the ground or by hand for a day. */
    static boolean isLaidInside(Lead lead) {
        for (Pathway pathway : lead.pathways()) {
            if (pathway.kind() != PathwayKind.UNDERGROUND && pathway.kind() != PathwayKind.LOOSE) {
                return true;
            }
        }
        return false;
    }

    static String said(@Nullable CableType type) {
        return type == null ? "" : String.join(" ", type.fireClass());
    }
}
