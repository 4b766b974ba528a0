/**
 * How much electricity a site uses: metered intervals of one or several meters, from typed months, a table or a Green
 * Button file, brought to the twelve calendar months of a year and, where they are hourly, to its hours. Start at
 * {@link org.plumbrow.calc.finance.use.UseYear}.
 * <p>Rules: what a customer takes and what a customer gives are never netted; an interval that crosses months is split by
 * time; a repeated interval counts once; gaps, estimates and conflicts are said with their time. XML is read as a stream
 * without any document type, entity or address. Never opens a file.
 */
@NullMarked
@NamedInterface("use")
package org.plumbrow.calc.finance.use;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
