package org.plumbrow.browser;

import com.microsoft.playwright.BrowserContext;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;
import org.springframework.beans.factory.config.BeanPostProcessor;

/** A clock that runs, and that a walk sets ahead: weeks of waiting pass in a moment, for the server and for its phones. */
final class WalkedDays extends Clock {

    private static final ZoneId VALLEY = ZoneId.of("America/New_York");
    private static final AtomicLong AHEAD_MS = new AtomicLong();

    /** The browser's own clock, set ahead by what the walk last said there. */
    private static final String PHONE = """
            {
              const Right = Date;
              let ahead = %d;
              const set = () => { try { return Number(localStorage.getItem('walked') ?? ahead); } catch (none) { return ahead; } };
              window.Date = class extends Right {
                constructor(...said) { if (said.length) super(...said); else super(Right.now() + set()); }
                static now() { return Right.now() + set(); }
              };
            }
            """;

    private final Clock behind;

    private WalkedDays(Clock behind) {
        this.behind = behind;
    }

    /** Before the house's clock, in a test's own context only. */
    static BeanPostProcessor beforeTheHouses() {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessAfterInitialization(Object bean, String name) {
                return bean instanceof Clock clock && name.equals("clock") ? new WalkedDays(clock) : bean;
            }
        };
    }

    static LocalDate today() {
        return LocalDateTime.ofInstant(now(), VALLEY).toLocalDate();
    }

    private static Instant now() {
        return Instant.now().plusMillis(AHEAD_MS.get());
    }

    /** Never back. */
    static void to(LocalDateTime moment) {
        Duration way = Duration.between(now(), moment.atZone(VALLEY));
        if (way.isNegative()) {
            throw new IllegalStateException("it is later than " + moment + " already");
        }
        AHEAD_MS.addAndGet(way.toMillis());
    }

    static void pass(int minutes) {
        AHEAD_MS.addAndGet(Duration.ofMinutes(minutes).toMillis());
    }

    static void begin(BrowserContext phone) {
        phone.addInitScript(PHONE.formatted(AHEAD_MS.get()));
    }

    static String onThePhone() {
        return "localStorage.setItem('walked', '" + AHEAD_MS.get() + "')";
    }

    @Override
    public Instant instant() {
        return behind.instant().plusMillis(AHEAD_MS.get());
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
