package org.plumbrow.project;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is hashed of a journal line: SHA-256 over the previous hash and the canonical line. Canonical means each field
 * as its length in bytes, a colon and the field in UTF-8, so that no two lines read alike; times to the microsecond.
 */
record ChainLink(
        UUID projectId,
        int number,
        String kind,
        String sentence,
        String facts,
        Instant at,
        @Nullable UUID byPersonId,
        String byName) {

    /** Before the first line. */
    static byte[] beginning() {
        return new byte[32];
    }

    byte[] hashAfter(byte[] previous) {
        MessageDigest digest = sha256();
        digest.update(previous);
        add(digest, projectId.toString());
        add(digest, Integer.toString(number));
        add(digest, kind);
        add(digest, sentence);
        add(digest, facts);
        add(digest, Long.toString(ChronoUnit.MICROS.between(Instant.EPOCH, at)));
        add(digest, byPersonId == null ? "" : byPersonId.toString());
        add(digest, byName);
        return digest.digest();
    }

    private static void add(MessageDigest digest, String field) {
        byte[] bytes = field.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
        digest.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
