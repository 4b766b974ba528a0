package org.plumbrow.account.firm;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.account.Accounts;
import org.plumbrow.account.Accounts.NewAccount;
import org.plumbrow.account.Branches;
import org.plumbrow.account.person.NewPassword;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.account.person.Tokens;
import org.plumbrow.database.BranchWall;
import org.plumbrow.notice.OwnAddress;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Role;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A new installation without the demo: whoever can read its log may found the firm. The code has 10 characters, lives
 * 30 minutes and dies after five misses; a restart makes a new one.
 */
@Service
public class FirstRun {

    static final Duration CODE_LIFE = Duration.ofMinutes(30);
    private static final int CODE_LENGTH = 10;
    private static final int MOST_MISSES = 5;
    private static final Logger LOG = LoggerFactory.getLogger(FirstRun.class);

    static final String DEAD =
            "The code holds no more: it lives 30 minutes and five tries. Start Plumbrow again; its log shows a new one.";

    private final Accounts accounts;
    private final Branches branches;
    private final NewPassword newPassword;
    private final SecurityLog log;
    private final OwnAddress ownAddress;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final boolean demo;
    private volatile boolean over;

    FirstRun(
            Accounts accounts,
            Branches branches,
            NewPassword newPassword,
            SecurityLog log,
            OwnAddress ownAddress,
            JdbcClient jdbc,
            TransactionTemplate transaction,
            Clock clock,
            @Value("${plumbrow.demo:true}") boolean demo) {
        this.accounts = accounts;
        this.branches = branches;
        this.newPassword = newPassword;
        this.log = log;
        this.ownAddress = ownAddress;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.clock = clock;
        this.demo = demo;
    }

    /** Whether nobody can sign in yet, and no demo will change that. Once somebody can, the database is asked no more. */
    boolean isDue() {
        if (demo) {
            return false;
        }
        if (!over) {
            over = accounts.anybody();
        }
        return !over;
    }

    @EventListener
    void showCode(ApplicationReadyEvent ready) {
        if (isDue()) {
            LOG.info(
                    "Nobody can sign in yet. Open {} and type the code {} within 30 minutes.",
                    ownAddress.of("/first-run"),
                    newCode());
        }
    }

    String newCode() {
        String code = Tokens.readable(CODE_LENGTH);
        jdbc.sql("""
                        insert into first_run_code (code_hash, made_at) values (:hash, :now)
                        on conflict (only_one) do update set code_hash = :hash, made_at = :now, misses = 0
                        """)
                .param("hash", Tokens.hash(code))
                .param("now", clock.instant().atOffset(ZoneOffset.UTC))
                .update();
        return code.substring(0, CODE_LENGTH / 2) + "-" + code.substring(CODE_LENGTH / 2);
    }

    /** @return what is wrong; empty when firm, first branch and owner are there */
    Optional<Refusal> found(FirstRunForm form) {
        Optional<Refusal> refused = checkCode(String.valueOf(form.code()));
        if (refused.isEmpty()) {
            refused = newPassword.check(form.password(), form.again());
        }
        Optional<ZoneId> zone = Zones.of(form.zone());
        if (refused.isEmpty() && zone.isEmpty()) {
            refused = Optional.of(new Refusal("zone", "Choose the time zone of the branch."));
        }
        if (refused.isEmpty()) {
            BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> foundNow(form, zone.orElseThrow())));
        }
        return refused;
    }

    private Optional<Refusal> checkCode(String typed) {
        String code = typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
        Instant oldest = clock.instant().minus(CODE_LIFE);
        // counted before it is looked at: five tries at once are five
        Optional<String> hash = jdbc.sql("""
                        update first_run_code set misses = misses + 1 where misses < :most and made_at > :oldest
                        returning code_hash
                        """)
                .param("most", MOST_MISSES)
                .param("oldest", oldest.atOffset(ZoneOffset.UTC))
                .query(String.class)
                .optional();
        if (hash.isEmpty()) {
            return Optional.of(new Refusal("code", DEAD));
        }
        if (!hash.get().equals(Tokens.hash(code))) {
            return Optional.of(new Refusal("code", "This is not the code of the log's last start. Look once more."));
        }
        jdbc.sql("update first_run_code set misses = misses - 1").update();
        return Optional.empty();
    }

    private void foundNow(FirstRunForm form, ZoneId zone) {
        accounts.found(String.valueOf(form.firm()));
        String name = String.valueOf(form.name()).strip();
        UUID owner = accounts.open(
                new NewAccount(name, String.valueOf(form.email()), String.valueOf(form.password()), false));
        Actor actor = new Actor(owner, name);
        UUID branch = branches.open(
                String.valueOf(form.branchCode()).strip().toUpperCase(Locale.ROOT),
                String.valueOf(form.branchName()).strip(),
                zone,
                actor);
        accounts.give(owner, branch, Set.of(Role.OWNER));
        jdbc.sql("delete from first_run_code").update();
        log.write("firm-founded", actor, "Founded the firm with its first branch.");
    }
}
