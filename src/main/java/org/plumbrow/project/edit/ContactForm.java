package org.plumbrow.project.edit;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;

/** Somebody at the customer's side, as typed. */
record ContactForm(
        @Nullable String name,
        @Nullable String part,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String language,
        @Nullable Boolean decides,
        @Nullable String version) {

    private static final Pattern EMAIL = Pattern.compile("[^\\s@]{1,64}@[^\\s@]+\\.[^\\s@]{2,}");
    private static final Pattern PHONE = Pattern.compile("[+]?[0-9][0-9 ()./-]{5,24}");

    static ContactForm blank(long version) {
        return new ContactForm("", "", "", "", "en", false, Long.toString(version));
    }

    static ContactForm of(ProjectContact contact, long version) {
        return new ContactForm(
                contact.name(),
                contact.part(),
                contact.phone(),
                contact.email(),
                contact.language(),
                contact.decides(),
                Long.toString(version));
    }

    NewProject.NewContact read(Entered entered) {
        String called = entered.given("name", "the name", name, ProjectLimits.LONGEST_NAME);
        return new NewProject.NewContact(
                called,
                entered.within("part", "the part", part, ProjectLimits.LONGEST_NAME),
                phone(entered, "phone", phone),
                email(entered, "email", email),
                "es".equals(Entered.text(language)) ? "es" : "en",
                Boolean.TRUE.equals(decides));
    }

    static String phone(Entered entered, String field, @Nullable String typed) {
        String text = Entered.text(typed);
        if (!text.isEmpty() && !PHONE.matcher(text).matches()) {
            entered.refuse(field, "Write the phone number in digits, for example 555-555-0142.");
        }
        return text;
    }

    static String email(Entered entered, String field, @Nullable String typed) {
        String text = Entered.text(typed);
        if (!text.isEmpty() && (text.length() > 254 || !EMAIL.matcher(text).matches())) {
            entered.refuse(field, "Write one e-mail address, for example marit@farm.example.");
        }
        return text;
    }

    List<Written> written() {
        return List.of(
                Written.of("name", "name", Entered.text(name)),
                Written.of("part", "part", Entered.text(part)),
                Written.of("phone", "phone", Entered.text(phone)),
                Written.of("e-mail", "email", Entered.text(email)),
                Written.of("language", "language", Entered.text(language)),
                Written.of("decides", "decides", Boolean.TRUE.equals(decides)));
    }
}
