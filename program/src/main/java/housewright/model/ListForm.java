package housewright.model;

/** A {@link Shorthand} record whose long form is a list: that of its only {@code List} component. */
public interface ListForm extends Shorthand {}
