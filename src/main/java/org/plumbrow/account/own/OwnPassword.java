package org.plumbrow.account.own;

import java.util.Objects;
import java.util.Optional;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.NewPassword;
import org.plumbrow.account.person.Passwords;
import org.plumbrow.account.person.Tries;
import org.plumbrow.account.person.Tries.Subject;
import org.plumbrow.web.Access;
import org.plumbrow.web.NotSignedIn;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** A person changes their own password: whatever else was signed in with the old one ends. */
@Service
class OwnPassword {

    private final Access access;
    private final Credentials credentials;
    private final Passwords passwords;
    private final NewPassword newPassword;
    private final Tries tries;
    private final Endings endings;

    OwnPassword(
            Access access,
            Credentials credentials,
            Passwords passwords,
            NewPassword newPassword,
            Tries tries,
            Endings endings) {
        this.access = access;
        this.credentials = credentials;
        this.passwords = passwords;
        this.newPassword = newPassword;
        this.tries = tries;
        this.endings = endings;
    }

    /** @return what is wrong; empty when the new password holds */
    @Transactional
    Optional<Refusal> change(PasswordForm form, String sessionId) {
        Proof person = credentials.of(access.visitor().personId()).orElseThrow(NotSignedIn::new);
        Subject address = Subject.address(person.email());
        if (tries.take(address).isPresent()) {
            return Optional.of(new Refusal("current", "Too many tries did not fit. Wait some minutes and try again."));
        }
        if (!passwords.matches(Objects.toString(form.current(), ""), person.passwordHash())) {
            return Optional.of(new Refusal("current", "This is not your present password. Look at it once more."));
        }
        tries.forgive(address);
        Optional<Refusal> refused = newPassword.check(form.password(), form.again());
        if (refused.isEmpty()) {
            credentials.change(person.id(), Objects.toString(form.password(), ""));
            endings.ofAllOthers(person.actor(), sessionId);
        }
        return refused;
    }
}
