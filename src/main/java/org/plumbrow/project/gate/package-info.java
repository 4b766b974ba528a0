/**
 * Gates: the checklists between the stages of a project, what is answered at them, and who lets a project through.
 * <p>Start at {@link org.plumbrow.project.gate.Gates} (how a gate stands), {@link org.plumbrow.project.gate.GateAnswers}
 * (answering, waiving, taking back) and {@link org.plumbrow.project.gate.GatePassing}. Later rooms judge computed items
 * by beans of {@link org.plumbrow.project.gate.GateRule}; an item without such a bean is checked by hand. Rules: only the
 * next gate is passed, only when each required item is in, judged again in the transaction that passes it; a safety item
 * is never waived; what was answered keeps the words, unit and limits that were asked. The shipped checklists are
 * {@code gates/items.csv}. Never says that anything may be touched.
 */
@NullMarked
@NamedInterface("gate")
package org.plumbrow.project.gate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
