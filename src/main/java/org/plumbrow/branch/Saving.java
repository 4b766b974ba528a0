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
 * How a form of the settings is answered: made, or refused with 422 and every typed word kept, or with 409 and theirs
 * beside yours.
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

    /**
     * Makes the change if the form holds no error.
     *
     * @param field at which the database's own refusal belongs; "" for the form as a whole
     * @return true when the change was made; else the errors hold sentences and the answer is 422
     */
    public boolean made(BindingResult errors, HttpServletResponse response, String field, Change change) {
        if (!errors.hasErrors()) {
            try {
                change.make().ifPresent(no -> no.putAt(errors));
            } catch (DataIntegrityViolationException refused) {
                constraints.refusal(refused, field).putAt(errors);
            }
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        return !errors.hasErrors();
    }

    /** Shows theirs beside yours, with 409; for a {@code catch} of {@link EditedMeanwhile} or of the optimistic lock. */
    public String conflict(Theirs theirs, List<Written> yours, Model model, HttpServletResponse response) {
        response.setStatus(409);
        return new Conflict(theirs.thing(), theirs.action(), theirs.version(), Written.beside(theirs.fields(), yours))
                .show(model);
    }

    /**
     * As {@link #made}, and the whole answer of a form that carries a version.
     *
     * @param page the view that shows the form again
     * @param yours the form's own fields, read only when they converted
     * @param done where the person goes when the change was made
     */
    public String answer(Form form, String field, Change change) {
        try {
            return made(form.errors, form.response, field, change) ? form.done : form.page;
        } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
            return conflict(form.theirs.get(), form.yours.get(), form.model, form.response);
        }
    }

    /**
     * Everything that answering needs besides the change.
     *
     * @param page the view that shows the form again
     * @param done where the person goes when the change was made
     */
    public record Form(
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            String page,
            String done,
            Supplier<List<Written>> yours,
            Supplier<Theirs> theirs) {}
}
