package org.plumbrow.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.security.SecureRandom;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.InvalidPropertyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.ui.Model;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.servlet.NoHandlerFoundException;
import org.springframework.web.servlet.resource.NoResourceFoundException;

/** What a person reads when something is not there, not theirs, newer than they saw, or went wrong on our side. */
@ControllerAdvice
class ErrorPages {

    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
    private static final String REFERENCE_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private final LayoutModel layout;
    private final SecureRandom random = new SecureRandom();

    ErrorPages(LayoutModel layout) {
        this.layout = layout;
    }

    @ExceptionHandler({
        NotFound.class,
        NoHandlerFoundException.class,
        NoResourceFoundException.class,
        MethodArgumentTypeMismatchException.class
    })
    String notThere(HttpServletRequest request, HttpServletResponse response, Model model) {
        return page("web/not-found", HttpStatus.NOT_FOUND, request, response, model);
    }

    @ExceptionHandler(NotForYourRole.class)
    String notForYou(NotForYourRole refused, HttpServletRequest request, HttpServletResponse response, Model model) {
        model.addAttribute("sentence", refused.sentence());
        return page("web/not-for-your-role", HttpStatus.FORBIDDEN, request, response, model);
    }

    /** A page that can show theirs beside yours catches this itself; here only the sentence is left. */
    @ExceptionHandler({EditedMeanwhile.class, OptimisticLockingFailureException.class})
    String newer(HttpServletRequest request, HttpServletResponse response, Model model) {
        return page("web/edited-meanwhile", HttpStatus.CONFLICT, request, response, model);
    }

    @ExceptionHandler(LinkEnded.class)
    String linkEnded(HttpServletRequest request, HttpServletResponse response, Model model) {
        return page("web/link-ended", HttpStatus.NOT_FOUND, request, response, model);
    }

    @ExceptionHandler(TooManyVisits.class)
    String tooManyVisits(HttpServletRequest request, HttpServletResponse response, Model model) {
        response.addHeader(HttpHeaders.RETRY_AFTER, "60");
        return page("web/too-many-visits", HttpStatus.TOO_MANY_REQUESTS, request, response, model);
    }

    @ExceptionHandler(MaxUploadSizeExceededException.class)
    String tooLarge(HttpServletRequest request, HttpServletResponse response, Model model) {
        return page("web/too-large", HttpStatus.CONTENT_TOO_LARGE, request, response, model);
    }

    /** A field's name that no form of ours has: {@code rows[x]}, or a row beyond all that fit. */
    @ExceptionHandler(InvalidPropertyException.class)
    String notOurForm(HttpServletRequest request, HttpServletResponse response, Model model) {
        return page("web/not-understood", HttpStatus.BAD_REQUEST, request, response, model);
    }

    @ExceptionHandler(NotSignedIn.class)
    void notSignedIn(NotSignedIn nobody) {
        throw new AccessDeniedException("nobody is signed in", nobody);
    }

    @ExceptionHandler(Exception.class)
    String ours(Exception fault, HttpServletRequest request, HttpServletResponse response, Model model)
            throws Exception {
        if (fault instanceof AccessDeniedException) {
            throw fault;
        }
        if (fault instanceof ErrorResponse known && known.getStatusCode().is4xxClientError()) {
            return page(
                    "web/not-understood",
                    HttpStatus.valueOf(known.getStatusCode().value()),
                    request,
                    response,
                    model);
        }
        String reference = reference();
        LOG.error("{}: {} {}", reference, request.getMethod(), MaskedPath.of(request.getRequestURI()), fault);
        model.addAttribute("reference", reference);
        return page("web/went-wrong", HttpStatus.INTERNAL_SERVER_ERROR, request, response, model);
    }

    private String page(
            String view, HttpStatus status, HttpServletRequest request, HttpServletResponse response, Model model) {
        response.setStatus(status.value());
        model.addAttribute("head", layout.head(request));
        return view;
    }

    private String reference() {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < 4; i++) {
            letters.append(REFERENCE_LETTERS.charAt(random.nextInt(REFERENCE_LETTERS.length())));
        }
        return letters.toString();
    }
}
