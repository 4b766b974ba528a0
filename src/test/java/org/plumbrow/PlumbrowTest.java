package org.plumbrow;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestExecutionListeners;
import org.springframework.test.context.TestExecutionListeners.MergeMode;

/**
 * A test of the whole application on a real PostgreSQL; inject what you need, {@code MockMvcTester} and
 * {@link TestClock} included. All such tests share one context and one database: add nothing to a single class that
 * would make another context, make your own rows, and never count those of others.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@Inherited
@SpringBootTest(
        properties = {
            "plumbrow.demo=false",
            "plumbrow.background.poll=500ms",
            "plumbrow.background.heartbeat=2s",
            "spring.datasource.hikari.maximum-pool-size=8",
            "spring.datasource.hikari.minimum-idle=1"
        })
@AutoConfigureMockMvc
@Import(PlumbrowTestConfiguration.class)
@TestExecutionListeners(listeners = TestClockReset.class, mergeMode = MergeMode.MERGE_WITH_DEFAULTS)
public @interface PlumbrowTest {}
