/**
 * What is to be bought, of whom, for how much, and by when must it be ordered?
 *
 * <p>Method: everything new is gathered by order and type; spares follow a rule for each kind, which is data
 * ({@link housewright.model.Practice}); cable that is cut on site is packed into the drums it is sold in with least
 * length bought (one-dimensional cutting stock: exact for few pieces, else heuristics with exact repacking of a few drums
 * at a time), always with a lower bound. The latest day to order is the day of need, less the lead, less a margin.
 *
 * <p>Source: Martello and Toth, Knapsack Problems (1990), chapter 8, for the bound L2 (from memory). Limits: prices are
 * the types' own, typical ones where nobody has put in a quotation; what has none is named and left out of the sums. Days
 * of need and tasks come in from whoever knows them; this package knows no plan.
 */
@NullMarked
package housewright.order;

import org.jspecify.annotations.NullMarked;
