package org.plumbrow.project.list;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Stage;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * The state of the list as its address says it; what is not understood is as if it were not there.
 *
 * @param q words to find
 * @param show in the address {@code under-way}, {@code commissioned}, {@code on-hold}, {@code called-off}, {@code all}
 * @param stage {@code new} or a stage in lower case
 * @param manager {@code me}, {@code nobody} or a person's id
 * @param late {@code yes} or {@code no}
 */
record ListFilter(
        @Nullable String q,
        @Nullable String show,
        @Nullable String stage,
        @Nullable String manager,
        @Nullable String crew,
        @Nullable String utility,
        @Nullable String late,
        @Nullable String sort,
        @Nullable String page) {

    private static final int LONGEST_SEARCH = 100;

    public String words() {
        String text = q == null ? "" : q.strip();
        return text.length() > LONGEST_SEARCH ? text.substring(0, LONGEST_SEARCH) : text;
    }

    /** Whoever looks for words or for the last stage looks through all; else what is under way. */
    public Show shown() {
        return Show.of(show).orElseGet(() -> {
            if (!words().isEmpty()) {
                return Show.ALL;
            }
            return stageOrder().filter(order -> order == Stage.values().length).isPresent()
                    ? Show.COMMISSIONED
                    : Show.UNDER_WAY;
        });
    }

    public Order order() {
        return Order.of(sort);
    }

    /** 0 for new, 7 for commissioned. */
    public Optional<Integer> stageOrder() {
        if ("new".equals(stage)) {
            return Optional.of(0);
        }
        return Arrays.stream(Stage.values())
                .filter(known -> known.name().toLowerCase(Locale.ROOT).equals(stage))
                .map(known -> known.ordinal() + 1)
                .findFirst();
    }

    public boolean byMe() {
        return "me".equals(manager);
    }

    public boolean byNobody() {
        return "nobody".equals(manager);
    }

    public Optional<UUID> managerId() {
        return id(manager);
    }

    public Optional<UUID> crewId() {
        return id(crew);
    }

    public Optional<UUID> utilityId() {
        return id(utility);
    }

    public Optional<Boolean> isLate() {
        return "yes".equals(late) || "no".equals(late) ? Optional.of("yes".equals(late)) : Optional.empty();
    }

    public int pageNumber() {
        try {
            return page == null ? 1 : Integer.parseInt(page.strip());
        } catch (NumberFormatException e) {
            return 1;
        }
    }

    /** Whether anything narrows the default list. */
    public boolean narrows() {
        return !words().isEmpty()
                || stageOrder().isPresent()
                || byMe()
                || byNobody()
                || managerId().isPresent()
                || crewId().isPresent()
                || utilityId().isPresent()
                || isLate().isPresent();
    }

    /** The address of the list with this one thing otherwise; the first page of it. */
    public String with(String name, String value) {
        return address("/projects", name, value);
    }

    /** The address of the list as a file. */
    public String export() {
        return address("/projects/export", "page", "");
    }

    /** The address of this list without its page, ready for one more parameter. */
    public String base() {
        String address = with("page", "");
        return address + (address.contains("?") ? "&" : "?");
    }

    private String address(String path, String name, String value) {
        Map<String, @Nullable String> all = new LinkedHashMap<>();
        all.put("q", words());
        all.put("show", show);
        all.put("stage", stage);
        all.put("manager", manager);
        all.put("crew", crew);
        all.put("utility", utility);
        all.put("late", late);
        all.put("sort", sort);
        all.put(name, value);
        all.remove("page");
        UriComponentsBuilder address = UriComponentsBuilder.fromPath(path);
        all.forEach((key, text) -> {
            if (text != null && !text.isBlank()) {
                address.queryParam(key, "{" + key + "}");
            }
        });
        return address.encode().buildAndExpand(all).toUriString();
    }

    private static Optional<UUID> id(@Nullable String text) {
        try {
            return text == null || text.isBlank() ? Optional.empty() : Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
