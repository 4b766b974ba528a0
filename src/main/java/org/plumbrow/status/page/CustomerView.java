package org.plumbrow.status.page;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands on the customer's page, in words: whatever is not here is not on the page.
 *
 * @param facts what belongs to the headline, by its name
 * @param said sentences that belong to the headline
 * @param moved the day that was told before, when the outage was moved; may be empty
 * @param asked the day to which the customer may answer; null when there is none
 * @param message a few words of ours; may be empty
 * @param before what to do before, or while, the power is off
 * @param next what happens next, when the headline does not say it already
 * @param follows whether the page, as long as it is open, asks how it goes
 * @param calendar whether there is an appointment to be put into a calendar, or taken out of it
 */
public record CustomerView(
        String firm,
        String project,
        String headline,
        List<Named> facts,
        List<String> said,
        @Nullable Asked asked,
        String message,
        String beforeTitle,
        List<Named> before,
        List<String> next,
        List<Post> posts,
        ShutOff shutOff,
        List<Paper> papers,
        List<Caller> callers,
        @Nullable String calendar,
        String updated,
        boolean follows) {

    /** Whether there is still a stage to come. */
    public boolean goesOn() {
        return posts.stream().anyMatch(post -> post.state().equals("next"));
    }

    /** Whether every stage was reached. */
    public boolean isDone() {
        return posts.stream().allMatch(post -> post.state().equals("driven"));
    }

    /** A few words, and what is to be said to them. */
    public record Named(String name, String words) {}

    /**
     * @param day to which is answered
     * @param answered what was answered so far; empty as long as nothing was
     */
    public record Asked(LocalDate day, String question, String answered) {}

    /**
     * One of the seven stages.
     *
     * @param state {@code driven}, {@code next} or empty, as the style sheet calls them
     */
    public record Post(String label, String state, String told, String when) {}

    /**
     * @param place empty as long as nobody wrote it
     * @param there whether there is something to be shut off: what to do in an emergency belongs to it
     */
    public record ShutOff(String place, boolean photo, String unknown, boolean there) {}

    public record Paper(int slot, String title, String what) {}

    /** @param call what a phone dials; empty without a number */
    public record Caller(String name, String part, String phone, String call) {}
}
