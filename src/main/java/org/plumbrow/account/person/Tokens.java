package org.plumbrow.account.person;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Words that nobody can guess, for links and phones; we keep only their hash. */
public final class Tokens {

    /** No 0, 1, I, O: for words that are read from paper or a log. */
    private static final String READABLE = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private static final int TOKEN_BYTES = 24;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Tokens() {}

    /** 32 characters that may stand in an address, 192 bits. */
    public static String next() {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(randomBytes(TOKEN_BYTES));
    }

    /** A word of capitals and digits, five bits each. */
    public static String readable(int length) {
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < length; i++) {
            word.append(READABLE.charAt(RANDOM.nextInt(READABLE.length())));
        }
        return word.toString();
    }

    static byte[] randomBytes(int count) {
        byte[] random = new byte[count];
        RANDOM.nextBytes(random);
        return random;
    }

    /** SHA-256, in hexadecimal: enough for a word of many random bits, where a slow hash would gain nothing. */
    public static String hash(String token) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
