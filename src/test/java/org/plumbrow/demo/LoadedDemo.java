package org.plumbrow.demo;

import breakdown.Breakdown;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;

/**
 * A test on the demo branch as it stands after a first start, behind a real port. Loading it takes a minute: all tests
 * with this annotation share one context, so add nothing to a single class that would make another. They also share its
 * rows: a test that changes something leaves what the others look at as it was.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "plumbrow.demo=true",
            "plumbrow.demo.password=" + LoadedDemo.PASSWORD,
            "plumbrow.data-dir=target/demo-test",
            "spring.datasource.hikari.maximum-pool-size=6"
        })
@AutoConfigureMockMvc
@Import(Breakdown.class)
public @interface LoadedDemo {

    /** Of everybody in the demo. */
    String PASSWORD = "orchard-lantern-walnut-47";
}
