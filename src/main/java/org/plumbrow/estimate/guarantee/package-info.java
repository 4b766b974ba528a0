/**
 * What the promises of production may cost: one project's promise chosen by confidence and its terms, and the book of all
 * promises of a branch, in which one bad year hits all.
 * <p>Start at {@code GuaranteeReading} (a project) and {@code BookReading} (the branch). Rules: the promised kWh are the
 * contract's and changed only through the project's own service; the sums are in {@code calc.finance}; the book reads kept
 * yields and computes none. What is shown is a planning aid, no statement of insurance or law.
 */
@NullMarked
@NamedInterface("guarantee")
package org.plumbrow.estimate.guarantee;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
