package housewright.app;

import housewright.model.Project;
import housewright.study.Study;

/** A project at a revision, and everything that follows from it. */
public record Now(long revision, Project project, Study study) {}
