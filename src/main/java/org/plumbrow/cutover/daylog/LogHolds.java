package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;

/** Signing a hold point: by the named people, with name and trade, when everything before it is done. */
@Service
public class LogHolds {

    private static final int MOST_NAME = 120;
    private static final int MOST_TRADE = 80;

    private final LogPen pen;

    LogHolds(LogPen pen) {
        this.pen = pen;
    }

    /**
     * @param at when it was signed, if not now
     * @param isHere who signs is on site: written down as such with the signature, where the list does not say so yet
     */
    public record Signing(
            UUID entryId,
            Hold hold,
            Hold.Part part,
            String name,
            String trade,
            @Nullable LocalTime at,
            boolean isHere) {

        /** By somebody who is on site, whether the list says so yet or not. */
        public Signing(UUID entryId, Hold hold, Hold.Part part, String name, String trade, @Nullable LocalTime at) {
            this(entryId, hold, part, name, trade, at, true);
        }
    }

    public Said sign(UUID projectId, Signing signing) {
        return pen.write(projectId, signing.entryId(), writing -> sign(writing, signing));
    }

    private Said sign(Writing writing, Signing signing) {
        Optional<Said> faster = signedMeanwhile(writing, signing);
        if (faster.isPresent()) {
            return faster.get();
        }
        List<Refusal> refusals = new ArrayList<>(ofTheHold(writing, signing));
        refusals.addAll(ofFields(writing, signing));
        if (!refusals.isEmpty()) {
            return Said.refused(refusals);
        }
        LogEntry.Signature signature = new LogEntry.Signature(
                signing.part(), signing.name().strip(), signing.trade().strip());
        Instant at = writing.at(signing.at());
        if (!isOnSite(writing, signing)) {
            writing.about(
                    Ids.next(), signing.hold().name(), EntryKind.ARRIVED, signature.name(), signature.trade(), at);
        }
        writing.sign(signing.entryId(), signing.hold(), signature, at);
        return Said.stored("hold point " + signing.hold() + " is signed by the "
                + signing.part().words() + ", " + writing.clock(at) + ".");
    }

    private static boolean isOnSite(Writing writing, Signing signing) {
        return PeopleOnSite.of(writing.log(), writing.state()).isThere(signing.name());
    }

    /**
     * Whoever passes a hold point is among the people on site. Without signal the phone asks by the list it has: whom that
     * list had has signed there, also where another phone has written since that they left.
     */
    private static Optional<Refusal> notOnSite(Writing writing, Signing signing) {
        if (signing.isHere() || isOnSite(writing, signing) || wasOnThePhonesList(writing, signing)) {
            return Optional.empty();
        }
        return Optional.of(new Refusal(
                "isHere",
                signing.name().strip() + " is not among the people on site ("
                        + PeopleOnSite.of(writing.log(), writing.state()).names()
                        + "). Write the name as it stands there, or say that they are here."));
    }

    private static boolean wasOnThePhonesList(Writing writing, Signing signing) {
        return writing.isFromPhone()
                && PeopleOnSite.of(writing.log(), writing.state()).knows(signing.name());
    }

    /** Somebody has signed as the same, on another phone perhaps. */
    private static Optional<Said> signedMeanwhile(Writing writing, Signing signing) {
        return writing.state().signatures(signing.hold()).stream()
                .filter(one -> one.entry().signature() != null
                        && one.entry().signature().part() == signing.part())
                .findFirst()
                .map(one -> Said.meanwhile(
                        "part",
                        one.entry().signature().name() + " has signed " + signing.hold() + " as "
                                + signing.part().words() + " already, " + writing.clock(one.at())
                                + ". A second signature is not needed."));
    }

    private static List<Refusal> ofTheHold(Writing writing, Signing signing) {
        if (writing.log().isClosed()) {
            return List.of(Refusal.ofForm("This log is closed."));
        }
        if (writing.state().reversedAt().isPresent()) {
            return List.of(Refusal.ofForm("The work is being reversed; this hold point is not passed any more."));
        }
        List<Refusal> refusals = new ArrayList<>();
        writing.rules().against(signing.hold()).forEach(sentence -> refusals.add(Refusal.ofForm(sentence)));
        boolean asked = writing.state().unsigned(signing.hold()).contains(signing.part());
        if (!asked && signing.part() != Hold.Part.INSPECTOR) {
            refusals.add(new Refusal(
                    "part", "The " + signing.part().words() + " is not asked to sign " + signing.hold() + "."));
        }
        return refusals;
    }

    private static List<Refusal> ofFields(Writing writing, Signing signing) {
        List<Refusal> refusals = new ArrayList<>();
        int name = signing.name().strip().length();
        int trade = signing.trade().strip().length();
        if (name < 2 || name > MOST_NAME) {
            refusals.add(new Refusal("name", "Write the name of who signs, 2 to 120 characters."));
        } else {
            writing.rules()
                    .againstName(signing.hold(), signing.part(), signing.name().strip())
                    .ifPresent(sentence -> refusals.add(new Refusal("name", sentence)));
        }
        if (trade < 2 || trade > MOST_TRADE) {
            refusals.add(
                    new Refusal("trade", "Write the trade or what they are here, for example journeyman electrician."));
        }
        if (refusals.isEmpty()) {
            notOnSite(writing, signing).ifPresent(refusals::add);
        }
        writing.against(signing.at()).ifPresent(refusals::add);
        return refusals;
    }
}
