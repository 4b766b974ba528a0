package org.plumbrow.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.format.Formatter;
import org.springframework.format.FormatterRegistry;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Numbers in forms are read as people write them; a refused form says so in the title of its page. */
@Configuration
class WebSetUp implements WebMvcConfigurer {

    @Override
    public void addFormatters(FormatterRegistry registry) {
        for (Class<? extends Number> type : List.of(Integer.class, Long.class, Double.class, BigDecimal.class)) {
            register(registry, type);
        }
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new RefusedPages());
    }

    /** The title of a page that refuses a form says so first: {@code formRefused} is true in its model. */
    private static final class RefusedPages implements HandlerInterceptor {

        @Override
        public void postHandle(
                HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
            if (page != null && response.getStatus() == HttpStatus.UNPROCESSABLE_CONTENT.value()) {
                page.addObject("formRefused", true);
            }
        }
    }

    private static <T extends Number> void register(FormatterRegistry registry, Class<T> type) {
        registry.addFormatterForFieldType(type, new Formatter<T>() {
            @Override
            public T parse(String text, Locale locale) {
                return type.cast(NumbersAsWritten.read(text, type));
            }

            @Override
            public String print(T number, Locale locale) {
                return NumbersAsWritten.write(number);
            }
        });
    }
}
