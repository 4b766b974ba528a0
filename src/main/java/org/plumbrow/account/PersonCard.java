package org.plumbrow.account;

import java.util.Set;
import java.util.UUID;
import org.plumbrow.web.Role;

/** A person of a branch as lists and choices show them, with what they are there. */
public record PersonCard(UUID id, String name, String email, Set<Role> roles) {}
