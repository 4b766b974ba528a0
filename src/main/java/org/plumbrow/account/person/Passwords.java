package org.plumbrow.account.person;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.stereotype.Component;

/**
 * Passwords: Argon2id with 19 MiB and two passes. Any characters, 12 to 128 of them; refused only if everybody knows it.
 */
@Component
public class Passwords {

    private static final int LEAST = 12;
    private static final int MOST = 128;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final int LANES = 1;
    private static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;

    private final Argon2PasswordEncoder encoder =
            new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, LANES, MEMORY_KIB, PASSES);
    private final String nobodysHash = encoder.encode("nobody has this password");
    private final Set<String> common = readCommon();

    public String hash(String password) {
        return encoder.encode(composed(password));
    }

    /** Takes as long without a hash as with one, so that the time tells nobody which addresses are known. */
    public boolean matches(String password, @Nullable String hash) {
        boolean fits = encoder.matches(composed(password), hash == null ? nobodysHash : hash);
        return fits && hash != null;
    }

    /** @return what is wrong with it as a new password, and what to do */
    public Optional<String> refusal(String password) {
        int length = password.codePointCount(0, password.length());
        if (length < LEAST) {
            return Optional.of("Write at least 12 characters; this has " + length + ". Four words in a row do well.");
        }
        if (length > MOST) {
            return Optional.of("Write at most 128 characters; this has " + length + ".");
        }
        if (common.contains(composed(password).toLowerCase(Locale.ROOT))) {
            return Optional.of("Many people use this password, so it is tried first. Choose another one.");
        }
        return Optional.empty();
    }

    private static String composed(String password) {
        return Normalizer.normalize(password, Normalizer.Form.NFC);
    }

    private static Set<String> readCommon() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                new ClassPathResource("account/common-passwords.txt").getInputStream(), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("# "))
                    .map(line -> composed(line).toLowerCase(Locale.ROOT))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
