package org.plumbrow.account.own;

import java.util.List;
import java.util.Optional;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.SecondFactors;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.account.person.Tries;
import org.plumbrow.account.person.Tries.Subject;
import org.plumbrow.web.Access;
import org.plumbrow.web.NotSignedIn;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Role;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** A person begins, renews or ends their own second factor. Owners and managers may not be without one. */
@Service
@Transactional
class OwnFactor {

    private static final String WRONG_CODE =
            "This code does not fit. Wait for the next one on your phone and type its six figures.";

    private final Access access;
    private final Credentials credentials;
    private final SecondFactors factors;
    private final Tries tries;
    private final SecurityLog log;

    OwnFactor(Access access, Credentials credentials, SecondFactors factors, Tries tries, SecurityLog log) {
        this.access = access;
        this.credentials = credentials;
        this.factors = factors;
        this.tries = tries;
        this.log = log;
    }

    /** What the page says about it. @param demanded owners and managers must have one */
    record State(boolean on, boolean demanded, int recoveryCodesLeft) {}

    /** Either the recovery codes, or what is wrong. */
    record Outcome(List<String> recoveryCodes, Optional<Refusal> refusal) {
        static Outcome no(String sentence) {
            return new Outcome(List.of(), Optional.of(new Refusal("code", sentence)));
        }
    }

    State state() {
        Proof person = person();
        return new State(person.hasSecondFactor(), isDemanded(), factors.recoveryCodesLeft(person.id()));
    }

    String newSecret() {
        return factors.newSecret();
    }

    Outcome begin(FactorForm form) {
        Proof person = person();
        if (person.hasSecondFactor()) {
            return Outcome.no("You have a second factor already. End it first to begin another one.");
        }
        return factors.begin(person.id(), form.givenSecret(), form.typedCode())
                .map(codes -> {
                    log.write("second-factor-begun", person.actor(), "Began a second factor.");
                    return new Outcome(codes, Optional.empty());
                })
                .orElseGet(() -> Outcome.no(WRONG_CODE));
    }

    Outcome renewRecoveryCodes(FactorForm form) {
        Proof person = person();
        Optional<String> refused = prove(person, form);
        if (refused.isPresent()) {
            return Outcome.no(refused.get());
        }
        log.write("recovery-codes-renewed", person.actor(), "Made ten new recovery codes.");
        return new Outcome(factors.newRecoveryCodes(person.id()), Optional.empty());
    }

    Outcome end(FactorForm form) {
        Proof person = person();
        if (isDemanded()) {
            return Outcome.no("Firm owners and branch managers need a second factor; it cannot be ended.");
        }
        Optional<String> refused = prove(person, form);
        if (refused.isPresent()) {
            return Outcome.no(refused.get());
        }
        factors.end(person.id());
        log.write("second-factor-ended", person.actor(), "Ended the second factor.");
        return new Outcome(List.of(), Optional.empty());
    }

    private Optional<String> prove(Proof person, FactorForm form) {
        Subject address = Subject.address(person.email());
        if (tries.take(address).isPresent()) {
            return Optional.of("Too many tries did not fit. Wait some minutes and try again.");
        }
        if (factors.use(person.id(), form.typedCode()) == SecondFactors.Fit.NOT) {
            return Optional.of(WRONG_CODE);
        }
        tries.forgive(address);
        return Optional.empty();
    }

    private boolean isDemanded() {
        return access.visitor().branches().stream()
                .anyMatch(branch ->
                        branch.roles().contains(Role.OWNER) || branch.roles().contains(Role.MANAGER));
    }

    private Proof person() {
        return credentials.of(access.visitor().personId()).orElseThrow(NotSignedIn::new);
    }
}
