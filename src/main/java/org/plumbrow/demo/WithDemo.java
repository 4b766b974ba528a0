package org.plumbrow.demo;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;

/** There only while {@code plumbrow.demo} is on, as it is unless somebody says otherwise. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ConditionalOnProperty(name = "plumbrow.demo", havingValue = "true", matchIfMissing = true)
@interface WithDemo {}
