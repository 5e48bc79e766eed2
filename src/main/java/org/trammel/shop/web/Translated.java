package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.dao.PessimisticLockingFailureException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindException;
import org.springframework.validation.FieldError;
import org.springframework.web.ErrorResponse;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.multipart.support.MissingServletRequestPartException;
import org.springframework.web.servlet.NoHandlerFoundException;
import org.springframework.web.servlet.resource.NoResourceFoundException;
import org.trammel.shop.records.Refusal;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Failures that the framework or the database reports, said as refusals of three parts. */
@Component
class Translated {

    private static final String NOTHING = "Nothing was recorded.";

    private final ConstraintWords constraints;

    Translated(ConstraintWords constraints) {
        this.constraints = constraints;
    }

    /** A refusal with the status and the headers it is answered with. */
    record Answer(Refusal refusal, HttpStatusCode status, Map<String, String> headers) {

        Answer(Refusal refusal) {
            this(refusal, HttpStatusCode.valueOf(refusal.kind().status()), Map.of());
        }

        Answer(Refusal refusal, HttpStatusCode status) {
            this(refusal, status, Map.of());
        }
    }

    /** The failure in our words; empty if we do not know it. */
    Optional<Answer> of(Exception failure, HttpServletRequest request) {
        Throwable cause = failure;
        for (int depth = 0; cause != null && depth < 8; depth++, cause = cause.getCause()) {
            Answer answer = known(cause, request);
            if (answer != null) {
                return Optional.of(asked(answer, request));
            }
        }
        return Optional.empty();
    }

    /** Who only asked for a page or an answer is not told that nothing was recorded. */
    private static Answer asked(Answer answer, HttpServletRequest request) {
        boolean reading =
                request.getMethod().equals("GET") || request.getMethod().equals("HEAD");
        return reading && answer.refusal().what().equals(NOTHING)
                ? new Answer(answer.refusal().saying("Nothing was opened."), answer.status(), answer.headers())
                : answer;
    }

    private @Nullable Answer known(Throwable failure, HttpServletRequest request) {
        if (failure instanceof Refusal refusal) {
            return new Answer(refusal);
        }
        if (failure instanceof DataIntegrityViolationException broken) {
            return constraints.of(broken).map(Answer::new).orElse(null);
        }
        if (failure instanceof OptimisticLockingFailureException
                || failure instanceof PessimisticLockingFailureException) {
            return new Answer(stale());
        }
        Answer input = input(failure);
        return input != null ? input : unknownPlace(failure, request);
    }

    private static @Nullable Answer input(Throwable failure) {
        if (failure instanceof BindException invalid && invalid.getFieldError() != null) {
            FieldError error = invalid.getFieldError();
            return new Answer(unreadable(error.getField(), why(error)));
        }
        if (failure instanceof HttpMessageNotReadableException && !tooLarge(failure)) {
            return new Answer(unreadableBody(failure.getCause()), HttpStatus.BAD_REQUEST);
        }
        if (failure instanceof ReadableTwice.TooLarge) {
            return new Answer(
                    Refusal.input(
                            "body",
                            NOTHING,
                            "The body has more than " + ReadableTwice.MOST_BYTES + " bytes; no act needs so many.",
                            "Send less at once; send pictures and files as files."),
                    HttpStatus.CONTENT_TOO_LARGE);
        }
        if (failure instanceof InvalidParameterException) {
            return new Answer(
                    unreadable("address", "The address or the form holds bytes that are no text in UTF-8."),
                    HttpStatus.BAD_REQUEST);
        }
        if (failure instanceof MissingServletRequestParameterException missing) {
            return new Answer(unreadable(missing.getParameterName(), missing.getParameterName() + " is missing."));
        }
        if (failure instanceof MissingServletRequestPartException missing) {
            return new Answer(Refusal.input(
                    missing.getRequestPartName(),
                    NOTHING,
                    "No file came with it.",
                    "Take the photograph or choose the file, then send it."));
        }
        if (failure instanceof TypeMismatchException mismatch) {
            String name = failure instanceof MethodArgumentTypeMismatchException argument
                    ? argument.getName()
                    : String.valueOf(mismatch.getPropertyName());
            return new Answer(unreadable(name, why(mismatch.getValue(), failure)));
        }
        if (failure instanceof MultipartException && !(failure instanceof MaxUploadSizeExceededException)) {
            return new Answer(unreadable("file", "No file came, or only a piece of one."), HttpStatus.BAD_REQUEST);
        }
        if (failure instanceof MaxUploadSizeExceededException) {
            return new Answer(
                    Refusal.input(
                            "file",
                            "The file was not kept.",
                            "It is larger than is taken here: 20 MB of a picture or a certificate, 200 MB of a logger's record.",
                            "Send a smaller one; of a record the time of the run alone."),
                    HttpStatus.CONTENT_TOO_LARGE);
        }
        return null;
    }

    /** Whoever reads the body wraps what stopped them; what stopped them is answered. */
    private static boolean tooLarge(Throwable failure) {
        Throwable cause = failure;
        for (int depth = 0; cause != null && depth < 8; depth++, cause = cause.getCause()) {
            if (cause instanceof ReadableTwice.TooLarge) {
                return true;
            }
        }
        return false;
    }

    private static @Nullable Answer unknownPlace(Throwable failure, HttpServletRequest request) {
        if (failure instanceof NoResourceFoundException || failure instanceof NoHandlerFoundException) {
            return new Answer(nowhere(request.getRequestURI()));
        }
        if (failure instanceof HttpRequestMethodNotSupportedException method) {
            String allowed = method.getSupportedHttpMethods() == null
                    ? ""
                    : method.getSupportedHttpMethods().stream()
                            .map(HttpMethod::name)
                            .sorted()
                            .collect(Collectors.joining(", "));
            return new Answer(
                    Refusal.state(
                            NOTHING,
                            "This place does not answer " + method.getMethod() + ".",
                            allowed.isEmpty() ? "Open the sheet again." : "Use " + allowed + "."),
                    HttpStatus.METHOD_NOT_ALLOWED,
                    allowed.isEmpty() ? Map.of() : Map.of(HttpHeaders.ALLOW, allowed));
        }
        if (failure instanceof ErrorResponse other && other.getStatusCode().is4xxClientError()) {
            return new Answer(
                    Refusal.state(
                            NOTHING,
                            "The request is not one this service understands ("
                                    + other.getStatusCode().value() + ").",
                            "Open the sheet again, or read the description of the API at /api/docs."),
                    other.getStatusCode());
        }
        return null;
    }

    /** Somebody else was faster. */
    static Refusal stale() {
        return Refusal.stale(
                NOTHING,
                "Somebody else changed the same thing a moment ago, so this sheet is out of date.",
                "Look at the sheet as it is now and repeat what is still needed.");
    }

    /** There is no such page. */
    static Refusal nowhere(String path) {
        return Refusal.missing(
                "There is no such sheet.",
                "Nothing here is called " + cut(path) + ".",
                "Open a sheet from the title block, or scan the tag.");
    }

    /** Something we did not foresee; the number finds it in the log of the service. */
    static Refusal incident(String number) {
        return Refusal.state(
                "This did not work.",
                "Something went wrong in the service, and what was sent was not recorded. Incident " + number + ".",
                "Try again. If it happens again, write it on the paper traveller and give the number to whoever keeps"
                        + " the service.");
    }

    private static Refusal unreadableBody(@Nullable Throwable failure) {
        String property = failure instanceof JacksonException read ? path(read) : "";
        if (property.isEmpty()) {
            return unreadable("body", "The body is not the JSON that is asked for here.");
        }
        if (failure instanceof UnrecognizedPropertyException unknown) {
            return unreadable(
                    property,
                    "Nothing is called " + cut(property) + " here. The names are "
                            + unknown.getKnownPropertyIds().stream()
                                    .map(String::valueOf)
                                    .sorted()
                                    .collect(Collectors.joining(", "))
                            + ".");
        }
        return unreadable(property, property + " is missing or cannot be read.");
    }

    /** Where in the body; of what is no JSON at all, which property it stands at. */
    private static String path(JacksonException failure) {
        if (failure instanceof StreamReadException && failure.processor() instanceof JsonParser parser) {
            return path(parser.streamReadContext());
        }
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : failure.getPath()) {
            if (step.getPropertyName() != null) {
                path.append(path.isEmpty() ? "" : ".").append(step.getPropertyName());
            } else if (step.getIndex() >= 0) {
                path.append('[').append(step.getIndex()).append(']');
            }
        }
        return path.toString();
    }

    private static String path(TokenStreamContext context) {
        TokenStreamContext parent = context.getParent();
        String before = parent == null ? "" : path(parent);
        if (context.inObject() && context.currentName() != null) {
            return before + (before.isEmpty() ? "" : ".") + context.currentName();
        }
        return context.inArray() && context.hasCurrentIndex() ? before + "[" + context.getCurrentIndex() + "]" : before;
    }

    private static Refusal unreadable(String field, String why) {
        return Refusal.input(field, NOTHING, why, "Correct it and send it again.");
    }

    private static String why(FieldError error) {
        if (error.isBindingFailure()) {
            Throwable cause =
                    error.contains(TypeMismatchException.class) ? error.unwrap(TypeMismatchException.class) : null;
            return why(error.getRejectedValue(), cause);
        }
        return error.getField() + " " + error.getDefaultMessage() + ".";
    }

    private static String why(@Nullable Object value, @Nullable Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof TypedValues.Unreadable unreadable) {
                return "“" + cut(value) + "”" + unreadable.getMessage();
            }
        }
        return "“" + cut(value) + "” is not what is asked for here.";
    }

    private static String cut(@Nullable Object value) {
        String text = String.valueOf(value);
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }
}
