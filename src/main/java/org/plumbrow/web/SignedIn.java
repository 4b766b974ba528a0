package org.plumbrow.web;

import java.io.Serializable;
import java.security.Principal;
import java.util.UUID;

/** All that a web session keeps of a person: the id. */
public record SignedIn(UUID personId) implements Principal, Serializable {

    @Override
    public String getName() {
        return personId.toString();
    }
}
