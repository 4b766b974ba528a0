/** Papers written as PDF: the same data give the same bytes. Start at {@code PrintedPaper}. */
@NullMarked
@NamedInterface("pdf")
package org.plumbrow.evidence.pdf;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
