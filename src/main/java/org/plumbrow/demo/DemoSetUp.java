package org.plumbrow.demo;

import java.time.Clock;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Puts the story's clock before the house's. */
@Configuration(proxyBeanMethods = false)
@WithDemo
class DemoSetUp {

    @Bean
    static BeanPostProcessor storyClock() {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessAfterInitialization(Object bean, String name) {
                return bean instanceof Clock present && name.equals("clock") ? new StoryClock(present) : bean;
            }
        };
    }
}
