/**
 * Evidence: photos, documents, data files and signatures, kept once a branch under their hash.
 * <p>Start at {@link EvidenceStore} (what is kept and given back), {@code FileType} (what is let in) and
 * {@code Photo} (upright, without what the camera wrote into it). Reading a user's table of rows and columns is
 * {@code evidence.table}. Rules: a file's type is what its bytes say; nothing is erased, only hidden, with a reason.
 * Asks {@link EvidenceDoor} whether a project's evidence may be opened. Never knows what a file proves.
 */
@NullMarked
@ApplicationModule(
        displayName = "Evidence",
        allowedDependencies = {"database", "web", "account", "branch", "calc"})
package org.plumbrow.evidence;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
