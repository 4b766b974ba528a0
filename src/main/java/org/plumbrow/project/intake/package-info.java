/**
 * Intake: a table of projects that somebody brings, matched column by column, looked at as a preview, taken in as one.
 * <p>Start at {@code Intakes}; what a row means is {@code IntakeReading}. Rules: nothing is half taken in; a row that is
 * left out has its sentence; a reference that is here already makes no double.
 */
@NullMarked
package org.plumbrow.project.intake;

import org.jspecify.annotations.NullMarked;
