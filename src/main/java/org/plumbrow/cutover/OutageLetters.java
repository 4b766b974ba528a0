package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.notice.NewNotice;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.link.LinkKind;
import org.plumbrow.web.link.PrivateLinks;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/**
 * What utility and customer are written about an outage: the fact first, then what to do, then why they get this. A
 * change says old and new; a cancellation is as plain as the date was.
 */
@Component
class OutageLetters {

    private static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE, MMMM d", Locale.US);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
    private static final int SHORT_MOST = 160;

    private final MessageSource texts;
    private final PrivateLinks links;
    private final OwnAddress address;

    OutageLetters(MessageSource texts, PrivateLinks links, OwnAddress address) {
        this.texts = texts;
        this.links = links;
        this.address = address;
    }

    /**
     * What a letter tells of.
     *
     * @param from the window that was announced before; null for a first announcement
     * @param window null for a cancellation
     * @param people the customer's, who decides first
     */
    record Occasion(
            ProjectFacts project,
            Optional<UtilityFacts> utility,
            List<ProjectContact> people,
            @Nullable OutageFacts from,
            @Nullable OutageFacts window,
            String reason) {

        /** Whose notices they are: of the window that is to come, else of the one that is cancelled. */
        UUID subject() {
            return window != null ? window.id() : from == null ? project.id() : from.id();
        }
    }

    static String aboutUtility(UUID windowId) {
        return "outage:" + windowId + ":utility";
    }

    static String aboutCustomer(UUID windowId) {
        return "outage:" + windowId + ":customer";
    }

    NewNotice toUtility(Occasion occasion) {
        String name = occasion.utility.map(UtilityFacts::name).orElse(text("cutover.letter.utility.unnamed"));
        String mail = occasion.utility.map(UtilityFacts::email).orElse("");
        return NewNotice.ofProject(
                        NoticeKind.UTILITY,
                        occasion.project.branchId(),
                        occasion.project.id(),
                        new NewNotice.Recipient(name, mail),
                        utilitySubject(occasion),
                        utilityText(occasion))
                .about(aboutUtility(occasion.subject()));
    }

    private String utilitySubject(Occasion occasion) {
        String place = occasion.project.site().address();
        if (occasion.window == null) {
            return text("cutover.letter.utility.subject.cancelled", day(occasion.from), place);
        }
        return occasion.from == null
                ? text("cutover.letter.utility.subject", day(occasion.window), hours(occasion.window), place)
                : text(
                        "cutover.letter.utility.subject.moved",
                        day(occasion.from),
                        day(occasion.window),
                        hours(occasion.window),
                        place);
    }

    private String utilityText(Occasion occasion) {
        List<String> lines = new ArrayList<>();
        lines.add(utilitySubject(occasion) + ".");
        if (occasion.window != null) {
            lines.addAll(utilityFacts(occasion, occasion.window));
        }
        if (!occasion.reason.isBlank()) {
            lines.add(text("cutover.letter.reason", occasion.reason));
        }
        lines.add(text("cutover.letter.utility.why", occasion.project.number(), occasion.project.name()));
        return String.join("\n\n", lines);
    }

    private List<String> utilityFacts(Occasion occasion, OutageFacts window) {
        List<String> lines = new ArrayList<>();
        lines.add(text(
                "cutover.letter.utility.ask",
                day(window),
                clock(window.start()),
                clock(window.end()),
                window.outageMinutes()));
        rain(window).ifPresent(rain -> lines.add(text("cutover.letter.utility.rain", rain)));
        List<String> meters = occasion.project.site().meterNumbers();
        if (!meters.isEmpty()) {
            lines.add(text("cutover.letter.utility.meters", String.join(", ", meters)));
        }
        occasion.utility
                .map(UtilityFacts::mustBePresent)
                .filter(who -> !who.isBlank())
                .ifPresent(who -> lines.add(text("cutover.letter.utility.present", who)));
        lines.add(text("cutover.letter.utility.confirm"));
        return lines;
    }

    NewNotice toCustomer(Occasion occasion) {
        Optional<ProjectContact> who = occasion.people.stream().findFirst();
        NewNotice.Recipient to = who.map(contact -> new NewNotice.Recipient(contact.name(), contact.email()))
                .orElse(new NewNotice.Recipient(occasion.project.customer(), ""));
        NewNotice notice = NewNotice.ofProject(
                        NoticeKind.CUSTOMER,
                        occasion.project.branchId(),
                        occasion.project.id(),
                        to,
                        customerSubject(occasion),
                        customerText(occasion, who))
                .about(aboutCustomer(occasion.subject()));
        String brief = customerSubject(occasion) + ".";
        return brief.length() <= SHORT_MOST ? notice.shortly(brief) : notice;
    }

    private String customerSubject(Occasion occasion) {
        if (occasion.window == null) {
            return text("cutover.letter.customer.subject.cancelled", day(occasion.from));
        }
        return occasion.from == null
                ? text(
                        "cutover.letter.customer.subject",
                        day(occasion.window),
                        hours(occasion.window),
                        occasion.project.name())
                : text(
                        "cutover.letter.customer.subject.moved",
                        day(occasion.from),
                        day(occasion.window),
                        hours(occasion.window));
    }

    private String customerText(Occasion occasion, Optional<ProjectContact> who) {
        List<String> lines = new ArrayList<>();
        if (occasion.window == null) {
            lines.add(text("cutover.letter.customer.cancelled", day(occasion.from)));
        } else {
            lines.addAll(customerFacts(occasion, occasion.window));
        }
        if (!occasion.reason.isBlank()) {
            lines.add(text("cutover.letter.reason", occasion.reason));
        }
        who.flatMap(contact -> links.live(LinkKind.CUSTOMER, contact.id()))
                .ifPresent(link -> lines.add(text("cutover.letter.customer.page") + "\n" + address.of(link.path())));
        String signed = occasion.project
                .inCharge(Duty.PROJECT_MANAGER)
                .map(ProjectFacts.InCharge::name)
                .orElse(text("cutover.letter.customer.us"));
        lines.add(text("cutover.letter.customer.why", signed));
        return String.join("\n\n", lines);
    }

    private List<String> customerFacts(Occasion occasion, OutageFacts window) {
        List<String> lines = new ArrayList<>();
        if (occasion.from != null) {
            lines.add(text("cutover.letter.customer.moved", day(occasion.from), day(window)));
        }
        lines.add(text("cutover.letter.customer.fact", day(window), clock(window.start()), clock(window.end())));
        lines.add(text("cutover.letter.customer.planfor", upTo(window.planForMinutes())));
        rain(window).ifPresent(rain -> lines.add(text("cutover.letter.customer.rain", rain)));
        boolean farm = occasion.project.site().isFarm();
        lines.add(text(farm ? "cutover.letter.customer.before.farm" : "cutover.letter.customer.before"));
        lines.add(text("cutover.letter.customer.panel"));
        lines.add(text("cutover.letter.customer.answer"));
        return lines;
    }

    /** Half-hours in words. */
    static String upTo(int minutes) {
        int hours = minutes / 60;
        String half = minutes % 60 == 0 ? "" : " and a half";
        if (hours == 0) {
            return minutes + " minutes";
        }
        return hours == 1 && half.isEmpty() ? "1 hour" : hours + half + " hours";
    }

    private static Optional<String> rain(OutageFacts window) {
        return Optional.ofNullable(window.rainDate()).map(rain -> day(rain.day()) + ", " + clock(rain.start()));
    }

    private static String day(@Nullable OutageFacts window) {
        return window == null ? "" : day(window.day());
    }

    private static String day(LocalDate day) {
        return LONG_DAY.format(day);
    }

    private static String hours(OutageFacts window) {
        return clock(window.start()) + " to " + clock(window.end());
    }

    /** "9:00 am". */
    static String clock(LocalTime time) {
        return time.equals(LocalTime.NOON) ? "noon" : CLOCK.format(time).toLowerCase(Locale.US);
    }

    private String text(String key, Object... facts) {
        return texts.getMessage(key, facts, LocaleContextHolder.getLocale());
    }
}
