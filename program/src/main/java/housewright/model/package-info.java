/**
 * The project file as immutable records: one record a section or entity, components named as the file's
 * keys (camelCase here, kebab-case there). Nothing is worked out here; an edit is a
 * {@link housewright.model.change.Change}.
 *
 * <p>How the file shows a record: a component {@code id} is the entity's key; {@link housewright.model.Remarks}
 * stands inline; {@link housewright.model.Key} renames; {@link housewright.model.Default} says what an absent
 * key means; {@link housewright.model.Written} types are one scalar; {@link housewright.model.Shorthand} types
 * are a scalar or a mapping (or a list, where they have {@link housewright.model.ListForm}).
 */
@NullMarked
package housewright.model;

import org.jspecify.annotations.NullMarked;
