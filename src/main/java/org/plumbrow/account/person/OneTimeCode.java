package org.plumbrow.account.person;

import java.nio.ByteBuffer;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Time-based one-time codes: HOTP(K, T) with T = seconds since 1970 / 30. Source: RFC 6238 (time) over RFC 4226,
 * sections 5.2 and 5.3 (HMAC-SHA-1, dynamic truncation).
 */
final class OneTimeCode {

    static final Duration STEP = Duration.ofSeconds(30);
    static final int SECRET_BYTES = 20;
    private static final int DIGITS = 6;
    private static final String BASE32 = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

    private OneTimeCode() {}

    static long stepAt(Instant instant) {
        return Math.floorDiv(instant.getEpochSecond(), STEP.toSeconds());
    }

    static String at(byte[] secret, long step) {
        return at(secret, step, DIGITS);
    }

    static String at(byte[] secret, long step, int digits) {
        byte[] hash = hmac(secret, ByteBuffer.allocate(Long.BYTES).putLong(step).array());
        int offset = hash[hash.length - 1] & 0x0F;
        int binary = ByteBuffer.wrap(hash, offset, Integer.BYTES).getInt() & 0x7FFFFFFF;
        long modulus = Math.round(Math.pow(10, digits));
        return String.format("%0" + digits + "d", binary % modulus);
    }

    private static byte[] hmac(byte[] secret, byte[] message) {
        try {
            Mac mac = Mac.getInstance("HmacSHA1");
            mac.init(new SecretKeySpec(secret, "HmacSHA1"));
            return mac.doFinal(message);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** As people type it and code apps take it (RFC 4648, section 6, without padding). */
    static String base32(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        int buffer = 0;
        int bits = 0;
        for (byte b : bytes) {
            buffer = (buffer << 8) | (b & 0xFF);
            bits += 8;
            while (bits >= 5) {
                bits -= 5;
                text.append(BASE32.charAt((buffer >> bits) & 31));
            }
        }
        if (bits > 0) {
            text.append(BASE32.charAt((buffer << (5 - bits)) & 31));
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException if it holds another character */
    static byte[] fromBase32(String text) {
        ByteBuffer bytes = ByteBuffer.allocate(text.length() * 5 / 8);
        int buffer = 0;
        int bits = 0;
        for (char c : text.toCharArray()) {
            int value = BASE32.indexOf(c);
            if (value < 0) {
                throw new IllegalArgumentException("no base-32 character");
            }
            buffer = (buffer << 5) | value;
            bits += 5;
            if (bits >= 8) {
                bits -= 8;
                bytes.put((byte) (buffer >> bits));
            }
        }
        return bytes.array();
    }
}
