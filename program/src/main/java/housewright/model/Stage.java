package housewright.model;

/** How far the job is; findings not yet due are counted, not shouted. */
public enum Stage implements Word {
    SURVEY,
    DESIGN,
    ORDER,
    INSTALL,
    LIVE
}
