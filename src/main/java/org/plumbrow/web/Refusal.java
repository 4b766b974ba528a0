package org.plumbrow.web;

import org.springframework.validation.Errors;

/**
 * What a person asked for cannot be done: a value, not an exception.
 *
 * @param field the form's field it concerns; empty for the form as a whole
 * @param sentence what is wrong and what to do
 */
public record Refusal(String field, String sentence) {

    public static Refusal ofForm(String sentence) {
        return new Refusal("", sentence);
    }

    /** Puts the sentence at its field. */
    public void putAt(Errors errors) {
        if (field.isEmpty()) {
            errors.reject("refused", sentence);
        } else {
            errors.rejectValue(field, "refused", sentence);
        }
    }
}
