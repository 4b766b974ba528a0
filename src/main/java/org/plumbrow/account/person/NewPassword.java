package org.plumbrow.account.person;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** A new password as typed twice, wherever one is chosen; the fields are called {@code password} and {@code again}. */
@Component
public class NewPassword {

    private final Passwords passwords;

    NewPassword(Passwords passwords) {
        this.passwords = passwords;
    }

    /** What is wrong with it. */
    public Optional<Refusal> check(@Nullable String password, @Nullable String again) {
        String typed = Objects.toString(password, "");
        Optional<Refusal> refused = passwords.refusal(typed).map(sentence -> new Refusal("password", sentence));
        if (refused.isEmpty() && !typed.equals(again)) {
            return Optional.of(new Refusal("again", "The two are not the same. Type the new password twice."));
        }
        return refused;
    }
}
