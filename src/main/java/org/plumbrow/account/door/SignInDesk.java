package org.plumbrow.account.door;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.Passwords;
import org.plumbrow.account.person.SecondFactors;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.account.person.Tries;
import org.plumbrow.account.person.Tries.Subject;
import org.plumbrow.web.Actor;
import org.springframework.stereotype.Service;

/** Is it them? An unknown address is answered like a wrong password, word for word and as slowly. */
@Service
class SignInDesk {

    static final String WRONG = "Address and password do not belong together. Look at both once more.";

    static final String WRONG_CODE =
            "This code does not fit. Wait for the next one on your phone and type its six figures.";

    private final Credentials credentials;
    private final Passwords passwords;
    private final Tries tries;
    private final SecondFactors factors;
    private final SecurityLog log;
    private final Clock clock;

    SignInDesk(
            Credentials credentials,
            Passwords passwords,
            Tries tries,
            SecondFactors factors,
            SecurityLog log,
            Clock clock) {
        this.credentials = credentials;
        this.passwords = passwords;
        this.tries = tries;
        this.factors = factors;
        this.log = log;
        this.clock = clock;
    }

    sealed interface Answer {}

    /** It is this person. */
    record Known(Proof person) implements Answer {}

    /** It is not, or not now. */
    record No(String sentence) implements Answer {}

    Answer check(String email, String password, String source) {
        Subject address = Subject.address(Credentials.addressOf(email));
        Subject from = Subject.source(source);
        Optional<Instant> locked = tries.take(from).or(() -> tries.take(address));
        if (locked.isPresent()) {
            return new No(lockedWords(locked.get()));
        }
        Optional<Proof> found = credentials.ofAddress(email);
        boolean fits =
                passwords.matches(password, found.map(Proof::passwordHash).orElse(null));
        if (found.isEmpty() || !fits) {
            Actor who = found.map(Proof::actor).orElse(Actor.named("unknown address"));
            return new No(
                    missed(address, who, "A sign-in with a wrong password.").orElse(WRONG));
        }
        tries.forgive(address);
        tries.giveBack(from);
        return new Known(found.get());
    }

    /** Writes the miss down. @return the lock it led to, in words */
    private Optional<String> missed(Subject address, Actor who, String what) {
        Optional<Instant> lockedNow = tries.lockedUntil(address);
        if (lockedNow.isPresent()) {
            Duration wait = Duration.between(clock.instant(), lockedNow.get());
            log.write("locked", who, what + " The address is locked for " + howLong(wait) + ".");
        } else {
            log.write("missed", who, what);
        }
        return lockedNow.map(this::lockedWords);
    }

    /** @return why the code does not let the person in; empty if it does. Misses count as those of the password. */
    Optional<String> checkCode(Proof person, String code, String source) {
        Subject address = Subject.address(person.email());
        Subject from = Subject.source(source);
        Optional<Instant> locked = tries.take(from).or(() -> tries.take(address));
        if (locked.isPresent()) {
            return Optional.of(lockedWords(locked.get()));
        }
        SecondFactors.Fit fit = factors.use(person.id(), code);
        if (fit == SecondFactors.Fit.NOT) {
            return missed(address, person.actor(), "A sign-in with a wrong code.")
                    .or(() -> Optional.of(WRONG_CODE));
        }
        tries.forgive(address);
        tries.giveBack(from);
        if (fit == SecondFactors.Fit.RECOVERY_CODE) {
            log.write(
                    "recovery-code-used",
                    person.actor(),
                    "Used a recovery code; " + factors.recoveryCodesLeft(person.id()) + " are left.");
        }
        return Optional.empty();
    }

    /** @return the recovery codes; empty if the code does not fit the secret */
    Optional<List<String>> beginSecondFactor(Proof person, String secret, String code) {
        Optional<List<String>> recovery = factors.begin(person.id(), secret, code);
        recovery.ifPresent(codes -> log.write("second-factor-begun", person.actor(), "Began a second factor."));
        return recovery;
    }

    private String lockedWords(Instant until) {
        return "Too many tries did not fit. Try again in " + howLong(Duration.between(clock.instant(), until))
                + ", or have a link sent to choose a new password.";
    }

    static String howLong(Duration wait) {
        long minutes = Math.max(1, (wait.toSeconds() + 59) / 60);
        return minutes == 1 ? "1 minute" : minutes + " minutes";
    }
}
