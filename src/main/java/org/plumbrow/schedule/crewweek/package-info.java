/**
 * A crew's week: where, with what, to do what; on the phone, on paper and in the calendar behind a private link.
 * What the crew did is reported here day by day ({@code DailyReports}), and day one at a site ticked off ({@code DayOne}).
 * <p>Start at {@code CrewWeek}. Rules: only what is published is shown; a crew lead sees own crews' weeks; the calendar
 * names the place and the work, nothing of the customer.
 */
@NullMarked
@NamedInterface("crewweek")
package org.plumbrow.schedule.crewweek;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
