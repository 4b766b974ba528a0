package org.plumbrow.calc.finance.use;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * One row of a table.
 *
 * @param line its line, from 1
 * @param end empty when the row lasts until the next, or for its month
 * @param isMonth the row names a month, not a day
 */
record LocalSpan(
        int line, LocalDateTime start, Optional<LocalDateTime> end, boolean isMonth, double kwh, boolean estimated) {}
