package org.plumbrow.account.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class OneTimeCodeTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/account/rfc6238.csv", useHeadersInDisplayName = true)
    void agreesWithTheStandardsOwnTable(long secondsSince1970, String code) {
        byte[] secret = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);
        long step = OneTimeCode.stepAt(Instant.ofEpochSecond(secondsSince1970));
        assertThat(OneTimeCode.at(secret, step, 8)).isEqualTo(code);
        assertThat(OneTimeCode.at(secret, step)).isEqualTo(code.substring(2));
    }

    /** RFC 4648, section 10, without the padding. */
    @ParameterizedTest
    @CsvSource({"f,MY", "fo,MZXQ", "foo,MZXW6", "foob,MZXW6YQ", "fooba,MZXW6YTB", "foobar,MZXW6YTBOI"})
    void writesAndReadsBase32AsTheStandardDoes(String plain, String base32) {
        byte[] bytes = plain.getBytes(StandardCharsets.US_ASCII);
        assertThat(OneTimeCode.base32(bytes)).isEqualTo(base32);
        assertThat(OneTimeCode.fromBase32(base32)).isEqualTo(bytes);
    }

    @Test
    void refusesWhatIsNoBase32() {
        assertThatThrownBy(() -> OneTimeCode.fromBase32("MZ1W")).isInstanceOf(IllegalArgumentException.class);
    }
}
