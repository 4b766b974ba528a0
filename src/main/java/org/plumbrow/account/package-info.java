/**
 * Account: people who sign in, their roles, and which branch they may see.
 * <p>Start at {@code SignInSecurity} (the chain every request passes) and {@code People} (who somebody is).
 * Rules: a web session keeps only the person's id; roles are read anew for each request.
 * Never knows a project.
 */
@NullMarked
@ApplicationModule(
        displayName = "Account",
        allowedDependencies = {"database", "web", "notice", "calc"})
package org.plumbrow.account;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
