package org.plumbrow.account.person;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Phones that stay signed in for 14 days. The phone carries a word, we keep its hash; its owner sees and ends it. */
@Service
@Transactional
public class Devices {

    public static final Duration LIFE = Duration.ofDays(14);

    /** Word in the browser's own description → what its owner calls it; the first that fits. */
    private static final Map<String, String> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put("iPhone", "iPhone");
        KINDS.put("iPad", "iPad");
        KINDS.put("Android", "Android phone or tablet");
        KINDS.put("Windows", "Windows computer");
        KINDS.put("Macintosh", "Mac");
        KINDS.put("Linux", "Linux computer");
    }

    private final JdbcClient jdbc;
    private final Clock clock;

    Devices(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A kept phone as its owner sees it. */
    public record Device(UUID id, String name, Instant createdAt, Instant seenAt, Instant endsAt) {}

    /** @return the word for the phone to carry */
    public String keep(UUID personId, String userAgent) {
        String token = Tokens.next();
        OffsetDateTime now = now();
        jdbc.sql("""
                        insert into device (id, person_id, token_hash, name, created_at, seen_at, ends_at)
                        values (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(Ids.next(), personId, Tokens.hash(token), nameOf(userAgent), now, now, now.plus(LIFE))
                .update();
        return token;
    }

    /** Whose phone this is, if it may still stay signed in. */
    public Optional<UUID> personOf(String token) {
        return jdbc.sql(
                        "update device set seen_at = :now where token_hash = :hash and ends_at > :now returning person_id")
                .param("now", now())
                .param("hash", Tokens.hash(token))
                .query(UUID.class)
                .optional();
    }

    public List<Device> of(UUID personId) {
        return jdbc.sql("""
                        select id, name, created_at, seen_at, ends_at from device
                         where person_id = ? and ends_at > ? order by seen_at desc, id
                        """).params(personId, now()).query(Device.class).list();
    }

    /** @return whether it was this person's */
    public boolean end(UUID deviceId, UUID personId) {
        return jdbc.sql("delete from device where id = ? and person_id = ?")
                        .params(deviceId, personId)
                        .update()
                == 1;
    }

    public void end(String token) {
        jdbc.sql("delete from device where token_hash = ?")
                .param(Tokens.hash(token))
                .update();
    }

    public int endAll(UUID personId) {
        return jdbc.sql("delete from device where person_id = ?")
                .param(personId)
                .update();
    }

    int forgetEnded() {
        return jdbc.sql("delete from device where ends_at < ?").param(now()).update();
    }

    static String nameOf(String userAgent) {
        return KINDS.entrySet().stream()
                .filter(kind -> userAgent.contains(kind.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("Another device");
    }

    private OffsetDateTime now() {
        return clock.instant().atOffset(ZoneOffset.UTC);
    }
}
