package housewright.plan;

/** What it weighs when something cannot be kept: an event's need far above a mandatory task, that above an optional one. */
public record Weights(int promise, int mandatoryOut, int mandatoryLate, int optionalOut, int optionalLate) {
    public static final Weights USUAL = new Weights(10_000, 300, 200, 3, 2);

    /** Of a task left out. */
    public int out(Task task) {
        return task.mandatory() ? mandatoryOut : optionalOut;
    }

    /** Of a task ended after it is due. */
    public int late(Task task) {
        return task.mandatory() ? mandatoryLate : optionalLate;
    }
}
