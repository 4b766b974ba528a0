package org.plumbrow.account.door;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.Passwords;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.account.person.Tries;
import org.plumbrow.account.person.Tries.Subject;
import org.plumbrow.web.Actor;
import org.springframework.stereotype.Service;

/** Is it them? An unknown address is answered like a wrong password, word for word and as slowly. */
@Service
class SignInDesk {

    static final String WRONG = "Address and password do not belong together. Look at both once more.";

    private final Credentials credentials;
    private final Passwords passwords;
    private final Tries tries;
    private final SecurityLog log;
    private final Clock clock;

    SignInDesk(Credentials credentials, Passwords passwords, Tries tries, SecurityLog log, Clock clock) {
        this.credentials = credentials;
        this.passwords = passwords;
        this.tries = tries;
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
            return missed(address, found);
        }
        tries.forgive(address);
        tries.giveBack(from);
        return new Known(found.get());
    }

    private Answer missed(Subject address, Optional<Proof> found) {
        Actor who = found.map(Proof::actor).orElse(Actor.named("unknown address"));
        Optional<Instant> lockedNow = tries.lockedUntil(address);
        if (lockedNow.isPresent()) {
            log.write(
                    "locked",
                    who,
                    "Too many wrong passwords: the address is locked for "
                            + howLong(Duration.between(clock.instant(), lockedNow.get())) + ".");
            return new No(lockedWords(lockedNow.get()));
        }
        log.write("missed", who, "A sign-in with a wrong password.");
        return new No(WRONG);
    }

    String lockedWords(Instant until) {
        return "Too many tries did not fit. Try again in " + howLong(Duration.between(clock.instant(), until))
                + ", or have a link sent to choose a new password.";
    }

    static String howLong(Duration wait) {
        long minutes = Math.max(1, (wait.toSeconds() + 59) / 60);
        return minutes == 1 ? "1 minute" : minutes + " minutes";
    }
}
