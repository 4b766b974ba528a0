/**
 * Outage windows hour by hour: every hour that could be one, judged by everything that can be known ahead, and ranked.
 *
 * <p>Start at {@link org.plumbrow.calc.outage.ranking.HourRanking}: a question goes in
 * ({@link org.plumbrow.calc.outage.ranking.HourQuestion}), windows without a broken factor come out, best first, or, if
 * there is none, which limit or circumstance would have to give, and by how much. Rules: one class a kind of rule, each
 * answers with a {@link org.plumbrow.calc.outage.ranking.Factor} (value, limit, verdict) and with the last minute up to
 * which it keeps; all of them stand in {@code RuleBook}. Times are the wall clock of the site, to the minute; a night in
 * which the clocks change is for the caller to leave out. Same question, same answer.
 *
 * <p>Never says that an hour is without danger: it says minutes, chances, and what speaks against.
 */
@NullMarked
@NamedInterface("ranking")
package org.plumbrow.calc.outage.ranking;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
