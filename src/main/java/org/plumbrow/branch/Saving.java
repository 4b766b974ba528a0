package org.plumbrow.branch;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.ConstraintSentences;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Refusal;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

/**
 * How a form of the settings is answered: made; or refused with 422 and every typed word kept; or, where somebody else
 * was faster, with 409 and theirs beside yours.
 */
@Component
public class Saving {

    private final ConstraintSentences constraints;

    Saving(ConstraintSentences constraints) {
        this.constraints = constraints;
    }

    /** The change itself: what is wrong with it, or nothing when it was made. */
    public interface Change {
        Optional<Refusal> make();
    }

    /**
     * What lies in the database when somebody else was faster.
     *
     * @param thing as the sentence's object: "this utility"
     * @param action the form's address
     */
    public record Theirs(String thing, String action, long version, List<Written> fields) {}

    /** @param again shows the form once more, with what was typed */
    public Answer of(BindingResult errors, HttpServletResponse response, Supplier<String> again) {
        return new Answer(errors, response, again);
    }

    /** One form that is being answered. */
    public final class Answer {

        private final BindingResult errors;
        private final HttpServletResponse response;
        private final Supplier<String> again;
        private String refusedAt = "";

        private Answer(BindingResult errors, HttpServletResponse response, Supplier<String> again) {
            this.errors = errors;
            this.response = response;
            this.again = again;
        }

        /** The field at which a refusal of the database belongs. */
        public Answer refusedAt(String field) {
            refusedAt = field;
            return this;
        }

        /** @param done what the person sees when the change was made */
        public String make(Change change, Supplier<String> done) {
            if (!errors.hasErrors()) {
                tryIt(change);
            }
            if (errors.hasErrors()) {
                response.setStatus(422);
                return again.get();
            }
            return done.get();
        }

        /** As {@link #make(Change, Supplier)} for a form with a version; {@code yours} is asked only when it converted. */
        public String make(
                Change change,
                Supplier<String> done,
                Model model,
                Supplier<List<Written>> yours,
                Supplier<Theirs> theirs) {
            try {
                return make(change, done);
            } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
                response.setStatus(409);
                Theirs now = theirs.get();
                return new Conflict(now.thing(), now.action(), now.version(), Written.beside(now.fields(), yours.get()))
                        .show(model);
            }
        }

        private void tryIt(Change change) {
            try {
                change.make().ifPresent(no -> no.putAt(errors));
            } catch (DataIntegrityViolationException refused) {
                constraints.refusal(refused, refusedAt).putAt(errors);
            }
        }
    }
}
