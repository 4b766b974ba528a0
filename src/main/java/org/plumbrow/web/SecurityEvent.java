package org.plumbrow.web;

import org.jspecify.annotations.Nullable;

/**
 * Something that the firm's owner must be able to look up later: a sign-in, a link made or ended, an export, a read
 * outbox. Publish it as an application event; the account room writes it down in the same transaction.
 *
 * @param kind lower-case words joined by hyphens: "link-ended"
 * @param by who did it; a person without an account by name
 * @param sentence what happened, without any secret in it
 */
public record SecurityEvent(
        String kind, Actor by, String sentence, @Nullable String source) {

    public static SecurityEvent of(String kind, Actor by, String sentence) {
        return new SecurityEvent(kind, by, sentence, null);
    }
}
