/**
 * Text to model and back. {@link housewright.file.ProjectReader} turns the bytes of a project file, YAML or JSON,
 * into a {@link housewright.model.Project} or into all of its errors; {@link housewright.file.ProjectWriter} writes
 * one; {@link housewright.file.ProjectText} changes a text where it must and nowhere else.
 *
 * <p>How: YAML events (snakeyaml-engine) or JSON tokens (Jackson) become one small tree of {@code Node}s that know
 * their lines. {@code RecordForm} learns from each record's components what its keys are; the binder, the writer and
 * the schema all go by it, so that a new component needs nothing here. {@code References} then holds every id against
 * what it names. Nothing here touches the file system.
 *
 * <p>Limits, so that no file can hold the program up: 16 MB a file, 40 levels deep, no anchors, and ranges that all
 * together stand for a few million names.
 */
@NullMarked
package housewright.file;

import org.jspecify.annotations.NullMarked;
