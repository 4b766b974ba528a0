/**
 * Reading a table that somebody brings, and writing one that a spreadsheet program opens: encoding, separator, columns,
 * dates and numbers as people write them. Each room brings its own columns and says what a row means.
 */
@NullMarked
@NamedInterface("table")
package org.plumbrow.evidence.table;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
