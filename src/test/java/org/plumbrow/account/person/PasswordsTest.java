package org.plumbrow.account.person;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PasswordsTest {

    private final Passwords passwords = new Passwords();

    @Test
    void twelveCharactersAreEnoughWhateverTheyAre() {
        assertThat(passwords.refusal("abcdefghijk"))
                .hasValueSatisfying(sentence -> assertThat(sentence)
                        .isEqualTo("Write at least 12 characters; this has 11. Four words in a row do well."));
        assertThat(passwords.refusal("zyxwvutsrqpo")).isEmpty();
        assertThat(passwords.refusal("🐄🐖🐓🐄🐖🐓🐄🐖🐓🐄🐖🐓")).isEmpty();
        assertThat(passwords.refusal("q".repeat(7) + " " + "w".repeat(120))).isEmpty();
        assertThat(passwords.refusal("q".repeat(8) + " " + "w".repeat(120))).isPresent();
    }

    @Test
    void aPasswordThatEverybodyKnowsIsRefusedInAnyCase() {
        assertThat(passwords.refusal("correcthorsebatterystaple")).isPresent();
        assertThat(passwords.refusal("PASSWORD1234")).isPresent();
        assertThat(passwords.refusal("qwertyuiop12")).isPresent();
    }

    @Test
    void allCharactersCountEvenThoseBehindTheSeventySecond() {
        String first = "m".repeat(80) + "a";
        String other = "m".repeat(80) + "b";
        assertThat(passwords.matches(first, passwords.hash(first))).isTrue();
        assertThat(passwords.matches(other, passwords.hash(first))).isFalse();
    }

    @Test
    void theSameLetterTypedInTwoWaysIsTheSame() {
        assertThat(passwords.matches("Gru\u0308nes Scheunentor", passwords.hash("Gr\u00fcnes Scheunentor")))
                .isTrue();
    }

    @Test
    void theHashIsArgon2idAndEachHasItsOwnSalt() {
        String hash = passwords.hash("grommet lantern quarry fig");
        assertThat(hash).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(passwords.hash("grommet lantern quarry fig")).isNotEqualTo(hash);
    }

    @Test
    void nobodysPasswordOpensNothing() {
        assertThat(passwords.matches("nobody has this password", null)).isFalse();
    }

    @Test
    void noHashTakesAsLongAsAHash() {
        String hash = passwords.hash("grommet lantern quarry fig");
        long with = fastest(() -> passwords.matches("something else entirely", hash));
        long without = fastest(() -> passwords.matches("something else entirely", null));
        assertThat(without).isGreaterThan(with / 2);
    }

    private static long fastest(Runnable work) {
        long best = Long.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            long start = System.nanoTime();
            work.run();
            best = Math.min(best, System.nanoTime() - start);
        }
        return best;
    }
}
