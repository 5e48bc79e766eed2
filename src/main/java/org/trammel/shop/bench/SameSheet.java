package org.trammel.shop.bench;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Belonging;
import org.trammel.shop.travellers.Belonging.Owner;
import org.trammel.shop.travellers.FrameSheet;

/**
 * What is sent from the sheet of a frame is of that frame: the step, reading, point or hold that a form names is looked
 * up and compared with the frame in the address. A form of another frame would otherwise be done at that one while the
 * worker reads this one's sheet.
 */
@Component
class SameSheet implements HandlerInterceptor, WebMvcConfigurer {

    private static final Pattern ID = Pattern.compile("[0-9]{1,18}");

    private final Tags tags;
    private final Map<String, LongFunction<Optional<Owner>>> owners;

    SameSheet(Tags tags, Belonging belonging) {
        this.tags = tags;
        this.owners = Map.of(
                "step", belonging::ofStep,
                "operation", belonging::ofOperation,
                "characteristic", belonging::ofCharacteristic,
                "traveller", belonging::ofTraveller,
                "hold", belonging::ofHold);
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).addPathPatterns("/station/{tag}/*");
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        String tag = tag(request);
        if (request.getMethod().equals("POST") && tag != null) {
            owners.forEach((field, owner) -> {
                String id = request.getParameter(field);
                // What names nothing, or no number, is refused by the act itself.
                if (id != null && ID.matcher(id).matches()) {
                    owner.apply(Long.parseLong(id)).ifPresent(of -> require(of, tag));
                }
            });
        }
        return true;
    }

    private static @Nullable String tag(HttpServletRequest request) {
        return request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE) instanceof Map<?, ?> path
                        && path.get("tag") instanceof String tag
                ? tag
                : null;
    }

    private void require(Owner of, String tag) {
        boolean same;
        if (SerialNumber.read(tag) instanceof SerialNumber.Result.Whole whole) {
            String part = whole.serial().part();
            same = of.is(whole.serial().frame().stored(), part == null ? "" : part);
        } else {
            FrameSheet.Head head = tags.read(tag).head();
            same = of.is(head.serial(), head.part());
        }
        if (!same) {
            throw Refusal.state(
                    "Nothing was done.",
                    "The sheet is that of " + Tags.mark(tag) + ", but what was sent belongs to " + Tags.mark(of.tag())
                            + ".",
                    "Look at the tag of the frame in your hands and open its sheet.");
        }
    }
}
