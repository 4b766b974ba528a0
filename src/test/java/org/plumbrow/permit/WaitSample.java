package org.plumbrow.permit;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A wait as a test wants it: {@code WaitSample.of(AwaitedKind.PERMIT).sent(MONDAY).came(FRIDAY).get()}. */
public final class WaitSample {

    private final AwaitedKind kind;
    private String about = "";
    private @Nullable LocalDate sent;
    private @Nullable LocalDate promised;
    private @Nullable LocalDate due;
    private @Nullable LocalDate expires;
    private @Nullable LocalDate came;
    private @Nullable WaitResult result;
    private @Nullable UUID paper;

    private WaitSample(AwaitedKind kind) {
        this.kind = kind;
    }

    public static WaitSample of(AwaitedKind kind) {
        return new WaitSample(kind);
    }

    public WaitSample about(String what) {
        about = what;
        return this;
    }

    public WaitSample sent(LocalDate day) {
        sent = day;
        return this;
    }

    public WaitSample promised(LocalDate day) {
        promised = day;
        return this;
    }

    public WaitSample due(LocalDate day) {
        due = day;
        return this;
    }

    public WaitSample until(LocalDate lastDay) {
        expires = lastDay;
        return this;
    }

    public WaitSample came(LocalDate day) {
        came = day;
        sent = sent == null ? day : sent;
        return this;
    }

    public WaitSample came(LocalDate day, WaitResult with) {
        result = with;
        return came(day);
    }

    public WaitSample withPaper() {
        paper = UUID.randomUUID();
        return this;
    }

    public Awaited get() {
        return new Awaited(
                UUID.randomUUID(),
                0,
                UUID.randomUUID(),
                kind,
                "",
                about,
                OwedBy.PERMIT_OFFICE,
                null,
                null,
                "",
                sent,
                promised,
                due,
                expires,
                came,
                result,
                paper,
                "");
    }
}
