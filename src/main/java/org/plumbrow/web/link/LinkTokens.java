package org.plumbrow.web.link;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.UUID;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The 32 characters of a link: the first 160 bits of HMAC-SHA-256 over its id and version. The key comes from the
 * setting {@code plumbrow.link-key}; without it one is made once and kept in the database.
 */
@Component
class LinkTokens {

    /** Base 32 without the letters that are read as figures. */
    private static final String LETTERS = "0123456789abcdefghjkmnpqrstvwxyz";

    private static final int LENGTH = 32;

    private final byte[] key;

    /** The key is there before anybody asks: a page that only reads could not make one, nor one that is undone keep it. */
    LinkTokens(JdbcClient jdbc, @Value("${plumbrow.link-key:}") String keySetting) {
        if (!keySetting.isEmpty() && keySetting.length() < LENGTH) {
            throw new IllegalArgumentException("plumbrow.link-key must have at least 32 characters");
        }
        key = keySetting.isEmpty() ? kept(jdbc) : keySetting.getBytes(StandardCharsets.UTF_8);
    }

    String token(UUID linkId, long version) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            ByteBuffer message = ByteBuffer.allocate(3 * Long.BYTES);
            message.putLong(linkId.getMostSignificantBits())
                    .putLong(linkId.getLeastSignificantBits())
                    .putLong(version);
            return letters(mac.doFinal(message.array()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What a row keeps to find its link again. */
    static byte[] hash(String token) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.US_ASCII));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String letters(byte[] mac) {
        StringBuilder token = new StringBuilder(LENGTH);
        for (int bit = 0; bit < LENGTH * 5; bit += 5) {
            int pair = ((mac[bit / 8] & 0xFF) << 8) | (mac[bit / 8 + 1] & 0xFF);
            token.append(LETTERS.charAt((pair >> (11 - bit % 8)) & 31));
        }
        return token.toString();
    }

    private static byte[] kept(JdbcClient jdbc) {
        byte[] made = new byte[LENGTH];
        new SecureRandom().nextBytes(made);
        jdbc.sql("insert into private_link_key (secret) values (?) on conflict do nothing")
                .param(made)
                .update();
        return jdbc.sql("select secret from private_link_key")
                .query(byte[].class)
                .single();
    }
}
