package org.plumbrow.account.person;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The second factor: a code that a person's phone makes from a secret and the time, each used once; and ten recovery
 * codes on paper for the day the phone is gone.
 */
@Service
@Transactional
public class SecondFactors {

    private static final int RECOVERY_CODES = 10;
    private static final int RECOVERY_LENGTH = 10;
    private static final int STEPS_OFF = 1;

    private final JdbcClient jdbc;
    private final Clock clock;

    SecondFactors(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A secret to begin with; kept by nobody until {@link #begin}. */
    public String newSecret() {
        return OneTimeCode.base32(Tokens.randomBytes(OneTimeCode.SECRET_BYTES));
    }

    /** What the square code holds for a code app. */
    public static String keyAddress(String secret, String email) {
        String account = URLEncoder.encode(email, StandardCharsets.UTF_8).replace("+", "%20");
        return "otpauth://totp/Plumbrow:" + account + "?secret=" + secret + "&issuer=Plumbrow";
    }

    /** Begins with this secret if the code proves that the phone has it. @return the recovery codes, seen this once */
    public Optional<List<String>> begin(UUID personId, String secret, String code) {
        byte[] key = secretOf(secret);
        OptionalLong step = key == null ? OptionalLong.empty() : matchingStep(key, code);
        if (key == null || step.isEmpty()) {
            return Optional.empty();
        }
        jdbc.sql("""
                        update person set second_factor_secret = ?, second_factor_since = ?, second_factor_step = ?
                         where id = ?
                        """)
                .params(key, clock.instant().atOffset(ZoneOffset.UTC), step.getAsLong(), personId)
                .update();
        return Optional.of(newRecoveryCodes(personId));
    }

    private static byte @Nullable [] secretOf(String secret) {
        try {
            byte[] key = OneTimeCode.fromBase32(secret);
            return key.length == OneTimeCode.SECRET_BYTES ? key : null;
        } catch (IllegalArgumentException notOurs) {
            return null;
        }
    }

    /** New ones in place of all earlier ones. */
    public List<String> newRecoveryCodes(UUID personId) {
        jdbc.sql("delete from recovery_code where person_id = ?")
                .param(personId)
                .update();
        List<String> codes = Stream.generate(() -> Tokens.readable(RECOVERY_LENGTH))
                .limit(RECOVERY_CODES)
                .toList();
        for (String code : codes) {
            jdbc.sql("insert into recovery_code (person_id, code_hash) values (?, ?)")
                    .params(personId, Tokens.hash(code))
                    .update();
        }
        return codes.stream()
                .map(code -> code.substring(0, 5) + "-" + code.substring(5))
                .toList();
    }

    /** How a code fitted. */
    public enum Fit {
        NOT,
        CODE,
        RECOVERY_CODE
    }

    /** Whether the code fits; it then fits no second time. */
    public Fit use(UUID personId, String typed) {
        byte[] key = jdbc.sql("select second_factor_secret from person where id = ?")
                .param(personId)
                .query((row, number) -> Optional.ofNullable(row.getBytes(1)))
                .optional()
                .flatMap(found -> found)
                .orElse(null);
        if (key == null) {
            return Fit.NOT;
        }
        OptionalLong step = matchingStep(key, typed);
        if (step.isPresent()) {
            int used = jdbc.sql(
                            "update person set second_factor_step = :step where id = :id and second_factor_step < :step")
                    .param("step", step.getAsLong())
                    .param("id", personId)
                    .update();
            return used == 1 ? Fit.CODE : Fit.NOT;
        }
        int used = jdbc.sql(
                        "update recovery_code set used_at = ? where person_id = ? and code_hash = ? and used_at is null")
                .params(clock.instant().atOffset(ZoneOffset.UTC), personId, Tokens.hash(bare(typed)))
                .update();
        return used == 1 ? Fit.RECOVERY_CODE : Fit.NOT;
    }

    public void end(UUID personId) {
        jdbc.sql("update person set second_factor_secret = null, second_factor_since = null where id = ?")
                .param(personId)
                .update();
        jdbc.sql("delete from recovery_code where person_id = ?")
                .param(personId)
                .update();
    }

    public int recoveryCodesLeft(UUID personId) {
        return jdbc.sql("select count(*) from recovery_code where person_id = ? and used_at is null")
                .param(personId)
                .query(Integer.class)
                .single();
    }

    private OptionalLong matchingStep(byte[] key, String typed) {
        byte[] code = bare(typed).getBytes(StandardCharsets.UTF_8);
        long now = OneTimeCode.stepAt(clock.instant());
        for (long step = now - STEPS_OFF; step <= now + STEPS_OFF; step++) {
            if (MessageDigest.isEqual(OneTimeCode.at(key, step).getBytes(StandardCharsets.UTF_8), code)) {
                return OptionalLong.of(step);
            }
        }
        return OptionalLong.empty();
    }

    private static String bare(String typed) {
        return typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }
}
