/**
 * Account: people who sign in, their roles, and which branch they may see.
 * <p>Start at {@code door.SignInSecurity} (the chain every request passes), {@code door.SignInDesk} (is it them?) and
 * {@code person.People} (who somebody is). Others ask {@link org.plumbrow.account.BranchPeople} for the people of a branch.
 * Rules: a web session keeps only the person's id; roles are read anew for each request; what a person carries
 * (password, link, phone, recovery code) is stored as a hash.
 * Asks others: {@link org.plumbrow.account.BranchOpened}, within the transaction that opens a branch. Never knows a project.
 */
@NullMarked
@ApplicationModule(
        displayName = "Account",
        allowedDependencies = {"database", "web", "notice", "calc"})
package org.plumbrow.account;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
