package org.plumbrow.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.postgresql.util.PSQLException;
import org.postgresql.util.ServerErrorMessage;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;

/**
 * What a person reads when the database refuses a change: the sentence under {@code constraint.<name>} in the messages
 * of the room that owns the constraint. The name comes from the server's error itself, never from its wording.
 * <p>A refused transaction is over: ask outside of it, after the service has thrown.
 */
@Component
public class ConstraintSentences {

    private final MessageSource messages;

    ConstraintSentences(MessageSource messages) {
        this.messages = messages;
    }

    /** The constraint that was broken; empty when the server named none. */
    public static Optional<String> constraint(Throwable refused) {
        for (Throwable cause = refused; cause != null; cause = cause.getCause()) {
            if (cause instanceof PSQLException server) {
                return Optional.ofNullable(server.getServerErrorMessage()).map(ServerErrorMessage::getConstraint);
            }
        }
        return Optional.empty();
    }

    /** @param facts what the sentence names as {0}, {1}… */
    public Optional<String> sentence(DataIntegrityViolationException refused, Object... facts) {
        return constraint(refused).map(name -> text(name, facts));
    }

    /**
     * The refusal for the form's field ("" for the form as a whole).
     *
     * @throws DataIntegrityViolationException the same again, if the constraint has no sentence: then it is our fault
     */
    public Refusal refusal(DataIntegrityViolationException refused, String field, Object... facts) {
        return sentence(refused, facts)
                .map(sentence -> new Refusal(field, sentence))
                .orElseThrow(() -> refused);
    }

    private @Nullable String text(String constraint, Object... facts) {
        return messages.getMessage("constraint." + constraint, facts, null, LocaleContextHolder.getLocale());
    }
}
