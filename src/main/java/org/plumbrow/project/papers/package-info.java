/**
 * Papers: the photos, documents and signatures of a project, and who may open them.
 * <p>Start at {@link org.plumbrow.project.papers.ProjectPapers}. Rules: whatever comes, is hidden or shown again has its
 * journal line in the same transaction, without a name of the customer's side. Files themselves are the evidence room's.
 */
@NullMarked
package org.plumbrow.project.papers;

import org.jspecify.annotations.NullMarked;
