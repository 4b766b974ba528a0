package org.plumbrow.notice;

import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Arrays;
import java.util.Date;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.util.HtmlUtils;

/**
 * A notice as an e-mail (RFC 5322, 2045): the text, the same as HTML made from it, and the calendar entry where there is
 * one. No pictures, no remote content, nothing that tells who has read it.
 */
@Component
class Letters {

    private static final String UTF_8 = StandardCharsets.UTF_8.name();
    private static final Pattern LINK = Pattern.compile("https?://[^\\s<>\"]+[^\\s<>\".,;:!?)]");

    private final String from;
    private final OwnAddress ownAddress;
    private final Clock clock;

    Letters(@Value("${plumbrow.mail-from:${spring.mail.username:}}") String from, OwnAddress ownAddress, Clock clock) {
        this.from = from.contains("@") ? from : "plumbrow@localhost";
        this.ownAddress = ownAddress;
        this.clock = clock;
    }

    /** @throws AddressException if the recipient's address is none */
    MimeMessage mailOf(Notices.Letter letter, MimeMessage mail) throws MessagingException {
        NoticeLine line = letter.line();
        // made from the notice's id, so that a mail that goes twice is known as the same
        mail.setHeader("Message-ID", "<" + line.id() + "@" + ownAddress.host() + ">");
        mail.setFrom(address(from, "Plumbrow"));
        mail.setRecipient(Message.RecipientType.TO, strict(line.toAddress(), line.toName()));
        if (!letter.answersTo().address().isBlank()) {
            mail.setReplyTo(new InternetAddress[] {
                address(letter.answersTo().address(), letter.answersTo().name())
            });
        }
        mail.setSubject(line.subject(), UTF_8);
        mail.setSentDate(Date.from(clock.instant()));
        mail.setHeader("Auto-Submitted", "auto-generated");
        mail.setContent(parts(letter));
        return mail;
    }

    private static MimeMultipart parts(Notices.Letter letter) throws MessagingException {
        MimeMultipart sameThing = new MimeMultipart("alternative");
        sameThing.addBodyPart(text(letter.text(), "plain"));
        sameThing.addBodyPart(text(html(letter.line().subject(), letter.text()), "html"));
        NewNotice.CalendarPart calendar = letter.calendar();
        if (calendar == null) {
            return sameThing;
        }
        sameThing.addBodyPart(entry(calendar));
        MimeBodyPart body = new MimeBodyPart();
        body.setContent(sameThing);
        MimeBodyPart file = entry(calendar);
        file.setFileName(calendar.fileName());
        file.setDisposition("attachment");
        return new MimeMultipart("mixed", body, file);
    }

    private static MimeBodyPart text(String text, String subtype) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setText(text, UTF_8, subtype);
        return part;
    }

    private static MimeBodyPart entry(NewNotice.CalendarPart calendar) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setText(calendar.ics(), UTF_8, "calendar");
        part.setHeader("Content-Type", "text/calendar; charset=UTF-8; method=" + calendar.method());
        return part;
    }

    /** Paragraphs of the text; what is a web address becomes a link. Nothing is said here that the text does not say. */
    static String html(String title, String text) {
        String paragraphs = Arrays.stream(text.strip().split("\\n\\s*\\n"))
                .map(paragraph -> paragraph.lines().map(Letters::linked).collect(Collectors.joining("<br>\n")))
                .map(paragraph -> "<p>" + paragraph + "</p>")
                .collect(Collectors.joining("\n"));
        return """
                <!DOCTYPE html>
                <html lang="en"><head><meta charset="utf-8"><title>%s</title></head>
                <body>
                %s
                </body></html>
                """.formatted(HtmlUtils.htmlEscape(title, UTF_8), paragraphs);
    }

    private static String linked(String line) {
        StringBuilder html = new StringBuilder();
        var link = LINK.matcher(line);
        int from = 0;
        while (link.find()) {
            String address = HtmlUtils.htmlEscape(link.group(), UTF_8);
            html.append(HtmlUtils.htmlEscape(line.substring(from, link.start()), UTF_8))
                    .append("<a href=\"")
                    .append(address)
                    .append("\">")
                    .append(address)
                    .append("</a>");
            from = link.end();
        }
        return html.append(HtmlUtils.htmlEscape(line.substring(from), UTF_8)).toString();
    }

    private static InternetAddress strict(String address, String name) throws AddressException {
        InternetAddress checked = address(address, name);
        checked.validate();
        if (!address.contains("@")) {
            throw new AddressException("no @", address);
        }
        return checked;
    }

    private static InternetAddress address(String address, String name) {
        try {
            return new InternetAddress(address, name, UTF_8);
        } catch (UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }
}
