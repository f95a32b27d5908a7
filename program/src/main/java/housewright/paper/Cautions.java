package housewright.paper;

/** What to mind where work can hurt: the trade's usual words, on the sheet of that task. Local code goes first. */
final class Cautions {
    static final Block MAINS = new Block.Caution(
            "Mains can kill. Switch off, lock off, prove dead before you open anything. Fixed wiring, distribution and "
                    + "anything hard-wired belong to a licensed electrician and to local code.");
    static final Block LADDERS = new Block.Caution(
            "Height: use the lift or ladder only if you are trained for it, on firm level ground, with somebody below. "
                    + "Keep people out from underneath. Tie tools on. The rules of the hire firm and local code apply.");
    static final Block OVERHEAD = new Block.Caution(
            "Nothing is hung overhead on the strength of this sheet. Only from points whose limit a competent person has "
                    + "stated, by somebody trained to rig, each thing with its own safety attachment. Where the limit is "
                    + "blank, ask; do not hang.");
    static final Block LIFTING = new Block.Caution(
            "Weight: what is heavy or awkward needs two people or a hoist. Where the weight is blank, weigh it first.");
    static final Block PULLING = new Block.Caution(
            "Pull by hand, never with force: the cable's bend radius and the pulling tension of its data sheet hold. Old "
                    + "fabric may hold asbestos or live wiring: stop and ask before you drill or open it.");
    static final Block HEARING = new Block.Caution(
            "Hearing: faders down before anything is plugged, powered or patched; in-ear packs off the ears. Bring levels "
                    + "up slowly, with somebody listening.");
    static final Block LAMPS = new Block.Caution(
            "Lamps are hot and bright: let them cool, do not look into them. Power off before you open or re-plug one.");

    private Cautions() {}
}
