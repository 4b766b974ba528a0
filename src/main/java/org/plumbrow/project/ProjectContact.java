package org.plumbrow.project;

import java.util.UUID;

/**
 * Somebody at the customer's side. The data stand in a row of their own; journal lines name the id only.
 *
 * @param part what they are there: "farmer", "herd manager"; may be empty
 * @param phone may be empty, as the e-mail address
 * @param language {@code en} or {@code es}
 * @param decides whether this is the person who decides
 */
public record ProjectContact(
        UUID id,
        UUID projectId,
        String name,
        String part,
        String phone,
        String email,
        String language,
        boolean decides) {}
