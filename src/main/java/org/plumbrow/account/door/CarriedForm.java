package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * A form that was sent after its session had ended: where to, and what was typed. It travels through the sign-in page
 * and comes back unsaved; files do not, nor does anything secret.
 */
record CarriedForm(String address, List<Field> fields) {

    private static final int MOST_CHARACTERS = 500_000;
    private static final Pattern SECRET = Pattern.compile("(?i).*(password|secret|_csrf|\\bcode\\b).*");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** One field, once for each of its values. */
    record Field(String name, String value) {

        /** "outageMinutes" → "Outage minutes": what a person may know it by. */
        public String words() {
            String spaced = name.replaceAll("([a-z0-9])([A-Z])", "$1 $2")
                    .replaceAll("[\\[\\]._-]+", " ")
                    .strip();
            return spaced.isEmpty()
                    ? name
                    : spaced.substring(0, 1).toUpperCase(Locale.ROOT)
                            + spaced.substring(1).toLowerCase(Locale.ROOT);
        }
    }

    /** What was typed: without the empty fields and those that only the form itself knows. */
    public List<Field> typed() {
        return fields.stream()
                .filter(field -> !field.value.isBlank() && !"version".equals(field.name) && !field.name.startsWith("_"))
                .toList();
    }

    /** The form of this request, if it can be carried and came from a page of ours. */
    static Optional<CarriedForm> of(HttpServletRequest request) {
        String address = LocalAddress.of(request);
        String type = request.getContentType();
        boolean form = type != null
                && (type.startsWith("application/x-www-form-urlencoded") || type.startsWith("multipart/form-data"));
        boolean ownDoor = address.startsWith("/sign-") || address.startsWith("/first-run");
        if (!"POST".equals(request.getMethod()) || !form || ownDoor || !LocalAddress.isOurs(address)) {
            return Optional.empty();
        }
        List<Field> fields = new ArrayList<>();
        request.getParameterMap().forEach((name, values) -> {
            if (!SECRET.matcher(name).matches() && !inQuery(request, name)) {
                for (String value : values) {
                    fields.add(new Field(name, value));
                }
            }
        });
        int characters = fields.stream().mapToInt(field -> field.value.length()).sum();
        return characters > MOST_CHARACTERS ? Optional.empty() : Optional.of(new CarriedForm(address, fields));
    }

    private static boolean inQuery(HttpServletRequest request, String name) {
        String query = request.getQueryString();
        return query != null && ("&" + query).contains("&" + name + "=");
    }

    String packed() {
        return Base64.getUrlEncoder()
                .encodeToString(JSON.writeValueAsString(this).getBytes(StandardCharsets.UTF_8));
    }

    /** Empty if there is none, or if it was made by somebody else. */
    static Optional<CarriedForm> unpack(@Nullable String packed) {
        if (packed == null || packed.isBlank()) {
            return Optional.empty();
        }
        try {
            byte[] json = Base64.getUrlDecoder().decode(packed);
            return Optional.of(JSON.readValue(json, CarriedForm.class))
                    .filter(form -> LocalAddress.isOurs(form.address));
        } catch (IllegalArgumentException | JacksonException notOurs) {
            return Optional.empty();
        }
    }
}
